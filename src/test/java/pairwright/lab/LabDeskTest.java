package pairwright.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.advice.Knowledge;
import pairwright.advice.KnowledgeStore;
import pairwright.locker.Act;
import pairwright.locker.Booking;
import pairwright.locker.BookingKind;
import pairwright.locker.ExerciseSet;
import pairwright.locker.HandedIn;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.Place;
import pairwright.locker.Role;
import pairwright.locker.UnitDraft;
import pairwright.model.Fault;

/** Exercises made for a class, its kit booked, its answers marked and given back. */
class LabDeskTest {
    private static final Knowledge NOW = KnowledgeStore.builtIn().current();
    private static final Instant NOON = Instant.parse("2031-03-01T12:00:00Z");
    private static final Instant FROM = NOON.plus(Duration.ofDays(7));
    private static final Instant UNTIL = FROM.plus(Duration.ofHours(2));
    private static final List<String> TYPES = List.of("long-ribbon", "compact-ribbon", "small-condenser-cardioid", "small-condenser-omni", "large-condenser-cardioid",
            "handheld-moving-coil", "compact-drum-moving-coil", "wide-body-moving-coil");

    @TempDir
    Path folder;
    private Locker locker;
    private LabDesk desk;

    @BeforeEach
    void open() {
        locker = at(NOON);
        desk = new LabDesk(locker, () -> NOW);
    }

    private Locker at(Instant moment) {
        return Locker.open(Place.in(folder), NOW::catalogue, Clock.fixed(moment, ZoneOffset.UTC));
    }

    @AfterEach
    void close() {
        locker.close();
    }

    private void fill(int ofEach) {
        locker.change(Act.by("Wren"), changes -> {
            TYPES.forEach(type -> {
                for (int i = 1; i <= ofEach; i++) {
                    changes.add(UnitDraft.mic(type + "-" + i, type, type + " " + i));
                }
            });
            return "";
        });
    }

    private static Wanted wanted(String kind, int level, int benches) {
        return new Wanted(kind, "barn", level, benches, null, null, null);
    }

    private static Wanted timed(String kind, int level, int benches) {
        return new Wanted(kind, "barn", level, benches, FROM, UNTIL, null);
    }

    private Answer best(ExerciseSet set, int bench) {
        return desk.key(set, Role.INSTRUCTOR).get(bench - 1).key().best();
    }

    private HandedIn handsIn(ExerciseSet set, int bench, Answer answer, Role role) {
        Handing handing = desk.handing(set, bench, answer, role);
        List<HandedIn> kept = new ArrayList<>();
        locker.change(Act.by("Finch"), changes -> {
            kept.add(desk.handIn(changes, handing));
            return "";
        });
        return kept.get(0);
    }

    @Test
    void everyBenchGetsAnotherExerciseAsHardAsTheOthersAndTheSameSeedTheSame() {
        ExerciseSet set = desk.make(wanted("curves", 2, 6), "Ida");
        assertEquals(6, set.benches().stream().map(ExerciseSet.Bench::drawn).distinct().count());
        double hardest = set.benches().stream().mapToDouble(ExerciseSet.Bench::hardnessShare).max().orElseThrow();
        double easiest = set.benches().stream().mapToDouble(ExerciseSet.Bench::hardnessShare).min().orElseThrow();
        assertTrue(hardest - easiest < 0.1, easiest + " to " + hardest);
        assertEquals(set.benches(), desk.make(wanted("curves", 2, 6), "Ida").benches());
        assertNotEquals(set.benches(), desk.make(new Wanted("curves", "shed", 2, 6, null, null, null), "Ida").benches());
        assertEquals(List.of("Ida", NOON, "barn", 2), List.of(set.by(), set.at(), set.seed(), set.level()));
    }

    @Test
    void theIdOfASetTellsNothing() {
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < 5; i++) {
            ids.add(desk.make(wanted("reckon", 1, 1), "Ida").id());
        }
        assertEquals(5, ids.size());
        ids.forEach(id -> assertTrue(id.matches("x[0-9a-z]{16}"), id));
        assertEquals(ids, desk.sets(9).stream().map(ExerciseSet::id).collect(Collectors.toSet()));
    }

    @Test
    void theKitIsSharedOutExactlyAndBookedInOneGo() {
        fill(3);
        ExerciseSet set = desk.make(timed("choose", 1, 4), "Ida");
        List<String> units = set.benches().stream().flatMap(bench -> bench.kit().stream()).map(ExerciseSet.Kit::unit).toList();
        assertEquals(16, units.size());
        assertEquals(16, new HashSet<>(units).size(), "a unit is at two benches: " + units);
        Booking booking = locker.booking(set.booking()).orElseThrow();
        assertEquals(new HashSet<>(units), new HashSet<>(booking.units()));
        assertEquals(List.of(BookingKind.LAB, FROM, UNTIL, "Ida"), List.of(booking.kind(), booking.span().from(), booking.span().until(), booking.by()));
        for (ExerciseSet.Bench bench : set.benches()) {
            Item.OneOf asked = (Item.OneOf) desk.handout(set, bench.number()).items().get(0);
            assertEquals(asked.options().stream().map(Item.Opt::id).collect(Collectors.toSet()), bench.kit().stream().map(ExerciseSet.Kit::micType).collect(Collectors.toSet()));
        }
    }

    @Test
    void whatDoesNotFitSaysWhatIsShortAndWhatFitsAndBooksNothing() {
        fill(1);
        DoesNotFit refused = assertThrows(DoesNotFit.class, () -> desk.make(timed("choose", 2, 3), "Ida"));
        assertEquals(1, refused.benches());
        assertFalse(refused.shortOf().isEmpty());
        refused.shortOf().forEach(lack -> assertTrue(lack.there() <= 1 && lack.needed() > lack.there() && TYPES.contains(lack.micType()), lack.toString()));
        assertTrue(refused.getMessage().startsWith("What is free does for 1 of 3 benches of \"Choose and justify\" at level 2. One bench more needs 2 of "), refused.getMessage());
        assertEquals(List.of(), desk.sets(9));
        assertEquals(0, locker.count(new pairwright.locker.Span(FROM, UNTIL)));
        List<Fits> instead = desk.instead(refused);
        assertEquals(new Fits("choose", 2, 1, "The same for 1 bench"), instead.get(0));
        assertTrue(instead.size() >= 2, instead.toString());
        for (Fits fits : instead) {
            desk.make(timed(fits.kind(), fits.level(), fits.benches()), "Ida");
            desk.sets(1).forEach(set -> locker.change(Act.by("Ida"), changes -> {
                if (set.booking() != null) {
                    changes.cancel(set.booking(), null);
                }
                changes.removeExercises(set.id(), null);
                return "";
            }));
        }
    }

    @Test
    void whatIsDoneOnPaperNeedsNothingOutOfTheLocker() {
        for (KindInfo info : desk.kinds()) {
            if (!info.handsOn()) {
                desk.draw(timed(info.id(), 3, 1)).variants().forEach(variant -> assertEquals(List.of(), variant.exercise().kit(), info.id()));
            }
        }
        ExerciseSet set = desk.make(timed("curves", 3, 2), "Ida");
        assertNull(set.booking());
        set.benches().forEach(bench -> assertEquals(List.of(), bench.kit()));
        assertEquals(0, assertThrows(DoesNotFit.class, () -> desk.make(timed("choose", 1, 1), "Ida")).benches());
    }

    /** What is short is not always one unit more of something. */
    @Test
    void whereNoUnitMoreIsShortItSaysWhatThereIsInstead() {
        assertEquals("No microphone is free, and every bench of \"Compare two\" at level 1 needs some", assertThrows(DoesNotFit.class, () -> desk.make(timed("compare", 1, 1), "Ida")).getMessage());
        locker.change(Act.by("Wren"), changes -> {
            TYPES.stream().limit(3).forEach(type -> changes.add(UnitDraft.mic(type, type, type)));
            return "";
        });
        DoesNotFit few = assertThrows(DoesNotFit.class, () -> desk.make(timed("choose", 1, 1), "Ida"));
        assertEquals("What is free does for no bench of \"Choose and justify\" at level 1: no such exercise can be made of 3 units of 3 types", few.getMessage());
    }

    @Test
    void everyFaultOfWhatIsWantedIsToldAtOnce() {
        assertEquals(List.of("/kind", "/level", "/benches", "/seed", "/until", "/opensAt"), assertThrows(LockerFault.Unusable.class,
                () -> desk.make(new Wanted("chose", "x".repeat(81), 6, 0, FROM, null, NOON), "Ida")).faults().stream().map(Fault::at).toList());
        assertEquals(List.of("/kind", "/level", "/benches"), assertThrows(LockerFault.Unusable.class,
                () -> desk.make(new Wanted(null, null, null, null, null, null, null), "Ida")).faults().stream().map(Fault::at).toList());
    }

    @Test
    void withoutASeedOneIsDrawnThatNobodyGuesses() {
        ExerciseSet one = desk.make(new Wanted("reckon", " ", 1, 1, null, null, null), "Ida");
        ExerciseSet other = desk.make(new Wanted("reckon", null, 1, 1, null, null, null), "Ida");
        assertNotEquals(one.seed(), other.seed());
        assertTrue(one.seed().length() > 15, one.seed());
    }

    @Test
    void theKeyIsShutForAReaderUntilItsTimeHasCome() {
        Instant opens = NOON.plus(Duration.ofHours(3));
        ExerciseSet set = desk.make(new Wanted("reckon", "barn", 1, 2, null, null, opens), "Ida");
        ExerciseSet never = desk.make(wanted("reckon", 1, 2), "Ida");
        for (Role role : List.of(Role.READER, Role.ENGINEER)) {
            assertThrows(KeysShut.class, () -> desk.key(set, role));
            assertThrows(KeysShut.class, () -> desk.marks(set, role));
            assertThrows(KeysShut.class, () -> desk.summary(set, role));
            assertThrows(KeysShut.class, () -> desk.feedback(set, 1, role));
        }
        assertEquals(2, desk.key(set, Role.INSTRUCTOR).size());
        try (Locker later = at(opens)) {
            LabDesk then = new LabDesk(later, () -> NOW);
            assertEquals(desk.key(set, Role.INSTRUCTOR), then.key(set, Role.READER));
            assertThrows(KeysShut.class, () -> then.key(never, Role.READER));
            assertThrows(KeysShut.class, () -> then.marks(set, Role.READER), "what others earned is nobody's business");
        }
    }

    @Test
    void aReaderHandsInAndHearsNothingOfTheMark() {
        ExerciseSet set = desk.make(wanted("curves", 1, 2), "Ida");
        Handing shut = desk.handing(set, 1, best(set, 1), Role.READER);
        assertNull(shut.mark());
        assertFalse(shut.late());
        HandedIn kept = handsIn(set, 1, best(set, 1), Role.READER);
        assertNull(kept.points());
        List<BenchMark> marks = desk.marks(set, Role.INSTRUCTOR);
        assertEquals(marks.get(0).mark().of(), marks.get(0).mark().mark());
        assertNull(marks.get(1).handedIn());
        HandedIn typed = handsIn(set, 1, desk.handout(set, 1).items().isEmpty() ? null : Answer.NOTHING, Role.INSTRUCTOR);
        assertEquals(0, typed.points());
        assertEquals(0, desk.marks(set, Role.INSTRUCTOR).get(0).mark().mark(), "the last that is handed in counts");
    }

    @Test
    void whatAReaderHandsInOnceTheKeysAreOpenReplacesNothing() {
        Instant opens = NOON.plus(Duration.ofHours(3));
        ExerciseSet set = desk.make(new Wanted("curves", "barn", 1, 2, null, null, opens), "Ida");
        handsIn(set, 1, Answer.NOTHING, Role.READER);
        locker.close();
        locker = at(opens.plusSeconds(1));
        desk = new LabDesk(locker, () -> NOW);
        Handing open = desk.handing(set, 1, best(set, 1), Role.READER);
        assertTrue(open.late());
        assertEquals(open.mark().of(), open.mark().mark(), "who may see the key may see the mark");
        handsIn(set, 1, best(set, 1), Role.READER);
        handsIn(set, 2, best(set, 2), Role.READER);
        List<BenchMark> marks = desk.marks(set, Role.INSTRUCTOR);
        assertEquals(0, marks.get(0).mark().mark());
        assertEquals(List.of(true, 1.0), List.of(marks.get(1).handedIn().late(), marks.get(1).mark().share()), "late, and nothing else is there");
    }

    @Test
    void slipsOfThePenAreToldAtOnceAndNotMarked() {
        ExerciseSet set = desk.make(wanted("choose", 1, 1), "Ida");
        Answer answer = Answer.NOTHING.with("mike", "x").with("mic", List.of("long-ribon", "x")).with("distance", "near").with("reasons", List.of("a", "a", "zz"));
        assertEquals(Set.of("/answer/mike", "/answer/mic", "/answer/distance", "/answer/reasons"), assertThrows(LockerFault.Unusable.class,
                () -> desk.handing(set, 1, answer, Role.READER)).faults().stream().map(Fault::at).collect(Collectors.toSet()));
        assertEquals("/bench", assertThrows(LockerFault.Unusable.class, () -> desk.handing(set, 2, Answer.NOTHING, Role.READER)).faults().get(0).at());
    }

    @Test
    void theAnswersOfAClassComeInAsATable() {
        ExerciseSet set = desk.make(wanted("choose", 1, 2), "Ida");
        Map<Integer, Answer> best = new TreeMap<>(Map.of(1, best(set, 1), 2, best(set, 2)));
        StringBuilder csv = new StringBuilder("item;bench;answer\r\n");
        best.forEach((bench, answer) -> answer.given().forEach((item, values) -> csv.append(item).append(';').append(bench).append(";\"").append(String.join(", ", values)).append("\"\n")));
        assertEquals(best, desk.answers(set, csv.toString()));
    }

    @Test
    void everyFaultOfATableIsToldWithItsLine() {
        ExerciseSet set = desk.make(wanted("choose", 1, 2), "Ida");
        String csv = "bench,item,answer\n1,mike,a\n\n3,mic,a\n1,distance,near\n1,mic,\"nothing\nlike that\"\n2,reasons,a zz\n1,mic,x\n,mic,x\n2,,x\n";
        List<Fault> faults = assertThrows(LockerFault.Unusable.class, () -> desk.answers(set, csv)).faults();
        assertEquals(List.of("/2/item", "/4/bench", "/5/answer", "/6/answer", "/8/answer", "/9/item", "/10/bench", "/11/item"), faults.stream().map(Fault::at).toList(), faults.toString());
        assertTrue(faults.get(2).says().startsWith("line 5, column answer: \"near\" is no number"), faults.toString());
        for (String bad : List.of("", "a,b,c\n1,2,3\n", "bench,item\n1,mic\n", "bench,item,answer\n", "bench,item,answer\n1,mic,\"open\n", "bench,item,answer\n1,mic,a,b\n")) {
            assertFalse(assertThrows(LockerFault.Unusable.class, () -> desk.answers(set, bad), bad).faults().isEmpty());
        }
    }

    @Test
    void aCaseThatIsNoLongerUnderstoodSaysSo() {
        ExerciseSet set = desk.make(wanted("choose", 1, 1), "Ida");
        ExerciseSet.Bench bench = set.benches().get(0);
        for (String drawn : List.of(bench.drawn().replace("format 1", "format 2"), bench.drawn().replaceAll("source\t[^\n]*", "source\tthe-great-lyre"), "format 1", "", bench.drawn().replaceAll("types\t[^\n]*", "types\tthe-one-mic"), bench.drawn().replaceAll("reasons\t[^\n]*", "reasons\tNO-001"))) {
            ExerciseSet old = new ExerciseSet(set.id(), set.kind(), 1, "s", "CLASS", null, null, null, null, List.of(new ExerciseSet.Bench(1, drawn, 0, List.of())), 1, NOON, "Ida");
            OutOfDate said = assertThrows(OutOfDate.class, () -> {
                desk.handout(old, 1);
                desk.key(old, Role.INSTRUCTOR);
            }, drawn);
            assertTrue(said.getMessage().startsWith("This exercise cannot be made any more"), said.getMessage());
        }
        ExerciseSet gone = new ExerciseSet(set.id(), "juggle", 1, "s", "CLASS", null, null, null, null, set.benches(), 1, NOON, "Ida");
        assertTrue(assertThrows(OutOfDate.class, () -> desk.handout(gone, 1)).getMessage().contains("no kind \"juggle\""));
    }

    @Test
    void practiceIsNeverTheExerciseOfAClass() {
        ExerciseSet set = desk.make(wanted("curves", 3, 20), "Ida");
        Set<String> titles = set.benches().stream().map(bench -> desk.handout(set, bench.number()).situation() + "" + desk.handout(set, bench.number()).shown()).collect(Collectors.toSet());
        Practice practice = new Practice(() -> NOW);
        for (String seed : List.of("barn", "barn/0", "barn/1", "../CLASS/curves/3/barn", "/CLASS/curves/3/barn/0", "1/CLASS/curves/3/barn/")) {
            Handout tried = practice.draw("curves", 3, seed).handout();
            assertFalse(titles.contains(tried.situation() + "" + tried.shown()), seed);
        }
    }

    @Test
    void practiceIsMarkedAtOnceAndTheSameAgain() {
        Practice practice = new Practice(() -> NOW);
        Practice.Tried tried = practice.draw("reckon", 2, null);
        assertEquals(tried, practice.draw("reckon", 2, tried.seed()));
        Practice.Told told = practice.mark("reckon", 2, tried.seed(), Answer.NOTHING);
        assertEquals(0, told.mark().mark());
        assertEquals(1, practice.mark("reckon", 2, tried.seed(), told.key().best()).mark().share());
        assertThrows(LockerFault.Unusable.class, () -> practice.mark("reckon", 2, null, Answer.NOTHING));
        assertThrows(LockerFault.Unusable.class, () -> practice.mark("reckon", 2, tried.seed(), Answer.NOTHING.with("nothing-like-it", "1")));
    }
}
