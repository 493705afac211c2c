package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pairwright.session.Sessions.at;
import static pairwright.session.Sessions.channel;
import static pairwright.session.Sessions.unit;

import org.junit.jupiter.api.Test;
import pairwright.locker.PhantomSwitch;

class PatchOrderTest {
    private static final Floor FLOOR = new Floor(null, 7, 7, 3, 0.4);

    private static String switchedOn(Sessions.Channel... channels) {
        Sessions session = Sessions.of(FLOOR, at("tp", "trumpet", 2, 2, 45, 1, "compact-ribbon"), at("gtr", "nylon-guitar", 5, 5, 225, 1, "small-condenser-cardioid"))
                .units(unit("rib", "compact-ribbon"), unit("sdc", "small-condenser-cardioid")).channels(channels);
        return Sextet.planner().plan(session.lineUp(), session.gear(), step -> { }).plans().get(0).patch().stream().filter(step -> step.startsWith("Switch phantom power on")).findFirst()
                .orElseThrow().replaceFirst(".*these only: ", "").replace(". Wait until it is quiet.", "");
    }

    private static Sessions.Channel ofDesk(String id) {
        return new Sessions.Channel(id, "Desk", PhantomSwitch.CHANNEL, null, null, null, null, true);
    }

    @Test
    void aBankWhoseChannelsHaveSwitchesOfTheirOwnIsNotSwitchedOnAsAWhole() {
        assertEquals("Desk 2 (line 2)", switchedOn(ofDesk("Desk 1"), ofDesk("Desk 2")), "the ribbon is on the other channel of the desk");
    }

    @Test
    void aBankWithOneSwitchIsNamed() {
        assertEquals("Box", switchedOn(channel("Box 1").onBank("Box"), channel("single").dead()));
    }

    @Test
    void aChannelIsNamedAsItIsLabelled() {
        assertEquals("Single 7 (line 2)", switchedOn(channel("Quiet").dead(), channel("Single 7")));
    }
}
