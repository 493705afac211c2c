package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import pairwright.session.Progress;
import pairwright.sheet.ReadingParts.Link;

/**
 * What stands around a page of a planned session.
 *
 * @param shell what is around every page
 * @param title of the page
 * @param session what the session is called
 * @param menu the pages of the session
 * @param trail between those and the page; empty for one of them
 * @param done what was just done, in a sentence; empty for nothing
 * @param which which plan it is about, in a sentence; empty for none
 * @param other where another is chosen; null for nowhere
 * @param faults what is wrong; where there is any, there is nothing else
 * @param progress how far the plans have come; null where they are there
 * @param again this very page
 * @param stop where the work is stopped; null where this reader may not
 * @param search where a search that came to its limit is begun anew; null where none did, or where this reader may not
 */
public record PlanFrame(Shell shell, String title, String session, List<Entry> menu, List<Link> trail, String done, String which, Link other, List<String> faults,
        Progress progress, String again, String stop, String search) {
    static final String[][] PAGES = {{"", "Line-up"}, {"plan", "Plan"}, {"bleed", "Bleed"}, {"timing", "Timing"}, {"check", "Line check"},
        {"sheets", "Sheets"}, {"replan", "Re-plan"}};

    /** A page of the session; current is page, true for one that holds the page shown, or null. */
    public record Entry(String href, String name, String current) {
    }

    /** Around a page that has all it shows. */
    static PlanFrame ready(AtPlan at, String title, String page, PlanChosen chosen) {
        return of(at, title, page, List.of(), chosen, List.of());
    }

    static PlanFrame ready(AtPlan at, String title, String page, List<Link> trail, PlanChosen chosen) {
        return of(at, title, page, trail, chosen, List.of());
    }

    /** Around a page that cannot be shown, or not yet. */
    static PlanFrame of(AtPlan at, String title, String page, List<Link> trail, PlanChosen chosen, List<String> faults) {
        List<Entry> menu = new ArrayList<>();
        for (String[] one : PAGES) {
            boolean keeps = !one[0].isEmpty() && !one[0].equals("replan");
            menu.add(new Entry(at.visit().to(at.path(one[0]) + (keeps && chosen != null ? chosen.query() : "")), one[1],
                    !one[0].equals(page) ? null : trail.isEmpty() ? "page" : "true"));
        }
        boolean several = chosen != null && chosen.planned() != null && chosen.planned().plans().size() > 1;
        String which = chosen == null || chosen.plan() == null || page.equals("plan") ? ""
                : chosen.taken() ? "Of the plan that was taken." : "Of plan " + chosen.plan().rank() + ", which is not taken yet.";
        Link other = which.isEmpty() ? null : at.at().at().link(at.path("plan") + chosen.query(), several ? "Choose another" : "See the plan");
        return new PlanFrame(at.at().html().shell(title + ": " + at.name(), "sessions", at.visit()), title, at.name(), menu, trail, "", which, other, faults,
                chosen == null ? null : chosen.progress(), at.visit().same(at.reader().imperial()), at.at().mayWrite() ? at.to("plan/stop") : null,
                chosen != null && chosen.undecided() && at.at().mayWrite() ? at.to("plan/again") : null);
    }

    PlanFrame done(String says) {
        return new PlanFrame(shell, title, session, menu, trail, says, which, other, faults, progress, again, stop, search);
    }

    PlanFrame wrong(List<String> says) {
        return new PlanFrame(shell, title, session, menu, trail, done, which, other, says, progress, again, stop, search);
    }

    /** How far it has come, in words. */
    public String far() {
        return progress.of() == 0 ? progress.doing() + "." : progress.doing() + ": " + progress.done() + " of " + progress.of() + " so far.";
    }
}
