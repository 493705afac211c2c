package pairwright.http;

import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import pairwright.session.Progress;

/** Lets few plan at once, as each keeps a processor busy: others wait shortly, and are then asked to come again. Safe to share between threads. */
final class SessionTurns {
    private static final String PLANNING = "Others are planning just now, and it takes all there is. Try again in a moment";

    private final Semaphore places;
    private final Duration patience;
    private final Duration budget;
    private final Says says;

    /**
     * What those who cannot be served are told.
     *
     * @param busy where others are at it
     * @param tooLong where it takes too long
     */
    record Says(String busy, String tooLong) {
    }

    /** It cannot be planned just now. */
    static final class Later extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final long retryAfterS;

        private Later(String says, long retryAfterS) {
            super(says, null, false, false);
            this.retryAfterS = retryAfterS;
        }

        /** When to try again, s. */
        long retryAfterS() {
            return retryAfterS;
        }
    }

    /**
     * @param places so many at once
     * @param patience how long one waits for a place
     * @param budget how long a plan may take
     */
    SessionTurns(int places, Duration patience, Duration budget) {
        this(places, patience, budget, new Says(PLANNING, "Planning took longer than the " + budget.toSeconds() + " s there are for it. Plan fewer sources at a time, allow fewer types with onlyMicTypes, "
                + "or plan from the terminal, which waits as long as it takes"));
    }

    /** For other work that takes all there is. */
    SessionTurns(int places, Duration patience, Duration budget, Says says) {
        this.says = says;
        this.places = new Semaphore(places, true);
        this.patience = patience;
        this.budget = budget;
    }

    /**
     * Does some work when its turn has come.
     *
     * @param work is given whom to tell how far it is, which ends it when it has taken too long
     * @throws Later where others are at it, or it takes too long
     */
    <T> T taken(Function<Consumer<Progress>, T> work) {
        return inTurn(inTime -> work.apply(progress -> inTime.run()));
    }

    /**
     * The same for work that tells nobody how far it is.
     *
     * @param work is given what it has to run now and then
     */
    <T> T inTurn(Function<Runnable, T> work) {
        if (!comes()) {
            throw new Later(says.busy(), 1 + patience.toSeconds());
        }
        try {
            long start = System.nanoTime();
            return work.apply(() -> {
                if (System.nanoTime() - start > budget.toNanos()) {
                    throw new Later(says.tooLong(), 1 + budget.toSeconds());
                }
            });
        } finally {
            places.release();
        }
    }

    private boolean comes() {
        try {
            return places.tryAcquire(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException stopping) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
