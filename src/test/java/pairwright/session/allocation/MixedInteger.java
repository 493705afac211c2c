package pairwright.session.allocation;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import pairwright.locker.PhantomSwitch;

/**
 * The same question put to another solver in another way: every bank by itself, every pair of choices by itself, no ties, nothing taken together that is the same. It knows the problem
 * and nothing of how the program searches it.
 */
final class MixedInteger {
    private final Problem problem;
    private final MPSolver solver;
    private final List<List<MPVariable>> chosen = new ArrayList<>();

    private MixedInteger(Problem problem) {
        Loader.loadNativeLibraries();
        this.problem = problem;
        solver = MPSolver.createSolver("SCIP");
    }

    /** What the best plan is worth; empty where there is none. */
    static OptionalLong optimum(Problem problem) {
        return new MixedInteger(problem).optimum();
    }

    private OptionalLong optimum() {
        MPObjective worth = solver.objective();
        worth.setMaximization();
        for (Seat seat : problem.seats()) {
            MPConstraint one = solver.makeConstraint(1, 1);
            List<MPVariable> of = new ArrayList<>();
            for (Choice choice : seat.choices()) {
                boolean may = choice.use() == Choice.Use.FULL || choice.use() == Choice.Use.OUT && !seat.must();
                MPVariable variable = solver.makeIntVar(0, may ? 1 : 0, "");
                one.setCoefficient(variable, 1);
                worth.setCoefficient(variable, choice.centipoints());
                of.add(variable);
            }
            chosen.add(of);
        }
        problem.kept().forEach(kept -> {
            MPVariable variable = chosen.get(kept.seat()).get(kept.choice());
            worth.setCoefficient(variable, worth.getCoefficient(variable) + kept.centipoints());
        });
        problem.pairs().forEach(pair -> pair.together().forEach(both ->
                addBoth(worth, chosen.get(pair.first()).get(both.first()), chosen.get(pair.second()).get(both.second()), both.centipoints())));
        addCaps();
        addChannels();
        MPSolverParameters parameters = new MPSolverParameters();
        parameters.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
        MPSolver.ResultStatus status = solver.solve(parameters);
        if (status == MPSolver.ResultStatus.INFEASIBLE) {
            return OptionalLong.empty();
        }
        if (status != MPSolver.ResultStatus.OPTIMAL) {
            throw new IllegalStateException("The other solver says " + status);
        }
        return OptionalLong.of(Math.round(worth.value()));
    }

    private void addBoth(MPObjective worth, MPVariable first, MPVariable second, long centipoints) {
        MPVariable both = solver.makeNumVar(0, 1, "");
        MPConstraint ofFirst = solver.makeConstraint(Double.NEGATIVE_INFINITY, 0);
        ofFirst.setCoefficient(both, 1);
        ofFirst.setCoefficient(first, -1);
        MPConstraint ofSecond = solver.makeConstraint(Double.NEGATIVE_INFINITY, 0);
        ofSecond.setCoefficient(both, 1);
        ofSecond.setCoefficient(second, -1);
        MPConstraint least = solver.makeConstraint(-1, Double.POSITIVE_INFINITY);
        least.setCoefficient(both, 1);
        least.setCoefficient(first, -1);
        least.setCoefficient(second, -1);
        worth.setCoefficient(both, centipoints);
    }

    private void addCaps() {
        Map<String, MPConstraint> rows = new HashMap<>();
        problem.caps().forEach(cap -> rows.put(cap.name(), solver.makeConstraint(Double.NEGATIVE_INFINITY, cap.there())));
        Map<Set<String>, MPConstraint> pools = new HashMap<>();
        for (int seat = 0; seat < chosen.size(); seat++) {
            for (int index = 0; index < chosen.get(seat).size(); index++) {
                MPVariable x = chosen.get(seat).get(index);
                Choice choice = problem.seats().get(seat).choices().get(index);
                choice.takes().forEach((cap, count) -> rows.get(cap).setCoefficient(x, count));
                choice.anyOf().forEach(anyOf -> {
                    MPConstraint pool = pools.computeIfAbsent(anyOf, any -> solver.makeConstraint(0, 0));
                    pool.setCoefficient(x, pool.getCoefficient(x) + 1);
                });
            }
        }
        pools.forEach((anyOf, pool) -> anyOf.forEach(cap -> {
            MPVariable from = solver.makeIntVar(0, 1000, "");
            pool.setCoefficient(from, -1);
            rows.get(cap).setCoefficient(from, 1);
        }));
    }

    private void addChannels() {
        Map<Feed, MPConstraint> feeds = new HashMap<>();
        for (int seat = 0; seat < chosen.size(); seat++) {
            for (int index = 0; index < chosen.get(seat).size(); index++) {
                MPVariable x = chosen.get(seat).get(index);
                problem.seats().get(seat).choices().get(index).feeds().forEach(feed -> {
                    MPConstraint row = feeds.computeIfAbsent(feed, any -> solver.makeConstraint(0, 0));
                    row.setCoefficient(x, row.getCoefficient(x) + 1);
                });
            }
        }
        problem.banks().forEach(bank -> addBank(bank, feeds));
    }

    private void addBank(Bank bank, Map<Feed, MPConstraint> feeds) {
        MPVariable live = solver.makeIntVar(0, 1, "");
        MPConstraint supply = solver.makeConstraint(Double.NEGATIVE_INFINITY, bank.supplyTenthMa() == null ? Double.POSITIVE_INFINITY : bank.supplyTenthMa());
        for (String group : Set.copyOf(bank.channels())) {
            long there = bank.channels().stream().filter(group::equals).count();
            MPConstraint all = solver.makeConstraint(Double.NEGATIVE_INFINITY, there);
            MPConstraint needing = solver.makeConstraint(Double.NEGATIVE_INFINITY, 0);
            MPConstraint refusing = solver.makeConstraint(Double.NEGATIVE_INFINITY, there);
            if (bank.phantom() == PhantomSwitch.BANK) {
                needing.setCoefficient(live, -there);
                refusing.setCoefficient(live, there);
            } else {
                needing.setBounds(Double.NEGATIVE_INFINITY, bank.phantom() == PhantomSwitch.NONE ? 0 : there);
            }
            feeds.forEach((feed, row) -> {
                if (feed.groups().contains(group) && (bank.channelTenthMa() == null || feed.drawTenthMa() <= bank.channelTenthMa())) {
                    MPVariable here = solver.makeIntVar(0, there, "");
                    row.setCoefficient(here, -1);
                    all.setCoefficient(here, 1);
                    supply.setCoefficient(here, feed.drawTenthMa());
                    if (feed.phantom() != PhantomNeed.ANY) {
                        (feed.phantom() == PhantomNeed.NEEDED ? needing : refusing).setCoefficient(here, 1);
                    }
                }
            });
        }
    }
}
