package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Sessions.at;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pairwright.advice.HouseMemory;
import pairwright.advice.Knowledge;
import pairwright.advice.KnowledgeStore;
import pairwright.model.HeardBefore;
import pairwright.model.Limits;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.Solution;

/** The folk-jazz sextet in the barn, planned with the locker of the demo. */
class PlannerTest {
    private static final Planner PLANNER = Sextet.planner();

    private static Planned planned() {
        return PLANNER.plan(Sextet.LINE_UP, Sextet.GEAR, step -> { });
    }

    private static Plan first() {
        return Once.PLANNED.plans().get(0);
    }

    /** Planned on first use and not while the class of the test is loaded, for which its threads would wait. */
    private static final class Once {
        static final Planned PLANNED = planned();
    }

    @Test
    void whereNothingIsScarceThereAreOtherPlansAsWell() {
        Sessions two = Sessions.of(new Floor(null, 8, 7, 3.5, 0.6), at("one", "violin", 3, 3, 0, 1), at("two", "viola", 5, 3, 0, 1));
        LineUp three = new LineUp("Test", two.lineUp().floor(), two.lineUp().seats(), null, null, null, null, null, 3);
        Planned planned = new Planner(KnowledgeStore.builtIn()::current, HouseMemory.NOTHING).plan(three, Gear.ANYTHING, step -> { });
        assertEquals(3, planned.plans().size());
        assertEquals(3, planned.plans().stream().map(plan -> plan.lines().stream().map(line -> line.placement().micType()).toList()).distinct().count());
        assertNull(planned.noMorePlans(three));
    }

    @Test
    void whereOneTypeIsAllThereIsItIsSaidWhyThereIsNoOtherPlan() {
        Sessions two = Sessions.of(new Floor(null, 8, 7, 3.5, 0.6), at("one", "violin", 3, 3, 0, 1, "small-condenser-cardioid"), at("two", "viola", 5, 3, 0, 1, "small-condenser-cardioid"));
        LineUp three = new LineUp("Test", two.lineUp().floor(), two.lineUp().seats(), null, null, null, null, null, 3);
        Planned planned = new Planner(KnowledgeStore.builtIn()::current, HouseMemory.NOTHING).plan(three, Gear.ANYTHING, step -> { });
        assertEquals(1, planned.plans().size());
        assertEquals("3 plans were asked for, and 1 is there: with what there is, no other was found that has other types or techniques at 1 of the 2 seats or more.", planned.noMorePlans(three));
    }

    @Test
    void everySourceIsServedAndNothingBetterIsPossible() {
        assertEquals(Sextet.LINE_UP.seats().stream().map(Seat::id).toList(), first().served().stream().map(Plan.Served::seat).toList());
        assertTrue(first().proven());
        assertEquals(first().score(), first().bound());
    }

    @Test
    void aPlanIsWorthWhatItsReasonsAreWorth() {
        for (Plan plan : Once.PLANNED.plans()) {
            long sum = plan.served().stream().flatMap(served -> served.option().reasons().stream()).mapToLong(reason -> Math.round(reason.points() * 100)).sum()
                    + plan.reasons().stream().mapToLong(said -> Math.round(said.points() * 100)).sum();
            assertEquals(sum, Math.round(plan.score() * 100), "plan " + plan.rank());
        }
    }

    @Test
    void noUnitChannelOrStandIsTakenTwice() {
        for (Plan plan : Once.PLANNED.plans()) {
            Set<String> taken = new HashSet<>();
            for (Line line : plan.lines()) {
                assertTrue(taken.add("channel " + line.channel()), line.name());
                assertTrue(taken.add("unit " + line.unit().id()), line.name());
                assertTrue(line.stand() == null || line.sharesStandWith() != null || taken.add("stand " + line.stand()), line.name());
            }
        }
    }

    @Test
    void noPassiveRibbonIsOnALiveChannel() {
        for (Plan plan : Once.PLANNED.plans()) {
            plan.lines().stream().filter(line -> Rooms.CATALOGUE.mics().get(line.placement().micType()).passiveRibbon() && line.booster() == null)
                    .forEach(line -> assertFalse(line.phantom(), line.name()));
        }
    }

    @Test
    void whatNeedsPhantomPowerHasIt() {
        for (Plan plan : Once.PLANNED.plans()) {
            plan.lines().stream().filter(Line::phantomWanted).forEach(line -> assertTrue(line.phantom(), line.name()));
        }
    }

    @Test
    void plansDifferAtAThirdOfTheSeats() {
        assertEquals(3, Once.PLANNED.plans().size());
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < i; j++) {
                List<String> one = kinds(Once.PLANNED.plans().get(i));
                List<String> other = kinds(Once.PLANNED.plans().get(j));
                long same = one.stream().filter(other::contains).count();
                assertTrue(same <= 4, i + " and " + j + " have " + same + " seats alike");
            }
        }
    }

    private static List<String> kinds(Plan plan) {
        return plan.served().stream().map(served -> served.seat() + " " + served.option().technique() + " "
                + served.option().mics().stream().map(mic -> mic.micType()).toList()).toList();
    }

    @Test
    void theSameLineUpIsPlannedTheSame() {
        assertEquals(Once.PLANNED, Sextet.planner().plan(Sextet.LINE_UP, Sextet.GEAR, step -> { }));
    }

    @Test
    void whatWasPickedComesBackWhole() {
        Plan again = PLANNER.rebuilt(Sextet.LINE_UP, Sextet.GEAR, Picks.of(first()));
        assertEquals(first().score(), again.score());
        assertEquals(Picks.of(first()), Picks.of(again));
        assertTrue(again.proven());
    }

    @Test
    void aPlanThatIsNotTheBestSaysHowFarItIsBehind() {
        Plan again = PLANNER.rebuilt(Sextet.LINE_UP, Sextet.GEAR, Picks.of(Once.PLANNED.plans().get(2)));
        assertFalse(again.proven());
        assertEquals(first().score(), again.bound());
    }

    @Test
    void aLostMicrophoneIsReplacedAndTheRestStays() {
        Line line = first().lines().get(0);
        Change change = PLANNER.again(Sextet.LINE_UP, Sextet.GEAR, Picks.of(first()), new Lost(List.of(line.unit().id()), null, null), 100, step -> { });
        assertTrue(change.plan().lines().stream().noneMatch(other -> other.unit().id().equals(line.unit().id())));
        assertFalse(change.steps().isEmpty());
        assertTrue(change.kept().size() >= 4, change.kept().toString());
        assertTrue(change.costPoints() >= 0);
        assertEquals("power-down", change.steps().get(0).kind());
        assertEquals(change.timeS(), change.steps().stream().mapToDouble(Change.Step::timeS).sum());
    }

    @Test
    void whoIsNotComingIsNeitherToldApartFromAnybodyNorKeptInASection() {
        LineUp together = new LineUp("Sextet", Sextet.LINE_UP.floor(), Sextet.LINE_UP.seats(), Sextet.LINE_UP.gobos(), List.of(List.of("fiddle", "tenor"), List.of("tenor", "voice")),
                List.of(List.of("guitar", "fiddle"), List.of("bass", "fiddle", "cajon")), null, null, 1);
        Change change = PLANNER.again(together, Sextet.GEAR, Picks.of(first()), new Lost(null, null, List.of("fiddle")), 100, step -> { });
        assertTrue(change.plan().linesOf("fiddle").isEmpty());
        assertTrue(change.steps().stream().noneMatch(step -> step.says().contains("from fiddle")), change.steps().toString());
        assertEquals(change.bestScore() - change.plan().score(), change.costPoints(), 1e-9);
        assertTrue(change.plan().reasons().stream().noneMatch(said -> said.seats().contains("fiddle")), change.plan().reasons().toString());
        assertEquals(List.of(List.of("tenor", "voice")), together.without(List.of("fiddle")).contrast());
        assertEquals(List.of(List.of("bass", "cajon")), together.without(List.of("fiddle")).keep());
    }

    @Test
    void withOneChannelForSixItSaysWhatIsShort() {
        Gear one = new Gear(Sextet.GEAR.stock(), Sextet.GEAR.channels().subList(0, 1), Sextet.GEAR.stands(), null, null);
        Planned none = PLANNER.plan(Sextet.LINE_UP, one, step -> { });
        assertTrue(none.plans().isEmpty());
        assertFalse(none.shortOf().isEmpty());
        assertFalse(none.waysOut().isEmpty());
        assertEquals("Borrow 5 × preamplifier channel.", none.waysOut().get(0).says());
    }

    @Test
    void whatWasHeardBeforeChangesThePlan() {
        Seat loud = Sextet.LINE_UP.seats().get(0);
        HeardBefore heard = new HeardBefore(100.0, 122.0, null, null, null, null);
        LineUp louder = Sextet.LINE_UP.seated(Sextet.LINE_UP.seats().stream().map(seat -> seat == loud ? new Seat(seat.id(), seat.player(), seat.source(), seat.xM(), seat.yM(),
                seat.facingDegrees(), seat.ways(), seat.dynamics(), seat.character(), seat.circumstances(), seat.limits(), seat.must(), heard, seat.fixed()) : seat).toList());
        Planned other = PLANNER.plan(louder, Sextet.GEAR, step -> { });
        assertNotEquals(first().lines().get(0).placement().predicted(), other.plans().get(0).lines().get(0).placement().predicted());
    }

    @Test
    void hopingForTheBestOfTheOthersFindsWhatWeighingAllFinds() {
        LineUp apart = new LineUp("Sextet", Sextet.LINE_UP.floor(), Sextet.LINE_UP.seats(), Sextet.LINE_UP.gobos(), List.of(List.of("fiddle", "tenor")),
                List.of(List.of("guitar", "voice")), null, null, 1);
        Knowledge now = Sextet.KNOWLEDGE.current();
        Layout layout = new Layout(apart, new Judging(HouseMemory.NOTHING).of(apart, now, Sextet.GEAR.stock(), new ChannelPool(Sextet.GEAR.channels()), step -> { }),
                Sextet.GEAR, Set.of(), now.catalogue(), new PlanRules(now.rules(), now.catalogue()), new WaysKept(), Map.of());
        Allocator allocator = new Allocator();
        BestPlan hoped = BestPlan.of(layout, allocator).orElseThrow();
        Solution weighed = allocator.best(layout.problem(layout.first(120))).orElseThrow();
        assertTrue(hoped.solution().proven());
        assertTrue(hoped.solution().centipoints() >= weighed.centipoints());
        assertEquals(hoped.solution().centipoints(), allocator.best(layout.problem(hoped.exact())).orElseThrow().centipoints());
    }

    @Test
    void whatIsThereAndNotPlannedWithIsTold() {
        Gear more = new Gear(Sextet.GEAR.stock(), Sextet.GEAR.channels(), Sextet.GEAR.stands(), List.of(new Gear.Booster("b", "Booster", 22, 2, true)),
                List.of(new Gear.LinePad("p", "Pad", 20, null)));
        List<String> assumed = PLANNER.plan(Sextet.LINE_UP, more, step -> { }).assumed();
        assertTrue(assumed.stream().anyMatch(one -> one.startsWith("Inline boosters that let phantom power through")), assumed.toString());
        assertTrue(assumed.stream().anyMatch(one -> one.startsWith("Nobody noted whether phantom power passes Pad,")), assumed.toString());
    }

    @Test
    void aSupplyThatGivesTooLittleIsToldInMilliamperes() {
        List<Gear.Channel> weak = Sextet.GEAR.channels().stream().limit(8).map(channel -> new Gear.Channel(channel.id(), channel.label(), "Rack", channel.phantom(), channel.leastGainDb(), channel.mostGainDb(),
                channel.inputOhm(), channel.noiseDbu(), 1.0)).toList();
        LineUp powered = Sextet.LINE_UP.seated(Sextet.LINE_UP.seats().stream().limit(2).map(seat -> new Seat(seat.id(), null, seat.source(), seat.xM(), seat.yM(), seat.facingDegrees(), null, null,
                null, null, new Limits(1, null, null, null, null, null, List.of("small-condenser-cardioid"), null), true, null, false)).toList());
        Planned none = PLANNER.plan(powered, new Gear(Sextet.GEAR.stock(), weak, Sextet.GEAR.stands(), null, null), step -> { });
        Planned.Short lacking = none.shortOf().stream().filter(one -> one.resource().equals("mA of phantom current from Rack")).findFirst().orElseThrow(() -> new AssertionError(none.shortOf().toString()));
        assertEquals(1, lacking.there());
        assertTrue(lacking.needed() >= 4 && lacking.needed() <= 20, lacking.toString());
    }
}
