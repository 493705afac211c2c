package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pairwright.model.Stock;

/** Exercises of the lab: kept with the booking of their kit or not at all, and whatever is handed in beside what was there. */
interface ExerciseCases extends LockerCase {
    String SEED = "\u201cbarn\u201d\t=1+1";

    private static ExerciseSetDraft draft(int benches, double from, double until) {
        List<ExerciseSet.Bench> all = new ArrayList<>();
        for (int number = 1; number <= benches; number++) {
            all.add(new ExerciseSet.Bench(number, "format 1\nsource\tfl\u00fbte\nbench\t" + number, 0.25 * number,
                    List.of(new ExerciseSet.Kit("compact-ribbon", "ribbon-2", "Ribbon 2"), new ExerciseSet.Kit("small-condenser-cardioid", null, null))));
        }
        return new ExerciseSetDraft("choose", 2, SEED, "CLASS", LockerCase.hour(from), LockerCase.hour(until), LockerCase.hour(until + 1), all);
    }

    private ExerciseSet made(ExerciseSetDraft draft, BookingDraft kit) {
        String id = does(changes -> changes.makeExercises(draft, kit).id());
        return locker().exercises().of(id).orElseThrow();
    }

    @Test
    default void exercisesComeBackAsTheyWereMade() {
        ExerciseSetDraft draft = draft(11, 24, 26);
        ExerciseSet set = made(draft, null);
        assertEquals(draft, new ExerciseSetDraft(set.kind(), set.level(), set.seed(), set.purpose(), set.from(), set.until(), set.opensAt(), set.benches()));
        assertEquals(List.of("Ida", LockerCase.NOON, 1L), List.of(set.by(), set.at(), set.version()));
        assertNull(set.booking());
        assertEquals(Optional.of(set), other().exercises().of(set.id()));
        turnTo(1);
        ExerciseSet later = made(new ExerciseSetDraft("reckon", 1, "x", "CLASS", null, null, null, List.of(new ExerciseSet.Bench(1, "", 0, List.of()))), null);
        assertEquals(List.of(later, set), other().exercises().all(5));
        assertEquals(List.of(later), locker().exercises().all(1));
        assertEquals(2, locker().exercises().count());
        assertFalse(later.open(LockerCase.hour(1000)), "without a time its keys never open");
        assertTrue(set.open(LockerCase.hour(27)) && !set.open(LockerCase.hour(26.9)));
    }

    @Test
    default void theirBookingIsMadeWithThemOrNeitherIs() {
        books(24, 25, "ribbon-2");
        BookingDraft kit = LockerCase.kind(BookingKind.LAB, 24, 26, "low-1", "ribbon-2");
        refused(LockerFault.Taken.class, changes -> changes.makeExercises(draft(1, 24, 26), kit));
        assertEquals(0, locker().exercises().count());
        assertEquals(List.of(), locker().history(null, null, 20).stream().filter(event -> event.about().startsWith("lab ")).toList());
        ExerciseSet set = made(draft(1, 25, 26), LockerCase.kind(BookingKind.LAB, 25, 26, "low-1", "ribbon-2"));
        assertEquals(BookingKind.LAB, booking(set.booking()).kind());
    }

    @Test
    default void whatIsFreeIsSeenWithinTheTransaction() {
        does(changes -> {
            assertTrue(free(changes.stock(LockerCase.hours(24, 26))).contains("low-1"));
            changes.book(LockerCase.draft(24, 25, "low-1"));
            assertFalse(free(changes.stock(LockerCase.hours(24, 26))).contains("low-1"));
            return "";
        });
    }

    private static List<String> free(Stock stock) {
        return stock.units().stream().filter(Stock.Held::free).map(Stock.Held::id).toList();
    }

    @Test
    default void whateverIsHandedInIsKeptBesideWhatWasThere() {
        ExerciseSet set = made(draft(2, 24, 26), null);
        does(changes -> String.valueOf(changes.handIn(set.id(), 2, "mic\tlow", null, null, false).number()));
        turnTo(2);
        does(changes -> String.valueOf(changes.handIn(set.id(), 2, "mic\t\u00fc", 3.5, 10.0, true).number()));
        assertEquals(List.of(new HandedIn(set.id(), 2, 1, "mic\tlow", null, null, false, LockerCase.NOON, "Ida"),
                new HandedIn(set.id(), 2, 2, "mic\t\u00fc", 3.5, 10.0, true, LockerCase.hour(2), "Ida")), other().exercises().handedIn(set.id()));
        assertEquals(1, locker().exercises().of(set.id()).orElseThrow().version(), "it is the exercises' version, and they are as they were");
        refused(LockerFault.Unusable.class, changes -> changes.handIn(set.id(), 3, "", null, null, false));
        refused(LockerFault.NotThere.class, changes -> changes.handIn("x1", 1, "", null, null, false));
        does(changes -> {
            for (int i = 0; i < 200; i++) {
                changes.handIn(set.id(), 1, "", null, null, false);
            }
            return "";
        });
        refused(LockerFault.Unusable.class, changes -> changes.handIn(set.id(), 1, "", null, null, false));
    }

    @Test
    default void theTimeOfTheKeysIsAlteredUnlessSomebodyWasFaster() {
        ExerciseSet set = made(draft(1, 24, 26), null);
        long revision = locker().revision();
        does(changes -> changes.openKeys(set.id(), set.opensAt(), 1L).id());
        assertEquals(revision, locker().revision(), "nothing was altered");
        does(changes -> changes.openKeys(set.id(), LockerCase.hour(1), 1L).id());
        assertEquals(2, refused(LockerFault.Changed.class, changes -> changes.openKeys(set.id(), null, 1L)).version());
        assertEquals(LockerCase.hour(1), other().exercises().of(set.id()).orElseThrow().opensAt());
        does(changes -> changes.openKeys(set.id(), null, null).id());
        assertNull(other().exercises().of(set.id()).orElseThrow().opensAt());
    }

    @Test
    default void whatIsRemovedGoesWithAllThatWasHandedInAndTheHistoryHoldsNoSeed() {
        ExerciseSet set = made(draft(2, 24, 26), LockerCase.kind(BookingKind.LAB, 24, 26, "low-1"));
        does(changes -> String.valueOf(changes.handIn(set.id(), 1, "x", null, null, false).number()));
        refused(LockerFault.Changed.class, changes -> {
            changes.removeExercises(set.id(), 7L);
            return "";
        });
        does(changes -> {
            changes.removeExercises(set.id(), 1L);
            return "";
        });
        assertEquals(Optional.empty(), other().exercises().of(set.id()));
        assertEquals(List.of(), other().exercises().handedIn(set.id()));
        assertEquals("1", booking(set.booking()).id(), "who booked may still want it");
        List<Event> events = locker().history(Exercises.about(set.id()), null, 9);
        assertEquals(List.of("removed", "made"), events.stream().map(Event::what).toList());
        locker().history(null, null, 50).forEach(event -> assertFalse(event.says().contains("barn\u201d"), event.says()));
    }

    @Test
    default void anIdTellsNothingOfTheSeed() {
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            ids.add(made(draft(1, 24, 26), null).id());
        }
        assertEquals(20, ids.stream().distinct().count());
        ids.forEach(id -> assertTrue(id.matches("x[0-9a-hjkmnp-tv-z]{16}"), id));
    }

    @Test
    default void aTableOfAnswersIsReadAsFarAsItCanBe() {
        AnswerTable table = AnswerTable.read("\uFEFFAnswer,Bench,ITEM\r\n\"a, b\",1,reasons\r\n\r\n'=2,2,\"x\ny\"\r\nz,3,mic,\r\nz,3,mic,more\r\n");
        assertEquals(List.of(new AnswerTable.Row(2, "1", "reasons", "a, b"), new AnswerTable.Row(4, "2", "x\ny", "=2"), new AnswerTable.Row(6, "3", "mic", "z"),
                new AnswerTable.Row(7, "3", "mic", "z")), table.rows());
        assertEquals(List.of(7), table.faults().stream().map(TableFault::line).toList());
        assertEquals(Set.of("answer", "item", ""), AnswerTable.read("bench;nonsense\n1;2\n").faults().stream()
                .map(fault -> fault.column() == null ? "" : fault.column()).collect(Collectors.toSet()));
        for (String bad : List.of("", "\n\n", "bench,item,answer\n1,a,\"open\n", "x".repeat(2_000_001))) {
            assertEquals(1, AnswerTable.read(bad).faults().size(), bad.length() > 50 ? "long" : bad);
        }
        assertEquals(10_000, AnswerTable.read("bench,item,answer\n" + "1,a,b\n".repeat(10_001)).rows().size());
    }
}
