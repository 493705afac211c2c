package pairwright.session.allocation;

import com.google.ortools.sat.BoolVar;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One problem, as it is searched. */
final class Search {
    private final Problem problem;
    private final Solver solver;

    Search(Problem problem, Limits limits) {
        this.problem = problem;
        this.solver = new Solver(limits);
    }

    /** @param others plans it must differ from, each in at least so many seats */
    Optional<Solution> best(List<Solution> others, int leastDifferent) {
        Formulation formulation = new Formulation(problem, (seat, choice) -> problem.seats().get(seat).allows(problem.seats().get(seat).choices().get(choice)), Formulation.Extras.NONE);
        others.forEach(other -> formulation.differ(other.choices(), leastDifferent));
        formulation.model().maximize(formulation.worth());
        Solver.Run run = solver.run(formulation.model());
        if (run.impossible()) {
            return Optional.empty();
        }
        if (!run.found()) {
            throw new NotDecided();
        }
        return Optional.of(plan(formulation, run));
    }

    /** The plan that was found, with channels, checked. */
    private Solution plan(Formulation formulation, Solver.Run run) {
        List<Integer> chosen = chosen(formulation.chosen(), run);
        List<Choice> choices = new ArrayList<>();
        for (int seat = 0; seat < chosen.size(); seat++) {
            choices.add(problem.seats().get(seat).choices().get(chosen.get(seat)));
        }
        Settled settled = new Settled(problem, choices, solver);
        Patch patch = new Patch(problem, choices, settled);
        long kept = problem.kept().stream().filter(one -> chosen.get(one.seat()) == one.choice()).mapToLong(Kept::centipoints).sum();
        long centipoints = Math.floorDiv(run.values().value(formulation.worth()), 1L << Formulation.TIE_BITS);
        long bound = run.proven() ? centipoints : Math.max(centipoints, (long) Math.floor(run.values().bestObjectiveBound() / (1L << Formulation.TIE_BITS)));
        Solution plan = new Solution(chosen, centipoints, kept, bound == centipoints, bound, run.outOfTime(), patch.channels(), settled.served(choices), patch.liveBanks());
        return PlanCheck.passed(problem, plan, Set.of(), false);
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
}
