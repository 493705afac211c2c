package pairwright.sheet;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import pairwright.catalogue.Shown;
import pairwright.locker.Booking;
import pairwright.locker.Out;
import pairwright.locker.Span;
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
     * @param days on which something begins, or that the first of them began with
     */
    public record Bookings(String from, String until, String unit, List<String> faults, String overdue, List<Day> days) {
    }

    /** Bookings that begin on a day, or went on as the first day began. */
    public record Day(String name, List<Line> lines) {
    }

    /** One booking. */
    public record Line(String time, String kind, String forWhat, String by, List<Link> units) {
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
        Span span = new Span(from.atStartOfDay(at.clock().getZone()).toInstant(), until.plusDays(1).atStartOfDay(at.clock().getZone()).toInstant());
        String typed = at.visit().first("unit");
        Bookings shown = new Bookings(from.toString(), until.toString(), typed == null ? "" : typed, faults, overdue(at), days(at, span, unit));
        return at.page(faults.isEmpty() ? OK : UNUSABLE, "bookings", at.frame("Bookings", "bookings"), "bookings", shown);
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

    private static List<Day> days(AtLocker at, Span span, String unit) {
        Map<String, Unit> units = at.locker().units().stream().collect(Collectors.toMap(Unit::id, Function.identity()));
        Map<LocalDate, List<Line>> lines = new TreeMap<>();
        for (Booking booking : at.locker().bookings(span, unit)) {
            LocalDate begins = (booking.span().from().isBefore(span.from()) ? span.from() : booking.span().from()).atZone(at.clock().getZone()).toLocalDate();
            lines.computeIfAbsent(begins, any -> new ArrayList<>()).add(line(at, booking, units));
        }
        return lines.entrySet().stream().map(day -> new Day(at.moments().day(day.getKey()), day.getValue())).toList();
    }

    private static Line line(AtLocker at, Booking booking, Map<String, Unit> units) {
        return new Line(at.moments().span(booking.span()), ReadingWords.heading(booking.kind()), booking.forWhat(), booking.by(), booking.units().stream()
                .map(id -> at.at().link("/locker/units/" + id, units.containsKey(id) ? units.get(id).label() : id)).toList());
    }
}
