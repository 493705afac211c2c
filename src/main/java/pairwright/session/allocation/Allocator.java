package pairwright.session.allocation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the best plans of a problem. The same problem has the same answer every time and on every machine, as long as a search ends by its proof or by its work and not by
 * the clock. Every method may throw {@link NoSolver}; those that need a plan {@link NotDecided}.
 */
public final class Allocator {
    private final Limits limits;

    public Allocator() {
        this(Limits.USUAL);
    }

    /** @param limits of each search */
    public Allocator(Limits limits) {
        this.limits = limits;
    }

    /** The plan that is worth most; empty where it is proven that there is none: ask for the {@link #shortage}. */
    public Optional<Solution> best(Problem problem) {
        return new Search(problem, limits).best(List.of(), 0);
    }

    /**
     * The best plan, then the best that differs from it, then the best that differs from both, and so on.
     *
     * @param plans how many at most; there are fewer where no further differs enough
     * @param leastDifferent in how many seats each differs from each at least, 1 or more
     * @return in the order found; the first is the best; empty where there is none
     */
    public List<Solution> different(Problem problem, int plans, int leastDifferent) {
        Search search = new Search(problem, limits);
        List<Solution> found = new ArrayList<>();
        while (found.size() < plans) {
            Optional<Solution> next = next(search, found, leastDifferent);
            if (next.isEmpty()) {
                break;
            }
            found.add(next.get());
        }
        return found;
    }

    /** Who has one plan can do without another that takes too long to find. */
    private static Optional<Solution> next(Search search, List<Solution> found, int leastDifferent) {
        try {
            return search.best(found, leastDifferent);
        } catch (NotDecided tooLong) {
            if (found.isEmpty()) {
                throw tooLong;
            }
            return Optional.empty();
        }
    }

    /**
     * The best plan after something changed, with what is set up left as it is unless moving it is worth more.
     *
     * @param problem as it is now
     * @param before the problem whose plan is set up
     * @param setUp that plan; seats and choices are known again by their ids
     * @param keptCentipoints what it is worth to leave one seat as it is, hundredths of a point, 0 or more; added to what the problem keeps already
     */
    public Optional<Solution> again(Problem problem, Problem before, Solution setUp, long keptCentipoints) {
        Before already = new Before(before, setUp);
        List<Kept> kept = new ArrayList<>(problem.kept());
        for (int seat = 0; seat < problem.seats().size(); seat++) {
            Seat of = problem.seats().get(seat);
            for (int choice = 0; choice < of.choices().size(); choice++) {
                if (already.has(of.id(), of.choices().get(choice).id())) {
                    kept.add(new Kept(seat, choice, keptCentipoints));
                }
            }
        }
        return new Search(problem.keeping(kept), limits, already).best(List.of(), 0);
    }

    /** Why not every seat that must be served can be, and the ways out; says that all can be where that is so. */
    public Shortage shortage(Problem problem) {
        return new Shortages(problem, limits).shortage();
    }

    /**
     * What one more of each thing that a choice takes is worth: of each cap, and of each group of channels, one with a switch and a supply of its own. It takes a search for each, so it
     * is for the background.
     *
     * @return first those of which all are in use; fewer than all where it was stopped
     */
    public List<Gain> oneMore(Problem problem, Progress progress) {
        return new OneMore(problem, limits).gains(progress);
    }
}
