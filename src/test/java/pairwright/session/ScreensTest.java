package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.acoustics.Barrier;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.model.Point;

class ScreensTest {
    /** From (4, 0) to (4, 6), 1.8 m high. */
    private static final Gobo WALL = new Gobo("a", 4, 0, 4, 6, 1.8);
    private static final Screens SCREENS = new Screens(List.of(WALL));

    @Test
    void theLongerWayIsMeasuredRoundThreeEdges() {
        Point from = InRoom.at(3, 3, 1.2);
        Point to = InRoom.at(5, 3, 1.2);
        double overM = 2 * Math.hypot(1, 0.6) - 2; // 0.332 m
        double roundM = 2 * Math.hypot(1, 3) - 2; // 4.325 m, at either end
        for (int band = 0; band < Octaves.COUNT; band++) {
            assertEquals(Barrier.screenDb(new double[] {overM, roundM, roundM}, Octaves.centreHz(band)), SCREENS.takenDb(from, to).at(band), 1e-9);
        }
        assertEquals(13.38, SCREENS.takenDb(from, to).at(4), 0.01, "2 x 0.332 x 1000 / 343 = 1.94 over the top: 15.86 dB; 20 at either end");
    }

    @Test
    void aWayAcrossBendsWhereItIsShortest() {
        Point from = InRoom.at(2, 1, 1.2);
        Point to = InRoom.at(5, 4, 1.2);
        // unfolded over the upper edge: hypot(2, 0.6) + hypot(1, 0.6) off it and 3 m along it
        double overM = Math.hypot(Math.hypot(2, 0.6) + Math.hypot(1, 0.6), 3) - Math.sqrt(18);
        // crosses at y = 3; round the near end by (4, 0), round the far end by (4, 6)
        double nearM = Math.hypot(2, 1) + Math.hypot(1, 4) - Math.sqrt(18);
        double farM = Math.hypot(2, 5) + Math.hypot(1, 2) - Math.sqrt(18);
        for (int band = 0; band < Octaves.COUNT; band++) {
            assertEquals(Barrier.screenDb(new double[] {overM, nearM, farM}, Octaves.centreHz(band)), SCREENS.takenDb(from, to).at(band), 1e-9);
        }
    }

    @ParameterizedTest
    @CsvSource({"3, 3, 1, 2, 5, 1, on one side of it", "3, 3, 4, 5, 3, 4, far above", "3, 9, 1, 5, 9, 1, well past its end", "1, 3, 1, 4, 3, 1, in its plane"})
    void nothingIsTakenWhereItIsOutOfTheWay(double x1M, double y1M, double z1M, double x2M, double y2M, double z2M, String why) {
        OctaveCurve taken = SCREENS.takenDb(InRoom.at(x1M, y1M, z1M), InRoom.at(x2M, y2M, z2M));
        for (int band = 3; band < Octaves.COUNT; band++) {
            assertEquals(0, taken.at(band), 1e-9, why);
        }
    }

    @Test
    void soundThatPassesJustOverTheEdgeLosesSomeOfItsBass() {
        OctaveCurve taken = SCREENS.takenDb(InRoom.at(3, 3, 1.9), InRoom.at(5, 3, 1.9));
        assertTrue(taken.at(0) > 3 && taken.at(0) < 5, taken::toString);
        assertTrue(taken.at(8) < 1, taken::toString);
    }

    @Test
    void ofTwoBetweenTheStrongerCountsAlone() {
        Gobo low = new Gobo("b", 4.5, 0, 4.5, 6, 1.3);
        Point from = InRoom.at(3, 3, 1.2);
        Point to = InRoom.at(5, 3, 1.2);
        assertEquals(SCREENS.takenDb(from, to), new Screens(List.of(WALL, low)).takenDb(from, to));
        assertEquals(OctaveCurve.ZERO, new Screens(List.of()).takenDb(from, to));
        assertEquals(OctaveCurve.ZERO, new Screens(List.of(new Gobo("c", 4, 3, 4, 3, 2))).takenDb(from, to), "one without length is none");
    }

    @Property(tries = 300)
    void itTakesTheSameBothWaysAndNeverMoreThanAScreenCan(@ForAll @DoubleRange(min = 0, max = 8) double x1M, @ForAll @DoubleRange(min = 0, max = 8) double y1M,
            @ForAll @DoubleRange(min = 0, max = 3) double z1M, @ForAll @DoubleRange(min = 0, max = 8) double x2M, @ForAll @DoubleRange(min = 0, max = 8) double y2M) {
        Point from = InRoom.at(x1M, y1M, z1M);
        Point to = InRoom.at(x2M, y2M, 1.3);
        OctaveCurve there = SCREENS.takenDb(from, to);
        OctaveCurve back = SCREENS.takenDb(to, from);
        for (int band = 0; band < Octaves.COUNT; band++) {
            assertEquals(there.at(band), back.at(band), 1e-6);
            assertTrue(there.at(band) >= 0 && there.at(band) <= Barrier.MOST_DB);
        }
    }
}
