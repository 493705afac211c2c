package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class OctaveCurveTest {
    private static final OctaveCurve RISING = OctaveCurve.of(0, 1, 2, 3, 4, 5, 6, 7, 8);

    @Test
    void bandsAreTheNominalOctaves() {
        double[] centresHz = new double[Octaves.COUNT];
        for (int band = 0; band < Octaves.COUNT; band++) {
            centresHz[band] = Octaves.centreHz(band);
        }
        assertArrayEquals(new double[] {63, 125, 250, 500, 1000, 2000, 4000, 8000, 16000}, centresHz);
    }

    @Test
    void curvesAddSubtractScaleAndShift() {
        assertEquals(OctaveCurve.of(0, 2, 4, 6, 8, 10, 12, 14, 16), RISING.plus(RISING));
        assertEquals(OctaveCurve.ZERO, RISING.minus(RISING));
        assertEquals(OctaveCurve.of(0, -1, -2, -3, -4, -5, -6, -7, -8), RISING.scaled(-1));
        assertEquals(OctaveCurve.of(-4, -3, -2, -1, 0, 1, 2, 3, 4), RISING.relativeToBand(4));
        assertEquals(OctaveCurve.of(0, 1, 4, 9, 16, 25, 36, 49, 64), RISING.map(value -> value * value));
    }

    @Test
    void meansAreOverTheBandsAsked() {
        assertEquals(3, RISING.meanDb(2, 4), 1e-12);
        assertEquals(8, RISING.meanDb(8, 8), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> RISING.meanDb(4, 3));
        OctaveCurve weights = OctaveCurve.of(1, 0, 0, 0, 0, 0, 0, 0, 3);
        assertEquals(6, RISING.weightedMean(weights), 1e-12);
        assertEquals(Math.sqrt(48), RISING.weightedRms(weights), 1e-12);
    }

    @Test
    void weightsAreNeverNegativeNorAllNought() {
        assertThrows(IllegalArgumentException.class, () -> RISING.weightedMean(OctaveCurve.ZERO));
        assertThrows(IllegalArgumentException.class, () -> RISING.weightedRms(RISING.plus(-1)));
    }

    @Test
    void aCurveHasNineFiniteValues() {
        assertThrows(IllegalArgumentException.class, () -> OctaveCurve.of(1, 2, 3));
        assertThrows(IllegalArgumentException.class, () -> OctaveCurve.of(0, 0, 0, 0, 0, 0, 0, 0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> RISING.map(Math::log));
    }

    @Test
    void aCurveCannotBeChangedFromOutside() {
        double[] nine = {1, 1, 1, 1, 1, 1, 1, 1, 1};
        OctaveCurve curve = OctaveCurve.of(nine);
        nine[0] = 5;
        curve.toArray()[1] = 5;
        assertEquals(OctaveCurve.flat(1), curve);
    }

    @Test
    void equalValuesAreEqualCurves() {
        assertEquals(RISING.hashCode(), OctaveCurve.of(RISING.toArray()).hashCode());
        assertEquals(OctaveCurve.ZERO, OctaveCurve.flat(-0.0));
        assertNotEquals(RISING, OctaveCurve.ZERO);
        assertEquals("[0.0, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0]", RISING.toString());
    }

    @Property(tries = 100)
    void addingIsCommutativeAndUndone(
            @ForAll @Size(9) List<@DoubleRange(min = -100, max = 100) Double> first,
            @ForAll @Size(9) List<@DoubleRange(min = -100, max = 100) Double> second) {
        OctaveCurve one = OctaveCurve.of(first.stream().mapToDouble(value -> value).toArray());
        OctaveCurve two = OctaveCurve.of(second.stream().mapToDouble(value -> value).toArray());
        assertEquals(one.plus(two), two.plus(one));
        assertArrayEquals(one.toArray(), one.plus(two).minus(two).toArray(), 1e-9);
    }
}
