package pairwright.session.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Bounds by prices, held to the best plans. */
class PricesTest {
    @ParameterizedTest
    @EnumSource(Instances.Mood.class)
    void theBestPlanIsWithinTheBoundAndSoIsEachOfItsChoices(Instances.Mood mood) {
        int plans = 0;
        for (int seed = 0; seed < 40; seed++) {
            Problem problem = Instances.of(mood, Instances.Size.SMALL, seed);
            Optional<Solution> found = new Allocator().best(problem);
            if (found.isPresent()) {
                plans++;
                Solution best = found.get();
                for (long known : new long[] {best.centipoints(), best.centipoints() - 200}) {
                    Prices prices = new Pricing(problem).prices(problem.kept(), known);
                    double spare = prices.boundCentipoints() - best.centipoints();
                    assertTrue(spare >= 0, "seed " + seed + ": the bound is " + spare + " below the best");
                    for (int seat = 0; seat < best.choices().size(); seat++) {
                        double behind = prices.behindCentipoints(seat, best.choices().get(seat));
                        assertTrue(behind <= spare, "seed " + seed + ", seat " + seat + ": " + behind + " behind and " + spare + " to spare");
                    }
                }
            }
        }
        assertTrue(plans > 0);
    }

    @Test
    void whatTwoWantIsPaidForByBoth() {
        Choice good = new Choice("good", Choice.Use.FULL, 1000, Map.of("one", 1), List.of(), List.of());
        Choice plain = new Choice("plain", Choice.Use.FULL, 600, Map.of(), List.of(), List.of());
        Problem problem = new Problem(List.of(new Seat("a", true, List.of(good, plain)), new Seat("b", true, List.of(good, plain))), List.of(new Cap("one", 1, 1)), List.of());
        assertEquals(1600, new Pricing(problem).prices(List.of(), 1600).boundCentipoints(), 1.1, "both at best would be 2000");
    }

    @Test
    void whatIsWorthNothingInAPlanIsFarBehind() {
        Choice good = new Choice("good", Choice.Use.FULL, 1000, Map.of(), List.of(), List.of());
        Choice poor = new Choice("poor", Choice.Use.FULL, 100, Map.of(), List.of(), List.of());
        Prices prices = new Pricing(new Problem(List.of(new Seat("a", true, List.of(poor, good))), List.of(), List.of())).prices(List.of(), 1000);
        assertEquals(900, prices.behindCentipoints(0, 0), 0.1);
        assertEquals(0, prices.behindCentipoints(0, 1));
    }
}
