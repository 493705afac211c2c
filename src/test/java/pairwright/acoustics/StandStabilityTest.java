package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.acoustics.Printed.thenPrints;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import pairwright.acoustics.StandStability.Boom;
import pairwright.acoustics.StandStability.Load;
import pairwright.acoustics.StandStability.Stand;

class StandStabilityTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/stand-ratio.csv", numLinesToSkip = 1)
    void standsTipAsPrinted(double standKg, double footRadiusM, int legs, Boom boom, String loads, String expected) {
        thenPrints(expected, StandStability.ratio(new Stand(standKg, footRadiusM, legs), boom, givenLoads(loads)));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/stand-largest-load.csv", numLinesToSkip = 1)
    void theLargestLoadIsAsPrinted(double standKg, double footRadiusM, double reachM, Boom boom, String expected) {
        thenPrints(expected, StandStability.largestLoadKg(new Stand(standKg, footRadiusM, 3), boom, reachM, 1));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/boundary-plate.csv", numLinesToSkip = 1)
    void platesLoseBassWherePrinted(double sideM, String expected) {
        thenPrints(expected, BoundaryPlate.lowerHz(sideM));
    }

    @Test
    void theClutchHoldsMicrophoneAndHalfTheArm() {
        assertEquals(9.8, StandStability.clutchMomentNm(1, 0.8, 0.5), 0.05);
    }

    @Test
    void betweenLegsItFallsAlongTheBoomAndOverALegSideways() {
        Stand tripod = new Stand(2.5, 0.35, 3);
        assertEquals(0, StandStability.worstEdgeDegrees(tripod, Boom.BETWEEN_LEGS, new Load(1, 0.8)), 1e-9);
        assertEquals(60, StandStability.worstEdgeDegrees(tripod, Boom.OVER_LEG, new Load(1, 0.8)), 1e-9);
    }

    @Test
    void aCounterweightTipsTheStandBackwardOnceTheMicrophoneIsOff() {
        Stand tripod = new Stand(2.5, 0.35, 3);
        Load counterweight = new Load(4, -0.5);
        assertTrue(StandStability.ratio(tripod, Boom.BETWEEN_LEGS, counterweight, new Load(1, 0.8)) > 1);
        assertTrue(StandStability.ratio(tripod, Boom.OVER_LEG, counterweight) < 1);
        assertEquals(180, StandStability.worstEdgeDegrees(tripod, Boom.OVER_LEG, counterweight), 1e-9);
    }

    @Test
    void withinTheFeetNothingTips() {
        Stand base = new Stand(5, 0.2, Stand.ROUND_BASE);
        assertEquals(Double.POSITIVE_INFINITY, StandStability.ratio(base, Boom.OVER_LEG, new Load(3, 0.1)));
        assertEquals(Double.POSITIVE_INFINITY, StandStability.largestLoadKg(base, Boom.OVER_LEG, 0.1, 1));
    }

    @Property(tries = 200)
    void farOutIsLessStableAndBetweenLegsNoBetterThanOverOne(
            @ForAll @DoubleRange(min = 0.4, max = 2) double reachM,
            @ForAll @DoubleRange(min = 0.1, max = 3) double loadKg,
            @ForAll @IntRange(min = 3, max = 6) int legs) {
        Stand stand = new Stand(5, 0.35, legs);
        double between = StandStability.ratio(stand, Boom.BETWEEN_LEGS, new Load(loadKg, reachM));
        assertTrue(between <= StandStability.ratio(stand, Boom.OVER_LEG, new Load(loadKg, reachM)));
        assertTrue(StandStability.ratio(stand, Boom.BETWEEN_LEGS, new Load(loadKg, reachM * 1.2)) < between);
    }

    @Property(tries = 200)
    void theLargestLoadGivesTheWantedRatio(
            @ForAll @DoubleRange(min = 0.5, max = 2) double reachM,
            @ForAll @DoubleRange(min = 1, max = 3) double wantedRatio,
            @ForAll Boom boom) {
        Stand stand = new Stand(10, 0.4, 3);
        Load arm = new Load(0.5, reachM / 2);
        double largestKg = StandStability.largestLoadKg(stand, boom, reachM, wantedRatio, arm);
        assertTrue(largestKg > 0);
        assertEquals(wantedRatio, StandStability.ratio(stand, boom, arm, new Load(largestKg, reachM)), 1e-9);
    }

    private static Load[] givenLoads(String loads) {
        return Arrays.stream(loads.split(";"))
                .map(load -> load.split("@"))
                .map(load -> new Load(Double.parseDouble(load[0]), Double.parseDouble(load[1])))
                .toArray(Load[]::new);
    }
}
