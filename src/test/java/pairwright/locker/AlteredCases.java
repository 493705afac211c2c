package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.locker.LockerCase.draft;
import static pairwright.locker.LockerCase.hour;
import static pairwright.locker.LockerCase.hours;
import static pairwright.locker.LockerCase.kind;
import static pairwright.locker.LockerCase.only;
import static pairwright.locker.LockerCase.places;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Bookings are altered, some while units of them are out. */
interface AlteredCases extends LockerCase {
    private void alters(String id, BookingDraft draft) {
        does(changes -> changes.alter(id, draft, null).id());
    }

    @Test
    default void aBookingIsBookedAnewInOneStep() {
        String id = books(0, 2, "low-1");
        Booking said = locker().booking(does(changes -> changes.alter(id, draft(1, 4, "ribbon-2", "low-1"), 1L).id())).orElseThrow();
        assertEquals(List.of("ribbon-2", "low-1"), said.units());
        assertEquals(hours(1, 4), said.span());
        assertEquals(hours(1, 4), line(id, "low-1").span());
        assertEquals(2, said.version());
        assertEquals(List.of("boom-1", "pencil-1", "pencil-2", "ribbon-2", "low-1"), freeIds(0, 1));
        assertEquals(2, refused(LockerFault.Changed.class, changes -> changes.alter(id, draft(1, 5), 1L)).version());
        refused(LockerFault.NotThere.class, changes -> changes.alter("77", draft(1, 5), null));
    }

    @Test
    default void whatIsLeftOutStaysAndAnEmptyTextTakesAway() {
        String id = does(changes -> changes.book(new BookingDraft(List.of("low-1"), hour(0), hour(2), BookingKind.LAB, "Voices", "Oluchi", "soft")).id());
        alters(id, only(null, 3.0));
        Booking booking = booking(id);
        assertEquals(List.of("low-1"), booking.units());
        assertEquals(hours(0, 3), booking.span());
        assertEquals(List.of("lab", "Voices", "Oluchi", "soft"), List.of(booking.kind().id(), booking.forWhat(), booking.by(), booking.note()));
        alters(id, new BookingDraft(null, null, null, null, "", null, ""));
        assertEquals("", booking(id).forWhat());
        assertEquals(null, booking(id).note());
    }

    @Test
    default void nothingIsMovedIntoAnothersTimeAndThenNothingIsMovedAtAll() {
        String id = books(0, 1, "low-1", "pencil-1");
        String other = books(2, 3, "low-1");
        LockerFault.Taken taken = refused(LockerFault.Taken.class, changes -> changes.alter(id, only(null, 2.5), null));
        assertEquals(List.of(other), taken.clashes().stream().map(Booking::id).toList());
        assertEquals(hours(0, 1), line(id, "pencil-1").span());
        assertEquals(1, booking(id).version());
        alters(id, only(0.5, 2.0));
        assertEquals(hours(0.5, 2), line(id, "low-1").span());
    }

    @Test
    default void allThatStandsInTheWayOfAnAlterationIsToldAtOnce() {
        String id = books(0, 1, "low-1");
        String one = books(2, 3, "pencil-1");
        String two = books(2, 3, "pencil-2");
        puts("ribbon-2", Condition.LOST);
        LockerFault.Taken taken = refused(LockerFault.Taken.class, changes -> changes.alter(id, draft(2, 3, "low-1", "pencil-1", "pencil-2", "ribbon-2"), null));
        assertEquals(List.of(one, two), taken.clashes().stream().map(Booking::id).toList());
        assertTrue(taken.getMessage().contains("Pencil 1") && taken.getMessage().contains("Pencil 2") && taken.getMessage().contains("Ribbon 2 is lost"), taken.getMessage());
    }

    @Test
    default void whatIsOutStaysInItsBookingSinceItLeft() {
        String id = books(0, 2, "low-1", "pencil-1");
        takesOut("low-1");
        LockerFault.Taken taken = refused(LockerFault.Taken.class, changes -> changes.alter(id, draft(0, 2, "pencil-1"), null));
        assertTrue(taken.getMessage().contains("Ribbon 10") && taken.getMessage().contains("Ida"), taken.getMessage());
        alters(id, only(1.0, 3.0, "low-1", "pencil-2"));
        assertEquals(hours(0, 3), line(id, "low-1").span());
        assertEquals(hours(1, 3), line(id, "pencil-2").span());
        assertTrue(line(id, "low-1").isOut());
        assertEquals("Ida", line(id, "low-1").takenBy());
        assertEquals(List.of("/until"), places(refused(LockerFault.Unusable.class, changes -> changes.alter(id, only(-4.0, -2.0), null))));
        bringsBack("low-1");
        assertEquals(1, locker().history("low-1", null, 1).size());
    }

    @Test
    default void whatCameBackStaysAsItWasAndAfterTheOthers() {
        String id = books(0, 4, "low-1", "pencil-1", "pencil-2");
        takesOut("low-1");
        turnTo(1);
        bringsBack("low-1");
        alters(id, only(0.0, 5.0, "pencil-2", "pencil-1"));
        assertEquals(List.of("pencil-2", "pencil-1", "low-1"), booking(id).units());
        assertEquals(hours(0, 1), line(id, "low-1").span());
        assertEquals(hour(1), line(id, "low-1").returnedAt());
        assertEquals(hours(0, 5), line(id, "pencil-1").span());
        assertEquals(booking(id), other().booking(id).orElseThrow());
    }

    @Test
    default void whatIsOverdueIsProlonged() {
        String id = books(0, 2, "low-1");
        takesOut("low-1");
        turnTo(3);
        assertTrue(locker().out().get(0).overdue());
        alters(id, only(null, 5.0));
        assertEquals(false, locker().out().get(0).overdue());
        assertEquals(List.of("low-1"), freeIds(5, 6).stream().filter("low-1"::equals).toList());
    }

    @Test
    default void aUnitThatBrokeMeanwhileStaysButNoneSuchIsAdded() {
        String id = books(0, 2, "low-1");
        puts("low-1", Condition.IN_REPAIR);
        puts("pencil-1", Condition.LOST);
        alters(id, new BookingDraft(null, null, null, null, "take two", null, null));
        refused(LockerFault.Taken.class, changes -> changes.alter(id, only(null, null, "low-1", "pencil-1"), null));
        String repair = does(changes -> changes.book(kind(BookingKind.REPAIR, 3, 4, "low-1")).id());
        refused(LockerFault.Taken.class, changes -> changes.alter(repair, new BookingDraft(null, null, null, BookingKind.SESSION, null, null, null), null));
        assertEquals(BookingKind.REPAIR, booking(repair).kind());
    }

    @Test
    default void aUnitThatLeftForGoodIsNotMovedIntoAnotherTime() {
        String first = books(0, 1, "low-1", "pencil-1");
        books(2, 3, "low-1");
        turnTo(4);
        does(changes -> {
            changes.remove("low-1", null);
            return "";
        });
        alters(first, new BookingDraft(null, null, null, null, "take two", null, null));
        assertEquals(List.of("low-1", "pencil-1"), booking(first).units());
        for (double from : new double[] {2, 6}) {
            LockerFault.Unusable fault = refused(LockerFault.Unusable.class, changes -> changes.alter(first, only(from, from + 1), null));
            assertEquals(List.of("/units/0"), places(fault));
            assertTrue(fault.getMessage().contains("Ribbon 10"), fault.getMessage());
        }
        alters(first, only(6.0, 7.0, "pencil-1"));
        assertEquals(List.of("pencil-1"), booking(first).units());
    }

    @Test
    default void itsUnitsMayTradePlacesWithinOneAct() {
        String one = books(0, 1, "low-1");
        String two = books(1, 2, "low-1");
        does(changes -> {
            changes.alter(one, only(4.0, 5.0), null);
            changes.alter(two, only(0.0, 1.0), null);
            return changes.alter(one, only(1.0, 2.0), null).id();
        });
        assertEquals(hours(1, 2), line(one, "low-1").span());
        assertEquals(hours(0, 1), line(two, "low-1").span());
    }

    @Test
    default void everyUnitItConcernedOrConcernsHasItInItsHistory() {
        String id = books(0, 1, "low-1");
        alters(id, only(null, null, "pencil-1"));
        for (String about : List.of(id, "low-1", "pencil-1")) {
            assertEquals("altered", locker().history(about, null, 1).get(0).what(), about);
        }
    }
}
