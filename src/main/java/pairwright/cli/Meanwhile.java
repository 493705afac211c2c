package pairwright.cli;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import pairwright.locker.LockerFault;

/** Tells those who wait how far something is: not on standard output, which may go into a file, not the same twice, and not more often than anybody likes to read. */
final class Meanwhile {
    private static final Duration EVERY = Duration.ofSeconds(2);
    private static final Duration LOOK = Duration.ofMillis(50);

    private final PrintWriter err;
    private long toldNs = System.nanoTime();
    private String told = "";

    Meanwhile(PrintWriter err) {
        this.err = err;
    }

    /** From any thread. */
    synchronized void tell(String far) {
        if (System.nanoTime() - toldNs >= EVERY.toNanos() && !far.equals(told)) {
            toldNs = System.nanoTime();
            told = far;
            err.println(far + " ...");
            err.flush();
        }
    }

    /**
     * Looks again and again until it is there.
     *
     * @param far how far it is, in words
     * @param stopped what is said where somebody ends it before
     */
    <S> S until(Predicate<S> there, Supplier<S> look, Function<S, String> far, String stopped) {
        try {
            S state = look.get();
            while (!there.test(state)) {
                tell(far.apply(state));
                Thread.sleep(LOOK.toMillis());
                state = look.get();
            }
            return state;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            throw new LockerFault.Unreachable(stopped);
        }
    }
}
