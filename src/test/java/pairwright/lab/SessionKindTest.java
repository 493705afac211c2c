package pairwright.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Limits;
import pairwright.session.LineUp;
import pairwright.session.Said;
import pairwright.session.SmallSession;

/** Sessions to be planned. */
class SessionKindTest {
    private static final Lab LAB = new Lab(KnowledgeStore.builtIn().current(), null);
    private static final Limits ONE = new Limits(1, null, null, null, null, null, null, null);
    private static final Map<String, Integer> UNITS = Map.of("long-ribbon", 1, "small-condenser-cardioid", 1, "handheld-moving-coil", 1);

    private static List<Variant> some(int level, int many) {
        return new Variants(new SessionKind(), Variants.Purpose.CLASS, "session", level, LAB).some(many);
    }

    private static SmallSession two(SmallSession.Sockets sockets) {
        LineUp lineUp = RoundFloor.lineUp("large-live-room", List.of("violin", "accordion"), List.of("3.0 4.0 90", "7.0 4.0 270"), List.of(RoundFloor.AS_IT_IS, RoundFloor.AS_IT_IS), seat -> ONE, null, null, LAB);
        return new SmallSession(lineUp, UNITS.keySet(), sockets, LAB.knowledge());
    }

    @Test
    void aUnitIsAtOnePlaceOnly() {
        SmallSession session = two(null);
        SessionPut twice = new SessionPut(session, List.of("long-ribbon", "long-ribbon"), UNITS);
        assertEquals(Set.of(1), twice.twice());
        assertTrue(twice.at(1).isEmpty());
        assertTrue(twice.at(0).isPresent());
        assertTrue(twice.shortCentipoints(session.best(UNITS).orElseThrow()) >= 400);
        assertEquals(Set.of(), new SessionPut(session, List.of("long-ribbon", "handheld-moving-coil"), UNITS).twice());
    }

    @Test
    void aRibbonFindsNoPlaceBesideAMicrophoneThatNeedsTheOneSwitchOn() {
        SessionPut put = new SessionPut(two(new SmallSession.Sockets(2, 0)), List.of("long-ribbon", "small-condenser-cardioid"), UNITS);
        assertEquals(Set.of(0), put.ruined());
        assertEquals(List.of("PLN-034"), put.warned().stream().map(Said::rule).toList());
        assertTrue(put.warned().get(0).says().contains("the long passive ribbon for the violin"), put.warned().toString());
        assertEquals(Set.of(), new SessionPut(two(new SmallSession.Sockets(1, 1)), List.of("long-ribbon", "small-condenser-cardioid"), UNITS).ruined());
        assertEquals(Set.of(), new SessionPut(two(new SmallSession.Sockets(2, 0)), List.of("long-ribbon", "handheld-moving-coil"), UNITS).ruined());
        assertEquals(Set.of(1), new SessionPut(two(new SmallSession.Sockets(1, 1)), List.of("small-condenser-cardioid", "small-condenser-cardioid"), Map.of("small-condenser-cardioid", 2)).unpowered());
    }

    @Test
    void theKeyIsThePlannersPlanAndIsWorthAllThereIs() {
        for (int level = 1; level <= KindInfo.LEVELS; level++) {
            Variant variant = some(level, 1).get(0);
            Case drawn = variant.drawn();
            Map<String, Integer> units = SessionKind.units(drawn.all("units"));
            LineUp lineUp = RoundFloor.lineUp(drawn.one("room"), drawn.all("sources"), drawn.all("places"), drawn.all("characters"), seat -> ONE,
                    SessionKind.group(drawn, "apart"), SessionKind.group(drawn, "section"), LAB);
            SmallSession session = new SmallSession(lineUp, units.keySet(),
                    drawn.all("switched").isEmpty() ? null : new SmallSession.Sockets((int) drawn.number("switched"), (int) drawn.number("without")), LAB.knowledge());
            Answer best = variant.exercise().key().best();
            List<String> types = java.util.stream.IntStream.rangeClosed(1, lineUp.seats().size()).mapToObj(seat -> best.one("mic-" + seat)).toList();
            double score = session.planned(units).orElseThrow().score();
            assertEquals(score, session.most(types, -1, null).orElseThrow() / 100.0, 1e-9, drawn.toString());
            for (int seat = 0; seat < types.size(); seat++) {
                assertEquals(score, session.most(types, seat, best.one("place-" + (seat + 1))).orElseThrow() / 100.0, 1e-9, drawn.toString());
            }
            assertFalse(variant.exercise().key().items().isEmpty());
        }
    }

    /** Who plays in one section is shared out so that it blends, and that counts. */
    @Test
    void aSectionIsOfOneFamilyAndIsSaidAndWeighed() {
        int sections = 0;
        int weighed = 0;
        for (Variant variant : some(4, 16)) {
            List<String> section = variant.drawn().all("section");
            assertTrue(section.isEmpty() != variant.drawn().all("apart").isEmpty(), variant.drawn().toString());
            if (!section.isEmpty()) {
                sections++;
                List<String> sources = variant.drawn().all("sources");
                assertEquals(1, section.stream().map(seat -> LAB.source(sources.get(seat.charAt(5) - '1')).family()).distinct().count());
                assertTrue(variant.exercise().handout().situation().stream().anyMatch(said -> said.startsWith("These are one section and shall sound alike: ")));
                weighed += variant.exercise().restsOn().stream().anyMatch(Set.of("PLN-014", "PLN-015", "PLN-016")::contains) ? 1 : 0;
            }
        }
        assertTrue(sections > 0 && weighed > 0, sections + " sections, " + weighed + " of them weighed");
    }

    @Test
    void oneMicrophoneForEverybodyCannotBeSetUpAndSaysSo() {
        Exercise exercise = some(1, 1).get(0).exercise();
        Answer best = exercise.key().best();
        Answer same = best.with("mic-2", best.one("mic-1")).with("mic-3", best.one("mic-1"));
        Check check = exercise.mark(same).checks().stream().filter(one -> one.name().equals("It can be set up")).findFirst().orElseThrow();
        assertEquals(0, check.points());
        assertTrue(check.says().contains("is elsewhere already"), check.says());
    }

    @Test
    void theSameCaseMakesTheSameExercise() {
        Variant one = some(4, 1).get(0);
        Exercise again = new SessionKind().of(one.drawn(), 4, LAB);
        assertEquals(one.exercise().handout(), again.handout());
        assertEquals(one.exercise().key(), again.key());
    }
}
