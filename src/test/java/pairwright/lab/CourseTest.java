package pairwright.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Lesson;
import pairwright.rules.RuleInfo;

/** The course is about all that can be taught, and what is done in a lesson is about its rules; the coverage says what no exercise has touched. */
class CourseTest {
    private static final Lab LAB = new Lab(KnowledgeStore.builtIn().current(), null);
    private static final Kinds KINDS = new Kinds();
    private static final Course COURSE = Course.of(LAB.catalogue(), LAB.rules());
    private static final Coverage COVERAGE = Coverage.of(LAB, KINDS, 6);
    /** Rare rules are touched by some draws and not by others. */
    private static final double MOST_OF_THEM = 0.6;

    @Test
    void everyTeachableRuleIsInExactlyOneLesson() {
        Map<String, Integer> times = new HashMap<>();
        COURSE.parts().forEach(part -> part.rules().forEach(rule -> times.merge(rule.id(), 1, Integer::sum)));
        Set<String> teachable = LAB.rules().rules().stream().filter(RuleInfo::teachable).map(RuleInfo::id).collect(Collectors.toSet());
        assertEquals(teachable, times.keySet());
        assertTrue(times.values().stream().allMatch(count -> count == 1), times.toString());
        assertEquals(List.of(), COURSE.left());
    }

    @Test
    void everyLessonNamesTopicsAndKindsThatThereAreAndHasTimeForOneOfEach() {
        Set<String> topics = LAB.rules().rules().stream().map(rule -> rule.concern() + "/" + rule.topic()).collect(Collectors.toSet());
        for (Course.Part part : COURSE.parts()) {
            assertTrue(topics.containsAll(part.lesson().topics()), part.lesson().toString());
            int minutes = 0;
            for (Lesson.Drill drill : part.lesson().exercises()) {
                Kind kind = KINDS.kind(drill.kind()).orElseThrow(() -> new AssertionError(part.lesson().id() + " names " + drill));
                minutes += drill.levels().stream().mapToInt(level -> kind.info().minutes().get(level - 1)).min().orElseThrow();
            }
            assertTrue(minutes <= part.lesson().minutes(), part.lesson().id() + " takes " + minutes + " at the least");
        }
    }

    @Test
    void whatIsDoneInALessonTouchesItsRulesWhereAKindCan() {
        for (Course.Part part : COURSE.parts()) {
            List<Coverage.Row> can = part.rules().stream().map(rule -> COVERAGE.row(rule.id()).orElseThrow()).filter(Coverage.Row::touched).toList();
            List<String> missed = can.stream().filter(row -> part.lesson().exercises().stream().noneMatch(drill -> drill.levels().stream().anyMatch(level -> row.touched(drill.kind(), level))))
                    .map(row -> row.id() + row.levels()).toList();
            assertTrue(can.size() - missed.size() >= MOST_OF_THEM * can.size(), part.lesson().id() + " misses " + missed + " of " + can.size());
        }
    }

    @Test
    void everyCalculationIsTouchedBySomeExercise() {
        assertEquals(List.of(), COVERAGE.untouched().stream().filter(row -> row.rule() == null).map(Coverage.Row::id).toList());
        assertEquals(LAB.numbers().all().size(), COVERAGE.rows().stream().filter(row -> row.rule() == null).count());
    }

    @Test
    void theCoverageTellsWhatNoExerciseHasTouched() {
        Coverage sums = Coverage.of(LAB, new Kinds(List.of(new ReckonKind())), 4);
        assertEquals(4 * KindInfo.LEVELS, sums.drawn());
        assertTrue(sums.row("comb").orElseThrow().touched("reckon", 2), sums.row("comb").toString());
        assertEquals(LAB.rules().rules().stream().filter(RuleInfo::teachable).count(), sums.untouched().stream().filter(row -> row.rule() != null).count());
    }

    @Test
    void theDeskCountsOnceForOneStateOfWhatIsKnown() throws InterruptedException {
        CoverageDesk desk = new CoverageDesk(new Kinds(List.of(new ReckonKind())));
        assertTrue(desk.state(LAB).coverage().isEmpty());
        for (int wait = 0; wait < 600 && desk.state(LAB).coverage().isEmpty(); wait++) {
            Thread.sleep(50);
        }
        assertTrue(desk.state(LAB).coverage().orElseThrow() == desk.state(LAB).coverage().orElseThrow());
    }

    @Test
    void aCountThatFailsSaysSoAndDoesNotBeginAgainUntilSomethingIsMended() throws InterruptedException {
        AtomicInteger drawn = new AtomicInteger();
        CoverageDesk desk = new CoverageDesk(new Kinds(List.of(new Kind() {
            @Override
            public KindInfo info() {
                return new ReckonKind().info();
            }

            @Override
            public Optional<Case> draw(Draw draw, int level, Lab lab) {
                drawn.incrementAndGet();
                throw new IllegalStateException("The rule HOUSE-001 compares what is not there");
            }

            @Override
            public Exercise of(Case one, int level, Lab lab) {
                throw new IllegalStateException();
            }
        })));
        for (int wait = 0; wait < 600 && desk.state(LAB).failed() == null; wait++) {
            Thread.sleep(20);
        }
        assertTrue(desk.state(LAB).failed().contains("HOUSE-001"), desk.state(LAB).toString());
        assertEquals(1, drawn.get());
    }
}
