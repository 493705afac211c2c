package pairwright.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.advice.KnowledgeStore;
import pairwright.locker.HandedIn;

/** What a class got right and missed, where each bench had an exercise of its own. */
class SummaryTest {
    private static final Lab LAB = new Lab(KnowledgeStore.builtIn().current(), null);
    private static final int BENCHES = 6;

    private static List<Exercise> exercises(Kind kind, int level) {
        return new Variants(kind, Variants.Purpose.CLASS, "summed up", level, LAB).some(BENCHES).stream().map(Variant::exercise).toList();
    }

    private static Summary summary(List<Exercise> exercises, List<Answer> answers) {
        return Summary.of(IntStream.range(0, exercises.size()).mapToObj(i -> new BenchMark(i + 1, new HandedIn("x", i + 1, 1, "", null, null, false, Instant.EPOCH, "Finch"),
                answers.get(i), exercises.get(i).mark(answers.get(i)), null)).toList(), bench -> exercises.get(bench - 1), LAB);
    }

    /** The same claim names the source of each bench, and is one claim. */
    @ParameterizedTest
    @CsvSource({"choose, 2, reasons", "two, 2, reasons", "faults, 2, set-up-1"})
    void whatStatesARuleIsCountedByTheRuleHoweverABenchWordsIt(String kind, int level, String item) {
        List<Exercise> exercises = exercises(new Kinds().kind(kind).orElseThrow(), level);
        Summary summary = summary(exercises, exercises.stream().map(exercise -> exercise.key().best()).toList());
        List<Summary.OptionCount> options = summary.items().stream().filter(one -> one.item().equals(item)).findFirst().orElseThrow().options();
        List<Summary.OptionCount> stating = options.stream().filter(option -> option.rule() != null).toList();
        assertEquals(stating.size(), stating.stream().map(Summary.OptionCount::rule).distinct().count(), options.toString());
        stating.forEach(option -> assertEquals(LAB.rules().rule(option.rule()).title(), option.says()));
        long offered = exercises.stream().mapToLong(exercise -> exercise.claims(item).size()).sum();
        assertTrue(offered >= 2 * BENCHES, "offered " + offered);
        assertEquals(offered, stating.stream().mapToInt(Summary.OptionCount::offered).sum(), options.toString());
        assertTrue(stating.stream().anyMatch(option -> option.offered() > 1), options.toString());
        stating.forEach(option -> assertEquals(option.right(), option.chosen(), "everybody answered as the key has it: " + option));
    }

    @Test
    void whatStatesNoRuleIsKnownByItsWords() {
        List<Exercise> exercises = exercises(new FaultsKind(), 2);
        Summary summary = summary(exercises, exercises.stream().map(exercise -> exercise.key().best()).toList());
        Summary.OptionCount nothing = summary.items().get(0).options().stream().filter(option -> option.rule() == null).reduce((one, next) -> {
            throw new AssertionError(one + " and " + next);
        }).orElseThrow();
        assertEquals(BENCHES, nothing.offered());
    }

    @Test
    void whatWasMissedHasTheNameOfTheRuleOrTheCalculation() {
        List<Exercise> chosen = exercises(new ChooseKind(), 2);
        List<Summary.Missed> rules = summary(chosen, chosen.stream().map(exercise -> Answer.NOTHING).toList()).missed();
        List<Summary.Missed> named = rules.stream().filter(one -> LAB.rules().rule(one.rule()) != null).toList();
        assertTrue(named.size() > 1, rules.toString());
        named.forEach(one -> assertEquals(LAB.rules().rule(one.rule()).title(), one.name()));
        List<Exercise> reckoned = exercises(new ReckonKind(), 1);
        List<Summary.Missed> sums = summary(reckoned, reckoned.stream().map(exercise -> Answer.NOTHING).toList()).missed();
        assertTrue(sums.size() > 1, sums.toString());
        sums.stream().filter(one -> Objects.nonNull(one.rule())).forEach(one -> assertEquals(LAB.numbers().info(one.rule()).orElseThrow().name(), one.name()));
        assertNull(summary(reckoned, reckoned.stream().map(exercise -> exercise.key().best()).toList()).missed().stream().findFirst().orElse(null));
    }
}
