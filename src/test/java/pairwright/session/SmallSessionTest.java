package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import pairwright.advice.HouseMemory;
import pairwright.advice.KnowledgeStore;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.Stock;

/** A small session that is counted through has the plans that the planner finds. */
class SmallSessionTest {
    private static final KnowledgeStore KNOWLEDGE = KnowledgeStore.builtIn();
    private static final Floor LIVE = new Floor(null, 8, 7, 3.5, 0.6);
    private static final List<String> SOURCES = List.of("violin", "accordion", "clarinet", "nylon-guitar", "trumpet", "snare-drum");

    private static LineUp lineUp(int seats, Random random, boolean apart) {
        List<String> sources = new ArrayList<>(SOURCES);
        Collections.shuffle(sources, random);
        List<Seat> all = new ArrayList<>();
        for (int i = 0; i < seats; i++) {
            all.add(Sessions.at("seat-" + i, sources.get(i), 1.5 + 2.5 * (i % 3), 2 + 3 * (i / 3), 90 * (i % 4), 1));
        }
        return new LineUp(null, LIVE, all, null, apart ? List.of(List.of("seat-0", "seat-1")) : null, null, null, null, 1);
    }

    private static Map<String, Integer> units(int count, Random random) {
        List<String> types = new ArrayList<>(KNOWLEDGE.current().catalogue().mics().values().stream()
                .filter(type -> type.captures() && type.channels() == 1 && type.family() != MicFamily.PICKUP && type.family() != MicFamily.LINE).map(MicType::id).toList());
        Collections.shuffle(types, random);
        Map<String, Integer> units = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            units.merge(types.get(random.nextInt(count)), 1, Integer::sum);
        }
        return units;
    }

    @Test
    void everyPlanThatIsCountedThroughIsWorthWhatThePlannerFinds() {
        Random random = new Random(7);
        int found = 0;
        for (int i = 0; i < 10; i++) {
            LineUp lineUp = lineUp(3 + i % 3, random, i % 2 == 0);
            Map<String, Integer> units = units(lineUp.seats().size() + 2, random);
            SmallSession.Sockets sockets = i % 3 == 0 ? null : new SmallSession.Sockets(2, lineUp.seats().size() - 1);
            SmallSession session = new SmallSession(lineUp, units.keySet(), sockets, KNOWLEDGE.current());
            Optional<SmallSession.Seated> best = session.best(units);
            Optional<Plan> planned = session.planned(units);
            assertEquals(planned.isPresent(), best.isPresent(), lineUp + " with " + units);
            if (best.isPresent()) {
                found++;
                assertTrue(planned.get().proven());
                assertEquals(planned.get().score(), best.get().centipoints() / 100.0, lineUp + " with " + units);
                assertEquals(best.get().centipoints(), session.centipoints(best.get().offers()));
            }
        }
        assertTrue(found >= 5, "only " + found + " have a plan");
    }

    @Test
    void itsPlanIsThatOfThePlannerItself() {
        Random random = new Random(3);
        LineUp lineUp = lineUp(3, random, false);
        Map<String, Integer> units = Map.of("long-ribbon", 1, "small-condenser-cardioid", 1, "handheld-moving-coil", 2);
        List<Stock.Held> held = new ArrayList<>();
        units.forEach((type, count) -> {
            for (int i = 0; i < count; i++) {
                held.add(Sessions.unit(type + "-" + i, type));
            }
        });
        Planned planner = new Planner(KNOWLEDGE::current, HouseMemory.NOTHING).plan(lineUp, new Gear(new Stock(true, held), null, null, null, null), step -> { });
        assertEquals(planner.plans().get(0).score(), new SmallSession(lineUp, units.keySet(), null, KNOWLEDGE.current()).planned(units).orElseThrow().score());
    }

    @Test
    void aRibbonTakesNoChannelOfASwitchThatAnotherNeedsOn() {
        LineUp lineUp = lineUp(2, new Random(5), false);
        Map<String, Integer> units = Map.of("long-ribbon", 1, "small-condenser-cardioid", 1);
        assertFalse(new SmallSession(lineUp, units.keySet(), new SmallSession.Sockets(2, 0), KNOWLEDGE.current()).best(units).isPresent());
        assertTrue(new SmallSession(lineUp, units.keySet(), new SmallSession.Sockets(1, 1), KNOWLEDGE.current()).best(units).isPresent());
    }

    @Test
    void aSessionThatIsNotSmallIsRefused() {
        List<Seat> many = new ArrayList<>();
        for (int i = 0; i <= SmallSession.MOST_SEATS; i++) {
            many.add(Sessions.at("seat-" + i, "violin", 1, 1, 0, 1));
        }
        LineUp lineUp = new LineUp(null, LIVE, many, null, null, null, null, null, 1);
        assertThrows(IllegalArgumentException.class, () -> new SmallSession(lineUp, java.util.Set.of("long-ribbon"), null, KNOWLEDGE.current()));
    }
}
