package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.acoustics.Printed.thenPrints;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class FirstOrderTest {
    /** The table's "-3 dB" and "-6 dB" arcs are half power and half pressure. */
    private static final double HALF_POWER_DB = 10 * Math.log10(2);
    private static final double HALF_PRESSURE_DB = 20 * Math.log10(2);

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/pattern.csv", numLinesToSkip = 1)
    void patternsAreAsPrinted(
            String name, double coefficient, String at45Db, String at60Db, String at90Db, String at120Db, String at135Db,
            String at180Db, String nullDegrees, String randomEfficiency, String directivityIndexDb, String distanceFactor,
            String frontToBackDb, String halfPowerArcDegrees, String halfPressureArcDegrees) {
        thenPrints(at45Db, FirstOrder.responseDb(coefficient, 45));
        thenPrints(at60Db, FirstOrder.responseDb(coefficient, 60));
        thenPrints(at90Db, FirstOrder.responseDb(coefficient, 90));
        thenPrints(at120Db, FirstOrder.responseDb(coefficient, 120));
        thenPrints(at135Db, FirstOrder.responseDb(coefficient, 135));
        thenPrints(at180Db, FirstOrder.responseDb(coefficient, 180));
        thenPrints(nullDegrees, FirstOrder.nullDegrees(coefficient));
        thenPrints(randomEfficiency, FirstOrder.randomEfficiency(coefficient));
        thenPrints(directivityIndexDb, FirstOrder.directivityIndexDb(coefficient));
        thenPrints(distanceFactor, FirstOrder.distanceFactor(coefficient));
        thenPrints(frontToBackDb, FirstOrder.frontToBackDb(coefficient));
        thenPrints(halfPowerArcDegrees, FirstOrder.arcDegrees(coefficient, HALF_POWER_DB));
        thenPrints(halfPressureArcDegrees, FirstOrder.arcDegrees(coefficient, HALF_PRESSURE_DB));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/pattern-distance.csv", numLinesToSkip = 1)
    void directionalMicrophonesStandFartherAsPrinted(double coefficient, double omniDistanceM, String expected) {
        thenPrints(expected, omniDistanceM * FirstOrder.distanceFactor(coefficient));
    }

    @Test
    void noNullIsDeeperThanTheFloor() {
        assertEquals(FirstOrder.PRACTICAL_NULL_DB, FirstOrder.responseDb(0.5, 180, FirstOrder.PRACTICAL_NULL_DB));
        assertEquals(FirstOrder.responseDb(0.5, 90), FirstOrder.responseDb(0.5, 90, FirstOrder.PRACTICAL_NULL_DB));
    }

    @Test
    void theNamedPatternsAreTheBestOfTheirKind() {
        double hypercardioidDb = FirstOrder.directivityIndexDb(FirstOrder.HYPERCARDIOID);
        double supercardioidDb = FirstOrder.frontToBackDb(FirstOrder.SUPERCARDIOID);
        for (double coefficient = 0; coefficient <= 1; coefficient += 0.001) {
            assertTrue(FirstOrder.directivityIndexDb(coefficient) <= hypercardioidDb + 1e-12);
            assertTrue(FirstOrder.frontToBackDb(coefficient) <= supercardioidDb + 1e-12);
        }
    }

    @Property(tries = 300)
    void leftAndRightAreAlikeAndSoIsAFullTurn(
            @ForAll @DoubleRange(min = 0, max = 1) double coefficient,
            @ForAll @DoubleRange(min = -180, max = 180) double angleDegrees) {
        double response = FirstOrder.response(coefficient, angleDegrees);
        assertEquals(response, FirstOrder.response(coefficient, -angleDegrees));
        assertEquals(response, FirstOrder.response(coefficient, angleDegrees + 360), 1e-12);
    }

    @Property(tries = 200)
    void nothingIsLouderThanTheFrontAndAnOmniHearsAllAlike(
            @ForAll @DoubleRange(min = 0, max = 1) double coefficient,
            @ForAll @DoubleRange(min = -360, max = 360) double angleDegrees) {
        assertTrue(FirstOrder.responseDb(coefficient, angleDegrees) <= 1e-12);
        assertEquals(0, FirstOrder.responseDb(FirstOrder.OMNI, angleDegrees));
    }

    @Property(tries = 200)
    void theNullIsWhereNothingIsHeard(@ForAll @DoubleRange(min = 0, max = 0.5) double coefficient) {
        double nullDegrees = FirstOrder.nullDegrees(coefficient).orElseThrow();
        assertEquals(0, FirstOrder.response(coefficient, nullDegrees), 1e-7);
    }

    @Property(tries = 200)
    void theResponseAtTheEdgeOfAnArcIsTheDrop(
            @ForAll @DoubleRange(min = 0, max = 0.99) double coefficient,
            @ForAll @DoubleRange(min = 0.1, max = 40) double dropDb) {
        FirstOrder.arcDegrees(coefficient, dropDb).ifPresent(arcDegrees ->
                assertEquals(-dropDb, FirstOrder.responseDb(coefficient, arcDegrees / 2), 1e-4));
    }

    @Property(tries = 50)
    void efficiencyAndFrontToBackAreTheIntegralsOverTheSphere(
            @ForAll @DoubleRange(min = 0, max = 1) double coefficient) {
        DoubleUnaryOperator power = degrees -> Math.pow(FirstOrder.response(coefficient, degrees), 2);
        double front = Sphere.share(power, 0, 90);
        double back = Sphere.share(power, 90, 180);
        assertEquals(front + back, FirstOrder.randomEfficiency(coefficient), 1e-5);
        assertEquals(10 * Math.log10(front / back), FirstOrder.frontToBackDb(coefficient), 1e-3);
    }
}
