package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import pairwright.session.allocation.NotDecided;

/** Plans in the background. What plans here only counts and waits. */
@Timeout(30)
class PlanDeskTest {
    private static final Floor FLOOR = new Floor(null, 8, 6, 3, 0.5);
    private final List<String> versions = Collections.synchronizedList(new ArrayList<>(List.of("catalogue 1", "rules 1")));
    private final Slow slow = new Slow();
    private final PlanDesk desk = new PlanDesk(() -> versions, slow);

    /** Goes on only when it is let; says two steps. */
    private static final class Slow implements PlanDesk.Planning {
        private final AtomicInteger plans = new AtomicInteger();
        private final AtomicInteger rebuilds = new AtomicInteger();
        private final AtomicInteger atOnce = new AtomicInteger();
        private final AtomicInteger mostAtOnce = new AtomicInteger();
        private final List<String> ended = Collections.synchronizedList(new ArrayList<>());
        private volatile CountDownLatch gate = new CountDownLatch(0);
        private volatile boolean breaks;
        private volatile boolean undecided;

        @Override
        public Planned plan(LineUp lineUp, Gear gear, Consumer<Progress> progress) {
            plans.incrementAndGet();
            mostAtOnce.accumulateAndGet(atOnce.incrementAndGet(), Math::max);
            try {
                progress.accept(new Progress("Judging", 1, 2));
                gate.await(20, TimeUnit.SECONDS);
                progress.accept(new Progress("Judging", 2, 2));
                if (breaks) {
                    throw new IllegalStateException("it broke");
                }
                if (undecided) {
                    throw new NotDecided();
                }
                return new Planned(List.of(), List.of(), List.of(), List.of(), List.of(lineUp.name()), "r", "c");
            } catch (InterruptedException left) {
                throw new IllegalStateException(left);
            } finally {
                atOnce.decrementAndGet();
                ended.add(lineUp.name());
            }
        }

        @Override
        public Plan rebuilt(LineUp lineUp, Gear gear, Picks picks) {
            rebuilds.incrementAndGet();
            return new Plan(1, 0, true, 0, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
                    new Plan.SetUp(null, null, 0), List.of(), List.of(), List.of());
        }

        @Override
        public Change again(LineUp lineUp, Gear gear, Picks before, Lost lost, double pricePoints, Consumer<Progress> progress) {
            progress.accept(new Progress("Searching for what can stay", 0, 1));
            try {
                gate.await(20, TimeUnit.SECONDS);
            } catch (InterruptedException left) {
                throw new IllegalStateException(left);
            }
            progress.accept(new Progress("Writing the plan", 0, 1));
            throw new IllegalStateException("no plan is left without " + lost.units());
        }
    }

    @AfterEach
    void close() {
        slow.gate.countDown();
        desk.close();
    }

    private static LineUp named(String name) {
        return new LineUp(name, FLOOR, List.of(), null, null, null, null, null, 3);
    }

    private static void until(BooleanSupplier holds) {
        while (!holds.getAsBoolean()) {
            Thread.onSpinWait();
        }
    }

    private Planned waited(String session, LineUp lineUp) {
        until(() -> desk.state(session, lineUp, Gear.ANYTHING).planned() != null);
        return desk.state(session, lineUp, Gear.ANYTHING).planned();
    }

    @Test
    void aLineUpIsPlannedOnceHoweverOftenItIsLookedAt() {
        assertNull(desk.found(named("a"), Gear.ANYTHING), "looking alone begins nothing");
        Planned first = waited("s", named("a"));
        assertSame(first, waited("s", named("a")));
        assertSame(first, desk.found(named("a"), Gear.ANYTHING));
        assertEquals(1, slow.plans.get());
        assertEquals(List.of("a"), first.assumed());
    }

    @Test
    void otherSeatsOtherGearAndOtherRulesAreOtherPlans() {
        waited("s", named("a"));
        waited("s", named("b"));
        until(() -> desk.state("s", named("a"), new Gear(null, List.of(), null, null, null)).planned() != null);
        assertEquals(3, slow.plans.get());
        versions.set(1, "rules 2");
        waited("s", named("a"));
        assertEquals(4, slow.plans.get());
    }

    @Test
    void whileItRunsItSaysHowFarItHasCome() {
        slow.gate = new CountDownLatch(1);
        until(() -> desk.state("s", named("a"), Gear.ANYTHING).progress().done() == 1);
        PlanDesk.State state = desk.state("s", named("a"), Gear.ANYTHING);
        assertEquals(new Progress("Judging", 1, 2), state.progress());
        assertNull(state.planned());
    }

    @Test
    void onePlanIsMadeAtATimeAndTheNextSaysThatItWaits() {
        slow.gate = new CountDownLatch(1);
        until(() -> desk.state("one", named("a"), Gear.ANYTHING).progress().done() == 1);
        assertEquals(new Progress("Waiting for another plan to be finished", 0, 0), desk.state("two", named("b"), Gear.ANYTHING).progress());
        slow.gate.countDown();
        waited("two", named("b"));
        assertNotNull(desk.found(named("a"), Gear.ANYTHING));
        assertEquals(1, slow.mostAtOnce.get());
    }

    @Test
    void aLineUpThatWasChangedMeanwhileStopsThePlanOfTheOldOne() {
        slow.gate = new CountDownLatch(1);
        until(() -> desk.state("s", named("old"), Gear.ANYTHING).progress().done() == 1);
        desk.state("s", named("new"), Gear.ANYTHING);
        slow.gate.countDown();
        waited("s", named("new"));
        assertNull(desk.found(named("old"), Gear.ANYTHING));
        assertEquals(List.of("old", "new"), slow.ended);
    }

    @Test
    void whatIsCancelledEndsAtItsNextStepAndCanBeBegunAnew() {
        slow.gate = new CountDownLatch(1);
        until(() -> desk.state("s", named("a"), Gear.ANYTHING).progress().done() == 1);
        desk.cancel("s");
        slow.gate.countDown();
        until(() -> slow.ended.size() == 1);
        assertNull(desk.found(named("a"), Gear.ANYTHING));
        assertNotNull(waited("s", named("a")));
        assertEquals(2, slow.plans.get());
    }

    @Test
    void aFailureIsToldOnceAndTriedAgain() {
        slow.breaks = true;
        String told = assertThrows(IllegalStateException.class, () -> waited("s", named("a"))).getMessage();
        assertEquals("it broke", told);
        slow.breaks = false;
        assertNotNull(waited("s", named("a")));
    }

    @Test
    void aSearchThatCameToItsLimitIsNotBegunAnewUntilSomebodyWantsIt() {
        slow.undecided = true;
        until(() -> desk.state("s", named("a"), Gear.ANYTHING).undecided() != null);
        assertEquals(new NotDecided().getMessage(), desk.state("s", named("a"), Gear.ANYTHING).undecided());
        assertNull(desk.found(named("a"), Gear.ANYTHING));
        desk.tryAgain(named("b"), Gear.ANYTHING);
        assertNotNull(desk.state("s", named("a"), Gear.ANYTHING).undecided(), "another line-up was meant");
        assertEquals(1, slow.plans.get());
        slow.undecided = false;
        desk.tryAgain(named("a"), Gear.ANYTHING);
        assertNotNull(waited("s", named("a")));
        assertNull(desk.state("s", named("a"), Gear.ANYTHING).undecided());
        desk.tryAgain(named("a"), Gear.ANYTHING);
        assertNotNull(desk.found(named("a"), Gear.ANYTHING), "what is there is not thrown away");
        assertEquals(2, slow.plans.get());
    }

    @Test
    void onlySoManyAreKept() {
        for (int i = 0; i < 40; i++) {
            waited("s" + i, named("n" + i));
        }
        assertNull(desk.found(named("n0"), Gear.ANYTHING));
        assertNotNull(desk.found(named("n39"), Gear.ANYTHING));
        assertTrue(slow.plans.get() == 40);
    }

    @Test
    void whatWasPickedIsWorkedOutOnceForEachStateOfThings() {
        Picks picks = new Picks(List.of());
        Plan plan = desk.rebuilt(named("a"), Gear.ANYTHING, picks);
        assertSame(plan, desk.rebuilt(named("a"), Gear.ANYTHING, new Picks(List.of())));
        assertEquals(1, slow.rebuilds.get());
        versions.set(0, "catalogue 2");
        desk.rebuilt(named("a"), Gear.ANYTHING, picks);
        assertEquals(2, slow.rebuilds.get());
    }

    @Test
    void whatCannotBePlannedAnewIsToldEachTime() {
        Lost lost = new Lost(List.of("ribbon"), null, null);
        for (int times = 0; times < 2; times++) {
            assertEquals("no plan is left without [ribbon]", assertThrows(IllegalStateException.class,
                    () -> desk.again(named("a"), Gear.ANYTHING, new Picks(List.of()), lost, 5)).getMessage());
        }
    }

    @Test
    void whatIsPlannedAnewSaysHowFarItHasCome() {
        slow.gate = new CountDownLatch(1);
        Picks none = new Picks(List.of());
        assertNull(desk.again(named("a"), Gear.ANYTHING, none, Lost.NOTHING, 5));
        assertEquals(new Progress("Searching for what can stay", 0, 1), desk.far(named("a"), Gear.ANYTHING, none, Lost.NOTHING, 5));
        assertEquals("Waiting for something else to be worked out", desk.far(named("a"), Gear.ANYTHING, none, Lost.NOTHING, 4).doing());
    }

    @Test
    void whatIsPlannedAnewIsStoppedAndCanBeBegunAnew() {
        slow.gate = new CountDownLatch(1);
        Picks none = new Picks(List.of());
        assertNull(desk.again(named("a"), Gear.ANYTHING, none, Lost.NOTHING, 5));
        desk.cancelAgain(named("b"));
        assertEquals("Searching for what can stay", desk.far(named("a"), Gear.ANYTHING, none, Lost.NOTHING, 5).doing(), "another line-up was meant");
        desk.cancelAgain(named("a"));
        assertEquals("Waiting for something else to be worked out", desk.far(named("a"), Gear.ANYTHING, none, Lost.NOTHING, 5).doing(), "it is forgotten");
        slow.gate.countDown();
        assertThrows(IllegalStateException.class, () -> desk.again(named("a"), Gear.ANYTHING, none, Lost.NOTHING, 5), "begun anew, and told");
        desk.cancelAgain(named("a"));
        assertThrows(IllegalStateException.class, () -> desk.again(named("a"), Gear.ANYTHING, none, Lost.NOTHING, 5), "what is there stays");
    }

    @Test
    void whatIsShortDoesNotWaitBehindAPlan() {
        slow.gate = new CountDownLatch(1);
        until(() -> desk.state("s", named("a"), Gear.ANYTHING).progress().done() == 1);
        assertNotNull(desk.rebuilt(named("a"), Gear.ANYTHING, new Picks(List.of())));
    }
}
