package pairwright.sheet;

import java.util.regex.Pattern;
import pairwright.catalogue.Shown;
import pairwright.session.Picks;
import pairwright.session.Plan;
import pairwright.session.PlanDesk;
import pairwright.session.Progress;
import pairwright.session.allocation.NotDecided;
import pairwright.session.Planned;

/**
 * Which plan a page is about: the one the address names, else the one that was taken, else the best.
 *
 * @param plan null where there is none, or none yet
 * @param taken whether it is the one that was taken
 * @param planned all that were worked out; null where they are not there, or were not needed
 * @param progress of what is being worked out; null where that is not waited for
 * @param fault why there is none, in a sentence; empty where that is not a fault
 * @param undecided whether there is none because the search came to its limit
 */
public record PlanChosen(Plan plan, boolean taken, Planned planned, Progress progress, String fault, boolean undecided) {
    private static final Pattern WHOLE = Pattern.compile("[1-9]\\d{0,2}");

    PlanChosen(Plan plan, boolean taken, Planned planned, Progress progress, String fault) {
        this(plan, taken, planned, progress, fault, false);
    }

    /** For a page that shows one plan. */
    static PlanChosen of(AtPlan at) {
        if (at.visit().first("plan") == null && at.taken() != null) {
            try {
                Plan plan = at.desk().rebuilt(at.lineUp(), at.gear(), at.taken());
                return new PlanChosen(plan, true, null, plan == null ? new Progress("Working out what was picked", 0, 0) : null, "");
            } catch (IllegalArgumentException gone) {
                return new PlanChosen(null, true, null, null, "The plan that was taken does not hold any more: " + SendForm.sentence(gone.getMessage())
                        + " Re-plan from it, or take another.");
            } catch (NotDecided open) {
                return new PlanChosen(null, true, null, null, SendForm.sentence(open.getMessage()), true);
            }
        }
        return ofAll(at);
    }

    /** For the page of plans: those that were worked out, and one of them. */
    static PlanChosen ofAll(AtPlan at) {
        String named = at.visit().first("plan");
        if (named != null && !WHOLE.matcher(named).matches()) {
            return new PlanChosen(null, false, null, null, "\u201c" + Shown.of(named) + "\u201d is no plan. Give its number, from 1.");
        }
        PlanDesk.State state = at.desk().state(at.id(), at.lineUp(), at.gear());
        if (state.undecided() != null) {
            return new PlanChosen(null, false, null, null, SendForm.sentence(state.undecided()), true);
        }
        Planned planned = state.planned();
        if (planned == null) {
            return new PlanChosen(null, false, null, state.progress(), "");
        }
        int rank = named == null ? 1 : Integer.parseInt(named);
        if (named != null && rank > planned.plans().size()) {
            return new PlanChosen(null, false, planned, null, planned.plans().isEmpty() ? "" : "There is no plan " + rank + ". Give 1"
                    + (planned.plans().size() == 1 ? "." : " to " + planned.plans().size() + "."));
        }
        Plan plan = planned.plans().isEmpty() ? null : planned.plans().get(rank - 1);
        return new PlanChosen(plan, plan != null && at.taken() != null && Picks.of(plan).equals(at.taken()), planned, null, "");
    }

    /** Whether it is still being worked out. */
    public boolean waits() {
        return progress != null;
    }

    /** What of an address keeps to this plan: nothing for the one that was taken. */
    String query() {
        return plan == null || taken ? "" : "?plan=" + plan.rank();
    }
}
