package pairwright.session;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.Solution;

/**
 * The best plan of a layout, searched among the first few ways of each seat; where that is not proven to be enough, among all that could be in it.
 *
 * @param among the ways that were searched, seat by seat
 * @param solution of them
 */
record BestPlan(List<List<SeatChoices.Way>> among, Solution solution) {
    private static final int FIRST = 30;

    /** None where there is no plan. */
    static Optional<BestPlan> of(Layout layout, Allocator allocator) {
        if (!layout.unserved().isEmpty()) {
            return Optional.empty();
        }
        List<List<SeatChoices.Way>> some = layout.first(FIRST);
        Optional<Solution> first = allocator.best(layout.problem(some));
        List<List<SeatChoices.Way>> wanted = first.isEmpty() ? layout.ways() : layout.within(first.get().centipoints(), 0);
        List<List<SeatChoices.Way>> all = union(some, wanted);
        if (all.equals(some)) {
            return first.map(solution -> new BestPlan(some, solution));
        }
        return allocator.best(layout.problem(all)).map(solution -> new BestPlan(all, solution));
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
