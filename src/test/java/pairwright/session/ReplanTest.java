package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import pairwright.advice.HouseMemory;
import pairwright.advice.Knowledge;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.Solution;

/** What holds of a plan that is made again after a loss. */
class ReplanTest {
    private static final LineUp LINE_UP = new LineUp("Told apart", Sextet.LINE_UP.floor(), Sextet.LINE_UP.seats(), Sextet.LINE_UP.gobos(), List.of(List.of("fiddle", "tenor")),
            List.of(List.of("guitar", "voice", "bass")), null, null, 1);
    private static final double PRICE_POINTS = 5;

    private static final Judging JUDGING = new Judging(HouseMemory.NOTHING);
    private static final Planner PLANNER = Sextet.planner();

    private final Plan plan = Once.PLAN;

    /** Planned on first use and not while the class of the test is loaded, for which its threads would wait. */
    private static final class Once {
        static final Plan PLAN = planned();
    }

    private static Plan planned() {
        return PLANNER.plan(LINE_UP, Sextet.GEAR, step -> { }).plans().get(0);
    }

    private Change again(Gear gear, Lost lost) {
        return PLANNER.again(LINE_UP, gear, Picks.of(plan), lost, PRICE_POINTS, step -> { });
    }

    private static LineUp wanting(List<List<String>> contrast, List<List<String>> keep) {
        return new LineUp(null, LINE_UP.floor(), LINE_UP.seats(), null, contrast, keep, null, null, 1);
    }

    /** One to three of what is in use, a channel or none, a seat or none. */
    private Lost lost(Random random) {
        List<String> units = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3); i++) {
            Line line = plan.lines().get(random.nextInt(plan.lines().size()));
            units.add(random.nextBoolean() || line.stand() == null ? line.unit().id() : line.stand());
        }
        return new Lost(units, random.nextBoolean() ? List.of() : List.of(plan.lines().get(random.nextInt(plan.lines().size())).channel()),
                random.nextBoolean() ? List.of() : List.of(LINE_UP.seats().get(random.nextInt(LINE_UP.seats().size())).id()));
    }

    @Property(tries = 4)
    void whatIsLostNeedNotBeJudgedAwayFirst(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Lost lost = lost(new Random(seed));
        Gear left = Sextet.GEAR.without(lost);
        Lost rest = new Lost(null, lost.channels(), lost.seats());
        Change again;
        try {
            again = again(Sextet.GEAR, lost);
        } catch (IllegalStateException none) {
            assertThrows(IllegalStateException.class, () -> again(left, rest), "there is a plan: " + lost);
            return;
        }
        Change judgedAnew = again(left, rest);
        assertEquals(judgedAnew.bestScore(), again.bestScore());
        assertEquals(judgedAnew.plan().score(), again.plan().score());
        assertEquals(judgedAnew.kept(), again.kept());
        assertTrue(again.plan().lines().stream().noneMatch(line -> lost.units().contains(line.unit().id()) || line.stand() != null && lost.units().contains(line.stand())), lost.toString());
    }

    /** What was done before the ways that cannot be in the best plan were left aside: all of them are searched, until every one that is chosen was weighed beside the others. */
    private static long amongAll(Layout layout, Allocator allocator) {
        List<List<SeatChoices.Way>> exact = new ArrayList<>(layout.first(30));
        while (true) {
            Solution found = allocator.best(layout.problem(layout.ways(), exact)).orElseThrow();
            boolean counted = true;
            for (int seat = 0; seat < exact.size(); seat++) {
                SeatChoices.Way chosen = layout.ways().get(seat).get(found.choices().get(seat));
                if (!exact.get(seat).contains(chosen)) {
                    exact.set(seat, Stream.concat(exact.get(seat).stream(), Stream.of(chosen)).toList());
                    counted = false;
                }
            }
            if (counted) {
                assertTrue(found.proven());
                return found.centipoints();
            }
        }
    }

    @Property(tries = 4)
    void noWayThatIsLeftAsideIsInTheBestPlan(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        Lost lost = lost(random);
        Gear left = Sextet.GEAR.without(lost);
        Knowledge now = Sextet.KNOWLEDGE.current();
        LineUp without = LINE_UP.without(lost.seats());
        Layout layout = new Layout(without, JUDGING.of(without, now, Sextet.GEAR.stock(), new ChannelPool(left.channels()), step -> { }), left,
                Set.copyOf(lost.channels()), now.catalogue(), new PlanRules(now.rules(), now.catalogue()), new WaysKept(), Map.of());
        Assume.that(layout.unserved().isEmpty());
        Allocator allocator = new Allocator();
        long best = amongAll(layout, allocator);
        assertEquals(best, BestPlan.of(layout, allocator).orElseThrow().solution().centipoints());
        assertEquals(best, BestPlan.atLeast(layout, allocator, best - random.nextInt(600)).orElseThrow().solution().centipoints());
    }

    @Test
    void whoIsNotComingIsNotWantedBesideOthersEither() {
        Change change = again(Sextet.GEAR, new Lost(null, null, List.of("tenor")));
        assertEquals(5, change.plan().served().size());
    }

    @Test
    void aLineUpWithoutSomeOfItWantsNothingOfThem() {
        LineUp left = wanting(List.of(List.of("fiddle", "tenor"), List.of("voice", "bass")), List.of(List.of("fiddle", "cajon"), List.of("guitar", "fiddle", "bass"))).without(List.of("fiddle"));
        assertEquals(5, left.seats().size());
        assertEquals(List.of(List.of("voice", "bass")), left.contrast());
        assertEquals(List.of(List.of("guitar", "bass")), left.keep());
    }

    @Test
    void planningAgainTellsHowFarItIs() {
        List<String> told = new ArrayList<>();
        PLANNER.again(LINE_UP, Sextet.GEAR, Picks.of(plan), Lost.NOTHING, PRICE_POINTS, step -> {
            synchronized (told) {
                told.add(step.doing());
            }
        });
        assertTrue(told.contains("Searching for what can stay") && told.contains("Writing the plan"), told.toString());
    }

    @Test
    void whoeverWaitsForAPlanThatIsMadeAgainCanEndIt() {
        RuntimeException enough = new IllegalArgumentException("enough");
        RuntimeException ended = assertThrows(RuntimeException.class, () -> PLANNER.again(LINE_UP, Sextet.GEAR, Picks.of(plan), Lost.NOTHING, PRICE_POINTS,
                step -> {
                    if (step.doing().startsWith("Searching")) {
                        throw enough;
                    }
                }));
        assertEquals(enough, ended);
    }
}
