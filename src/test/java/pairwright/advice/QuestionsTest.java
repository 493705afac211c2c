package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pairwright.model.Answer;
import pairwright.model.Source;

/**
 * Sentences that were written before the knowledge was tuned. Where one fails the knowledge is mended, never the sentence;
 * the sentences of {@code held-out} are not even looked at while mending, so only their rates are told.
 */
class QuestionsTest {
    private static final List<String> FILES = List.of("drum-kit", "hand-percussion", "orchestral-percussion", "small-percussion",
            "tuned-percussion", "bowed-strings", "plucked-strings", "keyboards", "free-reeds", "woodwinds", "brass", "voices",
            "amplifiers", "direct", "ensembles", "ambience", "safety");

    @Test
    void nineteenOfTwentySentencesGetAnAcceptableAnswerNoneAWrongOneAndAllTheirCautions() {
        Result result = askAll(FILES.stream().flatMap(file -> Sentence.in(file).stream()).toList());
        System.out.println(result.summary() + result.faults());
        result.holds(0.95, 0);
    }

    @Test
    void nineOfTenHeldOutSentencesGetAnAcceptableAnswerFewAWrongOneAndAllTheirCautions() {
        Result result = askAll(Sentence.in("held-out"));
        System.out.println("Held out: " + result.summary());
        result.holds(0.90, 0.02); // a sentence nobody looked at while mending may be misread; what it needs to be warned of may not be missing
    }

    @Test
    void theSentencesAskForEveryFamilyAndNoneTwice() {
        List<Sentence> own = FILES.stream().flatMap(file -> Sentence.in(file).stream()).toList();
        List<Sentence> heldOut = Sentence.in("held-out");
        assertTrue(own.size() >= 150, "only " + own.size() + " sentences");
        assertTrue(heldOut.size() >= 60, "only " + heldOut.size() + " sentences held out");
        Set<String> words = new HashSet<>();
        own.forEach(asked -> assertTrue(words.add(asked.words()), asked.words()));
        heldOut.forEach(asked -> assertTrue(words.add(asked.words()), asked.words()));
        Set<String> sources = own.stream().flatMap(asked -> asked.source().stream()).collect(Collectors.toSet());
        assertEquals(List.of(), Asking.KNOWLEDGE.current().catalogue().sources().values().stream()
                .map(Source::id).filter(id -> !sources.contains(id)).toList(), "sources nobody asks for");
    }

    private static Result askAll(List<Sentence> questions) {
        Result result = new Result(questions.size());
        questions.forEach(result::ask);
        return result;
    }

    private static final class Result {
        private final int asked;
        private final List<String> faults = new ArrayList<>();
        private int understood;
        private int acceptable;
        private int goodOptions;
        private int options;
        private int wrong;
        private int required;
        private int unsaid;

        Result(int asked) {
            this.asked = asked;
        }

        void ask(Sentence question) {
            required += question.cautions().size();
            Answer answer;
            try {
                answer = Asking.ask(question.words());
            } catch (UnusableQuestion refused) {
                unsaid += question.cautions().size();
                faults.add("REFUSED  " + question.words() + "\n    " + refused.getMessage());
                return;
            }
            List<String> misread = question.misread(answer);
            long good = answer.options().stream().limit(2).filter(question::accepts).count();
            goodOptions += good;
            options += Math.min(2, answer.options().size());
            if (misread.isEmpty()) {
                understood++;
            }
            if (misread.isEmpty() && good > 0) {
                acceptable++;
            }
            List<String> wrongMics = question.wrongIn(answer);
            List<String> unsaidCautions = question.unsaidIn(answer);
            wrong += wrongMics.isEmpty() ? 0 : 1;
            unsaid += unsaidCautions.size();
            List<String> told = new ArrayList<>();
            misread.forEach(fault -> told.add("MISREAD  " + fault));
            if (good == 0) {
                told.add("NONE ACCEPTABLE");
            } else if (good < Math.min(2, answer.options().size())) {
                told.add("one of two acceptable");
            }
            wrongMics.forEach(mic -> told.add("WRONG    " + mic));
            unsaidCautions.forEach(caution -> told.add("UNSAID   " + caution));
            if (!told.isEmpty()) {
                answer.options().stream().limit(2).forEach(option -> told.add("- " + Sentence.told(option)));
                faults.add(question.words() + "  [" + String.join(", ", question.source()) + "]\n    "
                        + String.join("\n    ", told));
            }
        }

        /** Only the counts: a failure names no held-out sentence either. */
        void holds(double leastAcceptable, double mostWrong) {
            assertTrue((double) acceptable / asked >= leastAcceptable && wrong <= mostWrong * asked && unsaid == 0, this::summary);
        }

        String summary() {
            return ("%d sentences: %d understood; %d (%.1f %%) with an acceptable option among the first two (%.1f %% of those"
                    + " options are); %d with a wrong microphone and no caution; %d of %d required cautions unsaid")
                            .formatted(asked, understood, acceptable, 100.0 * acceptable / asked,
                                    100.0 * goodOptions / Math.max(1, options), wrong, unsaid, required);
        }

        String faults() {
            return "\n" + String.join("\n", faults);
        }
    }
}
