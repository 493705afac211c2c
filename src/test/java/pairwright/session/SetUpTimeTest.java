package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** The time there is to set up: a plan takes no more of it than there is, and says what more of it would be worth. A line takes five minutes, as the catalogue has it. */
class SetUpTimeTest {
    private static final int LINE_MINUTES = 5;
    private static final Planner PLANNER = Sextet.planner();

    private static LineUp nice(SetUpTime time) {
        return lineUp(time, 2);
    }

    /** The first of them must be there, the others are nice to have. */
    private static LineUp lineUp(SetUpTime time, int must) {
        List<Seat> all = Sextet.LINE_UP.seats();
        List<Seat> seats = all.stream().map(seat -> new Seat(seat.id(), seat.player(), seat.source(), seat.xM(), seat.yM(), seat.facingDegrees(), seat.ways(), seat.dynamics(),
                seat.character(), seat.circumstances(), seat.limits(), all.indexOf(seat) < must, seat.heard(), seat.fixed())).toList();
        return new LineUp("Some of them", Sextet.LINE_UP.floor(), seats, Sextet.LINE_UP.gobos(), null, null, null, null, 1, time);
    }

    private static Planned planned(LineUp lineUp) {
        return PLANNER.plan(lineUp, Sextet.GEAR, step -> { });
    }

    private static Plan plan(SetUpTime time, int must) {
        return planned(lineUp(time, must)).plans().get(0);
    }

    private static Change again(SetUpTime time, Picks before, Lost lost, double pricePoints) {
        return PLANNER.again(nice(time), Sextet.GEAR, before, lost, pricePoints, step -> { });
    }

    private static Picks without(Picks picks, String seat) {
        return new Picks(picks.seats().stream().filter(one -> !one.seat().equals(seat)).toList());
    }

    @Property(tries = 6)
    void noPlanTakesMoreMinutesThanThereAreAndMoreNeverLowerIt(@ForAll @IntRange(min = 1, max = 40) int minutes, @ForAll @IntRange(min = 1, max = 3) int hands) {
        Plan less = plan(new SetUpTime(minutes, hands), 0);
        assertTrue(less.lines().size() * LINE_MINUTES <= minutes * hands, less.lines().size() + " lines in " + minutes + " min by " + hands);
        assertEquals(less.lines().size() * LINE_MINUTES * 60, less.setUp().workS());
        assertTrue(less.proven());
        Plan more = plan(new SetUpTime(minutes + LINE_MINUTES, hands), 0);
        assertTrue(more.score() >= less.score(), more.score() + " with more minutes, " + less.score() + " with less");
        assertTrue(plan(null, 0).score() >= more.score());
    }

    @Example
    void withEnoughTimeThePlanIsTheOneOfAllTheTime() {
        Planned enough = planned(nice(new SetUpTime(SetUpTime.MOST_MINUTES, 1)));
        assertEquals(planned(nice(null)).plans().get(0).score(), enough.plans().get(0).score());
        assertNull(enough.timeShort());
        assertTrue(enough.assumed().stream().anyMatch(one -> one.startsWith("How long setting up takes is an estimate")), enough.assumed().toString());
    }

    @Example
    void whatTheTimeCostsIsSaidWithItsWaysOutAndTheyComeTrue() {
        Planned pressed = planned(nice(new SetUpTime(15, 1)));
        Planned.TimeShort time = pressed.timeShort();
        assertNotNull(time);
        Plan all = planned(nice(null)).plans().get(0);
        assertEquals(all.lines().size() * LINE_MINUTES, time.neededMinutes());
        assertEquals(15, time.minutes());
        assertEquals(all.score() - pressed.plans().get(0).score(), time.costPoints(), 0.005);
        assertFalse(time.without().isEmpty());
        for (Planned.WayOut way : time.waysOut()) {
            if (way.says().startsWith("Have one more pair of hands, so that 2 set up.")) {
                assertEquals(plan(new SetUpTime(15, 2), 2).score(), way.score(), 0.005);
            }
        }
        assertEquals("Have one more pair of hands, so that 2 set up.", time.waysOut().get(0).says());
        Planned.WayOut earlier = time.waysOut().get(time.waysOut().size() - 1);
        assertEquals("Begin " + (time.neededMinutes() - 15) + " min earlier.", earlier.says());
        assertEquals(plan(new SetUpTime(time.neededMinutes(), 1), 2).score(), earlier.score(), 0.005);
    }

    @Example
    void whereNoPlanCanBeInTimeItSaysByHowManyMinutesAndHowItCould() {
        Planned none = planned(lineUp(new SetUpTime(4, 1), 3));
        assertTrue(none.plans().isEmpty());
        assertEquals(List.of(new Planned.Short("minutes of set-up work for one pair of hands", 15, 4, List.of())), none.shortOf());
        List<String> ways = none.waysOut().stream().map(Planned.WayOut::says).toList();
        assertTrue(ways.contains("Begin 11 min earlier."), ways.toString());
        assertTrue(ways.contains("Have 3 more pairs of hands, so that 4 set up."), ways.toString());
        assertTrue(ways.stream().noneMatch(way -> way.startsWith("Leave out ")), "not one of them can be set up in time: " + ways);
        assertEquals(plan(new SetUpTime(15, 1), 3).score(), none.waysOut().stream().filter(way -> way.says().startsWith("Begin")).findFirst().orElseThrow().score(), 0.005);
    }

    @Example
    void whatStandsAndStaysCostsNothingWhenAllTheTimeIsLost() {
        Picks before = Picks.of(plan(null, 2));
        Change change = again(new SetUpTime(60, 1), before, new Lost(null, null, null, 60), 5);
        assertEquals(List.of(), change.steps());
        assertEquals(before, Picks.of(change.plan()));
        assertEquals(new SetUpTime(0, 1), change.setUp());
    }

    @Example
    void whatIsNotSetUpYetIsPlannedWithinWhatIsLeft() {
        Plan all = plan(new SetUpTime(60, 1), 2);
        Picks before = without(without(without(Picks.of(all), "voice"), "cajon"), "bass");
        // one minute of the power down and two lines
        Change change = again(new SetUpTime(60, 1), before, new Lost(null, null, null, 49), 1000);
        assertTrue(change.pressingS() <= 11 * 60, change.pressingS() + " s in 11 min");
        assertTrue(change.steps().stream().filter(step -> step.kind().equals("set-up")).count() == 2, change.steps().toString());
        Change whole = again(new SetUpTime(60, 1), before, Lost.NOTHING, 1000);
        assertTrue(whole.plan().score() > change.plan().score());
        assertEquals(List.of(), whole.plan().leftOut());
    }

    @Example
    void whatFailedAndCannotBeReplacedInTimeIsToldInMinutes() {
        Plan all = plan(new SetUpTime(60, 1), 6);
        Line line = all.lines().get(0);
        LineUp lineUp = lineUp(new SetUpTime(60, 1), 6);
        Lost lost = new Lost(List.of(line.unit().id()), null, null, 59);
        assertThrows(IllegalStateException.class, () -> PLANNER.again(lineUp, Sextet.GEAR, Picks.of(all), lost, 5, step -> { }));
        Planned none = PLANNER.shortAgain(lineUp, Sextet.GEAR, Picks.of(all), lost, step -> { });
        assertEquals("minutes of set-up work for one pair of hands", none.shortOf().get(0).resource());
        assertEquals(1, none.shortOf().get(0).there());
        int needed = none.shortOf().get(0).needed();
        Change change = PLANNER.again(lineUp, Sextet.GEAR, Picks.of(all), new Lost(lost.units(), null, null, 60 - needed), 5, step -> { });
        assertTrue(change.pressingS() <= needed * 60, change.pressingS() + " s in " + needed + " min");
    }

    @Property(tries = 6)
    void noChangeTakesMoreMinutesThanAreLeft(@ForAll @IntRange(min = 0, max = 60) int lostMinutes, @ForAll @IntRange(min = 0, max = 5) int failed, @ForAll @IntRange(min = 0, max = 100) int price) {
        Plan all = plan(new SetUpTime(60, 1), 0);
        Line line = all.lines().get(failed % all.lines().size());
        LineUp lineUp = lineUp(new SetUpTime(60, 1), 0);
        Lost lost = new Lost(List.of(line.unit().id()), List.of(all.lines().get((failed + 1) % all.lines().size()).channel()), null, lostMinutes);
        Change change = PLANNER.again(lineUp, Sextet.GEAR, Picks.of(all), lost, price, step -> { });
        assertTrue(change.pressingS() <= (60 - lostMinutes) * 60, change.pressingS() + " s in " + (60 - lostMinutes) + " min");
        double listedS = change.steps().stream().filter(step -> !step.kind().equals("strike")).mapToDouble(Change.Step::timeS).sum();
        assertTrue(change.pressingS() == listedS || change.pressingS() == listedS - 60, listedS + " s are listed, " + change.pressingS() + " counted");
        assertEquals(Sextet.planner().again(lineUp, Sextet.GEAR, Picks.of(all), lost, price, step -> { }), change, "whoever plans for the first time finds the same");
    }

    @Example
    void whatWasTakenIsToldOfHoweverLongItTook() {
        Plan all = plan(null, 2);
        Plan told = PLANNER.rebuilt(nice(new SetUpTime(5, 1)), Sextet.GEAR, Picks.of(all));
        assertEquals(Picks.of(all), Picks.of(told));
        assertEquals(all.score(), told.score());
        assertTrue(told.setUp().workS() > 5 * 60);
    }
}
