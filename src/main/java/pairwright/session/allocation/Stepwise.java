package pairwright.session.allocation;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;

/**
 * A good plan under a condition, in two steps: first as if no two seats were worth anything together, which decides soon whether there is a plan; then among the likeliest choices of each
 * seat. Where the second takes too long, the plan of the first will do. Where two are worth something together it is hardly ever proven to be the best: a way out is not worth that wait.
 */
final class Stepwise {
    /** So many of each seat nearly always hold a plan that is as good as the best, or hardly worse. */
    private static final int LIKELIEST = 10;

    private final Problem problem;
    private final Limits limits;
    private final Search search;
    private final Search.Latitude latitude;
    private final Consumer<Formulation> condition;

    /** @param condition is added to every formulation, and may ask for choices by their use only */
    Stepwise(Problem problem, Limits limits, Search.Latitude latitude, Consumer<Formulation> condition) {
        this.problem = problem;
        this.limits = limits;
        this.search = new Search(problem, limits);
        this.latitude = latitude;
        this.condition = condition;
    }

    /** Empty where it is proven that there is none. */
    Optional<Solution> best() {
        Search alone = new Search(problem.apart(), limits);
        Formulation apart = alone.formulated(latitude, Map.of());
        condition.accept(apart);
        Optional<Solution> found = alone.bestOf(apart, latitude);
        return found.isEmpty() || problem.pairs().isEmpty() ? found : Optional.of(together(found.get()));
    }

    private Solution together(Solution apart) {
        Prices prices = new Pricing(problem).prices(problem.kept(), problem.worthCentipoints(apart.choices()));
        Solution first = search.counted(apart, prices.boundCentipoints(), latitude);
        List<Set<Integer>> likeliest = IntStream.range(0, problem.seats().size()).mapToObj(seat -> likeliest(seat, prices, first)).toList();
        Solution good = among((seat, choice) -> likeliest.get(seat).contains(choice), first, prices);
        return good.within(Math.max(good.boundCentipoints(), prices.boundCentipoints()));
    }

    private Set<Integer> likeliest(int seat, Prices prices, Solution first) {
        Set<Integer> likeliest = new HashSet<>(IntStream.range(0, problem.seats().get(seat).choices().size()).filter(choice -> latitude.allows(problem, seat, choice)).boxed()
                .sorted(Comparator.comparingDouble(choice -> prices.behindCentipoints(seat, choice))).limit(LIKELIEST).toList());
        likeliest.add(first.choices().get(seat));
        return likeliest;
    }

    /** @param known among them */
    private Solution among(Formulation.Allowed some, Solution known, Prices prices) {
        Formulation formulation = new Formulation(problem, (seat, choice) -> latitude.allows(problem, seat, choice) && some.allows(seat, choice), Map.of());
        condition.accept(formulation);
        formulation.beginWith(known.choices());
        try {
            return search.bestOf(formulation, latitude).orElse(known);
        } catch (NotDecided tooLong) {
            return search.counted(known, prices.boundCentipoints(), latitude);
        }
    }
}
