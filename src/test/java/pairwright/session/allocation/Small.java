package pairwright.session.allocation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import pairwright.locker.PhantomSwitch;

/** Parts of problems small enough to be worked by hand. */
final class Small {
    static final Feed RIBBON = new Feed(Set.of("line"), PhantomNeed.FORBIDDEN, 0);
    static final Feed DYNAMIC = new Feed(Set.of("line"), PhantomNeed.ANY, 0);

    private Small() {
    }

    static Feed condenser(int drawTenthMa) {
        return new Feed(Set.of("line"), PhantomNeed.NEEDED, drawTenthMa);
    }

    static Seat must(String id, Choice... choices) {
        return new Seat(id, true, Arrays.asList(choices));
    }

    static Seat may(String id, Choice... choices) {
        return new Seat(id, false, Arrays.asList(choices));
    }

    static Choice taking(String id, long centipoints, String... caps) {
        return new Choice(id, Choice.Use.FULL, centipoints, counted(caps), List.of(), List.of());
    }

    static Choice fewer(String id, long centipoints, String... caps) {
        return new Choice(id, Choice.Use.FEWER, centipoints, counted(caps), List.of(), List.of());
    }

    static Choice fed(String id, long centipoints, Feed... feeds) {
        return new Choice(id, Choice.Use.FULL, centipoints, Map.of(), List.of(feeds), List.of());
    }

    static Choice standing(String id, long centipoints, String... stands) {
        return new Choice(id, Choice.Use.FULL, centipoints, Map.of(), List.of(), List.of(Set.of(stands)));
    }

    static Bank bank(String name, PhantomSwitch phantom, int channels) {
        return bank(name, phantom, channels, null);
    }

    static Bank bank(String name, PhantomSwitch phantom, int channels, Integer supplyTenthMa) {
        return new Bank(name, phantom, Collections.nCopies(channels, "line"), supplyTenthMa, null);
    }

    /** The ids of what was chosen, in the order of the seats. */
    static List<String> chosen(Problem problem, Solution plan) {
        List<String> chosen = new ArrayList<>();
        for (int seat = 0; seat < plan.choices().size(); seat++) {
            chosen.add(problem.seats().get(seat).choices().get(plan.choices().get(seat)).id());
        }
        return chosen;
    }

    private static Map<String, Integer> counted(String... caps) {
        Map<String, Integer> counted = new TreeMap<>();
        Arrays.stream(caps).forEach(cap -> counted.merge(cap, 1, Integer::sum));
        return counted;
    }
}
