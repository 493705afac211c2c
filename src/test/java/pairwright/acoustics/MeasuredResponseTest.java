package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

class MeasuredResponseTest {
    private static final double[] THIRDS_HZ = {50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630, 800, 1000, 1250, 1600, 2000, 2500,
        3150, 4000, 5000, 6300, 8000, 10000, 12500, 16000, 20000};

    /** The expected values come from summing 20000 slices of each octave. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/acoustics/measured-response.csv", numLinesToSkip = 1, maxCharsPerColumn = 8192)
    void octavesAreAsSummedSliceBySlice(ArgumentsAccessor line) {
        String[] points = line.getString(1).split(" ");
        OctaveCurve octaves = MeasuredResponse.octavesDb(
                Arrays.stream(points).mapToDouble(point -> Double.parseDouble(point.split(":")[0])).toArray(),
                Arrays.stream(points).mapToDouble(point -> Double.parseDouble(point.split(":")[1])).toArray());
        for (int band = 0; band < Octaves.COUNT; band++) {
            assertEquals(line.getDouble(2 + band), octaves.at(band), 0.006, "at " + Octaves.centreHz(band) + " Hz");
        }
    }

    @Property(tries = 200)
    void anOctaveLiesBetweenItsLowestAndHighestPointAndAShiftChangesNothing(
            @ForAll @Size(27) List<@DoubleRange(min = -30, max = 30) Double> levels, @ForAll @DoubleRange(min = -60, max = 60) double shiftDb) {
        double[] levelDb = levels.stream().mapToDouble(level -> level).toArray();
        OctaveCurve octaves = MeasuredResponse.octavesDb(THIRDS_HZ, levelDb);
        double least = Arrays.stream(levelDb).min().orElseThrow();
        double most = Arrays.stream(levelDb).max().orElseThrow();
        OctaveCurve shifted = MeasuredResponse.octavesDb(THIRDS_HZ, Arrays.stream(levelDb).map(db -> db + shiftDb).toArray());
        for (int band = 0; band < Octaves.COUNT; band++) {
            assertTrue(Math.abs(octaves.at(band)) <= most - least + 1e-9);
            assertEquals(octaves.at(band), shifted.at(band), 1e-6);
        }
        assertEquals(0, octaves.at(4));
    }

    @Test
    void frequenciesThatDoNotRiseAreRefusedWithTheirPlace() {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> MeasuredResponse.octavesDb(new double[] {100, 200, 200}, new double[] {0, 0, 0}));
        assertEquals("frequencyHz[2] must be more than the one before, 200.0, but was 200.0", refused.getMessage());
        assertThrows(IllegalArgumentException.class, () -> MeasuredResponse.octavesDb(new double[] {100, 200}, new double[] {0}));
        assertThrows(IllegalArgumentException.class, () -> MeasuredResponse.octavesDb(new double[] {100}, new double[] {0}));
    }
}
