package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {"3|3", "2,5|2.5", "2.5 m|2.5", "80cm|0.8", "80 CM|0.8", "15 mm|0.015", "10 in|0.254", "10 inches|0.254", "3 ft|0.9144",
            "3'|0.9144", "10\"|0.254", "5'6\"|1.6764", "5 ft 6 in|1.6764", "5ft6|1.6764", ",5 m|0.5", " 1 metre |1"})
    void aLengthIsReadWithItsUnitAndABareNumberIsInMetres(String typed, double metres) {
        assertEquals(metres, Lengths.metres(typed, false), 1e-12);
    }

    @Test
    void aBareNumberIsInFeetForWhoMeasuresInFeet() {
        assertEquals(0.9144, Lengths.metres("3", true), 1e-12);
        assertEquals(3, Lengths.metres("3 m", true), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "m", "three", "3 yards", "3 m 4", "1.2.3", "NaN", "Infinity", "1e3", "0x10", "99999999999999999999", "3\u0000m"})
    void whatIsNoLengthIsNone(String typed) {
        assertNull(Lengths.metres(typed, false));
    }

    @Property
    void whatIsWrittenIsReadAgainExactlyInAnyMeasures(@ForAll @DoubleRange(min = 0.001, max = 1e6) @Scale(9) double metres, @ForAll boolean imperial) {
        assertEquals(metres, Lengths.metres(Lengths.written(metres), imperial), 0);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"60|60", "60 dB|60", "-128,5 dBu|-128.5", "\u2212128 dBu|-128", "+3|3"})
    void aNumberIsReadWithADecimalCommaAndItsOwnUnit(String typed, double number) {
        assertEquals(number, Typed.number(typed, "dB", "dBu"), 0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "60 V", "a", "1 000", "--1"})
    void aNumberWithAnythingElseIsNone(String typed) {
        assertNull(Typed.number(typed, "dB"));
    }
}
