package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.model.Answer;
import pairwright.model.Limits;
import pairwright.model.Neighbour;
import pairwright.model.Option;
import pairwright.model.Question;
import pairwright.model.Request;
import pairwright.model.Sureness;

/** How sure an answer is: that nothing drawn changes nothing, that shares are shares, and that what is said to decide decides. */
class DrawsTest {
    private final Knowledge knowledge = Asking.KNOWLEDGE.current();

    @Test
    void withEverythingAsUsualEverySetUpScoresAsItDid() {
        for (String source : knowledge.catalogue().sources().keySet()) {
            List<Candidate> best = candidates(source).stream().limit(20).toList();
            Doubts doubts = new Doubts(scene(source), knowledge.rules(), best);
            List<Candidate> again = doubts.judged(new double[doubts.unknowns().size()]);
            for (int i = 0; i < best.size(); i++) {
                assertEquals(best.get(i).centipoints(), again.get(i).centipoints(), source + ": " + best.get(i).technique());
            }
        }
    }

    @Test
    void everyUnknownCanChangeSomething() {
        Scene scene = scene("trumpet");
        Doubts doubts = new Doubts(scene, knowledge.rules(), candidates("trumpet"));
        double[] usual = new double[doubts.unknowns().size()];
        for (Unknown.Kind kind : Unknown.Kind.values()) {
            boolean changes = false;
            for (int i = 0; i < usual.length && !changes; i++) {
                if (doubts.unknowns().get(i).kind() == kind) {
                    double[] moved = usual.clone();
                    moved[i] = -1;
                    changes = !numbers(doubts.judged(moved)).equals(numbers(doubts.judged(usual)));
                }
            }
            assertTrue(changes, kind.id());
        }
    }

    /** What was predicted of each: an unknown may change numbers without changing a score. */
    private static List<Object> numbers(List<Candidate> candidates) {
        return candidates.stream().map(one -> one == null ? "out" : (Object) one.first().placed().predicted()).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"trumpet", "kick drum", "singing voice, dark", "violin next to a drum kit", "bass DI", "choir in a church", "banjo, open air"})
    void sharesAreSharesAndTheSameEveryTime(String words) {
        Answer answer = Asking.ADVISOR.ask(Request.of(words).withDraws(50));
        assertEquals(50, answer.sureness().draws());
        double first = answer.sureness().otherFirstShare();
        for (Option option : answer.options()) {
            assertTrue(option.sure().firstShare() <= option.sure().firstThreeShare(), option.techniqueName());
        }
        for (String idea : answer.options().stream().map(DrawsTest::idea).distinct().toList()) {
            first += answer.options().stream().filter(option -> idea(option).equals(idea)).findFirst().orElseThrow().sure().firstShare();
        }
        assertEquals(1, first, 1e-9);
        assertTrue(answer.sureness().exactlyFirstShare() <= answer.options().get(0).sure().firstShare());
        assertEquals(answer, Asking.ADVISOR.ask(Request.of(words).withDraws(50)));
    }

    private static String idea(Option option) {
        return option.mics().size() > 1 ? option.technique() : option.mics().get(0).family().id();
    }

    @ParameterizedTest
    @ValueSource(strings = {"kick-drum", "snare-drum", "hi-hat", "singing-voice", "tuba", "nylon-guitar", "violin"})
    void whatIsSaidToDecideDecides(String source) {
        List<Candidate> all = candidates(source);
        List<Candidate> chosen = Choice.of(all, 3);
        Draws draws = Draws.of(scene(source), knowledge.rules(), all, chosen, 200);
        Doubts doubts = new Doubts(scene(source), knowledge.rules(), draws.setUps());
        for (Sureness.Turn turn : draws.sureness().turns()) {
            int unknown = doubts.unknowns().indexOf(doubts.unknowns().stream()
                    .filter(one -> one.kind().id().equals(turn.unknown()) && Objects.equals(one.of(), turn.of())).findFirst().orElseThrow());
            double at = value(doubts, unknown, turn.threshold());
            assertNotEquals(chosen.get(0).idea(), leader(doubts, unknown, at).idea(), turn.says());
            assertEquals(chosen.get(0).idea(), leader(doubts, unknown, at - Math.signum(at) * 0.03).idea(), turn.says());
            assertEquals(turn.above(), turn.threshold() > turn.usual());
        }
    }

    @Test
    void somethingDecidesSomewhere() {
        assertTrue(knowledge.catalogue().sources().keySet().stream().limit(40).anyMatch(source -> {
            List<Candidate> all = candidates(source);
            return !Draws.of(scene(source), knowledge.rules(), all, Choice.of(all, 3), 60).sureness().turns().isEmpty();
        }));
    }

    private static double value(Doubts doubts, int unknown, double reading) {
        double low = -1;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (doubts.reading(doubts.unknowns().get(unknown), middle) < reading) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.abs(low) < Math.abs(high) ? high : low; // the side farther from the usual
    }

    private static Candidate leader(Doubts doubts, int unknown, double value) {
        double[] values = new double[doubts.unknowns().size()];
        values[unknown] = value;
        return doubts.judged(values).stream().filter(Objects::nonNull).min(Candidate.bestFirst()).orElseThrow();
    }

    @Test
    void withoutDrawsNothingIsSaidOfThem() {
        Answer answer = Asking.ask("trumpet");
        assertNull(answer.sureness());
        assertNull(answer.options().get(0).sure());
        assertEquals(answer, Asking.ADVISOR.ask(Request.of("trumpet").withDraws(0)));
    }

    @Test
    void drawsChangeNeitherOptionsNorReasons() {
        Answer without = Asking.ask("trumpet next to a drum kit");
        Answer with = Asking.ADVISOR.ask(Request.of("trumpet next to a drum kit").withDraws(30));
        assertFalse(with.options().isEmpty());
        for (int i = 0; i < with.options().size(); i++) {
            assertEquals(without.options().get(i).mics(), with.options().get(i).mics());
            assertEquals(without.options().get(i).reasons(), with.options().get(i).reasons());
            assertEquals(without.options().get(i).cautions(), with.options().get(i).cautions());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 1001})
    void tooManyDrawsAreRefused(int draws) {
        UnusableQuestion refused = assertThrows(UnusableQuestion.class, () -> Asking.ADVISOR.ask(Request.of("trumpet").withDraws(draws)));
        assertEquals("/draws", refused.faults().get(0).at());
        assertTrue(refused.faults().get(0).says().contains(Integer.toString(draws)));
    }

    private List<Candidate> candidates(String source) {
        return Advisor.judge(scene(source), knowledge.rules()).candidates().stream()
                .sorted(Comparator.comparing(Candidate::centipoints, Comparator.reverseOrder())).toList();
    }

    private Scene scene(String source) {
        return Scene.of(new Question("", source, List.of(), List.of(), null, List.of(), Limits.NONE,
                source.equals("trumpet") ? List.of(new Neighbour("drum-kit", 3, 120)) : List.of(), List.of(), List.of(), 3, null, null), knowledge.catalogue());
    }
}
