package pairwright.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {
    @ParameterizedTest
    @CsvSource({"31.2, 31 Hz", "122, 120 Hz", "1292, 1.3 kHz", "2000, 2 kHz", "994.9, 990 Hz"})
    void aFrequencyHasNoMoreDigitsThanMeanAnything(double frequencyHz, String said) {
        assertEquals(said, Words.hz(frequencyHz));
    }

    @ParameterizedTest
    @CsvSource({"-3.04, 1, \u22123", "-0.04, 1, 0", "2.55, 0, 3", "0.126, 2, 0.13"})
    void aNumberBelowNothingHasARealMinusAndNothingHasNone(double value, int digits, String said) {
        assertEquals(said, Words.number(value, digits));
    }

    @ParameterizedTest
    @CsvSource({"0.004, 0.4 cm", "-0.264, 26 cm", "1.2, 1.2 m"})
    void aWayHasItsSignInTheSentence(double wayM, String said) {
        assertEquals(said, Words.way(wayM));
    }

    @Test
    void octavesThatLieTogetherAreSaidTogether() {
        assertEquals("63 and 125 Hz", Words.octaves(band -> band < 2));
        assertEquals("63 to 250 Hz", Words.octaves(band -> band < 3));
        assertEquals("500 Hz to 1 kHz and 4 kHz", Words.octaves(band -> band == 3 || band == 4 || band == 6));
        assertEquals("8 kHz", Words.octaves(band -> band == 7));
        assertEquals("", Words.octaves(band -> false));
        assertEquals("a, b and c", Words.list(List.of("a", "b", "c")));
    }
}
