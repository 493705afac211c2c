package pairwright.session.allocation;

import java.time.Duration;

/**
 * How long a search goes on.
 *
 * @param work units of the solver's own count of its work, about a second each; it is the same on every machine, and so is what is found within it
 * @param clock where it ends whatever it has done, so that nobody waits for ever on a slow machine
 */
public record Limits(int work, Duration clock) {
    /** Enough for a proof of all but the hardest sessions. */
    public static final Limits USUAL = new Limits(20, Duration.ofSeconds(60));
}
