package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.acoustics.Delay;
import pairwright.drawing.FunctionDrawing.Series;
import pairwright.drawing.Reader;
import pairwright.numbers.CalculationInfo;
import pairwright.numbers.Given;
import pairwright.numbers.Input;
import pairwright.numbers.Numbers;
import pairwright.numbers.Worked;

/** A curve is what the calculation says at each of its points, and no input that is allowed breaks a page. */
class NumberPlotsTest {
    private static final Numbers NUMBERS = new Numbers();

    @ParameterizedTest
    @CsvSource({"level-at-distance, 0, 0, distanceM, levelDbSpl, 1", "proximity, 0, 0, distanceM, boostDb, 1", "proximity, 0, 1, distanceM, plannedBoostDb, 1",
        "comb, 1, 0, pathDifferenceM, firstNullHz, 1", "critical-distance, 0, 0, distanceM, directToReverbDb, 1", "noise, 0, 0, sensitivityMvPerPa, noiseDba, 1",
        "gain, 0, 0, levelDbSpl, gainDb, 1", "headroom, 0, 0, truePeakDbSpl, headroomDb, 1", "ribbon-loading, 0, 0, loadOhm, bassChangeDb, 1",
        "ribbon-loading, 0, 1, loadOhm, midChangeDb, 1", "phantom-budget, 0, 0, currentsMa, mic1V, 1", "recording-angle, 0, 0, spacingM, recordingAngleDegrees, 1",
        "recording-angle, 0, 1, spacingM, otherModelDegrees, 1", "mid-side, 0, 0, sideToMidDb, recordingAngleDegrees, 1", "mid-side, 0, 1, sideToMidDb, includedDegrees, 1",
        "stand-stability, 0, 0, reachM, holdingRatio, 1", "null-angles, 0, 0, otherDegrees, otherDb, 1", "delay, 0, 0, distanceM, delayMs, 1",
        "spacing, 0, 0, separationDb, otherDistanceM, 1"})
    void plottedPointsAreTheCalculationsOwn(String id, int plot, int curve, String varied, String result, double factor) {
        CalculationInfo info = NUMBERS.info(id).orElseThrow();
        Map<String, Given> example = Sweep.given(info.example());
        example.remove("truePeakDbSpl");
        if (id.equals("headroom")) {
            example.put("truePeakDbSpl", new Given.Number(140));
        }
        NumberPlot drawn = NumberPlots.of(NUMBERS, NUMBERS.work(id, example), Reader.METRIC).get(plot);
        Series series = drawn.series().get(curve);
        int compared = 0;
        for (int i = 0; i < series.x().length; i += 5) {
            if (Double.isFinite(series.y()[i])) {
                Map<String, Given> asked = new LinkedHashMap<>(example);
                asked.put(varied, new Given.Number(series.x()[i]));
                Worked worked = NUMBERS.work(id, asked);
                double wanted = worked.result().stream().filter(value -> value.name().equals(result)).findFirst().orElseThrow().value();
                assertEquals(wanted, series.y()[i] * factor, 1e-9 * Math.abs(wanted) + 1e-9, varied + " " + series.x()[i]);
                compared++;
            }
        }
        assertTrue(compared >= 5, "only " + compared);
        if (drawn.here() != null && curve == 0) {
            int at = Arrays.binarySearch(series.x(), drawn.here().x());
            assertTrue(at >= 0, "the point of the inputs is one of the curve");
            assertEquals(series.y()[at], drawn.here().y(), 1e-9);
        }
    }

    @Test
    void theCombTouchesItsPeaksAndDipsWhereTheCalculationHasThem() {
        for (String polarity : List.of("same", "inverted")) {
            Worked worked = NUMBERS.work("comb", Map.of("pathDifferenceM", new Given.Number(0.3), "levelDifferenceDb", new Given.Number(6), "polarity", new Given.Text(polarity)));
            NumberPlot plot = NumberPlots.of(NUMBERS, worked, Reader.METRIC).get(0);
            Series comb = plot.series().get(0);
            int at = Arrays.binarySearch(comb.x(), Sweep.result(worked, "firstNullHz"));
            assertTrue(at >= 0);
            assertEquals(Sweep.result(worked, "dipDb"), comb.y()[at], 1e-9);
            assertEquals(Delay.ripplePeakDb(6), Arrays.stream(comb.y()).max().getAsDouble(), 0.01);
            assertEquals(3, plot.marks().size());
            assertEquals(Sweep.result(worked, "firstNullHz"), plot.marks().get(0).x());
        }
    }

    @Test
    void ofACoincidentPairTheAngleBetweenTheTwoIsVaried() {
        Worked worked = NUMBERS.work("recording-angle", Map.of("pattern", new Given.Text("cardioid"), "includedDegrees", new Given.Number(90)));
        NumberPlot plot = NumberPlots.of(NUMBERS, worked, Reader.METRIC).get(0);
        assertEquals("degrees", plot.across().unit());
        assertEquals(90, plot.here().x());
        assertEquals(Sweep.result(worked, "recordingAngleDegrees"), plot.here().y());
    }

    @Test
    void theHoursOfALevelAreThoseOfTheCalculation() {
        NumberPlot plot = NumberPlots.of(NUMBERS, NUMBERS.work("exposure", Sweep.given(NUMBERS.info("exposure").orElseThrow().example())), Reader.METRIC).get(0);
        Series strict = plot.series().get(0);
        for (int i = 0; i < strict.x().length; i += 9) {
            assertEquals(8 / Math.pow(2, (strict.x()[i] - 85) / 3), strict.y()[i], 1e-9 * strict.y()[i]);
        }
        assertEquals(3, plot.marks().size());
    }

    @Test
    void directSoundAndRoomMeetWhereTheMarkStands() {
        Worked worked = NUMBERS.work("critical-distance", Sweep.given(NUMBERS.info("critical-distance").orElseThrow().example()));
        assertEquals(Sweep.result(worked, "criticalDistanceM"), NumberPlots.of(NUMBERS, worked, Reader.METRIC).get(0).marks().get(0).x(), 1e-9);
    }

    @Property(tries = 400)
    void whateverIsTypedInEveryFieldIsAPageAndNeverAFailure(@ForAll("calculations") CalculationInfo info, @ForAll List<String> texts, @ForAll boolean imperial) {
        Map<String, List<String>> query = new LinkedHashMap<>();
        for (int i = 0; i < info.inputs().size() && !texts.isEmpty(); i++) {
            query.put(info.inputs().get(i).name(), List.of(texts.get(i % texts.size())));
        }
        NumberPages.Page page = page(info, query, imperial);
        assertTrue(page.status() == 200 || page.status() == 400, page.html());
    }

    @Property(tries = 600)
    void everyInputThatIsAllowedIsWorkedAndDrawn(@ForAll("calculations") CalculationInfo info, @ForAll("shares") List<Double> shares, @ForAll boolean imperial) {
        Map<String, List<String>> query = new LinkedHashMap<>();
        query.put(NumberForm.MEASURES, List.of("metric"));
        for (int i = 0; i < info.inputs().size(); i++) {
            Input input = info.inputs().get(i);
            double share = shares.get(i);
            switch (input.kind()) {
                case WORD, PATTERN -> query.put(input.name(), List.of(input.choices().get((int) (share * (input.choices().size() - 1)))));
                case WHOLE_NUMBER -> query.put(input.name(), List.of(Long.toString(Math.round(input.least() + share * (input.most() - input.least())))));
                default -> query.put(input.name(), List.of(input.name().equals("currentsMa") ? "3; 4" : input.name().equals("hours") ? "2" : between(input, share)));
            }
        }
        NumberPages.Page page = page(info, query, imperial);
        assertTrue(page.status() == 200 || page.status() == 400, page.html());
        assertFalse(page.html().contains("NaN"), page.html());
        assertFalse(page.html().contains("Infinity"), page.html());
    }

    private static String between(Input input, double share) {
        return Reader.METRIC.number(input.least() > 0 && share < 0.9 ? input.least() * Math.pow(input.most() / input.least(), share)
                : input.least() + share * (input.most() - input.least()), 9);
    }

    private static NumberPages.Page page(CalculationInfo info, Map<String, List<String>> query, boolean imperial) {
        return new NumberPages(new Html(new Assets())).one(info.id(), new Visit("/numbers/" + info.id(), query, new Reader(imperial, imperial ? Locale.FRANCE : Locale.UK)));
    }

    @Provide
    Arbitrary<CalculationInfo> calculations() {
        return Arbitraries.of(NUMBERS.all());
    }

    @Provide
    Arbitrary<List<Double>> shares() {
        return Arbitraries.doubles().between(0, 1).ofScale(3).list().ofSize(12);
    }
}
