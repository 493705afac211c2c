package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.locker.LockerCase.draft;
import static pairwright.locker.LockerCase.hour;
import static pairwright.locker.LockerCase.hours;
import static pairwright.locker.LockerCase.kind;
import static pairwright.locker.LockerCase.places;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Units leave their place and come back, in time, early or late. */
interface OutCases extends LockerCase {
    private boolean isFree(String unit, double from, double until) {
        return freeIds(from, until).contains(unit);
    }

    private String lends(String unit, double until) {
        return does(changes -> changes.takeOut(unit, "Bo", hour(until)).id());
    }

    @Test
    default void whatIsTakenOutBelongsToTheBookingThatHasItNow() {
        String id = books(-1, 2, "low-1", "pencil-1");
        books(2, 3, "low-1");
        assertEquals(id, does(changes -> changes.takeOut("B-10", null, hour(9)).id()), "until is not needed, and then not used");
        assertEquals(new Booking.Line("low-1", hours(-1, 2), NOON, "Ida", null, "Ribbon 10"), line(id, "low-1"));
        assertEquals(id, does(changes -> changes.takeOut("Pencil 1", " Bo ", null).id()));
        assertEquals("Bo", line(id, "pencil-1").takenBy());
        assertEquals(3, booking(id).version());
        assertEquals(hours(-1, 2), booking(id).span());
        assertEquals("took out", locker().history("low-1", null, 1).get(0).what());
        assertEquals("took out", locker().history(id, null, 1).get(0).what());
    }

    @Test
    default void elseToTheNextWithinADayAndThenItIsTakenFromNow() {
        books(9, 10, "low-1");
        String next = books(5, 6, "low-1");
        takesOut("low-1");
        assertEquals(hours(0, 6), line(next, "low-1").span());
        assertEquals(hours(5, 6), booking(next).span());
        assertFalse(isFree("low-1", 1, 2));
        assertEquals(List.of(next), locker().bookings(hours(1, 2), "low-1").stream().map(Booking::id).toList(), "what has it at that time");
        assertEquals(List.of(next), locker().bookings(hours(1, 2), null).stream().map(Booking::id).toList());
        turnTo(1);
        bringsBack("low-1");
        assertEquals(hours(0, 1), line(next, "low-1").span());
        assertTrue(isFree("low-1", 1, 9));
    }

    @Test
    default void aBookingThatBeginsInADayIsNotWhatItIsTakenFor() {
        String id = books(24, 25, "low-1");
        assertEquals(List.of("/until"), places(refused(LockerFault.Unusable.class, changes -> changes.takeOut("low-1", null, null))));
        clock().turn(hour(0).plusSeconds(1));
        takesOut("low-1");
        assertTrue(line(id, "low-1").isOut());
    }

    @Test
    default void elseItIsALoanUntilThen() {
        String next = books(5, 6, "low-1");
        refused(LockerFault.Unusable.class, changes -> changes.takeOut("pencil-1", "Bo", null));
        for (double early : new double[] {0, -1}) {
            assertEquals(List.of("/until"), places(refused(LockerFault.Unusable.class, changes -> changes.takeOut("pencil-1", "Bo", hour(early)))));
        }
        assertEquals(List.of(next), refused(LockerFault.Taken.class, changes -> changes.takeOut("low-1", "Bo", hour(5.5))).clashes().stream().map(Booking::id).toList());
        Booking loan = booking(lends("low-1", 5));
        assertEquals(BookingKind.LOAN, loan.kind());
        assertEquals("Bo", loan.by());
        assertEquals(new Booking.Line("low-1", hours(0, 5), NOON, "Bo", null, "Ribbon 10"), loan.lines().get(0));
        assertEquals("Ida", booking(does(changes -> changes.takeOut("pencil-1", null, hour(1)).id())).by());
        assertEquals(List.of("/by"), places(refused(LockerFault.Unusable.class, changes -> changes.takeOut("pencil-2", "a\u0007", hour(1)))));
    }

    @Test
    default void whatIsOutIsNotTakenOutAgain() {
        String id = lends("low-1", 2);
        assertEquals(List.of(booking(id)), refused(LockerFault.Taken.class, changes -> changes.takeOut("low-1", "Eve", hour(1))).clashes());
        turnTo(3);
        refused(LockerFault.Taken.class, changes -> changes.takeOut("low-1", "Eve", hour(4)));
        assertEquals(1, locker().out().size());
    }

    @Test
    default void whatIsLostOrInRepairIsTakenOutForRepairAlone() {
        books(0, 1, "low-1");
        puts("low-1", Condition.IN_REPAIR);
        refused(LockerFault.Taken.class, changes -> changes.takeOut("low-1", null, null));
        does(changes -> changes.book(kind(BookingKind.REPAIR, 1, 9, "low-1")).id());
        turnTo(1);
        takesOut("low-1");
        puts("low-1", Condition.LOST);
        bringsBack("low-1");
        assertEquals(List.of(), locker().out());
        refused(LockerFault.Taken.class, changes -> changes.takeOut("low-1", null, hour(2)));
        assertFalse(isFree("low-1", 10, 11));
    }

    @Test
    default void whatComesBackEarlyIsFreeAtOnce() {
        String id = books(0, 4, "low-1", "pencil-1");
        takesOut("low-1");
        turnTo(1);
        assertFalse(isFree("low-1", 1, 2));
        bringsBack("b-10");
        assertTrue(isFree("low-1", 1, 4));
        assertFalse(isFree("pencil-1", 1, 4), "the rest of the booking stays");
        assertEquals(new Booking.Line("low-1", hours(0, 1), NOON, "Ida", hour(1), "Ribbon 10"), line(id, "low-1"));
        assertEquals(hours(0, 4), booking(id).span());
        books(1, 4, "low-1");
        assertEquals("brought back", locker().history("low-1", null, 2).get(1).what());
        refused(LockerFault.NotThere.class, changes -> changes.bringBack("low-1"));
        refused(LockerFault.NotThere.class, changes -> changes.bringBack("pencil-1"));
        refused(LockerFault.NotThere.class, changes -> changes.bringBack("nobody"));
    }

    @Test
    default void whatComesBackInTheSecondItLeftTookNoTime() {
        String id = books(0, 4, "low-1");
        takesOut("low-1");
        bringsBack("low-1");
        assertTrue(isFree("low-1", 0, 4));
        assertEquals(NOON, line(id, "low-1").returnedAt());
        assertFalse(id.equals(lends("low-1", 4)), "it belongs to that booking no more");
        bringsBack("low-1");
        books(0, 4, "low-1");
    }

    @Test
    default void whatIsLateCountsAsOutForADay() {
        String id = lends("low-1", 2);
        turnTo(1.999);
        assertFalse(standing("low-1", 2, 3).overdue());
        assertTrue(isFree("low-1", 2, 3), "it may be expected in time");
        turnTo(2);
        assertTrue(standing("low-1", 2, 3).overdue(), "it should be back by then");
        turnTo(3);
        assertFalse(isFree("low-1", 2, 3));
        assertFalse(isFree("low-1", 26.999, 28));
        assertTrue(isFree("low-1", 27, 28));
        Standing standing = standing("low-1", 3, 4);
        assertEquals(id, standing.booking().id());
        assertNull(standing.freeFrom());
        LockerFault.Taken taken = refused(LockerFault.Taken.class, changes -> changes.book(draft(26.9, 28, "low-1", "pencil-1")));
        assertEquals(List.of(booking(id)), taken.clashes());
        assertTrue(taken.getMessage().contains("Ribbon 10 is overdue") && taken.getMessage().contains("Bo"), taken.getMessage());
        books(27, 28, "low-1");
        assertEquals("overdue", locker().stock(hours(3, 4)).units().get(3).out().why());
        bringsBack("low-1");
        assertTrue(isFree("low-1", 3, 27));
        assertEquals(hours(0, 2), line(id, "low-1").span(), "the time it was booked for");
        assertEquals(hour(3), line(id, "low-1").returnedAt());
    }

    @Test
    default void whoeverHasSomethingLongestOverdueComesFirst() {
        lends("low-1", 3);
        lends("pencil-1", 1);
        lends("pencil-2", 2);
        turnTo(2);
        List<Out> out = locker().out();
        assertEquals(List.of("pencil-1", "pencil-2", "low-1"), out.stream().map(one -> one.unit().id()).toList());
        assertEquals(List.of(true, true, false), out.stream().map(Out::overdue).toList());
        assertEquals("Bo", out.get(0).line().takenBy());
        assertEquals(out.get(0).booking(), booking(out.get(0).booking().id()));
        assertEquals(out, other().out());
    }

    @Test
    default void aClockThatIsSetBackLosesNothing() {
        turnTo(1);
        String id = books(0, 4, "low-1");
        takesOut("low-1");
        turnTo(0.5);
        bringsBack("low-1");
        assertTrue(isFree("low-1", 0.5, 4));
        assertFalse(line(id, "low-1").returnedAt().isBefore(line(id, "low-1").takenAt()), "it came back before it left");
        turnTo(3);
        String loan = lends("pencil-1", 4);
        turnTo(1);
        bringsBack("pencil-1");
        assertTrue(isFree("pencil-1", 1, 9));
        assertFalse(line(loan, "pencil-1").isOut());
        List<Event> events = locker().history(null, null, 3);
        assertTrue(events.get(0).number() > events.get(1).number() && events.get(1).number() > events.get(2).number());
        assertEquals("brought back", events.get(0).what());
    }
}
