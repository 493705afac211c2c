package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.drawing.Reader;

/** What people type where a number is wanted. */
class TypedTest {
    private static final Reader POINT = Reader.METRIC;
    private static final Reader COMMA = new Reader(false, Locale.GERMANY);

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
            "0.8 | m | 0.8", "0,8 | m | 0.8", ".8 | m | 0.8", ",8 | m | 0.8", "8. | m | 8", "80 cm | m | 0.8", "80cm | m | 0.8", "80 CM | m | 0.8", "800 mm | m | 0.8",
            "3 ft | m | 0.9144", "10 in | m | 0.254", "10\" | m | 0.254", "5' | m | 1.524", "5'3\" | m | 1.6002", "5' 3 | m | 1.6002", "5 ft 3 in | m | 1.6002",
            "1 1/4 in | m | 0.03175", "1-1/4 in | m | 0.03175", "1¼ in | m | 0.03175", "½ in | m | 0.0127", "5 ft 3 1/2 in | m | 1.6129", "1 m 20 cm | m | 1.2",
            "10 | in | 0.254", "3 | ft | 0.9144", "1.5 m | ft | 1.5", "2.5 | lb | 1.133980925", "2 kg | lb | 2", "800 g | kg | 0.8", "100 | cu ft | 2.8316846592",
            "80 m3 | cu ft | 80", "80 m³ | m3 | 80", "2,5 kHz | Hz | 2500", "48k | Hz | 48000", "48 000 | Hz | 48000", "1.200,5 | Hz | 1200.5", "1,200.5 | Hz | 1200.5",
            "1e3 | Hz | 1000", "-18 dBFS | dBFS | -18", "−18 | dBFS | -18", "+22 dBu | dBu | 22", "94 dB SPL | dB SPL | 94", "74 dBA | dB(A) | 74", "74 dB(A) | dB(A) | 74",
            "30° | degrees | 30", "30 deg | degrees | 30", "1.5 kΩ | ohm | 1500", "1.5 kohm | ohm | 1500", "1 Mohm | ohm | 1000000", "90 min | h | 1.5",
            "1 h 30 min | h | 1.5", "400 ms | s | 0.4", "15 mV/Pa | mV/Pa | 15", "4.5 mA | mA | 4.5", "37 % | 1 | 0.37", "0,125 | m | 0.125", "-0 | m | 0"})
    void aUnitMayStandWithItAndACommaBeThePoint(String text, String unit, double value) {
        Typed typed = Typed.parse(text, unit, POINT);
        assertNull(typed.fault());
        assertEquals(value, typed.number().getAsDouble(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "x", "far", "--1", "1-2 m", "1..2", "1.2.3", "1,2,3", "3 m 5 m", "3 in 5 ft", "1 2 3", "1e999", "1/0", "5 kg", "5 dB", "m", "5 m 3", "NaN",
        "Infinity", "0x10", "1_000", "<script>", "5 m; 6 m", "\u0000", "٣", "1e", "'", "5 ft 3 <b>"})
    void whatIsNoLengthIsSaidWithWhatToGive(String text) {
        Typed typed = Typed.parse(text, "m", POINT);
        assertTrue(typed.number().isEmpty(), text + " " + typed.number());
        assertTrue(typed.fault().endsWith("Give a length such as 0.8 m, 80 cm or 2 ft 6 in"), typed.fault());
    }

    @Test
    void aCommaThatMayPartThousandsIsAskedBackWhereItMay() {
        assertEquals("\"1,200 Hz\" may mean 1.200 or 1200. Write it without the comma, with a point where decimals begin", Typed.parse("1,200 Hz", "Hz", POINT).fault());
        assertEquals(1.2, Typed.parse("1,200", "Hz", COMMA).number().getAsDouble());
        assertEquals(1.2, Typed.parse("1.200", "Hz", COMMA).number().getAsDouble());
    }

    @Test
    void aLongTextIsCutWhenItIsSaidBack() {
        assertTrue(Typed.parse("9".repeat(10_000), "m", POINT).fault().length() < 200);
    }

    @Property
    void whateverIsTypedIsANumberOrAFaultAndNeverAFailure(@ForAll String text) {
        for (String unit : new String[] {"m", "Hz", "1", "dB SPL", "in"}) {
            Typed typed = Typed.parse(text, unit, COMMA);
            assertTrue(typed.number().isPresent() == (typed.fault() == null));
            assertTrue(typed.number().isEmpty() || Double.isFinite(typed.number().getAsDouble()));
        }
    }

    @Property
    void whatAReaderIsShownCanBeTypedBack(@ForAll @DoubleRange(min = 0.002, max = 60) @Scale(4) double metres) {
        for (Reader reader : new Reader[] {POINT, COMMA, new Reader(true, Locale.US), new Reader(true, Locale.FRANCE)}) {
            String shown = reader.distance(metres);
            Typed typed = Typed.parse(shown, "m", reader);
            assertNull(typed.fault(), shown);
            assertEquals(metres, typed.number().getAsDouble(), 0.1 * metres + 0.0006, shown);
        }
    }
}
