package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.locker.LockerCase.draft;
import static pairwright.locker.LockerCase.hours;
import static pairwright.locker.LockerCase.places;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each act is done once and as a whole, is remembered, and shows in the revision. */
interface ActCases extends LockerCase {
    private Outcome bookedBy(Act act) {
        return locker().change(act, changes -> changes.book(draft(0, 2, "low-1")).id());
    }

    @Test
    default void anActThatIsSentTwiceIsDoneOnce() {
        Act act = new Act("Ida", "k-1", "book low-1");
        Outcome first = bookedBy(act);
        assertEquals(false, first.repeated());
        long revision = locker().revision();
        assertEquals(new Outcome(first.text(), true), bookedBy(act));
        assertEquals(new Outcome(first.text(), true), other().change(act, changes -> changes.book(draft(0, 2, "low-1")).id()));
        assertEquals(1, locker().bookings(hours(0, 2), null).size());
        assertEquals(revision, locker().revision());
        does(changes -> {
            changes.cancel(first.text(), null);
            return "";
        });
        assertEquals(new Outcome(first.text(), true), bookedBy(act), "what was said then is said again");
    }

    @Test
    default void whatWasSaidIsSaidAgainToTheLetter() {
        for (String said : new String[] {"{\"a\": \"M\u00e4rta \ud83c\udfb5\"}\n", "", null}) {
            Act act = new Act("Ida", "say " + said, "x");
            assertEquals(locker().change(act, changes -> said).text(), locker().change(act, changes -> "other").text());
        }
    }

    @Test
    default void aKeyIsForOneThingAndOnePerson() {
        bookedBy(new Act("Ida", "k-1", "book low-1"));
        for (Act other : List.of(new Act("Ida", "k-1", "other"), new Act("Bo", "k-1", "book low-1"), new Act("Ida", "k-1", null))) {
            assertThrows(LockerFault.KeyUsedOtherwise.class, () -> locker().change(other, changes -> changes.book(draft(5, 6, "pencil-1")).id()));
        }
        assertEquals(1, locker().bookings(hours(-5, 9), null).size());
        bookedAgain("K-1");
        bookedAgain("k-1 ");
    }

    private void bookedAgain(String key) {
        assertThrows(LockerFault.Taken.class, () -> bookedBy(new Act("Ida", key, "book low-1")), "another key is another act");
    }

    @Test
    default void aFailedAttemptLeavesNoKey() {
        String inTheWay = books(0, 1, "low-1");
        Act act = new Act("Ida", "k-1", "book low-1");
        assertThrows(LockerFault.Taken.class, () -> bookedBy(act));
        assertThrows(IllegalStateException.class, () -> locker().change(act, changes -> {
            throw new IllegalStateException("stumbled");
        }));
        does(changes -> {
            changes.cancel(inTheWay, null);
            return "";
        });
        assertEquals(false, bookedBy(act).repeated());
    }

    @Test
    default void aKeyHas1To200Characters() {
        for (String key : List.of("", " ", "x".repeat(201))) {
            assertEquals(List.of("/key"), places(assertThrows(LockerFault.Unusable.class, () -> bookedBy(new Act("Ida", key, "x")))));
        }
        bookedBy(new Act("Ida", "\u0000 \ud83c\udfb5" + "x".repeat(196), "x\u0000"));
        assertEquals(true, bookedBy(new Act("Ida", "\u0000 \ud83c\udfb5" + "x".repeat(196), "x\u0000")).repeated());
    }

    @Test
    default void aKeyIsForgottenAfterThirtyDays() {
        Act act = new Act("Ida", "k-1", "x");
        locker().change(act, changes -> "then");
        turnTo(24 * 30);
        locker().change(new Act("Ida", "k-2", "x"), changes -> "");
        assertEquals("then", locker().change(act, changes -> "now").text());
        turnTo(24 * 30 + 1);
        locker().change(new Act("Ida", "k-3", "x"), changes -> "");
        assertEquals("now", locker().change(act, changes -> "now").text());
    }

    @Test
    default void anActIsDoneAsAWholeOrNotAtAll() {
        long revision = locker().revision();
        List<Event> history = locker().history(null, null, 100);
        assertThrows(IllegalStateException.class, () -> does(changes -> {
            changes.add(UnitDraft.mic("x-1", "long-ribbon", "X 1"));
            changes.book(draft(0, 1, "x-1", "low-1"));
            changes.takeOut("x-1", null, null);
            assertEquals("X 1", changes.unit("x-1").label());
            assertEquals(6, changes.units().size());
            throw new IllegalStateException("stumbled");
        }));
        LockerFault.Taken swallowed = assertThrows(LockerFault.Taken.class, () -> does(changes -> {
            changes.book(draft(0, 1, "low-1"));
            try {
                changes.book(draft(0, 1, "low-1"));
            } catch (LockerFault fault) {
                return "went on regardless";
            }
            return "";
        }));
        assertEquals(1, swallowed.clashes().size());
        assertEquals(5, locker().units().size());
        assertEquals(List.of(), locker().bookings(hours(-5, 9), null));
        assertEquals(List.of(), locker().out());
        assertEquals(revision, locker().revision());
        assertEquals(history, locker().history(null, null, 100));
        assertEquals("1", books(0, 1, "low-1"));
    }

    @Test
    default void manyThingsInOneActSeeEachOther() {
        String id = does(changes -> {
            String booking = changes.book(draft(0, 2, "low-1")).id();
            changes.takeOut("low-1", "Bo", null);
            assertEquals("Bo", changes.booking(booking).lines().get(0).takenBy());
            changes.bringBack("low-1");
            changes.remove("low-1", null);
            return booking;
        });
        assertEquals("Ribbon 10", booking(id).lines().get(0).label());
        assertEquals(List.of("removed", "brought back", "took out", "booked"), locker().history("low-1", null, 4).stream().map(Event::what).toList());
    }

    @Test
    default void theRevisionDiffersAfterEveryChangeWhoeverMadeIt() {
        List<Long> seen = new ArrayList<>(List.of(locker().revision()));
        String id = books(0, 2, "low-1");
        seen.add(locker().revision());
        takesOut("low-1");
        seen.add(locker().revision());
        other().change(Act.by("Bo"), changes -> changes.bringBack("low-1").id());
        seen.add(locker().revision());
        does(changes -> changes.alter(id, draft(0, 3, "pencil-1"), null).id());
        seen.add(locker().revision());
        puts("pencil-2", Condition.LOST);
        seen.add(locker().revision());
        assertEquals(seen.size(), seen.stream().distinct().count(), seen.toString());
        does(changes -> changes.booking(id).id());
        refused(LockerFault.NotThere.class, changes -> changes.bringBack("boom-1"));
        assertEquals(seen.get(seen.size() - 1), locker().revision());
        assertEquals(locker().revision(), other().revision());
    }

    @Test
    default void theHistoryIsReadPageByPageNewestFirst() {
        for (int i = 0; i < 7; i++) {
            books(i, i + 1, i % 2 == 0 ? "low-1" : "pencil-1");
        }
        List<Event> all = locker().history(null, null, 1000);
        assertEquals(12, all.size());
        List<Event> pages = new ArrayList<>();
        Long before = null;
        for (List<Event> page = locker().history(null, before, 5); !page.isEmpty(); page = locker().history(null, before, 5)) {
            pages.addAll(page);
            before = page.get(page.size() - 1).number();
        }
        assertEquals(all, pages);
        assertEquals(5, locker().history("low-1", null, 100).size());
        assertEquals(locker().history("low-1", null, 100).subList(2, 4), locker().history("low-1", locker().history("low-1", null, 2).get(1).number(), 2));
        assertEquals(List.of(), locker().history(null, null, 0));
        assertEquals(List.of(), locker().history(null, null, -1));
        assertEquals(List.of(), locker().history(null, 0L, 5));
        assertEquals(12, locker().history(null, null, Integer.MAX_VALUE).size());
        assertEquals(List.of(), locker().history("nobody", null, 5));
    }

    @Test
    default void theHistorySaysWhoDidWhatAndWhen() {
        turnTo(1.5);
        String id = locker().change(Act.by("Oluchi"), changes -> changes.book(draft(2, 3, "low-1", "pencil-1")).id()).text();
        Event event = locker().history(id, null, 1).get(0);
        assertEquals(List.of("Oluchi", "booked", id), List.of(event.who(), event.what(), event.about()));
        assertEquals(LockerCase.hour(1.5), event.at());
        assertTrue(event.says().contains("Ribbon 10 and Pencil 1") && event.says().contains("take one"), event.says());
        assertEquals(event, locker().history("pencil-1", null, 1).get(0));
        assertNotEquals(event, locker().history("pencil-2", null, 1).get(0));
    }

    @Test
    default void aClosedLockerSaysThatItIsOutOfReach() {
        other().close();
        assertThrows(LockerFault.Unreachable.class, () -> other().units());
        assertThrows(LockerFault.Unreachable.class, () -> other().change(Act.by("Ida"), changes -> ""));
        assertEquals(false, other().stock(hours(0, 1)).reachable());
        assertEquals(5, locker().units().size());
    }
}
