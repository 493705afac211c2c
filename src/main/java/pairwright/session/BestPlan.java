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
import pairwright.session.allocation.NotDecided;
import pairwright.session.allocation.Problem;
import pairwright.session.allocation.Solution;

/**
 * The best plan of a layout. First a good plan is searched among the likeliest ways of each seat, then the best among those that can be in a plan that is as good.
 *
 * @param among the ways that were searched, seat by seat
 * @param exact the first ways of each seat, and those that were chosen
 * @param solution of those that were searched
 */
record BestPlan(List<List<SeatChoices.Way>> among, List<List<SeatChoices.Way>> exact, Solution solution) {
    /** So many of each seat are enough to find another plan that differs in kind. */
    private static final int FIRST = 30;
    /** So many of each seat nearly always hold a plan that is as good as the best, or hardly worse. */
    private static final int LIKELIEST = 10;
    /** So many of each seat, on average, are searched as soon as a better plan to begin with. */
    private static final int FEW = 15;

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
        Narrowed narrowed = new Narrowed(layout, keptCentipoints);
        List<List<SeatChoices.Way>> likeliest = narrowed.likeliest(LIKELIEST, 0);
        Optional<BestPlan> good = good(search, layout.problem(likeliest)).map(found -> new BestPlan(likeliest, likeliest, found)).or(() -> any(layout, search));
        return good.map(known -> {
            Narrowed.Left left = narrowed.within(known.solution().centipoints());
            try {
                return among(layout, left.ways(), some, search).orElse(known);
            } catch (NotDecided tooLong) {
                return new BestPlan(known.among, union(some, known.chosen()), known.solution.within(left.boundCentipoints()));
            }
        });
    }

    /** A plan where there is one at all: the best as if nobody were heard with anybody, which is decided soon. */
    private static Optional<BestPlan> any(Layout layout, Function<Problem, Optional<Solution>> search) {
        return search.apply(layout.alone()).flatMap(found -> {
            List<List<SeatChoices.Way>> one = new BestPlan(layout.ways(), layout.ways(), found).chosen();
            return search.apply(layout.problem(one)).map(counted -> new BestPlan(one, one, counted));
        });
    }

    /**
     * The best where a plan is known already; none where none is worth as much.
     *
     * @param centipoints of a plan, nothing kept counted
     */
    static Optional<BestPlan> atLeast(Layout layout, Allocator allocator, long centipoints) {
        Narrowed narrowed = new Narrowed(layout, 0);
        List<List<SeatChoices.Way>> left = narrowed.within(centipoints).ways();
        if (left.stream().mapToInt(List::size).sum() > FEW * left.size()) {
            long good = good(allocator::best, layout.problem(narrowed.likeliest(LIKELIEST, centipoints))).map(Solution::centipoints).orElse(centipoints);
            left = narrowed.within(Math.max(centipoints, good)).ways();
        }
        return among(layout, left, layout.first(FIRST), allocator::best);
    }

    /** Where it takes too long, none. */
    private static Optional<Solution> good(Function<Problem, Optional<Solution>> search, Problem problem) {
        try {
            return search.apply(problem);
        } catch (NotDecided unknown) {
            return Optional.empty();
        }
    }

    /**
     * The best of some ways.
     *
     * @param first the ways to begin with, where there are too many to weigh any two together
     */
    private static Optional<BestPlan> among(Layout layout, List<List<SeatChoices.Way>> all, List<List<SeatChoices.Way>> first, Function<Problem, Optional<Solution>> search) {
        List<List<SeatChoices.Way>> exact = layout.pairsOf(all) <= Narrowed.MOST_PAIRS ? all : common(all, first);
        while (true) {
            Optional<Solution> found = search.apply(layout.problem(all, exact));
            if (found.isEmpty()) {
                return Optional.empty();
            }
            BestPlan best = new BestPlan(all, exact, found.get());
            List<List<SeatChoices.Way>> more = union(exact, best.chosen());
            if (more.equals(exact) || !layout.weighsTogether()) {
                return Optional.of(new BestPlan(all, union(first, best.chosen()), found.get()));
            }
            exact = more; // what was hoped of them is counted now
        }
    }

    private List<List<SeatChoices.Way>> chosen() {
        return ways().stream().map(List::of).toList();
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

    private static List<List<SeatChoices.Way>> common(List<List<SeatChoices.Way>> all, List<List<SeatChoices.Way>> some) {
        List<List<SeatChoices.Way>> common = new ArrayList<>();
        for (int seat = 0; seat < all.size(); seat++) {
            Set<SeatChoices.Way> of = Set.copyOf(some.get(seat));
            common.add(all.get(seat).stream().filter(of::contains).toList());
        }
        return common;
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
