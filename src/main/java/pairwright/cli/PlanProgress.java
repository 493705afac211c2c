package pairwright.cli;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.function.Consumer;
import pairwright.session.Progress;

/** Tells those who wait how far a plan is: not on standard output, which may go into a file, and not more often than anybody likes to read. */
final class PlanProgress implements Consumer<Progress> {
    private static final Duration EVERY = Duration.ofSeconds(2);

    private final PrintWriter err;
    private long toldNs = System.nanoTime();

    PlanProgress(PrintWriter err) {
        this.err = err;
    }

    @Override
    public synchronized void accept(Progress progress) {
        if (System.nanoTime() - toldNs >= EVERY.toNanos()) {
            toldNs = System.nanoTime();
            err.println(progress.doing() + (progress.of() > 1 ? ", " + progress.done() + " of " + progress.of() : "") + " ...");
            err.flush();
        }
    }
}
