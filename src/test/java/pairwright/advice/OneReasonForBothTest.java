package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.model.Option;
import pairwright.model.Reason;

/** What holds for both microphones of a pair alike is said once. */
class OneReasonForBothTest {
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"drum kit in stereo", "grand piano in stereo", "choir in a church", "accordion", "kick drum", "acoustic guitar, stereo pair"})
    void noSentenceStandsTwiceAmongTheReasonsOfAnOption(String words) {
        for (Option option : Asking.ask(words).options()) {
            Set<List<Object>> said = new HashSet<>();
            option.reasons().forEach(reason -> assertTrue(said.add(List.of(reason.rule(), reason.says(), reason.values())), reason.toString()));
        }
    }

    @Test
    void aUsualChoiceForBothCountsOnceInFullAndSpeaksOfBoth() {
        Option pair = Asking.ask("drum kit in stereo").options().stream()
                .filter(option -> option.mics().size() == 2 && option.mics().get(0).equals(option.mics().get(1))).findFirst().orElseThrow();
        Reason usual = pair.reasons().stream().filter(reason -> reason.rule().equals("CUS-001")).findFirst().orElseThrow();
        assertEquals(0, usual.mic());
        assertEquals(Asking.KNOWLEDGE.current().rules().rule("CUS-001").points(), usual.points());
        long sum = pair.reasons().stream().mapToLong(reason -> Math.round(reason.points() * 100)).sum();
        assertEquals(Math.round(pair.score() * 100), sum);
    }
}
