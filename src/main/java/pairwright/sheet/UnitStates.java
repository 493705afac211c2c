package pairwright.sheet;

import java.time.Duration;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import pairwright.locker.Booking;
import pairwright.locker.Out;
import pairwright.locker.Span;
import pairwright.locker.Standing;
import pairwright.locker.Unit;

/** How units stand, now or for a time that somebody asks about, in words. */
final class UnitStates {
    private static final Duration AHEAD = Duration.ofDays(14);

    private final AtLocker at;
    private final Map<String, Out> out;
    private final Map<String, Booking> next = new HashMap<>();
    private final Map<String, Standing> then;

    /**
     * A word and what else there is to say.
     *
     * @param word free, out, overdue, booked, in repair or lost
     * @param says the rest of the sentence; empty for nothing
     */
    record State(String word, String says) {
        boolean free() {
            return word.equals("free");
        }
    }

    private UnitStates(AtLocker at, Span span) {
        this.at = at;
        out = at.locker().out().stream().collect(Collectors.toMap(one -> one.unit().id(), Function.identity(), (one, other) -> one));
        then = span == null ? null : at.locker().standing(span).stream().collect(Collectors.toMap(one -> one.unit().id(), Function.identity()));
    }

    /**
     * As they stand at this moment, and what comes next.
     *
     * @param units those that will be asked about
     */
    static UnitStates now(AtLocker at, Collection<String> units) {
        UnitStates states = new UnitStates(at, null);
        states.next.putAll(at.locker().next(units, new Span(at.now(), at.now().plus(AHEAD))));
        return states;
    }

    static UnitStates now(AtLocker at, String unit) {
        return now(at, List.of(unit));
    }

    /** As they stand for all of a time. */
    static UnitStates during(AtLocker at, Span span) {
        return new UnitStates(at, span);
    }

    /** The same as the locker says it, for a time that was asked about. */
    Standing standing(Unit unit) {
        return then.get(unit.id());
    }

    State of(Unit unit) {
        Out who = out.get(unit.id());
        if (then == null && who != null) {
            return who.overdue() ? new State("overdue", "with " + taker(who) + ", due " + at.moments().moment(who.line().span().until()))
                    : new State("out", "with " + taker(who) + " until " + at.moments().moment(who.line().span().until()));
        }
        if (!unit.condition().usable()) {
            return new State(ReadingWords.words(unit.condition()), "");
        }
        return then == null ? now(unit) : during(then.get(unit.id()), who);
    }

    /** Who has a unit that should be back, where that is in the way of the time that was asked about; null for nobody. */
    Out late(Unit unit) {
        return standing(unit).overdue() ? out.get(unit.id()) : null;
    }

    static String taker(Out who) {
        return who.line().takenBy() == null ? who.booking().by() : who.line().takenBy();
    }

    private State now(Unit unit) {
        Booking booking = next.get(unit.id());
        if (booking == null) {
            return new State("free", "");
        }
        Span span = line(booking, unit).span();
        return span.from().isAfter(at.now()) ? new State("free", "booked for " + what(booking) + " from " + at.moments().moment(span.from()))
                : new State("booked", "for " + what(booking) + " until " + at.moments().moment(span.until()) + ", not taken yet");
    }

    private State during(Standing standing, Out who) {
        if (standing.free()) {
            return new State("free", "");
        }
        String again = standing.freeFrom() == null ? "" : "; free again " + at.moments().moment(standing.freeFrom());
        if (standing.overdue() && who != null) {
            return new State("overdue", "with " + taker(who) + ", due " + at.moments().moment(who.line().span().until()) + again);
        }
        return new State("booked", standing.booking() == null ? again.replaceFirst("^; ", "") : "for " + what(standing.booking()) + again);
    }

    /** Whether a booking still has a unit, or will have it. */
    static boolean ahead(AtLocker at, Unit unit, Booking booking) {
        Booking.Line line = line(booking, unit);
        return line.isOut() || line.returnedAt() == null && line.span().until().isAfter(at.now());
    }

    private static Booking.Line line(Booking booking, Unit unit) {
        return booking.lines().stream().filter(line -> line.unit().equals(unit.id())).findFirst().orElseThrow();
    }

    /** "the barn take, by Ada"; the kind where nothing more is said. */
    static String what(Booking booking) {
        return (booking.forWhat().isEmpty() ? "a " + booking.kind().id() : booking.forWhat()) + ", by " + booking.by();
    }

    /** Every booking of one unit in a time, with how it went. */
    static List<UnitPage.Use> uses(AtLocker at, Unit unit, List<Booking> bookings) {
        return bookings.stream().map(booking -> {
            Booking.Line line = line(booking, unit);
            String went = line.takenAt() == null ? "" : line.isOut() ? "taken " + at.moments().moment(line.takenAt())
                    : "taken " + at.moments().moment(line.takenAt()) + ", back " + at.moments().moment(line.returnedAt());
            return new UnitPage.Use(at.at().link("/locker/bookings/" + booking.id(), at.moments().span(line.span())), ReadingWords.heading(booking.kind()),
                    booking.forWhat(), booking.by(), went);
        }).toList();
    }
}
