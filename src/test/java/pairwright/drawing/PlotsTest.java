package pairwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.drawing.Picture.number;
import static pairwright.drawing.Picture.path;
import static pairwright.drawing.Picture.value;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import pairwright.acoustics.Delay;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.MicType;
import pairwright.model.Option;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Placement;
import pairwright.model.Position;
import pairwright.model.Predicted;
import pairwright.model.Reason;
import pairwright.model.Source;
import pairwright.model.Technique;
import pairwright.model.Together;

class PlotsTest {
    private static final Reader READER = Reader.METRIC;
    private static final Reader GERMAN = new Reader(true, Locale.GERMANY);

    @Test
    void everyTypePatternPlaceAndCharacterOfTheCatalogueCanBeDrawn() {
        for (MicType mic : Asked.catalogue().mics().values()) {
            whole(OctaveDrawing.of(mic.name(), "dB re 1 kHz", List.of(new OctaveDrawing.Series("", mic.responseDb(), Look.ONE)), null, "k", READER));
            whole(OctaveDrawing.of(mic.name(), "dB re 1 kHz", List.of(new OctaveDrawing.Series(mic.name(), mic.responseDb(), Look.ONE)), null, "k", GERMAN));
            for (PatternData pattern : mic.patterns()) {
                boolean air = pattern.pattern() != Pattern.CONTACT && pattern.pattern() != Pattern.ELECTRICAL;
                Drawing three = PolarDrawing.of(mic.name(), pattern, "k", READER);
                Drawing nine = PolarDrawing.octaves(mic.name(), pattern, "k", GERMAN);
                assertEquals(air, three != null);
                assertEquals(air, nine != null);
                if (air) {
                    whole(three);
                    whole(nine);
                }
            }
        }
        for (Source source : Asked.catalogue().sources().values()) {
            whole(OctaveDrawing.of(source.name(), "dB", List.of(new OctaveDrawing.Series("spectrum", source.spectrumDb(), Look.SOURCE),
                    new OctaveDrawing.Series("directivity index", source.directivityIndexDb(), Look.NEIGHBOUR)), null, "k", READER));
            for (Position position : source.positions()) {
                whole(OctaveDrawing.of(position.name(), "dB", List.of(new OctaveDrawing.Series(position.name(), position.toneDb(), Look.ONE)), null, "k", READER));
            }
        }
        Asked.catalogue().characters().values().forEach(character -> whole(OctaveDrawing.of(character.name(), "dB",
                List.of(new OctaveDrawing.Series("", character.toneDb(), Look.WANTED)), null, "k", READER)));
    }

    @Test
    void everyOptionOfEverySourceCanBeDrawn() {
        Set<String> drawn = new HashSet<>();
        Asked.everyOption(one -> {
            for (Reader reader : List.of(READER, GERMAN)) {
                whole(ToneDrawing.of(Asked.catalogue(), one.question(), one.option(), "k", reader));
                whole(PointsDrawing.of(Asked.catalogue(), one.question(), one.option(), "k", reader));
                Drawing sum = SumDrawing.of(Asked.catalogue(), one.question(), one.option(), "k", reader);
                Drawing levels = LevelDrawing.of(Asked.catalogue(), one.question(), one.option(), "k", reader);
                if (sum != null) {
                    whole(sum);
                    drawn.add("sum");
                }
                if (levels != null) {
                    whole(levels);
                    drawn.add(levels.svg().contains(">dBu<") ? "lead" : "air");
                }
            }
        });
        assertEquals(Set.of("sum", "lead", "air"), drawn, "each kind is met among the sources");
    }

    @Test
    void pointsOfACurveStandAtTheirValues() {
        OctaveCurve curve = OctaveCurve.of(-8, -4, -1, 0, 0, 2, 4, 1, -8);
        Picture picture = whole(OctaveDrawing.of("Response", "dB re 1 kHz", List.of(new OctaveDrawing.Series("", curve, Look.ONE)), null, "k", READER));
        List<Element> markers = picture.all("circle", "one");
        double noughtAt = tickY(picture, "0");
        double fourAt = tickY(picture, "4");
        for (int octave = 0; octave < 9; octave++) {
            assertEquals(curve.at(octave), value(number(markers.get(octave), "cy"), noughtAt, 0, fourAt, 4), 0.02);
        }
        assertEquals(picture.label("63").middleX(), number(markers.get(0), "cx"), 0.01);
        assertEquals(picture.label("16k").middleX(), number(markers.get(8), "cx"), 0.01);
        assertTrue(picture.all("desc").get(0).getTextContent().startsWith("Response: 63 Hz \u22128, 125 Hz \u22124, 250 Hz \u22121, 500 Hz 0, 1 kHz 0, 2 kHz +2"));
        assertNotNull(picture.label("\u22128"));
        assertNotNull(picture.label("+4"));
    }

    @Test
    void namesAndTitlesAreEscaped() {
        Drawing drawing = OctaveDrawing.of("<b> & \"Co\"", "d'B", List.of(new OctaveDrawing.Series("<script>alert(1)</script>", OctaveCurve.flat(1), Look.ONE)), null,
                "k", READER);
        assertTrue(!drawing.svg().contains("<script") && !drawing.svg().contains("<b>"), drawing.svg());
        whole(drawing).label("d'B");
    }

    /** The distance that is drawn between a curve and what is wanted is the one the rules judge. */
    @Test
    void theToneThatIsDrawnMissesByWhatIsPredicted() {
        Asked.everyOption(one -> {
            String says = ToneDrawing.of(Asked.catalogue(), one.question(), one.option(), "k", READER).says();
            for (Placement mic : one.option().mics()) {
                assertTrue(says.contains("It misses by " + Words.number(mic.predicted().toneMissDb(), 1, READER) + " dB on the whole"),
                        mic.predicted().toneMissDb() + " is not in: " + says);
            }
        });
    }

    @Test
    void bothMixedAtEqualGainLieBetweenTheTwo() {
        Asked.One pair = new Asked.One(Asked.first("trumpet, dark").question(), pair("trumpet, dark"));
        String svg = ToneDrawing.of(Asked.catalogue(), pair.question(), pair.option(), "k", READER).svg();
        assertTrue(svg.contains("both mixed") && svg.contains("wanted: dark"), svg);
    }

    @Test
    void theFirstNullIsDrawnWhereItIsPredicted() {
        int[] drawn = {0};
        Asked.everyOption(one -> {
            Together together = one.option().together();
            Technique technique = Asked.catalogue().techniques().get(one.option().technique());
            Drawing drawing = SumDrawing.of(Asked.catalogue(), one.question(), one.option(), "k", READER);
            assertEquals(together != null && !technique.stereo() && together.firstNullHz() != null, drawing != null, one.option().techniqueName());
            if (drawing == null) {
                return;
            }
            drawn[0]++;
            assertTrue(drawing.says().contains("same polarity") && drawing.says().contains(Words.hertz(together.firstNullHz(), READER)), drawing.says());
            if (together.firstNullHz() > 50 && together.firstNullHz() < 16_000) {
                Picture picture = whole(drawing);
                double[] upright = path(picture.all("path", "null").get(0));
                double lowAt = picture.label("63").middleX();
                double highAt = picture.label("8k").middleX();
                double octaves = value(upright[0], lowAt, Math.log(63), highAt, Math.log(8000));
                assertEquals(1, Math.exp(octaves) / together.firstNullHz(), 0.002);
                int step = picture.labels().stream().anyMatch(label -> label.text().equals("\u22125")) ? 5
                        : picture.labels().stream().anyMatch(label -> label.text().equals("\u22123")) ? 3 : 6;
                double peakDb = Delay.ripplePeakDb(Math.abs(together.levelDifferenceDb()));
                double dipDb = value(number(picture.all("circle", "sum").get(0), "cy"), tickY(picture, "0"), 0, tickY(picture, "\u2212" + step), -step);
                assertEquals(Math.max(-30, peakDb - together.rippleDb()), dipDb, 0.05);
            }
        });
        assertTrue(drawn[0] > 10, "only " + drawn[0] + " sums");
    }

    @Test
    void aChannelThatIsInvertedForNoReasonMovesTheNullAnOctaveUp() {
        Asked.One one = firstSum();
        Option option = one.option();
        double firstNullHz = option.together().firstNullHz();
        List<Placement> turned = List.of(option.mics().get(0), inverted(option.mics().get(1)));
        Option inverted = new Option(1, option.score(), option.technique(), option.techniqueName(), turned, option.together(), option.reasons(), option.cautions(), null);
        String says = SumDrawing.of(Asked.catalogue(), one.question(), inverted, "k", READER).says();
        assertTrue(says.contains("opposite polarity") && says.contains("no bass") && says.contains(Words.hertz(2 * firstNullHz, READER)), says);
    }

    @Test
    void marksOfTheLevelRulerStandAtTheirLevels() {
        Asked.One one = Asked.first("trumpet, dark");
        Predicted predicted = one.option().mics().get(0).predicted();
        Picture picture = whole(LevelDrawing.of(Asked.catalogue(), one.question(), one.option(), "k", READER));
        double[] ticks = path(picture.all("path", "one").get(0));
        double twentyAt = tickY(picture, "20");
        double hundredAt = tickY(picture, "100");
        List<Double> levels = new ArrayList<>();
        for (int i = 1; i < ticks.length; i += 4) {
            levels.add(value(ticks[i], twentyAt, 20, hundredAt, 100));
        }
        assertEquals(predicted.typicalDbSpl(), levels.get(0), 0.05);
        assertEquals(predicted.peakDbSpl(), levels.get(1), 0.05);
        assertEquals(predicted.peakDbSpl() + predicted.headroomDb(), levels.get(2), 0.05);
        assertEquals(predicted.noiseDba(), levels.get(levels.size() - 1), 0.05);
        picture.label(Words.number(predicted.headroomDb(), 0, READER) + " dB in hand");
        picture.label(Words.number(predicted.signalToNoiseDb(), 0, READER) + " dB over noise");
    }

    @Test
    void pointsAddUpRowByRowToTheScore() {
        Asked.everyOption(one -> {
            Picture picture = Picture.of(PointsDrawing.of(Asked.catalogue(), one.question(), one.option(), "k", READER));
            List<Reason> reasons = one.option().reasons();
            List<Element> bars = picture.all("rect").stream().filter(bar -> !bar.getAttribute("class").equals("sum")).toList();
            Element score = picture.all("rect", "sum").get(0);
            assertEquals(reasons.size(), bars.size());
            double noughtAt = picture.label("0").middleX();
            double perPoint = number(score, "width") / Math.abs(one.option().score());
            double at = noughtAt;
            for (int i = 0; i < bars.size(); i++) {
                Element bar = bars.get(i);
                boolean against = reasons.get(i).points() < 0;
                assertEquals(against ? "bad" : "good", bar.getAttribute("class"));
                double left = number(bar, "x");
                double right = left + number(bar, "width");
                assertEquals(at, against ? right : left, 0.02);
                assertEquals(Math.abs(reasons.get(i).points()) * perPoint, right - left, 0.15);
                at = against ? left : right;
                picture.label(reasons.get(i).rule());
            }
            assertEquals(at, one.option().score() < 0 ? number(score, "x") : number(score, "x") + number(score, "width"), 0.02);
            picture.label(Words.number(one.option().score(), 2, READER));
        });
    }

    @Test
    void ringsAndCurvesOfAPolarPatternStandAtTheirDecibels() {
        PatternData cardioid = new PatternData(Pattern.CARDIOID, OctaveCurve.flat(0.5), null);
        Picture picture = whole(PolarDrawing.of("Cardioid", cardioid, "k", READER));
        List<Element> rings = picture.all("circle", "grid");
        double edge = number(rings.get(0), "r");
        for (int ring = 0; ring < 5; ring++) {
            assertEquals(edge * (1 - ring / 5.0), number(rings.get(ring), "r"), 0.01);
        }
        double middleX = number(rings.get(0), "cx");
        double middleY = number(rings.get(0), "cy");
        double[] curve = path(picture.all("path", "sum").get(0));
        int points = curve.length / 2;
        assertEquals(121, points, "every three degrees from -180 to 180");
        for (int i = 0; i < points; i++) {
            double angle = -180 + 3 * i;
            double away = Math.hypot(curve[2 * i] - middleX, curve[2 * i + 1] - middleY);
            assertEquals(Math.max(-22, FirstOrder.responseDb(0.5, Math.abs(angle))), -25 * (1 - away / edge), 0.01);
        }
        assertEquals(middleY - edge, curve[121], 0.02, "the front is up");
        picture.label("null 180\u00b0");
        Picture figure8 = whole(PolarDrawing.of("Figure-8", new PatternData(Pattern.FIGURE_8, OctaveCurve.flat(0), null), "k", READER));
        assertEquals(2, figure8.labels().stream().filter(label -> label.text().equals("null 90\u00b0")).count());
        Drawing omni = PolarDrawing.of("Omni", new PatternData(Pattern.OMNI, OctaveCurve.flat(1), null), "k", READER);
        assertTrue(omni.says().contains("no null") && Picture.of(omni).all("path", "null").isEmpty());
    }

    @Test
    void aPlateHearsOnlyWhatIsAboveIt() {
        for (Pattern pattern : List.of(Pattern.HALF_OMNI, Pattern.HALF_CARDIOID)) {
            double coefficient = pattern == Pattern.HALF_OMNI ? 1 : 0.5;
            Picture picture = whole(PolarDrawing.of("Plate", new PatternData(pattern, OctaveCurve.flat(coefficient), null), "k", READER));
            double plateY = path(picture.all("path", "axis").get(0))[1];
            double[] curve = path(picture.all("path", "sum").get(0));
            for (int i = 1; i < curve.length; i += 2) {
                assertTrue(curve[i] <= plateY + 0.02);
            }
        }
        assertNull(PolarDrawing.of("Lead", new PatternData(Pattern.ELECTRICAL, OctaveCurve.flat(1), null), "k", READER));
    }

    @Test
    void aFunctionPassesThroughItsPointsInTheMeasuresOfTheReader() {
        double[] distances = {0.1, 0.5, 1, 2, 4};
        double[] levels = {100, 86, 80, 74, 68};
        Picture picture = whole(FunctionDrawing.of("Level over distance", FunctionDrawing.Axis.logarithmic("Distance", "m"),
                FunctionDrawing.Axis.linear("Level", "dB SPL"), List.of(new FunctionDrawing.Series("", distances, levels)),
                new FunctionDrawing.Here(0.5, 86, "you: 50 cm"), List.of(new FunctionDrawing.Mark(1, "1 m")), "k", READER));
        List<Element> markers = picture.all("circle", "one");
        for (int i = 0; i < 5; i++) {
            assertEquals(levels[i], value(number(markers.get(i), "cy"), tickY(picture, "70"), 70, tickY(picture, "90"), 90), 0.05);
            assertEquals(Math.log(distances[i]), value(number(markers.get(i), "cx"), picture.label("0.2").middleX(), Math.log(0.2), picture.label("2").middleX(),
                    Math.log(2)), 0.001);
        }
        assertEquals(number(markers.get(1), "cx"), number(picture.all("circle", "sum").get(0), "cx"), 0.01);
        assertEquals(number(markers.get(2), "cx"), path(picture.all("path", "null").get(0))[0], 0.01);
        assertTrue(picture.all("desc").get(0).getTextContent().contains("from 100 dB SPL at 10 cm to 68 dB SPL at 4 m"),
                picture.all("desc").get(0).getTextContent());
        Picture feet = whole(FunctionDrawing.of("Level over distance", FunctionDrawing.Axis.logarithmic("Distance", "m"),
                FunctionDrawing.Axis.linear("Level", "dB SPL"), List.of(new FunctionDrawing.Series("", distances, levels)), null, List.of(), "k", GERMAN));
        assertEquals(Math.log(1 / 0.3048), value(number(feet.all("circle", "one").get(2), "cx"), feet.label("1").middleX(), 0, feet.label("10").middleX(), Math.log(10)),
                0.001);
        feet.label("Distance, ft");
        feet.label("0,5");
    }

    @Test
    void whatLeavesTheFrameIsCutAtIt() {
        double[] x = {0, 1, 2};
        double[] y = {0, 20, 0};
        Picture picture = whole(FunctionDrawing.of("Cut", FunctionDrawing.Axis.linear("x", ""), FunctionDrawing.Axis.linear("y", "").within(0, 10),
                List.of(new FunctionDrawing.Series("", x, y)), null, List.of(), "k", READER));
        Element frame = picture.all("rect", "axis").get(0);
        double left = number(frame, "x");
        double wide = number(frame, "width");
        double top = number(frame, "y");
        double bottom = top + number(frame, "height");
        double[] path = path(picture.all("path", "one").get(0));
        double[] expected = {left, bottom, left + wide / 4, top, left + wide * 3 / 4, top, left + wide, bottom};
        assertEquals(expected.length, path.length);
        for (int i = 0; i < path.length; i++) {
            assertEquals(expected[i], path[i], 0.02);
        }
    }

    private static Asked.One firstSum() {
        List<Asked.One> found = new ArrayList<>();
        Asked.everyOption(one -> {
            if (SumDrawing.of(Asked.catalogue(), one.question(), one.option(), "k", READER) != null) {
                found.add(one);
            }
        });
        return found.get(0);
    }

    private static Option pair(String words) {
        return Asked.ask(words).options().stream().filter(option -> option.mics().size() == 2 && !option.mics().get(0).micType().equals(option.mics().get(1).micType()))
                .findFirst().orElseThrow();
    }

    private static Placement inverted(Placement mic) {
        return new Placement(mic.micType(), mic.name(), mic.family(), mic.pattern(), mic.position(), mic.positionName(), mic.brings(), mic.mount(), mic.distanceM(),
                mic.heightM(), mic.aimDegrees(), mic.nullDegrees(), mic.nullMissDegrees(), mic.turnGainDb(), mic.sourceAngleDegrees(), mic.distanceRatio(),
                mic.standRatio(), mic.loadRatio(), mic.lowCornerHz(), mic.keepClearM(), mic.currentMa(), mic.phantom(), mic.pad(), mic.padDb(), !mic.invertPolarity(),
                mic.channels(), mic.free(), mic.units(), mic.predicted(), mic.neighbours());
    }

    /** How high the number of an axis stands, from its baseline. */
    private static double tickY(Picture picture, String text) {
        return picture.all("text").stream().filter(element -> element.getTextContent().equals(text) && anchoredAtItsEnd(element))
                .mapToDouble(element -> number(element, "y") - 4).findFirst().orElseThrow(() -> new AssertionError("no " + text + " in " + picture.labels()));
    }

    private static boolean anchoredAtItsEnd(Element element) {
        return element.getAttribute("text-anchor").equals("end");
    }

    private static Picture whole(Drawing drawing) {
        return Picture.of(drawing).whole();
    }
}
