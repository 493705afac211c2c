package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Sessions.at;
import static pairwright.session.Sessions.channel;
import static pairwright.session.Sessions.unit;

import java.util.List;
import org.junit.jupiter.api.Test;

class SideBySideTest {
    private static final Floor FLOOR = new Floor(null, 9, 9, 3, 0.4);
    private static final String CONDENSER = "small-condenser-cardioid";
    private static final String RIBBON = "compact-ribbon";

    private static Plan planned(Sessions session) {
        return Sextet.planner().plan(session.lineUp(), session.gear(), step -> { }).plans().get(0);
    }

    private static List<String> seats(Plan plan) {
        return plan.lines().stream().map(Line::seat).toList();
    }

    /** The section is the first seat and the last. */
    private static Sessions section(Sessions session) {
        LineUp lineUp = session.lineUp();
        List<String> section = List.of(lineUp.seats().get(0).id(), lineUp.seats().get(lineUp.seats().size() - 1).id());
        return new Sessions(new LineUp(lineUp.name(), lineUp.floor(), lineUp.seats(), null, null, List.of(section), null, null, 1), session.gear());
    }

    private static Sessions quartet(String first, String between, String last, Sessions.Channel... channels) {
        return Sessions.of(FLOOR, at("one", "violin", 2, 2, 45, 1, first), at("gtr", "nylon-guitar", 7, 2, 315, 1, between), at("bass", "double-bass", 7, 7, 225, 1, between),
                at("two", "violin", 2, 7, 135, 1, last)).units(unit("a", CONDENSER), unit("b", CONDENSER), unit("c", CONDENSER), unit("d", CONDENSER), unit("r", RIBBON), unit("s", RIBBON))
                .channels(channels);
    }

    @Test
    void theLinesOfASectionAreNeighbours() {
        Sessions session = quartet(CONDENSER, CONDENSER, CONDENSER, channel("a"), channel("b"), channel("c"), channel("d"));
        assertEquals(List.of("one", "gtr", "bass", "two"), seats(planned(session)), "without a section they are in the order of the seats");
        List<String> together = seats(planned(section(session)));
        assertEquals(1, together.indexOf("two") - together.indexOf("one"), together.toString());
    }

    @Test
    void aRibbonIsNotBroughtOntoALiveBankForItsSection() {
        Sessions session = section(quartet(CONDENSER, CONDENSER, RIBBON, channel("a").onBank("A"), channel("b").onBank("A"), channel("c").onBank("A"), channel("d").dead()));
        Plan plan = planned(session);
        assertEquals("d", plan.linesOf("two").get(0).channel());
        assertEquals("c", plan.linesOf("one").get(0).channel(), "who can comes to it");
    }

    @Test
    void aRibbonDoesNotLoseABetterLoadForItsSection() {
        Sessions session = section(quartet(RIBBON, CONDENSER, RIBBON, channel("a").input(20_000).dead(), channel("b").input(1500), channel("c").input(1500), channel("d").input(20_000).dead()));
        assertEquals(List.of("a", "d"), planned(session).lines().stream().filter(line -> line.placement().micType().equals(RIBBON)).map(Line::channel).sorted().toList());
    }

    @Test
    void noSupplyIsAskedForMoreThanItHas() {
        double forTwoMa = 2 * Rooms.CATALOGUE.mics().get(CONDENSER).currentMa().typical() + 0.5;
        Plan plan = planned(section(quartet(CONDENSER, CONDENSER, CONDENSER, channel("a").supply(forTwoMa).onBank("A"), channel("b").supply(forTwoMa).onBank("A"),
                channel("c").supply(forTwoMa).onBank("A"), channel("d"), channel("e"))));
        assertTrue(plan.supplies().stream().anyMatch(supply -> supply.supplyMa() != null && supply.drawnMa() > 0), plan.supplies().toString());
        plan.supplies().forEach(supply -> assertTrue(supply.supplyMa() == null || supply.drawnMa() <= supply.supplyMa(), supply.toString()));
    }
}
