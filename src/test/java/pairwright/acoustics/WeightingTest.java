package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pairwright.acoustics.Printed.thenPrints;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class WeightingTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/weighting.csv", numLinesToSkip = 1)
    void weightingIsAsPrintedAtExactAndNominalCentres(double nominalHz, String exact, String nominal) {
        double exactHz = 1000 * Math.pow(10, 0.3 * Math.rint(Math.log(nominalHz / 1000) / Math.log(2)));
        thenPrints(exact, Weighting.aWeightingDb(exactHz));
        thenPrints(nominal, Weighting.aWeightingDb(nominalHz));
    }

    @Test
    void octavesAreWeightedAtTheirExactCentres() {
        assertEquals(-26.2, Weighting.octaveWeightingDb().at(0), 0.05);
        assertEquals(0, Weighting.octaveWeightingDb().at(4), 1e-9);
        assertEquals(-6.6, Weighting.octaveWeightingDb().at(8), 0.05);
    }

    @Test
    void aSoundInOneOctaveIsWeightedAsThatOctave() {
        OctaveCurve bass = OctaveCurve.of(100, -200, -200, -200, -200, -200, -200, -200, -200);
        assertEquals(Weighting.octaveWeightingDb().at(0), Weighting.aWeightedOffsetDb(bass), 1e-6);
    }

    @Property(tries = 100)
    void onlyTheShapeOfASpectrumMatters(@ForAll @DoubleRange(min = -100, max = 100) double shiftDb) {
        OctaveCurve spectrum = OctaveCurve.of(80, 85, 82, 78, 75, 70, 64, 55, 40);
        assertEquals(
                Weighting.aWeightedOffsetDb(spectrum), Weighting.aWeightedOffsetDb(spectrum.plus(shiftDb)), 1e-9);
    }
}
