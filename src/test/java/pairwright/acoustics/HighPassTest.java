package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HighPassTest {
    /** Of the magnitude of a second-order Butterworth filter, 1/sqrt(1 + (fc/f)^4). */
    @ParameterizedTest
    @CsvSource({"100, 100, 3.0103", "100, 50, 12.3045", "100, 200, 0.2633", "80, 82.4, 2.7611"})
    void lossIsThatOfASecondOrderFilter(double cornerHz, double frequencyHz, double lossDb) {
        assertEquals(lossDb, HighPass.lossDb(cornerHz, frequencyHz), 5e-4);
    }

    @ParameterizedTest
    @CsvSource({"41.2, 1", "82.4, 1", "196, 0.5"})
    void theCornerTakesExactlyWhatMayBeLost(double lowestHz, double lossDb) {
        assertEquals(lossDb, HighPass.lossDb(HighPass.cornerHz(lowestHz, lossDb), lowestHz), 1e-9);
    }

    @Test
    void nothingBelowZeroIsTaken() {
        assertThrows(IllegalArgumentException.class, () -> HighPass.lossDb(0, 100));
        assertThrows(IllegalArgumentException.class, () -> HighPass.cornerHz(100, 0));
    }
}
