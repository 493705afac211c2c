package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.acoustics.Printed.thenPrints;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ProximityTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/proximity-boost.csv", numLinesToSkip = 1)
    void bassRisesAsPrinted(
            double coefficient, double distanceM, double frequencyHz, double angleDegrees, String expected) {
        thenPrints(expected, Proximity.boostDb(coefficient, distanceM, frequencyHz, angleDegrees));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/proximity-corner.csv", numLinesToSkip = 1)
    void theRiseBeginsAsPrinted(double coefficient, double distanceM, String expected) {
        thenPrints(expected, Proximity.cornerHz(coefficient, distanceM));
    }

    @Property(tries = 200)
    void closerIsNeverLessBass(
            @ForAll @DoubleRange(min = 0, max = 1) double coefficient,
            @ForAll @DoubleRange(min = 0.01, max = 5) double distanceM,
            @ForAll @DoubleRange(min = 20, max = 2000) double frequencyHz,
            @ForAll @DoubleRange(min = -180, max = 180) double angleDegrees) {
        double boostDb = Proximity.boostDb(coefficient, distanceM, frequencyHz, angleDegrees);
        assertTrue(boostDb >= Proximity.boostDb(coefficient, distanceM * 1.5, frequencyHz, angleDegrees));
        assertTrue(boostDb >= Proximity.boostDb(coefficient, distanceM, frequencyHz * 1.5, angleDegrees));
        assertEquals(boostDb, Proximity.boostDb(coefficient, distanceM, frequencyHz, -angleDegrees));
    }

    @Property(tries = 200)
    void anOmniHasNoneAndNoPatternHasAnyFromTheSide(
            @ForAll @DoubleRange(min = 0, max = 1) double coefficient,
            @ForAll @DoubleRange(min = 0.01, max = 5) double distanceM,
            @ForAll @DoubleRange(min = 20, max = 20_000) double frequencyHz,
            @ForAll @DoubleRange(min = -180, max = 180) double angleDegrees) {
        assertEquals(0, Proximity.boostDb(1, distanceM, frequencyHz, angleDegrees));
        assertEquals(0, Proximity.boostDb(coefficient, distanceM, frequencyHz, 90));
        assertEquals(0, Proximity.boostDb(coefficient, distanceM, frequencyHz, -90));
    }

    @Property(tries = 200)
    void farAwayThereIsNoneAndAtTheCornerThreeDecibels(
            @ForAll @DoubleRange(min = 0, max = 0.95) double coefficient,
            @ForAll @DoubleRange(min = 0.01, max = 2) double distanceM) {
        assertEquals(0, Proximity.boostDb(coefficient, 500, 100, 0), 0.001);
        double cornerHz = Proximity.cornerHz(coefficient, distanceM);
        assertEquals(10 * Math.log10(2), Proximity.boostDb(coefficient, distanceM, cornerHz, 0), 1e-9);
    }

    @Test
    void plannersCountOnNoMoreThanTheCap() {
        assertEquals(Proximity.PLANNING_CAP_DB, Proximity.cappedBoostDb(0.5, 0.02, 100, 0));
        assertEquals(Proximity.PLANNING_CAP_DB, Proximity.cappedBoostDb(0.5, 0.02, 100, 180));
        assertEquals(Proximity.boostDb(0.5, 0.1, 100, 0), Proximity.cappedBoostDb(0.5, 0.1, 100, 0));
    }
}
