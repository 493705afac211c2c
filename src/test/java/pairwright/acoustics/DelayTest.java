package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.acoustics.Printed.thenPrints;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class DelayTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/delay-time.csv", numLinesToSkip = 1)
    void soundTravelsAsPrinted(double distanceM, String ms, String samples) {
        thenPrints(ms, Delay.timeMs(distanceM));
        thenPrints(samples, Delay.samples(distanceM, 48_000));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/delay-comb.csv", numLinesToSkip = 1)
    void combsAreWherePrinted(double pathDifferenceM, String first, String second, String third, String peak) {
        thenPrints(first, Delay.nullHz(pathDifferenceM, 1));
        thenPrints(second, Delay.nullHz(pathDifferenceM, 2));
        thenPrints(third, Delay.nullHz(pathDifferenceM, 3));
        thenPrints(peak, Delay.peakHz(pathDifferenceM, 1));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/delay-ripple.csv", numLinesToSkip = 1)
    void combsAreAsDeepAsPrinted(double levelDifferenceDb, String peak, String dip, String ripple) {
        thenPrints(peak, Delay.ripplePeakDb(levelDifferenceDb));
        thenPrints(dip, Delay.rippleDipDb(levelDifferenceDb));
        thenPrints(ripple, Delay.rippleDb(levelDifferenceDb));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/delay-ratio.csv", numLinesToSkip = 1)
    void separationAsksForThePrintedRatio(double separationDb, String expected) {
        thenPrints(expected, Delay.distanceRatio(separationDb));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/delay-bounce.csv", numLinesToSkip = 1)
    void theFloorBouncesAsPrinted(
            double distanceM, double sourceHeightM, double microphoneHeightM, String path, String firstNull,
            String relative) {
        double pathM = Delay.bouncePathM(distanceM, sourceHeightM, microphoneHeightM);
        thenPrints(path, pathM);
        thenPrints(firstNull, Delay.nullHz(pathM, 1));
        thenPrints(relative, Delay.bounceRelativeDb(distanceM, sourceHeightM, microphoneHeightM));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/delay-phase.csv", numLinesToSkip = 1)
    void delayTurnsPhaseAsPrinted(double frequencyHz, double delayMs, String expected, String folded) {
        thenPrints(expected, Delay.phaseDegrees(frequencyHz, delayMs));
        thenPrints(folded, Delay.phaseDegrees(frequencyHz, delayMs) % 360);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/delay-speed.csv", numLinesToSkip = 1)
    void soundIsAsFastAsPrinted(double temperatureC, String expected) {
        thenPrints(expected, Delay.speedOfSoundMPerS(temperatureC));
    }

    @Property(tries = 200)
    void atANullTwoEqualArrivalsCancelAndAtAPeakTheyAdd(
            @ForAll @DoubleRange(min = 0.01, max = 5) double pathDifferenceM,
            @ForAll @IntRange(min = 1, max = 5) int order) {
        double delayMs = Delay.timeMs(pathDifferenceM);
        double nullDegrees = Delay.phaseDegrees(Delay.nullHz(pathDifferenceM, order), delayMs);
        double peakDegrees = Delay.phaseDegrees(Delay.peakHz(pathDifferenceM, order), delayMs);
        assertEquals(180, nullDegrees % 360, 1e-6);
        assertEquals(0, Math.IEEEremainder(peakDegrees, 360), 1e-6);
    }

    @Property(tries = 200)
    void rippleShrinksAsTheSecondArrivalDoesAndIsTheSameWhicheverIsLouder(
            @ForAll @DoubleRange(min = 0.1, max = 60) double levelDifferenceDb) {
        assertTrue(Delay.rippleDb(levelDifferenceDb + 1) < Delay.rippleDb(levelDifferenceDb));
        assertEquals(Delay.rippleDb(levelDifferenceDb), Delay.rippleDb(-levelDifferenceDb), 1e-8);
    }

    @Test
    void equalArrivalsCancelAltogether() {
        assertEquals(Double.NEGATIVE_INFINITY, Delay.rippleDipDb(0));
        assertEquals(Double.POSITIVE_INFINITY, Delay.rippleDb(0));
    }

    @Property(tries = 200)
    void theRatioForASeparationGivesThatSeparation(@ForAll @DoubleRange(min = 0, max = 40) double separationDb) {
        double ratio = Delay.distanceRatio(separationDb);
        assertEquals(separationDb, Level.atDistanceDbSpl(94, 1, 1) - Level.atDistanceDbSpl(94, 1, ratio), 1e-9);
    }

    @Property(tries = 200)
    void theBounceIsLongerAndQuieterAndWorksBothWays(
            @ForAll @DoubleRange(min = 0.05, max = 20) double distanceM,
            @ForAll @DoubleRange(min = 0.05, max = 5) double sourceHeightM,
            @ForAll @DoubleRange(min = 0.05, max = 5) double microphoneHeightM) {
        assertTrue(Delay.bouncePathM(distanceM, sourceHeightM, microphoneHeightM) > 0);
        assertTrue(Delay.bounceRelativeDb(distanceM, sourceHeightM, microphoneHeightM) < 0);
        assertEquals(
                Delay.bouncePathM(distanceM, sourceHeightM, microphoneHeightM),
                Delay.bouncePathM(distanceM, microphoneHeightM, sourceHeightM),
                1e-12);
        assertEquals(0, Delay.bouncePathM(distanceM, 0, microphoneHeightM));
    }
}
