package pairwright.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.advice.KnowledgeStore;

/** Signs, and the way to a number. */
class SignsTest {
    private static final Lab LAB = new Lab(KnowledgeStore.builtIn().current(), null);

    @ParameterizedTest
    @CsvSource({"headroom is -2 dB,headroom is −2 dB", "figure-8,figure-8", "8-16 kHz,8-16 kHz", "10^(-8 / 20),10^(−8 / 20)", "40 - 11.5 = 28.5,40 - 11.5 = 28.5", "-90 to the left,−90 to the left"})
    void aNumberBelowNothingHasAMinusAndANameKeepsItsHyphen(String plain, String said) {
        assertEquals(said, Signs.minus(plain));
    }

    @Test
    void theWayToANumberHasNoStepThatNobodyTakes() {
        int seen = 0;
        for (int level = 1; level <= KindInfo.LEVELS; level++) {
            for (Variant variant : new Variants(new ReckonKind(), Variants.Purpose.CLASS, "steps", level, LAB).some(12)) {
                for (Key.Entry entry : variant.exercise().key().items()) {
                    List<String> why = entry.why();
                    for (int i = 1; i < why.size() - 1; i++) {
                        String number = why.get(i).substring(why.get(i).lastIndexOf('=') + 1).strip().split(" ")[0];
                        String rest = String.join(" ", why.subList(i + 1, why.size()));
                        assertTrue(rest.contains(number) || why.get(i).matches(".*at \\d+[.]\\d+ degrees:.*") || why.get(i).startsWith("Way to the loudspeaker"), why.toString());
                        seen++;
                    }
                }
            }
        }
        assertTrue(seen > 20, "steps: " + seen);
    }
}
