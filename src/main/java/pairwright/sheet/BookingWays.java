package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pairwright.locker.Booking;
import pairwright.locker.Condition;
import pairwright.locker.Out;
import pairwright.locker.Span;
import pairwright.locker.Unit;
import pairwright.sheet.ReadingParts.Link;

/**
 * What is in the way of what somebody wants to book, and the ways around it.
 *
 * @param clashes what has it
 * @param nearest what is said above those times
 * @param times nearest times at which it can be had, each leading to the form with that time
 * @param swaps units that can stand in
 */
public record BookingWays(List<Clash> clashes, String nearest, List<Link> times, List<Swap> swaps) {
    static final BookingWays NONE = new BookingWays(List.of(), "", List.of(), List.of());
    private static final int MOST_UNITS = 8;
    private static final int MOST_SWAPS = 3;

    /**
     * Units that are not free.
     *
     * @param units their labels
     * @param says why not
     * @param booking that has them; null for none
     */
    public record Clash(String units, String says, Link booking) {
    }

    /** Units that are free, in place of one that is not. */
    public record Swap(String of, List<Link> units) {
    }

    /** Whether anything is in the way. */
    public boolean any() {
        return !clashes.isEmpty();
    }

    /** Looks for them; nothing where all that is chosen is free. */
    static BookingWays of(AtLocker at, BookingTyped typed, Span span, BookingUnits units, Booking altered) {
        List<Unit> clashing = units.clashing();
        if (clashing.isEmpty()) {
            return NONE;
        }
        List<Swap> swaps = new ArrayList<>();
        for (Unit unit : clashing.stream().limit(MOST_UNITS).toList()) {
            List<Link> others = units.like(unit).stream().limit(MOST_SWAPS)
                    .map(other -> at.at().link(typed.instead(unit.id(), other.id()).address(units.address(), units.version()), other.label())).toList();
            if (!others.isEmpty()) {
                swaps.add(new Swap(unit.label(), others));
            }
        }
        boolean late = clashing.stream().anyMatch(unit -> units.late(unit) != null);
        return new BookingWays(clashes(at, clashing, units), late ? "Nearest times it can be had, if what is overdue is back by then:" : "Nearest times it can be had:", times(at, typed, span, units, altered, clashing), swaps);
    }

    /** One for each booking that is in the way, and one for each unit that cannot be used. */
    private static List<Clash> clashes(AtLocker at, List<Unit> clashing, BookingUnits units) {
        List<Clash> clashes = new ArrayList<>();
        Map<String, List<Unit>> by = new TreeMap<>();
        for (Unit unit : clashing) {
            Booking booking = units.taker(unit);
            if (!unit.condition().usable() && booking == null) {
                clashes.add(new Clash(unit.label(), "is " + (unit.condition() == Condition.LOST ? "lost" : "in repair"), null));
            } else if (booking != null) {
                by.computeIfAbsent(booking.id() + " " + said(at, unit, booking, units), any -> new ArrayList<>()).add(unit);
            }
        }
        by.values().forEach(some -> {
            Booking booking = units.taker(some.get(0));
            clashes.add(new Clash(String.join(", ", some.stream().limit(MOST_UNITS).map(Unit::label).toList())
                    + (some.size() > MOST_UNITS ? " and " + (some.size() - MOST_UNITS) + " more" : ""), (some.size() == 1 ? "is " : "are ")
                    + said(at, some.get(0), booking, units), at.at().link("/locker/bookings/" + booking.id(), "booking " + booking.id())));
        });
        return clashes;
    }

    private static String said(AtLocker at, Unit unit, Booking booking, BookingUnits units) {
        Out late = units.late(unit);
        return late == null ? "booked for " + UnitStates.what(booking) + ", " + at.moments().span(booking.span())
                : "overdue since " + at.moments().moment(late.line().span().until()) + ", with " + UnitStates.taker(late)
                        + (booking.forWhat().isEmpty() ? "" : " for " + booking.forWhat()) + ", and counted as out for whatever begins within a day";
    }

    /** No other time helps where a unit cannot be used at all, and what has left for a booking cannot leave again. */
    private static List<Link> times(AtLocker at, BookingTyped typed, Span span, BookingUnits units, Booking altered, List<Unit> clashing) {
        boolean pointless = clashing.stream().anyMatch(unit -> units.taker(unit) == null) || !span.until().isAfter(at.now())
                || altered != null && altered.lines().stream().anyMatch(line -> line.takenAt() != null);
        return pointless ? List.of() : at.locker().nearest(typed.units(), span, altered == null ? null : altered.id()).stream()
                .map(near -> at.at().link(typed.during(at, near).address(units.address(), units.version()), at.moments().span(near))).toList();
    }
}
