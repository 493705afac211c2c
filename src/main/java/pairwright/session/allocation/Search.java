package pairwright.session.allocation;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.LinearArgument;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One problem, as it is searched in one way or another. */
final class Search {
    /**
     * Which choices may be chosen.
     *
     * @param leaveOut seats that may be left out whatever else holds
     * @param fewer whether a seat may get less than was asked for
     */
    record Latitude(Set<Integer> leaveOut, boolean fewer) {
        static final Latitude NONE = new Latitude(Set.of(), false);

        boolean allows(Problem problem, int seat, int choice) {
            Seat of = problem.seats().get(seat);
            Choice.Use use = of.choices().get(choice).use();
            return of.allows(of.choices().get(choice)) || fewer && use == Choice.Use.FEWER || use == Choice.Use.OUT && leaveOut.contains(seat);
        }
    }

    static final Set<Choice.Use> SERVED = EnumSet.of(Choice.Use.FULL, Choice.Use.FEWER);

    private final Problem problem;
    private final Solver solver;
    private final Before before;

    Search(Problem problem, Limits limits) {
        this(problem, limits, Before.NOTHING);
    }

    /** @param before where feeds are plugged already */
    Search(Problem problem, Limits limits, Before before) {
        this.problem = problem;
        this.solver = new Solver(limits);
        this.before = before;
    }

    /** @param extras how much may be used of things beyond what there is */
    Formulation formulated(Latitude latitude, Map<Extra, Integer> extras) {
        return new Formulation(problem, (seat, choice) -> latitude.allows(problem, seat, choice), extras);
    }

    /** @param others plans it must differ from, each in at least so many seats */
    Optional<Solution> best(List<Solution> others, int leastDifferent) {
        Formulation formulation = formulated(Latitude.NONE, Map.of());
        formulation.beginWith(before);
        others.forEach(other -> formulation.differ(other.choices(), leastDifferent));
        return bestOf(formulation, Latitude.NONE);
    }

    /** The plan that is worth most under whatever was added to a formulation; empty where there is none. */
    Optional<Solution> bestOf(Formulation formulation, Latitude latitude) {
        return most(formulation, formulation.worth()).map(run -> plan(formulation, run, latitude));
    }

    /**
     * @return empty where it is proven that there is nothing
     * @throws NotDecided where nothing was found and that is not proven
     */
    Optional<Solver.Run> most(Formulation formulation, LinearArgument of) {
        formulation.model().maximize(of);
        return decided(solver.run(formulation.model()));
    }

    /** As {@link #most}. */
    Optional<Solver.Run> least(Formulation formulation, LinearArgument of) {
        formulation.model().minimize(of);
        return decided(solver.run(formulation.model()));
    }

    private static Optional<Solver.Run> decided(Solver.Run run) {
        if (!run.found() && !run.impossible()) {
            throw new NotDecided();
        }
        return run.found() ? Optional.of(run) : Optional.empty();
    }

    /** A plan of choices that were found where less was counted, and no more is worth more than a bound. */
    Solution counted(Solution found, double boundCentipoints, Latitude latitude) {
        long worth = problem.worthCentipoints(found.choices());
        Solution plan = new Solution(found.choices(), worth, found.keptCentipoints(), false, worth, true, found.channels(), found.served(), found.liveBanks());
        return PlanCheck.passed(problem, plan.within(boundCentipoints), latitude.leaveOut(), latitude.fewer());
    }

    /** The plan that was found, with channels, checked. */
    private Solution plan(Formulation formulation, Solver.Run run, Latitude latitude) {
        List<Integer> chosen = chosen(formulation.chosen(), run);
        List<Choice> choices = new ArrayList<>();
        for (int seat = 0; seat < chosen.size(); seat++) {
            choices.add(problem.seats().get(seat).choices().get(chosen.get(seat)));
        }
        Settled settled = new Settled(problem, choices, solver, formulation, run);
        Patch patch = new Patch(problem, choices, settled, before);
        long kept = problem.kept().stream().filter(one -> chosen.get(one.seat()) == one.choice()).mapToLong(Kept::centipoints).sum();
        long centipoints = Math.floorDiv(run.values().value(formulation.worth()), 1L << Formulation.TIE_BITS);
        long bound = run.proven() ? centipoints : Math.max(centipoints, (long) Math.floor(run.values().bestObjectiveBound() / (1L << Formulation.TIE_BITS)));
        Solution plan = new Solution(chosen, centipoints, kept, bound == centipoints, bound, run.outOfTime(), patch.channels(), settled.served(choices), patch.liveBanks());
        return PlanCheck.passed(problem, plan, latitude.leaveOut(), latitude.fewer());
    }

    private static List<Integer> chosen(BoolVar[][] variables, Solver.Run run) {
        List<Integer> chosen = new ArrayList<>();
        for (BoolVar[] seat : variables) {
            for (int choice = 0; choice < seat.length; choice++) {
                if (seat[choice] != null && run.values().booleanValue(seat[choice])) {
                    chosen.add(choice);
                }
            }
        }
        return chosen;
    }

    /** The seats whose choice is of such a use. */
    static Set<Integer> withUse(Problem problem, Solution plan, Choice.Use use) {
        Set<Integer> seats = new HashSet<>();
        for (int seat = 0; seat < plan.choices().size(); seat++) {
            if (problem.seats().get(seat).choices().get(plan.choices().get(seat)).use() == use) {
                seats.add(seat);
            }
        }
        return seats;
    }
}
