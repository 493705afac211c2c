package pairwright.http;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Slows down whoever tries tokens. After five wrong ones within a minute an address waits, twice as long after each further one. Others are not held up,
 * and an address that is forgotten because thousands of others came after it starts anew.
 */
final class Tries {
    static final int FREE = 5;
    static final int MOST_ADDRESSES = 10_000;
    private static final Duration WITHIN = Duration.ofMinutes(1);
    private static final Duration FIRST_WAIT = Duration.ofSeconds(10);
    private static final Duration LONGEST_WAIT = Duration.ofMinutes(15);

    private final Clock clock;
    private final Map<String, Wrong> wrong = new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Wrong> eldest) {
            return size() > MOST_ADDRESSES;
        }
    };

    /**
     * What an address got wrong.
     *
     * @param times how often
     * @param since the first of them
     * @param until when it may try again
     */
    private record Wrong(int times, Instant since, Instant until) {
    }

    Tries(Clock clock) {
        this.clock = clock;
    }

    /** How long an address has to wait before its next try, in whole seconds; 0 for not at all. */
    synchronized long waitS(String address) {
        Wrong known = wrong.get(address);
        Duration left = known == null ? Duration.ZERO : Duration.between(clock.instant(), known.until());
        return left.isNegative() || left.isZero() ? 0 : left.plusMillis(999).toSeconds();
    }

    /** A token of that address was wrong. */
    synchronized void failed(String address) {
        Instant now = clock.instant();
        Wrong known = wrong.get(address);
        int times = known == null || forgiven(known, now) ? 1 : known.times() + 1;
        wrong.put(address, new Wrong(times, times == 1 ? now : known.since(), times < FREE ? now : now.plus(pause(times))));
    }

    /** A few slips are forgotten in a minute; whoever had to wait is trusted again after as long as the longest wait. */
    private static boolean forgiven(Wrong known, Instant now) {
        return known.times() < FREE ? now.isAfter(known.since().plus(WITHIN)) : now.isAfter(known.until().plus(LONGEST_WAIT));
    }

    private static Duration pause(int times) {
        Duration doubled = FIRST_WAIT.multipliedBy(1L << Math.min(times - FREE, 20));
        return doubled.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : doubled;
    }

    synchronized int known() {
        return wrong.size();
    }
}
