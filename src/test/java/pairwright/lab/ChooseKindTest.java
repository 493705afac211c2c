package pairwright.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pairwright.advice.KnowledgeStore;
import pairwright.rules.RuleInfo;

/** One microphone out of a few, and the reasons to choose among. */
class ChooseKindTest {
    private static final Lab LAB = new Lab(KnowledgeStore.builtIn().current(), null);

    private static List<Variant> some(int level, int many) {
        return new Variants(new ChooseKind(), Variants.Purpose.CLASS, "choose", level, LAB).some(many);
    }

    private static List<String> offered(Exercise exercise) {
        List<String> said = new ArrayList<>();
        exercise.handout().items().forEach(item -> {
            if (item instanceof Item.SomeOf some) {
                some.options().forEach(option -> said.add(option.says()));
            }
        });
        return said;
    }

    @Test
    void aReasonIsASentenceAndNoTitleOfARule() {
        Set<String> titles = LAB.rules().rules().stream().map(RuleInfo::title).collect(Collectors.toSet());
        for (int level = 1; level <= KindInfo.LEVELS; level++) {
            for (Variant variant : some(level, 4)) {
                for (String says : offered(variant.exercise())) {
                    assertFalse(titles.contains(says), says);
                    assertTrue(says.endsWith(".") && !says.contains("{"), says);
                }
            }
        }
    }

    @Test
    void noReasonSpeaksOfWhatTheSheetDoesNotHave() {
        for (Variant variant : some(1, 8)) {
            for (String says : offered(variant.exercise())) {
                assertFalse(says.contains("neighbour") || says.contains("asked for") || says.contains("sound wants") || says.contains("wind "), says);
            }
        }
    }

    @Test
    void theBestIsGoodInItselfAndNotOnlyBetterThanTheRest() {
        for (int level = 1; level <= KindInfo.LEVELS; level++) {
            for (Variant variant : some(level, 5)) {
                OneMic one = OneMic.of(variant.drawn(), LAB);
                assertTrue(OneMic.points(one.best()) >= 4, variant.drawn().toString());
                assertTrue(one.best().findings().stream().allMatch(finding -> finding.centipoints() > -400), variant.drawn().toString());
            }
        }
    }

    @Test
    void neitherKeyNorFeedbackGivesAReasonTwice() {
        for (int level = 1; level <= KindInfo.LEVELS; level++) {
            for (Variant variant : some(level, 4)) {
                Exercise exercise = variant.exercise();
                List<String> why = exercise.key().items().stream().flatMap(entry -> entry.why().stream()).toList();
                assertEquals(why.stream().distinct().toList(), why);
                List<String> sentences = exercise.mark(exercise.usual()).checks().stream().flatMap(check -> List.of(check.says().split("(?<=[.]) ")).stream())
                        .filter(sentence -> sentence.length() > 70).toList();
                assertEquals(sentences.stream().distinct().toList(), sentences);
            }
        }
    }
}
