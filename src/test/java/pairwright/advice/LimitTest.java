package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import pairwright.model.Answer;
import pairwright.model.Limits;
import pairwright.model.MicFamily;

class LimitTest {
    private static final Limits ALL = new Limits(1, false, 40.0, -120.5, List.of(MicFamily.RIBBON), List.of(MicFamily.LINE),
            List.of("long-ribbon"), List.of("active-ribbon"));

    @ParameterizedTest
    @EnumSource
    void eachIsLiftedAloneAndTheOthersStay(Limit limit) {
        assertTrue(limit.isSet(ALL));
        Limits lifted = limit.lifted(ALL);
        for (Limit other : Limit.values()) {
            assertEquals(other != limit, other.isSet(lifted), other + " after " + limit);
        }
    }

    @Test
    void withoutLimitsNoneIsSet() {
        assertFalse(Arrays.stream(Limit.values()).anyMatch(limit -> limit.isSet(Limits.NONE)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "40.0 |        | The preamplifier (40 dB of gain)                         | /limits/preampGainDb",
        "     | -120.5 | The preamplifier (input noise -120.5 dBu)                | /limits/preampNoiseDbu",
        "40.0 | -120.5 | The preamplifier (40 dB of gain, input noise -120.5 dBu) | /limits/preampGainDb"})
    void aPreamplifierIsSaidWithWhatWasGivenOfIt(Double gainDb, Double noiseDbu, String says, String pointer) {
        Limits limits = new Limits(null, null, gainDb, noiseDbu, null, null, null, null);
        assertEquals(says, Limit.PREAMP.says(limits));
        assertEquals(pointer, Limit.PREAMP.pointer(limits));
    }

    @Test
    void theOthersAreSaidInTheWordsOfTheQuestion() {
        assertEquals("The limit of 1 channel", Limit.CHANNELS.says(ALL));
        assertEquals("The limit \"no phantom power\"", Limit.PHANTOM.says(ALL));
        assertEquals("The limit \"only ribbon\"", Limit.ONLY_FAMILIES.says(ALL));
        assertEquals("The limit \"no line\"", Limit.WITHOUT_FAMILIES.says(ALL));
        assertEquals("The limit \"only long-ribbon\"", Limit.ONLY_TYPES.says(ALL));
        assertEquals("The limit \"not active-ribbon\"", Limit.WITHOUT_TYPES.says(ALL));
    }

    @Test
    void whereTwoLimitsTogetherLeaveNothingBothAreToBeLifted() {
        Answer answer = Asking.ask("snare-drum", null, null, new Limits(null, null, null, null, List.of(MicFamily.LINE), null,
                List.of("passive-di"), null), null);
        assertEquals(List.of(new Answer.Instead("/limits", "No single limit is to blame: lift two or more of them.", null)), answer.instead());
    }
}
