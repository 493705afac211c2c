package pairwright.session.allocation;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;

/**
 * How long plans of made-up sessions take: on the clock, and of one processor, which is what it would be on a machine that does nothing else. Not a test: machines differ. Run it with
 * {@code mvn -q test-compile exec:java@plan-benchmark}; the argument is how many sessions of each mood, 5 unless given.
 */
public final class AllocatorBenchmark {
    private final Allocator allocator = new Allocator();
    private final int sessions;

    private AllocatorBenchmark(int sessions) {
        this.sessions = sessions;
    }

    /** Prints the figures. */
    public static void main(String[] arguments) {
        long start = System.nanoTime();
        new Allocator().best(Instances.of(Instances.Mood.LOOSE, Instances.Size.SMALL, 0));
        System.out.printf(Locale.ROOT, "the first plan, with the solver loaded: %d ms%n", (System.nanoTime() - start) / 1_000_000);
        AllocatorBenchmark benchmark = new AllocatorBenchmark(arguments.length == 0 ? 5 : Integer.parseInt(arguments[0]));
        for (Instances.Size size : List.of(Instances.Size.MEDIUM, Instances.Size.LARGE)) {
            System.out.println(size.seats() + " sources, " + size.types() + " types of one to three units, up to " + size.choices() + " options for each source");
            for (Instances.Mood mood : Instances.Mood.values()) {
                benchmark.measure(mood, size);
            }
        }
    }

    private void measure(Instances.Mood mood, Instances.Size size) {
        Timed best = new Timed();
        Timed again = new Timed();
        Timed three = new Timed();
        int proven = 0;
        int impossible = 0;
        double worstGapShare = 0;
        int moved = 0;
        for (int seed = 0; seed < sessions; seed++) {
            Problem problem = Instances.of(mood, size, 1000 + seed);
            Solution plan = best.of(() -> allocator.best(problem).orElse(null));
            if (plan == null) {
                impossible++;
                continue;
            }
            proven += plan.proven() ? 1 : 0;
            worstGapShare = Math.max(worstGapShare, (plan.boundCentipoints() - plan.centipoints()) / (double) plan.centipoints());
            Problem without = withoutOneInUse(problem, plan);
            Solution replanned = again.of(() -> allocator.again(without, problem, plan, 400).orElse(null));
            moved += replanned == null ? 0 : replanned.differsIn(plan);
            if (size != Instances.Size.LARGE) {
                three.of(() -> allocator.different(problem, 3, 3));
            }
        }
        System.out.printf(Locale.ROOT, "  %-8s plan %s; proven %d of %d, impossible %d, widest gap %.3f %%; again %s, %d seats moved; three plans %s%n",
                mood, best, proven, sessions - impossible, impossible, 100 * worstGapShare, again, moved, three);
    }

    /** A unit that is in use fails. */
    private static Problem withoutOneInUse(Problem problem, Solution plan) {
        for (int seat = 0; seat < plan.choices().size(); seat++) {
            Map<String, Integer> takes = problem.seats().get(seat).choices().get(plan.choices().get(seat)).takes();
            if (!takes.isEmpty()) {
                String lost = Collections.min(takes.keySet());
                List<Cap> caps = problem.caps().stream().map(cap -> cap.name().equals(lost) ? new Cap(lost, cap.there() - 1, cap.price()) : cap).toList();
                return new Problem(problem.seats(), caps, problem.banks(), problem.pairs(), problem.kept(), problem.channelPrices());
            }
        }
        return problem;
    }

    /** Times of one kind. */
    private static final class Timed {
        private final List<Long> clockMs = new ArrayList<>();
        private final List<Long> processorMs = new ArrayList<>();

        <T> T of(Supplier<T> work) {
            long clock = System.nanoTime();
            long processor = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            T result = work.get();
            clockMs.add((System.nanoTime() - clock) / 1_000_000);
            processorMs.add((ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - processor) / 1_000_000);
            return result;
        }

        @Override
        public String toString() {
            return clockMs.isEmpty() ? "-" : middleAndWorst(clockMs) + " ms (processor " + middleAndWorst(processorMs) + ")";
        }

        private static String middleAndWorst(List<Long> times) {
            List<Long> sorted = times.stream().sorted().toList();
            return sorted.get(sorted.size() / 2) + "/" + sorted.get(sorted.size() - 1);
        }
    }
}
