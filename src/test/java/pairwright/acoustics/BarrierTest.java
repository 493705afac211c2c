package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarrierTest {
    /** The curve of Kurze and Anderson at Fresnel numbers, worked by hand. */
    @ParameterizedTest
    @CsvSource({"-1, 0", "-0.2, 0", "-0.1, 2.86", "0, 5", "0.1, 6.59", "0.5, 10.47", "1, 13.10", "2, 16.01", "3, 17.76", "10, 20"})
    void oneEdgeTakesWhatTheCurveSays(double fresnel, double expectedDb) {
        double frequencyHz = 1000;
        double detourM = fresnel * Delay.SPEED_OF_SOUND_M_PER_S / 2 / frequencyHz;
        assertEquals(expectedDb, Barrier.edgeDb(detourM, frequencyHz), 0.006);
    }

    @Test
    void soundThatComesRoundThreeEdgesAddsUp() {
        assertEquals(Barrier.edgeDb(0.2, 2000) - 10 * Math.log10(3), Barrier.screenDb(new double[] {0.2, 0.2, 0.2}, 2000), 1e-9);
        assertEquals(0, Barrier.screenDb(new double[] {-0.5, 0.4}, 1000), "where it passes beside the screen nothing is taken");
        assertThrows(IllegalArgumentException.class, () -> Barrier.screenDb(new double[0], 1000));
    }

    @Property
    void aLongerWayRoundNeverLetsMoreThrough(@ForAll @DoubleRange(min = -3, max = 3) double detourM, @ForAll @DoubleRange(min = 0, max = 1) double moreM,
            @ForAll @DoubleRange(min = 40, max = 16000) double frequencyHz) {
        assertTrue(Barrier.edgeDb(detourM + moreM, frequencyHz) >= Barrier.edgeDb(detourM, frequencyHz) - 1e-9);
        assertTrue(Barrier.edgeDb(detourM, frequencyHz) <= Barrier.MOST_DB);
    }
}
