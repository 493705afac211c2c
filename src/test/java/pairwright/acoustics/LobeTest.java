package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class LobeTest {
    @Property(tries = 50)
    void theLobeHasTheDirectivityIndexItIsGiven(@ForAll @DoubleRange(min = 0, max = 20) double directivityIndexDb) {
        double average = Sphere.share(
                degrees -> Math.pow(10, Lobe.responseDb(directivityIndexDb, degrees) / 10), 0, 180);
        assertEquals(directivityIndexDb, -10 * Math.log10(average), 0.01);
    }

    @Property(tries = 200)
    void theLobeFallsFromFrontToBackAlikeOnBothSides(
            @ForAll @DoubleRange(min = 0.5, max = 20) double directivityIndexDb,
            @ForAll @DoubleRange(min = 0, max = 170) double angleDegrees) {
        double levelDb = Lobe.responseDb(directivityIndexDb, angleDegrees);
        assertEquals(levelDb, Lobe.responseDb(directivityIndexDb, -angleDegrees));
        assertTrue(Lobe.responseDb(directivityIndexDb, angleDegrees + 5) < levelDb);
    }

    @Test
    void anIndexOfZeroIsAnOmniAndTheCardioidsIndexIsNearlyACardioid() {
        assertEquals(0, Lobe.responseDb(0, 180));
        assertEquals(-6.02, Lobe.responseDb(10 * Math.log10(3), 90), 0.005);
    }

    @Test
    void theBackIsSilentUnlessAFloorIsGiven() {
        assertEquals(Double.NEGATIVE_INFINITY, Lobe.responseDb(10, 180));
        assertEquals(-22, Lobe.responseDb(10, 180, FirstOrder.PRACTICAL_NULL_DB));
    }
}
