package pairwright.session.allocation;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.SatParameters;

/** Runs the solver so that it finds the same every time: one thread, one seed, a limit that counts its work. */
final class Solver {
    private static final int SEED = 11;

    /** @param outOfTime whether it ended by the clock */
    record Run(CpSolverStatus status, CpSolver values, boolean outOfTime) {
        boolean found() {
            return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        }

        boolean proven() {
            return status == CpSolverStatus.OPTIMAL;
        }

        boolean impossible() {
            return status == CpSolverStatus.INFEASIBLE;
        }
    }

    /** Loaded when first asked for: unpacking the library takes most of a second. */
    private static final class Library {
        static final Throwable FAULT = load();

        private static Throwable load() {
            try {
                Loader.loadNativeLibraries();
                return null;
            } catch (RuntimeException | LinkageError fault) {
                return fault;
            }
        }
    }

    private final Limits limits;

    /** @throws NoSolver where its library cannot be loaded */
    Solver(Limits limits) {
        this.limits = limits;
        load();
    }

    /** @throws NoSolver where the library cannot be loaded */
    static void load() {
        if (Library.FAULT != null) {
            throw new NoSolver(Library.FAULT);
        }
    }

    Run run(CpModel model) {
        return run(model, limits.work());
    }

    /** @param work as {@link Limits#work()} */
    Run run(CpModel model, double work) {
        CpSolver solver = new CpSolver();
        SatParameters.Builder parameters = solver.getParameters();
        parameters.setNumWorkers(1).setRandomSeed(SEED).setRelativeGapLimit(0).setAbsoluteGapLimit(0)
                .setCpModelProbingLevel(0).setMaxPresolveIterations(1) // what more of both finds is not worth it: without, plans take half the time
                .setMaxDeterministicTime(work).setMaxTimeInSeconds(limits.clock().toMillis() / 1000.0);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException("The solver refuses the model of a plan: " + solver.solutionInfo());
        }
        boolean ended = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.INFEASIBLE;
        return new Run(status, solver, !ended && solver.wallTime() >= limits.clock().toMillis() / 1000.0);
    }
}
