package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import pairwright.model.Fault;

/**
 * A locker to try something on. It holds two matched ribbons, two pencils that are no pair, and a stand; the clock stands at {@link #NOON}, and
 * times are in hours from there.
 */
interface LockerCase {
    Instant NOON = Instant.parse("2031-03-01T12:00:00Z");

    Locker locker();

    /** The same locker, opened by another program. */
    Locker other();

    TurnedClock clock();

    static void fill(Changes changes) {
        changes.add(UnitDraft.mic("low-1", "compact-ribbon", "Ribbon 10").tagged("B-10"));
        changes.add(UnitDraft.mic("ribbon-2", "compact-ribbon", "Ribbon 2").matchedWith("low-1"));
        changes.add(UnitDraft.mic("pencil-1", "small-condenser-cardioid", "Pencil 1"));
        changes.add(UnitDraft.mic("pencil-2", "small-condenser-cardioid", "Pencil 2"));
        changes.add(new UnitDraft("boom-1", UnitKind.STAND, null, "Boom", null, null, null, null, null, null, null,
                new StandData(3.2, 0.8, 0.34, 3, 1.6), null, null, null));
    }

    static Instant hour(double hours) {
        return NOON.plusMillis(Math.round(hours * 3_600_000));
    }

    static Span hours(double from, double until) {
        return new Span(hour(from), hour(until));
    }

    static BookingDraft draft(double from, double until, String... units) {
        return new BookingDraft(List.of(units), hour(from), hour(until), null, "take one", "Ida", null);
    }

    static BookingDraft kind(BookingKind kind, double from, double until, String... units) {
        return new BookingDraft(List.of(units), hour(from), hour(until), kind, null, null, null);
    }

    /** What a booking is altered in where only its time and units are. */
    static BookingDraft only(Double from, Double until, String... units) {
        return new BookingDraft(List.of(units), from == null ? null : hour(from), until == null ? null : hour(until), null, null, null, null);
    }

    default void turnTo(double hours) {
        clock().turn(hour(hours));
    }

    /** Does something as Ida, and says what was said of it. */
    default String does(Function<Changes, String> work) {
        return locker().change(Act.by("Ida"), work).text();
    }

    /** Books, and says the number of the booking. */
    default String books(double from, double until, String... units) {
        return does(changes -> changes.book(draft(from, until, units)).id());
    }

    default void takesOut(String scanned) {
        does(changes -> changes.takeOut(scanned, null, null).id());
    }

    default void bringsBack(String scanned) {
        does(changes -> changes.bringBack(scanned).id());
    }

    default void puts(String unit, Condition condition) {
        does(changes -> changes.alter(unit, changes.unit(unit).draft().in(condition, "as found"), null).id());
    }

    default <F extends LockerFault> F refused(Class<F> why, Function<Changes, ?> work) {
        return assertThrows(why, () -> does(changes -> String.valueOf(work.apply(changes))));
    }

    default List<String> freeIds(double from, double until) {
        return ids(locker().free(hours(from, until), null));
    }

    default Booking booking(String id) {
        return locker().booking(id).orElseThrow();
    }

    default Booking.Line line(String booking, String unit) {
        return booking(booking).lines().stream().filter(line -> line.unit().equals(unit)).findFirst().orElseThrow();
    }

    default Standing standing(String unit, double from, double until) {
        return locker().standing(hours(from, until)).stream().filter(standing -> standing.unit().id().equals(unit)).findFirst().orElseThrow();
    }

    static List<String> ids(List<Unit> units) {
        return units.stream().map(Unit::id).toList();
    }

    static List<String> places(LockerFault.Unusable fault) {
        return fault.faults().stream().map(Fault::at).toList();
    }
}
