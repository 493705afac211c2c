package pairwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers as whoever reads them is used to. */
class ReaderTest {
    private static final Reader INCHES = new Reader(true, Locale.US);
    private static final Reader COMMA = new Reader(false, Locale.GERMANY);
    private static final Reader INCHES_AND_COMMA = new Reader(true, Locale.FRANCE);
    private static final Pattern TAPE = Pattern.compile("(?:(\\d+) ft ?)?(?:(\\d+) ?)??(?:(\\d+)/(\\d+) )?(?:in)?");

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "0 | 0 cm | 0 in",
            "0.0005 | 0.5 mm | 0.02 in",
            "0.001 | 1 mm | 1/16 in",
            "0.005 | 5 mm | 3/16 in",
            "0.01 | 1 cm | 3/8 in",
            "0.0254 | 2.5 cm | 1 in",
            "0.03 | 3 cm | 1 1/4 in",
            "0.035 | 3.5 cm | 1 1/2 in",
            "0.05 | 5 cm | 2 in",
            "0.1 | 10 cm | 4 in",
            "0.12 | 12 cm | 4 3/4 in",
            "0.15 | 15 cm | 6 in",
            "0.2 | 20 cm | 8 in",
            "0.3 | 30 cm | 12 in",
            "0.45 | 45 cm | 18 in",
            "0.6 | 60 cm | 2 ft",
            "0.7 | 70 cm | 2 ft 4 in",
            "0.996 | 1 m | 3 ft 3 in",
            "1.2 | 1.2 m | 3 ft 11 in",
            "1.6 | 1.6 m | 5 ft 3 in",
            "3.048 | 3 m | 10 ft",
            "9.96 | 10 m | 33 ft",
            "12 | 12 m | 39 ft",
            "-0.3 | -30 cm | -12 in"})
    void aDistanceIsReadOffATape(double metres, String metric, String imperial) {
        assertEquals(metric, Reader.METRIC.distance(metres));
        assertEquals(imperial, INCHES.distance(metres));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "1.5 | 1 | 1.5 | 1,5",
            "2 | 3 | 2 | 2",
            "0.10 | 2 | 0.1 | 0,1",
            "-0.04 | 1 | 0 | 0",
            "-0.06 | 1 | -0.1 | -0,1",
            "2.25 | 1 | 2.3 | 2,3",
            "1e12 | 0 | 1000000000000 | 1000000000000",
            "1e-7 | 3 | 0 | 0",
            "20.3 | 0 | 20 | 20"})
    void aNumberHasNoTrailingNoughtsAndTheReadersSign(double value, int decimals, String point, String comma) {
        assertEquals(point, Reader.METRIC.number(value, decimals));
        assertEquals(comma, COMMA.number(value, decimals));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "0.4 | m | 40 cm | 16 in",
            "2.5 | kg | 2,5 kg | 5.5 lb",
            "0.25 | kg | 250 g | 9 oz",
            "0.1 | kg | 100 g | 3.5 oz",
            "25 | kg | 25 kg | 55 lb",
            "12 | m2 | 12 m2 | 129 sq ft",
            "80 | m3 | 80 m3 | 2830 cu ft",
            "440 | Hz | 440 Hz | 440 Hz",
            "2500 | Hz | 2,5 kHz | 2.5 kHz",
            "94.3 | dB SPL | 94 dB SPL | 94 dB SPL",
            "0.42 | dB | 0,4 dB | 0.4 dB",
            "2.6 | dB | 2,5 dB | 2.5 dB",
            "-17.6 | dBFS | -18 dBFS | -18 dBFS",
            "32.6 | degrees | 33 degrees | 33 degrees",
            "1500 | ohm | 1,5 kohm | 1.5 kohm",
            "1.56 | h | 1,5 hours | 1.5 hours",
            "0.5 | h | 30 minutes | 30 minutes",
            "0.37 | 1 | 0,37 | 0.37",
            "2.9 | ms | 2,9 ms | 2.9 ms",
            "139.94 | samples | 140 samples | 140 samples",
            "15 | mV/Pa | 15 mV/Pa | 15 mV/Pa"})
    void aValueHasItsUnit(double value, String unit, String metricComma, String imperialPoint) {
        assertEquals(metricComma, COMMA.value(value, unit));
        assertEquals(imperialPoint, INCHES.value(value, unit));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "48000 | 4 | 48000", "343.21 | 4 | 343.2", "12345 | 3 | 12300", "0.012345 | 3 | 0.0123", "0 | 3 | 0", "-272.9507 | 4 | -273", "9.9996 | 3 | 10"})
    void aFigureHasTheDigitsThatSaySomething(double value, int digits, String shown) {
        assertEquals(shown, Reader.METRIC.figure(value, digits));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "Keep 45 cm free. | Keep 18 in free. | Keep 45 cm free.",
            "It stands at 1.2 m, 0.6 to 0.8 m apart. | It stands at 3 ft 11 in, 2 ft to 2 ft 7 in apart. | It stands at 1,2 m, 0,6 to 0,8 m apart.",
            "Hold it 10 to 20 cm away | Hold it 4 to 8 in away | Hold it 10 to 20 cm away",
            "Hold it 10-20 cm away | Hold it 4 to 8 in away | Hold it 10-20 cm away",
            "40 cm to 1 m | 16 in to 3 ft 3 in | 40 cm to 1 m",
            "leave 5 to 30 mm | leave 3/16 to 1 1/4 in | leave 5 to 30 mm",
            "a room of 3 x 4 m | a room of 9 ft 10 in x 13 ft | a room of 3 x 4 m",
            "about a metre behind the m of the name | about a metre behind the m of the name | about a metre behind the m of the name",
            "at 4 metres | at 13 ft | at 4 metres",
            "a sandbag of 5 kg | a sandbag of 11 lb | a sandbag of 5 kg",
            "80 m3 is small, 12.5 m2 of wall | 2830 cu ft is small, 135 sq ft of wall | 80 m3 is small, 12,5 m2 of wall",
            "At 20 degrees Celsius, 343 m/s | At 68 degrees Fahrenheit, 343 m/s | At 20 degrees Celsius, 343 m/s",
            "into 1.5 kohm at 48 kHz for 2.5 ms | into 1.5 kohm at 48 kHz for 2.5 ms | into 1,5 kohm at 48 kHz for 2,5 ms",
            "a 10 inch tom, rule LVL-004 2.0 | a 10 inch tom, rule LVL-004 2.0 | a 10 inch tom, rule LVL-004 2,0",
            "29 CFR 1910.95, version 0.4, v1.5, catalogue 1.2.3 | 29 CFR 1910.95, version 0.4, v1.5, catalogue 1.2.3 | 29 CFR 1910.95, version 0.4, v1.5, catalogue 1.2.3",
            "It loses -0.5 dB. It is at 5. 3 are left. | It loses -0.5 dB. It is at 5. 3 are left. | It loses -0,5 dB. It is at 5. 3 are left."})
    void aSentenceChangesItsMeasuresAndNothingElse(String says, String imperial, String comma) {
        assertEquals(imperial, INCHES.sentence(says));
        assertEquals(comma, COMMA.sentence(says));
        assertSame(says, Reader.METRIC.sentence(says));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"en-GB | 25 Nov 2026", "en-US | Nov 25, 2026", "de-DE | 25.11.2026"})
    void aDateIsWrittenAsTheReaderWritesIt(String tag, String shown) {
        Reader reader = new Reader(false, Locale.forLanguageTag(tag));
        assertEquals(shown, reader.date(LocalDate.of(2026, 11, 25)));
        assertEquals(shown, reader.date(OffsetDateTime.parse("2026-11-25T23:30:00-05:00")));
    }

    @Property
    void whatIsReadOffTheTapeIsTheDistanceWithinItsMarks(@ForAll @DoubleRange(min = 0.001, max = 60) @Scale(4) double metres) {
        double read = metres(INCHES.distance(metres));
        double inches = metres / 0.0254;
        double mark = inches < 1 ? 1 / 16.0 : inches < 6 ? 0.25 : inches < 12 ? 0.5 : inches < 144 ? 1 : 12;
        assertEquals(metres, read, 0.0254 * mark / 2 * 1.04, INCHES.distance(metres));
    }

    @Property
    void aSentenceInTheReadersMeasuresStaysAsItIs(@ForAll @IntRange(min = 1, max = 3000) int hundredths, @ForAll @IntRange(min = 1, max = 500) int more) {
        String one = Reader.METRIC.number(hundredths / 100.0, 2);
        String other = Reader.METRIC.number((hundredths + more) / 100.0, 2);
        for (String unit : new String[] {"m", "cm", "mm", "kg", "m3", "m2", "degrees Celsius"}) {
            String says = "From " + one + " to " + other + " " + unit + ", or " + other + " " + unit + "; 2.5 kHz.";
            for (Reader reader : new Reader[] {INCHES, COMMA, INCHES_AND_COMMA}) {
                String once = reader.sentence(says);
                assertEquals(once, reader.sentence(once));
                assertTrue(!once.equals(says), once);
            }
            assertSame(says, Reader.METRIC.sentence(says));
        }
    }

    @Property
    void aCommaReaderSeesTheSameNumber(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value, @ForAll @IntRange(min = 0, max = 6) int decimals) {
        String shown = COMMA.number(value, decimals);
        assertEquals(value, Double.parseDouble(shown.replace(',', '.')), 0.5000001 * Math.pow(10, -decimals));
        assertEquals(Reader.METRIC.number(value, decimals), shown.replace(',', '.'));
    }

    private static double metres(String tape) {
        Matcher parts = TAPE.matcher(tape.endsWith("in") ? tape : tape + " ");
        assertTrue(parts.matches(), tape);
        double inches = 12 * of(parts.group(1)) + of(parts.group(2)) + (parts.group(3) == null ? 0 : of(parts.group(3)) / of(parts.group(4)));
        return inches * 0.0254;
    }

    private static double of(String digits) {
        return digits == null ? 0 : Double.parseDouble(digits);
    }
}
