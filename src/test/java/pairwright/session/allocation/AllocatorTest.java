package pairwright.session.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import pairwright.locker.PhantomSwitch;

class AllocatorTest {
    private final Allocator allocator = new Allocator();

    @Test
    void theOnlyUnitGoesWhereItIsWorthMore() {
        Problem problem = problem(List.of(new Cap("ribbon", 1, 0), new Cap("dynamic", 2, 0)),
                seat("sax", choice("r", 900, "ribbon"), choice("d", 500, "dynamic")),
                seat("trumpet", choice("r", 800, "ribbon"), choice("d", 700, "dynamic")));
        assertEquals(List.of("r", "d"), chosen(problem));
        assertEquals(1600, best(problem).centipoints());
        assertTrue(best(problem).proven());
    }

    @Test
    void aRibbonIsNeverOnALiveBank() {
        Feed ribbon = new Feed(Set.of("line"), PhantomNeed.FORBIDDEN, 0);
        Feed condenser = new Feed(Set.of("line"), PhantomNeed.NEEDED, 40);
        Feed dynamic = new Feed(Set.of("line"), PhantomNeed.ANY, 0);
        List<Seat> seats = List.of(seat("sax", fed("r", 900, ribbon), fed("d", 100, dynamic)), seat("piano", fed("c", 1000, condenser), fed("d", 500, dynamic)));
        List<Bank> one = List.of(new Bank("stage", PhantomSwitch.BANK, List.of("line", "line"), null, null));
        List<Bank> two = List.of(new Bank("left", PhantomSwitch.BANK, List.of("line"), null, null), new Bank("right", PhantomSwitch.BANK, List.of("line"), null, null));
        List<Bank> each = List.of(new Bank("desk", PhantomSwitch.CHANNEL, List.of("line", "line"), null, null));
        List<Bank> none = List.of(new Bank("box", PhantomSwitch.NONE, List.of("line", "line"), null, null));
        assertEquals(List.of("r", "d"), chosen(new Problem(seats, List.of(), one)), "900 + 500 is more than 1000 + 100");
        assertEquals(List.of("r", "c"), chosen(new Problem(seats, List.of(), two)));
        assertEquals(List.of("r", "c"), chosen(new Problem(seats, List.of(), each)));
        assertEquals(List.of("r", "d"), chosen(new Problem(seats, List.of(), none)));
    }

    private Solution best(Problem problem) {
        return allocator.best(problem).orElseThrow();
    }

    private List<String> chosen(Problem problem) {
        List<String> chosen = new ArrayList<>();
        List<Integer> choices = best(problem).choices();
        for (int seat = 0; seat < choices.size(); seat++) {
            chosen.add(problem.seats().get(seat).choices().get(choices.get(seat)).id());
        }
        return chosen;
    }

    private static Problem problem(List<Cap> caps, Seat... seats) {
        return new Problem(List.of(seats), caps, List.of());
    }

    private static Seat seat(String id, Choice... choices) {
        return new Seat(id, true, Arrays.asList(choices));
    }

    private static Choice choice(String id, long centipoints, String cap) {
        return new Choice(id, Choice.Use.FULL, centipoints, Map.of(cap, 1), List.of(), List.of());
    }

    private static Choice fed(String id, long centipoints, Feed... feeds) {
        return new Choice(id, Choice.Use.FULL, centipoints, Map.of(), List.of(feeds), List.of());
    }
}
