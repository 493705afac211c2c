package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.locker.LockerCase.draft;
import static pairwright.locker.LockerCase.hour;
import static pairwright.locker.LockerCase.hours;
import static pairwright.locker.LockerCase.ids;
import static pairwright.locker.LockerCase.kind;
import static pairwright.locker.LockerCase.places;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Units are booked, and bookings are cancelled. */
interface BookingCases extends LockerCase {
    @Test
    default void whatIsBookedIsKeptAsItWasAskedFor() {
        String id = does(changes -> changes.book(new BookingDraft(List.of("ribbon-2", "low-1"), hour(1), hour(3), BookingKind.LAB, " Voices ", "Oluchi", "two stands")).id());
        Booking booking = booking(id);
        assertEquals(List.of("ribbon-2", "low-1"), booking.units(), "in the order they were named");
        assertEquals(hours(1, 3), booking.span());
        assertEquals(BookingKind.LAB, booking.kind());
        assertEquals(List.of("Voices", "Oluchi", "two stands"), List.of(booking.forWhat(), booking.by(), booking.note()));
        assertEquals(1, booking.version());
        assertEquals(new Booking.Line("ribbon-2", hours(1, 3), null, null, null, "Ribbon 2"), booking.lines().get(0));
        assertEquals(booking, other().booking(id).orElseThrow());
    }

    @Test
    default void whatIsNotSaidOfABookingIsMade() {
        Booking booking = booking(does(changes -> changes.book(kind(null, 0, 1, "low-1")).id()));
        assertEquals(BookingKind.SESSION, booking.kind());
        assertEquals("Ida", booking.by());
        assertEquals("", booking.forWhat());
        assertEquals(null, booking.note());
    }

    @Test
    default void noUnitIsBookedTwiceAndWhoHasItIsNamed() {
        String id = books(0, 2, "low-1", "ribbon-2");
        for (double[] clash : new double[][] {{1, 3}, {-1, 1}, {0.5, 1}, {-1, 3}, {0, 2}}) {
            LockerFault.Taken taken = refused(LockerFault.Taken.class, changes -> changes.book(draft(clash[0], clash[1], "ribbon-2")));
            assertEquals(List.of(booking(id)), taken.clashes());
            assertTrue(taken.getMessage().contains("Ribbon 2") && taken.getMessage().contains("Ida") && taken.getMessage().contains("free again from"), taken.getMessage());
        }
        assertEquals(1, locker().bookings(hours(-5, 5), null).size());
    }

    @Test
    default void oneMayEndInTheSecondTheNextBegins() {
        String middle = books(1, 2, "low-1");
        String before = books(0, 1, "low-1");
        String after = books(2, 3, "low-1");
        assertEquals(List.of(before, middle, after), locker().bookings(hours(0, 3), "low-1").stream().map(Booking::id).toList());
        assertEquals(List.of(middle), locker().bookings(hours(1, 2), null).stream().map(Booking::id).toList());
        Instant last = hour(4).minusSeconds(1);
        does(changes -> changes.book(new BookingDraft(List.of("low-1"), hour(3), last, null, null, null, null)).id());
        does(changes -> changes.book(new BookingDraft(List.of("low-1"), last, hour(4), null, null, null, null)).id());
        refused(LockerFault.Taken.class, changes -> changes.book(new BookingDraft(List.of("low-1"), last, hour(5), null, null, null, null)));
    }

    @Test
    default void timesAreKeptInWholeSecondsAndNeverShorterThanAsked() {
        Booking booking = booking(does(changes -> changes.book(new BookingDraft(List.of("low-1"), NOON.plusMillis(900), NOON.plusMillis(1100), null, null, null, null)).id()));
        assertEquals(new Span(NOON, NOON.plusSeconds(2)), booking.span());
        assertEquals(List.of("low-1"), ids(locker().free(new Span(NOON.plusSeconds(2), NOON.plusSeconds(3)), "compact-ribbon")).stream().filter("low-1"::equals).toList());
        refused(LockerFault.Taken.class, changes -> changes.book(new BookingDraft(List.of("low-1"), NOON.plusMillis(1999), NOON.plusSeconds(9), null, null, null, null)));
    }

    @Test
    default void allAreBookedOrNone() {
        books(0, 2, "pencil-2");
        refused(LockerFault.Taken.class, changes -> changes.book(draft(1, 3, "pencil-1", "pencil-2", "low-1")));
        assertEquals(List.of("boom-1", "pencil-1", "ribbon-2", "low-1"), freeIds(1, 3));
        assertEquals(1, locker().bookings(hours(-5, 5), null).size());
    }

    @Test
    default void everyUnitInTheWayIsNamed() {
        String one = books(0, 2, "pencil-1");
        String two = books(1, 3, "pencil-2");
        LockerFault.Taken taken = refused(LockerFault.Taken.class, changes -> changes.book(draft(0, 4, "pencil-1", "pencil-2", "low-1")));
        assertEquals(List.of(one, two), taken.clashes().stream().map(Booking::id).toList());
        assertTrue(taken.getMessage().contains("Pencil 1") && taken.getMessage().contains("Pencil 2"), taken.getMessage());
    }

    @Test
    default void whatIsLostOrInRepairIsNotBookedButForRepair() {
        puts("low-1", Condition.LOST);
        puts("ribbon-2", Condition.IN_REPAIR);
        puts("pencil-1", Condition.LIMITED);
        LockerFault.Taken taken = refused(LockerFault.Taken.class, changes -> changes.book(draft(0, 1, "low-1", "ribbon-2", "pencil-1")));
        assertTrue(taken.getMessage().contains("Ribbon 10 is lost") && taken.getMessage().contains("Ribbon 2 is in repair"), taken.getMessage());
        assertEquals(List.of(), taken.clashes());
        refused(LockerFault.Taken.class, changes -> changes.book(kind(BookingKind.REPAIR, 0, 1, "low-1")));
        String id = books(0, 1, "pencil-2");
        LockerFault.Taken both = refused(LockerFault.Taken.class, changes -> changes.book(draft(0, 1, "low-1", "pencil-2")));
        assertTrue(both.getMessage().startsWith("Ribbon 10 is lost; Pencil 2: "), "whoever mends the one must not then learn of the other: " + both.getMessage());
        assertEquals(List.of(booking(id)), both.clashes());
        does(changes -> changes.book(kind(BookingKind.REPAIR, 0, 1, "ribbon-2", "pencil-1")).id());
        refused(LockerFault.Taken.class, changes -> changes.book(kind(BookingKind.REPAIR, 0, 1, "ribbon-2")));
    }

    @Test
    default void everyFaultOfABookingIsToldAtOnce() {
        assertEquals(List.of("/units/1", "/units/2", "/until", "/for", "/by", "/note"), places(refused(LockerFault.Unusable.class, changes ->
                changes.book(new BookingDraft(List.of("low-1", "low-1", "lo-1"), hour(2), hour(1), null, "x".repeat(201), "a\nb", "x".repeat(501))))));
        assertEquals(List.of("/units", "/from", "/until"), places(refused(LockerFault.Unusable.class, changes ->
                changes.book(new BookingDraft(null, null, null, null, null, null, null)))));
        assertEquals(List.of("/until"), places(refused(LockerFault.Unusable.class, changes -> changes.book(draft(1, 1, "low-1")))));
        assertEquals(List.of("/from", "/until"), places(refused(LockerFault.Unusable.class, changes -> changes.book(
                new BookingDraft(List.of("low-1"), Instant.MIN, Instant.MAX, null, null, null, null)))).stream().distinct().toList());
        assertEquals(List.of("/until"), places(refused(LockerFault.Unusable.class, changes -> changes.book(draft(0, 24 * 740, "low-1")))));
        assertEquals(List.of(), locker().bookings(hours(-5, 5), null));
    }

    @Test
    default void aCancelledBookingVanishesButStaysInTheHistory() {
        String id = books(0, 2, "low-1", "pencil-1");
        refused(LockerFault.Changed.class, changes -> {
            changes.cancel(id, 2L);
            return "";
        });
        cancels(id);
        assertEquals(Optional.empty(), locker().booking(id));
        assertEquals(List.of(), locker().bookings(hours(-5, 5), null));
        assertEquals(5, freeIds(0, 2).size());
        Event event = locker().history(id, null, 10).get(0);
        assertEquals(List.of("cancelled", "Ida", id), List.of(event.what(), event.who(), event.about()));
        assertEquals(event, locker().history("pencil-1", null, 1).get(0));
        refused(LockerFault.NotThere.class, changes -> {
            changes.cancel(id, null);
            return "";
        });
        assertNotEquals(id, books(0, 2, "low-1"), "the number of a cancelled booking is given again");
    }

    @Test
    default void whatIsOutIsNotCancelledAndWhatCameBackStays() {
        String id = books(0, 4, "low-1", "pencil-1");
        takesOut("low-1");
        refused(LockerFault.Taken.class, changes -> {
            changes.cancel(id, null);
            return "";
        });
        turnTo(1);
        bringsBack("low-1");
        cancels(id);
        assertEquals(List.of("low-1"), booking(id).units());
        assertEquals(hours(0, 1), line(id, "low-1").span());
        assertEquals(5, freeIds(1, 4).size());
    }

    private void cancels(String id) {
        does(changes -> {
            changes.cancel(id, null);
            return "";
        });
    }

    @Test
    default void bookingsOfATimeComeEarliestFirstAndWhole() {
        String late = books(5, 6, "low-1");
        String early = books(0, 3, "low-1", "pencil-1");
        String middle = books(3, 5, "pencil-2");
        assertEquals(List.of(early, middle, late), locker().bookings(hours(0, 6), null).stream().map(Booking::id).toList());
        assertEquals(List.of(early, late), locker().bookings(hours(0, 6), "low-1").stream().map(Booking::id).toList());
        assertEquals(List.of("low-1", "pencil-1"), locker().bookings(hours(0, 1), "pencil-1").get(0).units());
        assertEquals(List.of(middle), locker().bookings(hours(3, 4), null).stream().map(Booking::id).toList());
        assertEquals(List.of(), locker().bookings(hours(6, 9), null));
        assertEquals(List.of(), locker().bookings(hours(0, 9), "boom-1"));
    }

    @Test
    default void aBookingIsFoundByItsNumberAlone() {
        String id = books(0, 1, "low-1");
        for (String wrong : List.of("", " " + id, "0" + id, "-1", "0", "1e0", "low-1", "9".repeat(18), "9".repeat(19), "\u0661")) {
            assertEquals(Optional.empty(), locker().booking(wrong), wrong);
        }
    }
}
