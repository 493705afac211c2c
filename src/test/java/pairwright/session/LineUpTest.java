package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pairwright.session.Sessions.at;
import static pairwright.session.Sessions.channel;
import static pairwright.session.Sessions.unit;

import java.util.List;
import org.junit.jupiter.api.Test;

class LineUpTest {
    private static final Floor FLOOR = new Floor(null, 7, 7, 3, 0.4);

    @Test
    void twoOfASourceWithNoNameOfAPlayerAreToldApartByTheirIds() {
        Seat first = at("v1", "violin", 2, 2, 45, 1, "small-condenser-cardioid");
        Seat flute = at("fl", "flute", 5, 2, 315, 1, "small-condenser-cardioid");
        Seat second = at("v2", "violin", 2, 5, 135, 1, "small-condenser-cardioid");
        Sessions session = Sessions.of(FLOOR, first, flute, second).units(unit("a", "small-condenser-cardioid"), unit("b", "small-condenser-cardioid"), unit("c", "small-condenser-cardioid"))
                .channels(channel("a"), channel("b"), channel("c"));
        assertEquals(List.of("Violin (v1)", "Flute", "Violin (v2)"), Sextet.planner().plan(session.lineUp(), session.gear(), step -> { }).plans().get(0).lines().stream().map(Line::name).toList());
        Seat named = new Seat("v2", "Nora", "violin", 2, 5, 135, null, null, null, null, null, true, null, false);
        assertEquals(List.of("", ""), new LineUp(null, FLOOR, List.of(first, named), null, null, null, null, null, 1).seats().stream()
                .map(new LineUp(null, FLOOR, List.of(first, named), null, null, null, null, null, 1)::toldApart).toList());
    }
}
