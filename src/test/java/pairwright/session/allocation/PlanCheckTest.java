package pairwright.session.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.allocation.Small.RIBBON;
import static pairwright.session.allocation.Small.bank;
import static pairwright.session.allocation.Small.condenser;
import static pairwright.session.allocation.Small.fewer;
import static pairwright.session.allocation.Small.must;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pairwright.locker.PhantomSwitch;

/** A plan that is none is caught, whoever found it. */
class PlanCheckTest {
    private static final Problem PROBLEM = new Problem(
            List.of(must("sax", new Choice("r", Choice.Use.FULL, 500, Map.of("ribbon", 1), List.of(RIBBON), List.of(Set.of("tall"))), Choice.out("out", 0), fewer("shared", 500)),
                    must("piano", new Choice("c", Choice.Use.FULL, 700, Map.of("pair", 1), List.of(condenser(40), condenser(40)), List.of()),
                            new Choice("rr", Choice.Use.FULL, 700, Map.of("ribbon", 1), List.of(condenser(40), condenser(40)), List.of()))),
            List.of(new Cap("ribbon", 1, 0), new Cap("pair", 1, 0), new Cap("tall", 1, 0), new Cap("short", 1, 0)),
            List.of(bank("left", PhantomSwitch.BANK, 2), bank("right", PhantomSwitch.BANK, 2, 80),
                    bank("box", PhantomSwitch.NONE, 2), new Bank("desk", PhantomSwitch.CHANNEL, List.of("line", "mic"), 70, 30)),
            List.of(new PairTerm(0, 1, List.of(new PairTerm.Together(0, 0, 10)))), List.of(new Kept(0, 0, 5)), Map.of());

    private static final List<List<Channel>> CHANNELS = List.of(List.of(new Channel(0, 0)), List.of(new Channel(1, 0), new Channel(1, 1)));
    private static final List<List<String>> STANDS = List.of(List.of("tall"), List.of());

    @Test
    void aPlanPasses() {
        Solution plan = plan(List.of(0, 0), 1215, CHANNELS, STANDS, Set.of(1));
        assertEquals(plan, PlanCheck.passed(PROBLEM, plan, Set.of(), false));
        assertEquals(plan.centipoints(), new Allocator().best(PROBLEM).orElseThrow().centipoints());
    }

    static Stream<Arguments> whatIsWrong() {
        return Stream.of(
                Arguments.of("is left out", plan(List.of(1, 0), 700, List.of(List.of(), CHANNELS.get(1)), List.of(List.of(), List.of()), Set.of(1))),
                Arguments.of("less than was asked for", plan(List.of(2, 0), 1200, List.of(List.of(), CHANNELS.get(1)), List.of(List.of(), List.of()), Set.of(1))),
                Arguments.of("no choice 7", plan(List.of(7, 0), 1215, CHANNELS, STANDS, Set.of(1))),
                Arguments.of("not for 2 seats", plan(List.of(0), 1215, CHANNELS, STANDS, Set.of(1))),
                Arguments.of("of ribbon it takes 2 where there are 1", plan(List.of(0, 1), 1205, CHANNELS, STANDS, Set.of(1))),
                Arguments.of("cannot be served by short", plan(List.of(0, 0), 1215, CHANNELS, List.of(List.of("short"), List.of()), Set.of(1))),
                Arguments.of("not a channel for each feed",
                        plan(List.of(0, 0), 1215, List.of(CHANNELS.get(0), CHANNELS.get(0)), STANDS, Set.of(1))),
                Arguments.of("two feeds are on",
                        plan(List.of(0, 0), 1215, List.of(CHANNELS.get(0), List.of(new Channel(1, 0), new Channel(1, 0))), STANDS, Set.of(1))),
                Arguments.of("is live with a feed that must not see phantom power", plan(List.of(0, 0), 1215, CHANNELS, STANDS, Set.of(0, 1))),
                Arguments.of("has no phantom power for a feed that needs it", plan(List.of(0, 0), 1215, CHANNELS, STANDS, Set.of())),
                Arguments.of("has no phantom power for a feed that needs it",
                        plan(List.of(0, 0), 1215, List.of(CHANNELS.get(0), List.of(new Channel(1, 0), new Channel(2, 0))), STANDS, Set.of(1))),
                Arguments.of("bank desk gives 80 tenths of a mA where it has 70",
                        plan(List.of(0, 0), 1215, List.of(CHANNELS.get(0), List.of(new Channel(3, 0), new Channel(3, 1))), STANDS, Set.of())),
                Arguments.of("gives 40 tenths of a mA where it has 30",
                        plan(List.of(0, 0), 1215, List.of(CHANNELS.get(0), List.of(new Channel(1, 0), new Channel(3, 0))), STANDS, Set.of(1))),
                Arguments.of("cannot serve a feed of [line]",
                        plan(List.of(0, 0), 1215, List.of(CHANNELS.get(0), List.of(new Channel(1, 0), new Channel(3, 1))), STANDS, Set.of(1))),
                Arguments.of("there is no Channel[bank=9, channel=0]",
                        plan(List.of(0, 0), 1215, List.of(CHANNELS.get(0), List.of(new Channel(1, 0), new Channel(9, 0))), STANDS, Set.of(1))),
                Arguments.of("live that has not one switch", plan(List.of(0, 0), 1215, CHANNELS, STANDS, Set.of(1, 3))),
                Arguments.of("it is worth 1215 hundredths, 5 of them", plan(List.of(0, 0), 1216, CHANNELS, STANDS, Set.of(1))),
                Arguments.of("with a bound of 1214", new Solution(List.of(0, 0), 1215, 5, false, 1214, false, CHANNELS, STANDS, Set.of(1))),
                Arguments.of("with a bound of 1300", new Solution(List.of(0, 0), 1215, 5, true, 1300, false, CHANNELS, STANDS, Set.of(1))));
    }

    @ParameterizedTest
    @MethodSource("whatIsWrong")
    void whatIsNoneIsCaught(String says, Solution plan) {
        String message = assertThrows(IllegalStateException.class, () -> PlanCheck.passed(PROBLEM, plan, Set.of(), false)).getMessage();
        assertTrue(message.contains(says), message);
    }

    private static Solution plan(List<Integer> choices, long centipoints, List<List<Channel>> channels, List<List<String>> stands, Set<Integer> live) {
        long kept = choices.get(0) == 0 ? 5 : 0;
        return new Solution(choices, centipoints, kept, true, centipoints, false, channels, stands, live);
    }
}
