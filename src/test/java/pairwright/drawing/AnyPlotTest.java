package pairwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.NumericChars;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Effect;
import pairwright.model.Option;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Reason;

/** Whatever the numbers and names, a plot keeps its form. */
class AnyPlotTest {
    private static final Reader READER = new Reader(false, Locale.FRANCE);

    @Property(tries = 300)
    void curvesOfAnySize(@ForAll @Size(min = 1, max = 4) List<@Size(9) List<@DoubleRange(min = -90, max = 90) Double>> curves) {
        List<OctaveDrawing.Series> series = new ArrayList<>();
        for (List<Double> nine : curves) {
            series.add(new OctaveDrawing.Series("curve number " + series.size(), OctaveCurve.of(nine.stream().mapToDouble(Double::doubleValue).toArray()),
                    Look.values()[series.size()]));
        }
        Picture.of(OctaveDrawing.of("Any", "dB", series, null, "k", READER)).whole();
    }

    @Property(tries = 300)
    void aLowestValueAtTheFootOfTheFrameIsNotWrittenOverTheOctaves(@ForAll @DoubleRange(max = 3) double lowDb, @ForAll @DoubleRange(max = 12) double restDb,
            @ForAll @IntRange(max = 8) int band) {
        double[] nine = new double[9];
        Arrays.fill(nine, lowDb + restDb);
        nine[band] = lowDb;
        Picture.of(OctaveDrawing.of("Any", "dB", List.of(new OctaveDrawing.Series("any", OctaveCurve.of(nine), Look.ONE)), null, "k", READER)).whole();
    }

    @Property(tries = 300)
    void anyNameIsReadBackAsItIs(@ForAll @AlphaChars @NumericChars @Chars({'<', '>', '&', '"', '\'', ';', '-', ']'}) @StringLength(min = 1, max = 12) String name) {
        Drawing drawing = OctaveDrawing.of(name, "dB", List.of(new OctaveDrawing.Series(name, OctaveCurve.ZERO, Look.ONE)), null, "k", READER);
        assertEquals(name, Picture.of(drawing).all("title").get(0).getTextContent());
        Picture.of(drawing).label(name);
    }

    @Property(tries = 300)
    void aNameOfAnyCharactersIsWellFormed(@ForAll("anything") String name) {
        Picture.of(OctaveDrawing.of(name, "dB", List.of(new OctaveDrawing.Series(name, OctaveCurve.ZERO, Look.ONE)), null, "k", READER));
    }

    @Property(tries = 300)
    void functionsOverAnyRange(@ForAll @DoubleRange(min = 0.01, max = 1000) double from, @ForAll @DoubleRange(min = 1.5, max = 10_000) double times,
            @ForAll boolean logarithmic, @ForAll @Size(min = 2, max = 60) List<@DoubleRange(min = -120, max = 120) Double> values) {
        double[] x = new double[values.size()];
        double[] y = new double[values.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = from * Math.pow(times, (double) i / (x.length - 1));
            y[i] = values.get(i);
        }
        Picture.of(FunctionDrawing.of("Any", new FunctionDrawing.Axis("Distance", "m", logarithmic, null, null), FunctionDrawing.Axis.linear("Level", "dB"),
                List.of(new FunctionDrawing.Series("", x, y)), new FunctionDrawing.Here(x[0], y[0], "here"), List.of(new FunctionDrawing.Mark(x[1], "mark")), "k",
                READER)).whole();
    }

    @Property(tries = 200)
    void pointsEndAtTheScore(@ForAll("points") List<Integer> hundredths) {
        List<Reason> reasons = hundredths.stream().map(point -> new Reason("RUL-001", 0, point < 0 ? Effect.AGAINST : Effect.FOR, point / 100.0, "", List.of(), ""))
                .toList();
        double score = hundredths.stream().mapToInt(Integer::intValue).sum() / 100.0;
        Option option = new Option(1, score, "single", "Single", List.of(), null, reasons, List.of(), null);
        Picture picture = Picture.of(PointsDrawing.of(null, null, option, "k", READER)).whole();
        List<org.w3c.dom.Element> scores = picture.all("rect", "sum");
        double noughtAt = picture.label("0").middleX();
        double left = Picture.number(scores.get(0), "x");
        double right = left + Picture.number(scores.get(0), "width");
        assertEquals(noughtAt, score < 0 ? right : left, 0.02);
    }

    @Property(tries = 200)
    void patternsOfAnyCoefficient(@ForAll @Size(9) List<@DoubleRange(min = 0, max = 1) Double> coefficients, @ForAll @IntRange(min = 0, max = 2) int kind) {
        Pattern pattern = List.of(Pattern.CARDIOID, Pattern.HALF_OMNI, Pattern.HALF_CARDIOID).get(kind);
        PatternData data = new PatternData(pattern, OctaveCurve.of(coefficients.stream().mapToDouble(Double::doubleValue).toArray()), null);
        Picture.of(PolarDrawing.of("Any", data, "k", READER)).whole();
        Picture.of(PolarDrawing.octaves("Any", data, "k", READER)).whole();
    }

    @Property(tries = 200)
    void lobesOfAnyWidth(@ForAll @Size(9) List<@DoubleRange(min = 0, max = 15) Double> indices) {
        PatternData data = new PatternData(Pattern.LOBAR, null, OctaveCurve.of(indices.stream().mapToDouble(Double::doubleValue).toArray()));
        Picture.of(PolarDrawing.of("Any", data, "k", READER)).whole();
    }

    @Property
    void aPlaceOnAnAxisReadsBackAsItsValue(@ForAll @DoubleRange(min = 0.01, max = 1) double least, @ForAll @DoubleRange(min = 2, max = 1000) double most,
            @ForAll @DoubleRange(min = 0, max = 1) double share, @ForAll boolean logarithmic) {
        Scale scale = new Scale(logarithmic, least, most, 300, 20);
        double value = least + share * (most - least);
        assertEquals(1, scale.value(scale.at(value)) / value, 1e-9);
        for (Scale.Tick tick : scale.ticks(8, "", Reader.METRIC)) {
            assertTrue(tick.value() >= least * (1 - 1e-9) && tick.value() <= most * (1 + 1e-9));
            assertEquals(1, Double.parseDouble(tick.text().replace('\u2212', '-')) / tick.value(), 1e-6, "what is written is where it stands");
        }
    }

    @Property
    void coordinatesAreWrittenToAHundredth(@ForAll @DoubleRange(min = -10_000, max = 10_000) double value) {
        assertEquals(value, Double.parseDouble(Svg.number(value)), 0.005001);
    }

    @Example
    void whatXmlHasNoRoomForIsLeftOut() {
        String name = "a\ud800b\ufffec\u0001d\uffffe\udc00f\ud83c\udfbbg";
        Drawing drawing = OctaveDrawing.of(name, "dB", List.of(new OctaveDrawing.Series(name, OctaveCurve.ZERO, Look.ONE)), null, "k", READER);
        assertEquals("abcdef\ud83c\udfbbg", Picture.of(drawing).all("title").get(0).getTextContent());
    }

    @Example
    void coordinatesHaveNoNeedlessNoughts() {
        assertEquals(List.of("0", "0", "-1.5", "0.05", "12", "-0.01"), List.of(Svg.number(0), Svg.number(-0.004), Svg.number(-1.5), Svg.number(0.05), Svg.number(11.999),
                Svg.number(-0.01)));
    }

    /** Half characters and those XML has no room for as well. */
    @Provide
    Arbitrary<String> anything() {
        return Arbitraries.integers().between(0, 0xffff).map(letter -> (char) letter.intValue()).list().ofMaxSize(12).map(letters -> {
            StringBuilder text = new StringBuilder();
            letters.forEach(text::append);
            return text.toString();
        });
    }

    @Provide
    Arbitrary<List<Integer>> points() {
        return Arbitraries.integers().between(-1200, 1200).filter(point -> point != 0).list().ofMinSize(0).ofMaxSize(15);
    }
}
