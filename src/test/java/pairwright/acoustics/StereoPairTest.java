package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.acoustics.Printed.thenPrints;
import static pairwright.acoustics.StereoPair.Model.FULL_AT_15_DB;
import static pairwright.acoustics.StereoPair.Model.FULL_AT_18_DB;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class StereoPairTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/stereo-differences.csv", numLinesToSkip = 1)
    void differencesAreAsPrinted(
            double coefficient, double spacingM, double includedDegrees, double angleDegrees, String levelDb,
            String timeMs) {
        thenPrints(levelDb, StereoPair.levelDifferenceDb(coefficient, includedDegrees, angleDegrees));
        thenPrints(timeMs, StereoPair.timeDifferenceMs(spacingM, angleDegrees));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/stereo-recording-published.csv", numLinesToSkip = 1)
    void recordingAnglesAreAsPrintedAndNearThePublishedOnes(
            double coefficient, double spacingM, double includedDegrees, StereoPair.Model model, String expected,
            double publishedDegrees) {
        double degrees = StereoPair.recordingDegrees(model, coefficient, spacingM, includedDegrees).orElseThrow();
        thenPrints(expected, scanned(degrees));
        assertEquals(publishedDegrees, degrees, 10);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/stereo-recording.csv", numLinesToSkip = 1)
    void recordingAnglesOfBothModelsAreAsPrinted(
            double coefficient, double spacingM, double includedDegrees, String fifteenDb, String eighteenDb) {
        double fifteen =
                StereoPair.recordingDegrees(FULL_AT_15_DB, coefficient, spacingM, includedDegrees).orElseThrow();
        double eighteen =
                StereoPair.recordingDegrees(FULL_AT_18_DB, coefficient, spacingM, includedDegrees).orElseThrow();
        thenPrints(fifteenDb, scanned(fifteen));
        thenPrints(eighteenDb, scanned(eighteen));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/stereo-from-mid-side.csv", numLinesToSkip = 1)
    void midSideIsThePrintedPair(
            double midCoefficient, double sideToMidRatio, String coefficient, String includedDegrees, String gainRatio,
            String sideToMidDb) {
        StereoPair.VirtualPair pair = StereoPair.fromMidSide(midCoefficient, sideToMidRatio);
        thenPrints(coefficient, pair.coefficient());
        thenPrints(includedDegrees, pair.includedDegrees());
        thenPrints(gainRatio, pair.gainRatio());
        thenPrints(sideToMidDb, 20 * Math.log10(sideToMidRatio));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/stereo-to-mid-side.csv", numLinesToSkip = 1)
    void aPairIsThePrintedMidSide(
            double coefficient, double includedDegrees, String midCoefficient, String sideToMidRatio) {
        StereoPair.MidSide midSide = StereoPair.toMidSide(coefficient, includedDegrees);
        thenPrints(midCoefficient, midSide.midCoefficient());
        thenPrints(sideToMidRatio, midSide.sideToMidRatio());
    }

    @Property(tries = 200)
    void thereAndBackIsTheSamePair(
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double coefficient,
            @ForAll @DoubleRange(min = 10, max = 170) double includedDegrees) {
        StereoPair.MidSide midSide = StereoPair.toMidSide(coefficient, includedDegrees);
        StereoPair.VirtualPair pair =
                StereoPair.fromMidSide(midSide.midCoefficient(), midSide.sideToMidRatio());
        assertEquals(coefficient, pair.coefficient(), 1e-9);
        assertEquals(includedDegrees, pair.includedDegrees(), 1e-6);
    }

    @Property(tries = 200)
    void midPlusSideIsWhatTheVirtualMicrophoneHears(
            @ForAll @DoubleRange(min = 0, max = 1) double midCoefficient,
            @ForAll @DoubleRange(min = 0.1, max = 3) double sideToMidRatio,
            @ForAll @DoubleRange(min = -180, max = 180) double angleDegrees) {
        StereoPair.VirtualPair pair = StereoPair.fromMidSide(midCoefficient, sideToMidRatio);
        double heard = FirstOrder.response(midCoefficient, angleDegrees)
                + sideToMidRatio * Math.sin(Math.toRadians(angleDegrees));
        double virtual = pair.gainRatio()
                * FirstOrder.response(pair.coefficient(), angleDegrees - pair.includedDegrees() / 2);
        assertEquals(heard, virtual, 1e-9);
    }

    @Property(tries = 200)
    void leftAndRightDifferBySignOnly(
            @ForAll @DoubleRange(min = 0, max = 1) double coefficient,
            @ForAll @DoubleRange(min = 0, max = 0.6) double spacingM,
            @ForAll @DoubleRange(min = 0, max = 180) double includedDegrees,
            @ForAll @DoubleRange(min = 0, max = 180) double angleDegrees) {
        assertEquals(
                StereoPair.levelDifferenceDb(coefficient, includedDegrees, angleDegrees),
                -StereoPair.levelDifferenceDb(coefficient, includedDegrees, -angleDegrees),
                1e-6);
        assertEquals(
                StereoPair.timeDifferenceMs(spacingM, angleDegrees),
                -StereoPair.timeDifferenceMs(spacingM, -angleDegrees),
                1e-12);
    }

    @Property(tries = 30)
    void moreAngleOrSpacingRecordsLess(
            @ForAll @DoubleRange(min = 0.2, max = 0.4) double spacingM,
            @ForAll @DoubleRange(min = 60, max = 120) double includedDegrees,
            @ForAll StereoPair.Model model) {
        double degrees = StereoPair.recordingDegrees(model, 0.5, spacingM, includedDegrees).orElseThrow();
        assertTrue(StereoPair.recordingDegrees(model, 0.5, spacingM + 0.05, includedDegrees).orElseThrow() < degrees);
        assertTrue(StereoPair.recordingDegrees(model, 0.5, spacingM, includedDegrees + 10).orElseThrow() < degrees);
    }

    @Test
    void twoOmnisCloseTogetherNeverReachTheLoudspeakers() {
        assertTrue(StereoPair.recordingDegrees(FULL_AT_15_DB, 1, 0.2, 0).isEmpty());
        assertTrue(StereoPair.recordingDegrees(FULL_AT_18_DB, 0.5, 0, 0).isEmpty());
    }

    /** The tables were made by stepping the source a hundredth of a degree at a time until the image was past the edge. */
    private static double scanned(double recordingDegrees) {
        return 2 * Math.ceil(recordingDegrees / 2 * 100) / 100;
    }

    @Test
    void figureEightsBackToBackHaveNoMid() {
        assertThrows(IllegalArgumentException.class, () -> StereoPair.toMidSide(0, 180));
    }
}
