package pairwright.session.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.allocation.Small.DYNAMIC;
import static pairwright.session.allocation.Small.RIBBON;
import static pairwright.session.allocation.Small.bank;
import static pairwright.session.allocation.Small.condenser;
import static pairwright.session.allocation.Small.fed;
import static pairwright.session.allocation.Small.may;
import static pairwright.session.allocation.Small.must;
import static pairwright.session.allocation.Small.standing;
import static pairwright.session.allocation.Small.taking;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pairwright.locker.PhantomSwitch;

class AllocatorTest {
    private final Allocator allocator = new Allocator();

    @Test
    void theOnlyUnitGoesWhereItIsWorthMore() {
        Problem problem = new Problem(List.of(must("sax", taking("r", 900, "ribbon"), taking("d", 500, "dynamic")), must("trumpet", taking("r", 800, "ribbon"), taking("d", 700, "dynamic"))),
                List.of(new Cap("ribbon", 1, 0), new Cap("dynamic", 2, 0)), List.of());
        assertEquals(List.of("r", "d"), chosen(problem));
        assertEquals(1600, best(problem).centipoints());
        assertEquals(1600, best(problem).boundCentipoints());
        assertTrue(best(problem).proven());
    }

    @Test
    void aRibbonIsNeverOnALiveBank() {
        List<Seat> seats = List.of(must("sax", fed("r", 900, RIBBON), fed("d", 100, DYNAMIC)), must("piano", fed("c", 1000, condenser(40)), fed("d", 500, DYNAMIC)));
        assertEquals(List.of("r", "d"), chosen(new Problem(seats, List.of(), List.of(bank("stage", PhantomSwitch.BANK, 2)))), "900 + 500 is more than 100 + 1000");
        assertEquals(List.of("r", "c"), chosen(new Problem(seats, List.of(), List.of(bank("left", PhantomSwitch.BANK, 1), bank("right", PhantomSwitch.BANK, 1)))));
        assertEquals(List.of("r", "c"), chosen(new Problem(seats, List.of(), List.of(bank("desk", PhantomSwitch.CHANNEL, 2)))));
        assertEquals(List.of("r", "d"), chosen(new Problem(seats, List.of(), List.of(bank("box", PhantomSwitch.NONE, 2)))));
    }

    @Test
    void aSupplyServesWhatItCanAndNoMore() {
        List<Seat> seats = List.of(must("a", fed("c", 1000, condenser(40)), fed("d", 300, DYNAMIC)), must("b", fed("c", 1000, condenser(40)), fed("d", 200, DYNAMIC)),
                must("c", fed("c", 1000, condenser(40)), fed("d", 100, DYNAMIC)));
        assertEquals(List.of("c", "c", "c"), chosen(new Problem(seats, List.of(), List.of(bank("desk", PhantomSwitch.CHANNEL, 3, 120)))));
        assertEquals(List.of("d", "c", "c"), chosen(new Problem(seats, List.of(), List.of(bank("desk", PhantomSwitch.CHANNEL, 3, 119)))));
        assertEquals(List.of("d", "d", "d"), chosen(new Problem(seats, List.of(), List.of(bank("desk", PhantomSwitch.CHANNEL, 3, 39)))));
    }

    @Test
    void theSuppliesOfTwoBanksAreNotOne() {
        List<Seat> seats = List.of(must("a", fed("c", 1000, condenser(40)), fed("d", 300, DYNAMIC)), must("b", fed("c", 1000, condenser(40)), fed("d", 200, DYNAMIC)),
                must("c", fed("c", 1000, condenser(40)), fed("d", 100, DYNAMIC)));
        Problem problem = new Problem(seats, List.of(), List.of(bank("left", PhantomSwitch.BANK, 2, 60), bank("right", PhantomSwitch.BANK, 2, 60)));
        assertEquals(List.of("d", "c", "c"), chosen(problem), "two supplies of 6 mA carry one of 4 mA each");
    }

    @Test
    void oneChannelGivesNoMoreThanItCan() {
        List<Seat> seats = List.of(must("a", fed("hungry", 1000, condenser(90)), fed("modest", 400, condenser(20))));
        assertEquals(List.of("modest"), chosen(new Problem(seats, List.of(), List.of(new Bank("box", PhantomSwitch.CHANNEL, List.of("line"), null, 70)))));
        assertEquals(List.of("hungry"), chosen(new Problem(seats, List.of(), List.of(new Bank("box", PhantomSwitch.CHANNEL, List.of("line"), null, 90)))));
    }

    @Test
    void aQuietMicrophoneTakesAChannelThatHasTheGain() {
        Feed quiet = new Feed(Set.of("high gain"), PhantomNeed.ANY, 0);
        Feed loud = new Feed(Set.of("low gain", "high gain"), PhantomNeed.ANY, 0);
        Problem problem = new Problem(List.of(must("kit", fed("d", 500, loud)), must("voice", fed("quiet", 900, quiet), fed("d", 100, loud))), List.of(),
                List.of(new Bank("desk", PhantomSwitch.CHANNEL, List.of("high gain", "low gain"), null, null)));
        assertEquals(List.of("d", "quiet"), chosen(problem));
        assertEquals(List.of(List.of(new Channel(0, 1)), List.of(new Channel(0, 0))), best(problem).channels());
    }

    @Test
    void fourOfATypeAreOnlyOneMatchedPair() {
        Choice pair = new Choice("pair", Choice.Use.FULL, 1000, Map.of("pencil", 2, "pencil pairs", 1), List.of(), List.of());
        Choice two = taking("two", 600, "pencil", "pencil");
        List<Seat> seats = List.of(must("piano", pair, two), must("kit", pair, new Choice("two", Choice.Use.FULL, 800, Map.of("pencil", 2), List.of(), List.of())));
        assertEquals(List.of("pair", "two"), chosen(new Problem(seats, List.of(new Cap("pencil", 4, 0), new Cap("pencil pairs", 1, 0)), List.of())));
        assertEquals(List.of("pair", "pair"), chosen(new Problem(seats, List.of(new Cap("pencil", 4, 0), new Cap("pencil pairs", 2, 0)), List.of())));
    }

    @Test
    void aStandThatServesAllIsLeftToWhoHasNoOther() {
        List<Seat> seats = List.of(must("amp", standing("m", 500, "short", "tall")), must("kit", standing("m", 500, "tall")), may("bass", standing("m", 400, "short"), Choice.out("out", 0)));
        Problem problem = new Problem(seats, List.of(new Cap("short", 1, 0), new Cap("tall", 1, 0)), List.of());
        assertEquals(List.of("m", "m", "out"), chosen(problem));
        assertEquals(List.of(List.of("short"), List.of("tall"), List.of()), best(problem).served());
    }

    @Test
    void whatTwoAreWorthTogetherDecides() {
        List<Seat> seats = List.of(must("tenor", taking("dark", 900), taking("bright", 800)), must("alto", taking("dark", 900), taking("bright", 850)));
        assertEquals(List.of("dark", "dark"), chosen(new Problem(seats, List.of(), List.of())));
        PairTerm alike = new PairTerm(0, 1, List.of(new PairTerm.Together(0, 0, -100), new PairTerm.Together(1, 1, -100)));
        Problem apart = new Problem(seats, List.of(), List.of(), List.of(alike), List.of(), Map.of());
        assertEquals(List.of("dark", "bright"), chosen(apart));
        assertEquals(1750, best(apart).centipoints());
        PairTerm bright = new PairTerm(1, 0, List.of(new PairTerm.Together(1, 1, 151)));
        assertEquals(List.of("bright", "bright"), chosen(new Problem(seats, List.of(), List.of(), List.of(bright), List.of(), Map.of())), "1650 + 151 is one more than 1800");
    }

    @Test
    void aSeatThatNeedNotBeServedIsLeftOutWhereThatIsWorthMore() {
        Problem problem = new Problem(List.of(may("shaker", taking("m", 100, "mic"), Choice.out("out", 0)), must("voice", taking("m", 50, "mic"))), List.of(new Cap("mic", 1, 0)), List.of());
        assertEquals(List.of("out", "m"), chosen(problem));
    }

    @Test
    void whereOneMustBeServedAndCannotThereIsNoPlan() {
        Problem problem = new Problem(List.of(must("voice", taking("m", 50, "mic"), Choice.out("out", 900), Small.fewer("shared", 900))), List.of(new Cap("mic", 0, 0)), List.of());
        assertEquals(Optional.empty(), allocator.best(problem));
        assertEquals(List.of(), allocator.different(problem, 3, 1));
    }

    @Test
    void amongEqualsThereIsOnePlanWhateverTheOrder() {
        List<Seat> seats = new ArrayList<>();
        for (int seat = 0; seat < 6; seat++) {
            seats.add(may("seat " + seat, taking("a", 500, "x"), taking("b", 500, "y"), taking("c", 500, "x"), Choice.out("out", 100)));
        }
        Problem problem = new Problem(seats, List.of(new Cap("x", 3, 0), new Cap("y", 2, 0)), List.of());
        Solution first = best(problem);
        assertEquals(2600, first.centipoints());
        assertEquals(first, best(problem));
        for (int shuffle = 1; shuffle < 6; shuffle++) {
            Collections.shuffle(seats, new Random(shuffle));
            Problem shuffled = new Problem(seats, problem.caps(), List.of());
            Solution plan = best(shuffled);
            for (int seat = 0; seat < seats.size(); seat++) {
                int there = problem.seats().indexOf(seats.get(seat));
                assertEquals(first.choices().get(there), plan.choices().get(seat), seats.get(seat).id());
            }
        }
    }

    @Test
    void theFeedsOfASeatAreSideBySideAndAsFewBanksAsCanBeAreLive() {
        List<Seat> seats = List.of(must("kit", fed("k", 500, condenser(30), DYNAMIC, condenser(30))),
                must("piano", fed("p", 500, condenser(30), condenser(30))), must("sax", fed("r", 500, RIBBON)));
        Problem problem = new Problem(seats, List.of(), List.of(bank("left", PhantomSwitch.BANK, 8), bank("middle", PhantomSwitch.BANK, 8), bank("right", PhantomSwitch.BANK, 8)));
        Solution plan = best(problem);
        assertEquals(1, plan.liveBanks().size());
        int live = plan.liveBanks().iterator().next();
        for (int seat = 0; seat < 2; seat++) {
            List<Channel> channels = plan.channels().get(seat);
            for (int feed = 0; feed < channels.size(); feed++) {
                assertEquals(new Channel(live, channels.get(0).channel() + feed), channels.get(feed));
            }
        }
        assertNotEquals(live, plan.channels().get(2).get(0).bank());
    }

    @Test
    void plansDifferInAsManySeatsAsAsked() {
        Problem problem = Instances.of(Instances.Mood.TIGHT, Instances.Size.SMALL, 0);
        List<Solution> plans = allocator.different(problem, 3, 2);
        assertEquals(3, plans.size());
        assertEquals(best(problem), plans.get(0));
        for (int plan = 1; plan < plans.size(); plan++) {
            assertTrue(plans.get(plan).centipoints() <= plans.get(plan - 1).centipoints());
            for (int other = 0; other < plan; other++) {
                assertTrue(plans.get(plan).differsIn(plans.get(other)) >= 2);
            }
        }
    }

    @Test
    void thereAreNoMorePlansThanThereAre() {
        Problem problem = new Problem(List.of(must("a", taking("x", 300), taking("y", 200)), must("b", taking("x", 100), taking("y", 50))), List.of(), List.of());
        List<Solution> plans = allocator.different(problem, 9, 1);
        assertEquals(List.of(400L, 350L, 300L, 250L), plans.stream().map(Solution::centipoints).toList());
        assertEquals(List.of(400L, 250L), allocator.different(problem, 9, 2).stream().map(Solution::centipoints).toList());
    }

    @Test
    void whatIsSetUpStaysUnlessMovingItIsWorthMore() {
        List<Seat> seats = List.of(must("a", taking("x", 300, "x"), taking("y", 200, "y")), must("b", taking("x", 260, "x"), taking("y", 200, "y")));
        Problem before = new Problem(seats, List.of(new Cap("x", 0, 0), new Cap("y", 2, 0)), List.of());
        Problem now = new Problem(seats, List.of(new Cap("x", 2, 0), new Cap("y", 2, 0)), List.of());
        Solution setUp = best(before);
        assertEquals(List.of("x", "x"), Small.chosen(now, allocator.again(now, before, setUp, 0).orElseThrow()));
        Solution again = allocator.again(now, before, setUp, 80).orElseThrow();
        assertEquals(List.of("x", "y"), Small.chosen(now, again), "100 is more than 80, and 60 is not");
        assertEquals(580, again.centipoints());
        assertEquals(80, again.keptCentipoints());
        assertEquals(List.of("y", "y"), Small.chosen(now, allocator.again(now, before, setUp, 500).orElseThrow()));
    }

    @Test
    void whatStaysIsNotPluggedElsewhere() {
        List<Bank> banks = List.of(bank("left", PhantomSwitch.BANK, 3), bank("right", PhantomSwitch.BANK, 3));
        Seat sax = must("sax", fed("r", 500, RIBBON));
        Seat kit = must("kit", fed("k", 500, condenser(30), condenser(30)));
        Problem before = new Problem(List.of(sax, kit), List.of(), banks);
        Problem now = new Problem(List.of(must("flute", fed("d", 500, DYNAMIC, DYNAMIC)), kit, sax), List.of(), List.of(banks.get(1), banks.get(0)));
        Solution setUp = best(before);
        Solution again = allocator.again(now, before, setUp, 100).orElseThrow();
        assertEquals(named(before, setUp.channels().get(0)), named(now, again.channels().get(2)));
        assertEquals(named(before, setUp.channels().get(1)), named(now, again.channels().get(1)));
    }

    @Test
    void aSearchThatIsCutShortSaysSo() {
        Problem problem = Instances.of(Instances.Mood.ALL, Instances.Size.LARGE, 1);
        Allocator hurried = new Allocator(new Limits(1, Duration.ofMillis(1)));
        try {
            Solution plan = hurried.best(problem).orElseThrow();
            assertTrue(plan.outOfTime());
            assertTrue(plan.boundCentipoints() > plan.centipoints());
        } catch (NotDecided undecided) {
            assertTrue(undecided.getMessage().contains("No plan was found in the time"));
        }
    }

    @Test
    void whoeverHasNoPlanInTimeIsToldWhatCanBeChanged() {
        String says = new NotDecided().getMessage();
        assertTrue(says.contains("stands") && says.contains("maxMics") && says.contains("fewer seats"), says);
        assertFalse(says.contains("options"), "no field of a line-up is called so: " + says);
    }

    @Test
    void aProblemThatNamesWhatIsNotThereIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Problem(List.of(must("a", taking("x", 1, "nothing"))), List.of(), List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Problem(List.of(must("a", taking("x", 1)), must("a", taking("x", 1))), List.of(), List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Problem(List.of(must("a", taking("x", 1))), List.of(), List.of()).keeping(List.of(new Kept(0, 1, 5))));
        assertThrows(IllegalArgumentException.class, () -> new Feed(Set.of("line"), PhantomNeed.FORBIDDEN, 3));
        assertThrows(IllegalArgumentException.class, () -> new Choice("out", Choice.Use.OUT, 0, Map.of("mic", 1), List.of(), List.of()));
    }

    private Solution best(Problem problem) {
        return allocator.best(problem).orElseThrow();
    }

    private List<String> chosen(Problem problem) {
        return Small.chosen(problem, best(problem));
    }

    private static List<String> named(Problem problem, List<Channel> channels) {
        return channels.stream().map(channel -> problem.banks().get(channel.bank()).name() + " " + channel.channel()).toList();
    }
}
