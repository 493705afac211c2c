package pairwright.session.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a plan is worth, by the program, by another solver that was asked in another way, and by trying everything. */
class OtherOpinionsTest {
    private static final int OF_A_MOOD = 34;

    /** Six moods, 204 sessions in all. */
    @ParameterizedTest
    @EnumSource(Instances.Mood.class)
    void isTheOptimumOfAnotherSolver(Instances.Mood mood) {
        int plans = 0;
        for (int seed = 0; seed < OF_A_MOOD; seed++) {
            plans += agree(mood, Instances.Size.SMALL, seed) ? 1 : 0;
        }
        assertTrue(plans >= OF_A_MOOD / 3, "only " + plans + " of them have a plan at all");
    }

    @ParameterizedTest
    @EnumSource(Instances.Mood.class)
    @Tag("long")
    void isTheOptimumOfAnotherSolverInALargerSession(Instances.Mood mood) {
        for (int seed = 0; seed < 10; seed++) {
            agree(mood, Instances.Size.MIDDLE, seed);
        }
    }

    @ParameterizedTest
    @EnumSource(Instances.Mood.class)
    void isTheBestOfAllThereAre(Instances.Mood mood) {
        for (int seed = 0; seed < 12; seed++) {
            Problem problem = Instances.of(mood, Instances.Size.TINY, seed);
            assertEquals(Exhaustive.optimum(problem), worth(problem), mood + " " + seed);
        }
    }

    private static boolean agree(Instances.Mood mood, Instances.Size size, int seed) {
        Problem problem = Instances.of(mood, size, seed);
        OptionalLong worth = worth(problem);
        assertEquals(MixedInteger.optimum(problem), worth, mood + " " + size + " " + seed);
        return worth.isPresent();
    }

    private static OptionalLong worth(Problem problem) {
        return new Allocator().best(problem).map(plan -> {
            assertTrue(plan.proven());
            return OptionalLong.of(plan.centipoints());
        }).orElse(OptionalLong.empty());
    }
}
