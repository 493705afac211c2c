package pairwright.sheet;

import java.util.List;
import pairwright.catalogue.Shown;
import pairwright.locker.Event;
import pairwright.sheet.ReadingParts.Link;

/** Who did what, newest first. */
public final class HistoryPage {
    private static final int ON_A_PAGE = 50;

    private HistoryPage() {
    }

    /** Something that was done. */
    public record Line(String iso, String when, String who, String says) {
    }

    /**
     * What it shows.
     *
     * @param about what it is about; empty for everything
     * @param older the page before; null where there is none
     */
    public record Content(String about, List<Line> lines, Link older) {
    }

    /** Everything, or what is about one unit or booking. */
    public static Page of(AtLocker at) {
        String about = at.visit().first("about");
        String before = at.visit().first("before");
        Long number = before != null && before.matches("\\d{1,18}") ? Long.valueOf(before) : null;
        List<Event> events = at.locker().history(about, number, ON_A_PAGE + 1);
        boolean more = events.size() > ON_A_PAGE;
        List<Event> shown = more ? events.subList(0, ON_A_PAGE) : events;
        String query = about == null ? "" : "about=" + Visit.escaped(about) + "&";
        return at.page("history", at.frame("History", "units", List.of(at.at().link("/locker", "Units")), ""), "history", new Content(
                about == null ? "" : at.locker().unit(about).map(unit -> unit.label()).orElse((about.matches("\\d+") ? "booking " : "") + Shown.of(about)), lines(at, shown),
                more ? at.at().link("/locker/history?" + query + "before=" + shown.get(shown.size() - 1).number(), "What was done before") : null));
    }

    static List<Line> lines(AtLocker at, List<Event> events) {
        return events.stream().map(event -> new Line(at.moments().iso(event.at()), at.moments().moment(event.at()), event.who(), at.moments().within(event.says()))).toList();
    }
}
