package pairwright.locker;

import java.time.Instant;

/**
 * A time from one moment until just before another, in whole seconds.
 *
 * @param from the first second
 * @param until the first second after it
 */
public record Span(Instant from, Instant until) {
    public Span {
        from = Instant.ofEpochSecond(from.getEpochSecond());
        until = Instant.ofEpochSecond(until.getNano() == 0 ? until.getEpochSecond() : until.getEpochSecond() + 1);
        if (!from.isBefore(until)) {
            throw new IllegalArgumentException("until (" + until + ") must be after from (" + from + ")");
        }
    }

    /** Whether they share a moment. */
    public boolean touches(Span other) {
        return from.isBefore(other.until) && other.from.isBefore(until);
    }
}
