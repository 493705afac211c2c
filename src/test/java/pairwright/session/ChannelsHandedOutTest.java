package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Sessions.at;
import static pairwright.session.Sessions.channel;
import static pairwright.session.Sessions.unit;

import java.util.List;
import org.junit.jupiter.api.Test;

class ChannelsHandedOutTest {
    private static final Floor FLOOR = new Floor(null, 7, 7, 3, 0.4);

    private static String channelOf(String micType, Sessions session) {
        return Sextet.planner().plan(session.lineUp(), session.gear(), step -> { }).plans().get(0).lines().stream()
                .filter(line -> line.placement().micType().equals(micType)).findFirst().orElseThrow().channel();
    }

    private static Sessions duo(Sessions.Channel... channels) {
        return Sessions.of(FLOOR, at("tp", "trumpet", 2, 2, 45, 1, "compact-ribbon"), at("gtr", "nylon-guitar", 5, 5, 225, 1, "small-condenser-cardioid"))
                .units(unit("rib", "compact-ribbon"), unit("sdc", "small-condenser-cardioid")).channels(channels);
    }

    @Test
    void aRibbonGoesWhereThereCannotBePhantomPowerAndNotOnADeadBank() {
        assertEquals("ribbon-1", channelOf("compact-ribbon", duo(channel("bank-1").gain(60).input(1500).onBank("b"), channel("bank-2").gain(60).input(1500).onBank("b"),
                channel("single-1").gain(60).input(1500), channel("ribbon-1").gain(76).input(20_000).dead())));
    }

    @Test
    void ofTwoWithoutPhantomPowerARibbonGetsTheBetterLoad() {
        assertEquals("ribbon-2", channelOf("compact-ribbon", duo(channel("single-1").gain(60).input(1500), channel("ribbon-1").gain(76).input(1500).dead(),
                channel("ribbon-2").gain(76).input(20_000).dead())));
    }

    @Test
    void whereNobodySaidWhatTheSwitchReachesARibbonGoesLast() {
        assertNotEquals("unnoted-1", channelOf("compact-ribbon", duo(channel("unnoted-1").gain(76).input(20_000).unnoted(), channel("single-1").gain(60).input(1500),
                channel("single-2").gain(60).input(1500))));
    }

    private static String channelAgain(String seat, String lostUnit, Sessions session) {
        Planner planner = Sextet.planner();
        Plan plan = planner.plan(session.lineUp(), session.gear(), step -> { }).plans().get(0);
        Change change = planner.again(session.lineUp(), session.gear(), Picks.of(plan), new Lost(List.of(lostUnit), null, null), 5, step -> { });
        assertTrue(change.steps().stream().noneMatch(step -> step.kind().equals("repatch")), change.steps().toString());
        return change.plan().linesOf(seat).get(0).channel();
    }

    @Test
    void theRibbonThatComesForOneThatIsLostTakesItsChannelAndNotOneOfABank() {
        assertEquals("ribbon-1", channelAgain("tp", "rib", duo(channel("bank-1").gain(76).input(1500).onBank("b"), channel("bank-2").gain(76).input(1500).onBank("b"),
                channel("single-1").gain(60).input(1500), channel("ribbon-1").gain(76).input(20_000).dead())
                        .units(unit("rib", "compact-ribbon"), unit("rib-2", "compact-ribbon"), unit("sdc", "small-condenser-cardioid"))));
    }

    @Test
    void whatComesForOneThatIsLostAndNeedsNoPhantomPowerTakesItsLead() {
        Sessions session = Sessions.of(FLOOR, at("tp", "trumpet", 2, 2, 45, 1, "handheld-moving-coil"))
                .units(unit("a", "handheld-moving-coil"), unit("b", "handheld-moving-coil"))
                .channels(channel("bank-1").gain(60).onBank("b"), channel("single-1").gain(60), channel("single-2").gain(60));
        String before = channelOf("handheld-moving-coil", session);
        assertEquals(before, channelAgain("tp", Sextet.planner().plan(session.lineUp(), session.gear(), step -> { }).plans().get(0).lines().get(0).unit().id(), session));
    }
}
