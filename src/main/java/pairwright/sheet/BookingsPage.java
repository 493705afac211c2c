package pairwright.sheet;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pairwright.catalogue.Shown;
import pairwright.locker.Out;
import pairwright.locker.Unit;
import pairwright.sheet.ReadingParts.Link;

/** What is booked, by day. */
public final class BookingsPage {
    private static final int OK = 200;
    private static final int UNUSABLE = 400;
    private static final int USUAL_DAYS = 14;
    private static final int MOST_DAYS = 366;
    private static final int FIRST_YEAR = 1971;
    private static final int LAST_YEAR = 9998;
    private static final String CANCELLED = "The booking is cancelled. Its units are free again, and its history stays.";

    private BookingsPage() {
    }

    /**
     * What it shows.
     *
     * @param from first day, as a field for a date holds it
     * @param until last day, likewise
     * @param unit what the unit was asked for by; empty for all
     * @param faults what is wrong with what was asked for
     * @param overdue in a sentence; empty for nothing overdue
     * @param days on which something is booked
     * @param asReader why there is nothing to book with; empty for whoever may
     * @param book where something is booked; null for whoever may not
     * @param next the rest, where there is more than fits on a page; else null
     */
    public record Bookings(String from, String until, String unit, List<String> faults, String overdue, List<Day> days, String asReader, Link book, Link next) {
    }

    /**
     * A day.
     *
     * @param lines bookings that begin or end on it
     * @param goOn bookings that began before and end later
     */
    public record Day(String name, List<Line> lines, List<Line> goOn) {
    }

    /**
     * One booking on one day.
     *
     * @param units the first of them
     * @param more how many others
     */
    public record Line(Link time, String kind, String forWhat, String by, List<Named> units, int more) {
    }

    /**
     * A unit.
     *
     * @param href null where it has left the locker since
     */
    public record Named(String href, String label) {
    }

    /** What the query asks for: days, and maybe one unit. */
    public static Page of(AtLocker at) {
        List<String> faults = new ArrayList<>();
        LocalDate today = at.now().atZone(at.clock().getZone()).toLocalDate();
        LocalDate from = day(at, "from", today, faults);
        LocalDate until = day(at, "until", from.plusDays(USUAL_DAYS), faults);
        if (until.isBefore(from) || until.isAfter(from.plusDays(MOST_DAYS))) {
            faults.add("The last day, " + until + ", must lie between the first, " + from + ", and " + MOST_DAYS + " days later. Two weeks are shown.");
            until = from.plusDays(USUAL_DAYS);
        }
        String unit = unit(at, faults);
        String typed = at.visit().first("unit");
        BookingDays days = BookingDays.of(at, from, until, unit, skip(at));
        Bookings shown = new Bookings(from.toString(), until.toString(), typed == null ? "" : typed, faults, overdue(at), days.days(),
                at.asReader("engineers book units"), at.mayWrite() ? at.at().link("/locker/bookings/new", "Book units") : null, next(at, days, until, typed));
        String done = "cancelled".equals(at.visit().first("done")) ? CANCELLED : "";
        return at.page(faults.isEmpty() ? OK : UNUSABLE, "bookings", at.frame("Bookings", "bookings", List.of(), done), "bookings", shown);
    }

    /** How many bookings of the first day were on the page before. */
    private static int skip(AtLocker at) {
        String text = at.visit().first("skip");
        return text == null || !text.matches("\\d{1,6}") ? 0 : Integer.parseInt(text);
    }

    private static Link next(AtLocker at, BookingDays days, LocalDate until, String unit) {
        if (days.nextDay() == null) {
            return null;
        }
        return at.at().link("/locker/bookings?from=" + days.nextDay() + "&until=" + until + (days.nextSkip() == 0 ? "" : "&skip=" + days.nextSkip())
                + (unit == null ? "" : "&unit=" + Visit.escaped(unit)), "The next, from " + at.moments().day(days.nextDay()));
    }

    private static LocalDate day(AtLocker at, String name, LocalDate usual, List<String> faults) {
        String text = at.visit().first(name);
        if (text == null) {
            return usual;
        }
        try {
            LocalDate day = LocalDate.parse(text);
            if (day.getYear() >= FIRST_YEAR && day.getYear() <= LAST_YEAR) {
                return day;
            }
        } catch (DateTimeException noDay) {
            // told below like a day that is too far away
        }
        faults.add("\"" + Shown.of(text) + "\" is no day. Write one like " + usual + "; that one is shown.");
        return usual;
    }

    /** The id of the unit that is asked for; null for all. */
    private static String unit(AtLocker at, List<String> faults) {
        String typed = at.visit().first("unit");
        if (typed == null) {
            return null;
        }
        List<Unit> found = at.locker().scanned(typed);
        if (found.size() == 1) {
            return found.get(0).id();
        }
        faults.add((found.isEmpty() ? "No unit has" : found.size() + " units have") + " the tag, serial, label or id \"" + Shown.of(typed)
                + "\". All units are shown; type it as it stands on the unit.");
        return null;
    }

    private static String overdue(AtLocker at) {
        List<Out> late = at.locker().out().stream().filter(Out::overdue).toList();
        return late.isEmpty() ? "" : "Overdue: " + late.stream().map(out -> out.unit().label() + ", with " + out.booking().by() + ", due "
                + at.moments().moment(out.line().span().until())).collect(Collectors.joining("; ")) + ".";
    }
}
