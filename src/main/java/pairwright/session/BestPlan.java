package pairwright.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.Problem;
import pairwright.session.allocation.Solution;

/**
 * The best plan of a layout, searched among the first few ways of each seat; where that is not proven to be enough, among all that could be in it.
 *
 * @param among the ways that were searched, seat by seat
 * @param exact those of them of which any two were weighed together, with those that were chosen
 * @param solution of them
 */
record BestPlan(List<List<SeatChoices.Way>> among, List<List<SeatChoices.Way>> exact, Solution solution) {
    /** Nearly always that many of each seat are proven to be enough. */
    private static final int FIRST = 30;

    /** None where there is no plan. */
    static Optional<BestPlan> of(Layout layout, Allocator allocator) {
        return of(layout, allocator::best, 0);
    }

    /**
     * None where there is no plan.
     *
     * @param search for the best of a problem
     * @param keptCentipoints what the search gives for leaving a seat as it is set up
     */
    static Optional<BestPlan> of(Layout layout, Function<Problem, Optional<Solution>> search, long keptCentipoints) {
        if (!layout.unserved().isEmpty()) {
            return Optional.empty();
        }
        List<List<SeatChoices.Way>> some = layout.first(FIRST);
        Optional<Solution> first = search.apply(layout.problem(some));
        List<List<SeatChoices.Way>> wanted = first.isEmpty() ? layout.ways() : layout.within(first.get().centipoints(), keptCentipoints);
        List<List<SeatChoices.Way>> all = union(some, wanted);
        if (all.equals(some)) {
            return first.map(solution -> new BestPlan(some, some, solution));
        }
        List<List<SeatChoices.Way>> exact = some;
        while (true) {
            Optional<Solution> found = search.apply(layout.problem(all, exact));
            if (found.isEmpty()) {
                return Optional.empty();
            }
            BestPlan best = new BestPlan(all, exact, found.get());
            List<List<SeatChoices.Way>> chosen = best.ways().stream().map(List::of).toList();
            List<List<SeatChoices.Way>> more = union(exact, chosen);
            if (more.equals(exact) || !layout.weighsTogether()) {
                return Optional.of(new BestPlan(all, more, found.get()));
            }
            exact = more; // what was hoped of them is counted now
        }
    }

    /**
     * Of each seat one way of every kind, the chosen one of its own: to whoever wants another plan a microphone a hand further off is none.
     *
     * @param all ways of every seat, best first: the first few of a seat may well be one type in thirty places
     */
    List<List<SeatChoices.Way>> kinds(List<List<SeatChoices.Way>> all) {
        List<List<SeatChoices.Way>> kinds = new ArrayList<>();
        for (int seat = 0; seat < all.size(); seat++) {
            Map<List<String>, SeatChoices.Way> of = new LinkedHashMap<>();
            SeatChoices.Way chosen = ways().get(seat);
            of.put(chosen.kind(), chosen);
            all.get(seat).forEach(way -> of.putIfAbsent(way.kind(), way));
            kinds.add(of.values().stream().limit(FIRST).toList());
        }
        return kinds;
    }

    private static List<List<SeatChoices.Way>> union(List<List<SeatChoices.Way>> some, List<List<SeatChoices.Way>> more) {
        List<List<SeatChoices.Way>> union = new ArrayList<>();
        for (int seat = 0; seat < some.size(); seat++) {
            Set<SeatChoices.Way> both = new LinkedHashSet<>(some.get(seat));
            both.addAll(more.get(seat));
            union.add(List.copyOf(both));
        }
        return union;
    }

    /** What each seat gets. */
    List<SeatChoices.Way> ways() {
        List<SeatChoices.Way> ways = new ArrayList<>();
        for (int seat = 0; seat < among.size(); seat++) {
            ways.add(among.get(seat).get(solution.choices().get(seat)));
        }
        return ways;
    }
}
