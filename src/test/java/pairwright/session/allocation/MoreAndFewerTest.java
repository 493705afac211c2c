package pairwright.session.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;

class MoreAndFewerTest {
    private final Allocator allocator = new Allocator();

    @Property(tries = 15, shrinking = ShrinkingMode.OFF)
    void oneMoreOfAnythingNeverLowersAPlanAndOneFewerNeverRaisesIt(@ForAll Instances.Mood mood, @ForAll @IntRange(max = 1_000_000) int seed) {
        Problem problem = Instances.of(mood, Instances.Size.TINY, seed);
        long worth = worth(problem);
        for (int index = 0; index < problem.caps().size(); index++) {
            Cap cap = problem.caps().get(index);
            assertTrue(worth(with(problem, index, cap.there() + 1)) >= worth, "one more of " + cap.name());
            if (cap.there() > 0) {
                assertTrue(worth(with(problem, index, cap.there() - 1)) <= worth, "one fewer of " + cap.name());
            }
        }
        assertTrue(worth(Extra.with(problem, Map.of(new Extra(Shortage.Kind.CHANNELS, "60 dB"), 1))) >= worth);
        List<Bank> fewer = problem.banks().subList(1, problem.banks().size());
        assertTrue(worth(new Problem(problem.seats(), problem.caps(), fewer, problem.pairs(), problem.kept(), problem.channelPrices())) <= worth);
    }

    @Property(tries = 10, shrinking = ShrinkingMode.OFF)
    void theSameProblemHasTheSamePlan(@ForAll Instances.Mood mood, @ForAll @IntRange(max = 1_000_000) int seed) {
        Problem problem = Instances.of(mood, Instances.Size.SMALL, seed);
        assertEquals(allocator.best(problem), allocator.best(Instances.of(mood, Instances.Size.SMALL, seed)));
    }

    /** Where there is no plan, less than any. */
    private long worth(Problem problem) {
        return allocator.best(problem).map(Solution::centipoints).orElse(Long.MIN_VALUE);
    }

    private static Problem with(Problem problem, int index, int there) {
        List<Cap> caps = new ArrayList<>(problem.caps());
        caps.set(index, new Cap(caps.get(index).name(), there, caps.get(index).price()));
        return new Problem(problem.seats(), caps, problem.banks(), problem.pairs(), problem.kept(), problem.channelPrices());
    }
}
