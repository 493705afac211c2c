package pairwright.http;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import pairwright.session.Progress;

/** Lets few plan at once, as each keeps a processor busy: others wait shortly, and are then asked to come again. */
final class SessionTurns {
    private static final String BUSY_RETRY_S = "10";
    private static final String LONG_RETRY_S = "60";

    private final Semaphore places;
    private final Duration patience;
    private final Duration budget;

    /**
     * @param places so many at once
     * @param patience how long one waits for a place
     * @param budget how long a plan may take
     */
    SessionTurns(int places, Duration patience, Duration budget) {
        this.places = new Semaphore(places, true);
        this.patience = patience;
        this.budget = budget;
    }

    /**
     * Does some work when its turn has come.
     *
     * @param work is given whom to tell how far it is, which ends it when it has taken too long
     * @throws BadRequest 503 with {@code Retry-After}
     */
    <T> T taken(Context context, Function<Consumer<Progress>, T> work) {
        if (!comes()) {
            context.header("Retry-After", BUSY_RETRY_S);
            throw new BadRequest(Problem.of(503, "Others are planning just now, and it takes all there is. Try again in " + BUSY_RETRY_S + " s"));
        }
        try {
            long end = System.nanoTime() + budget.toNanos();
            return work.apply(progress -> {
                if (System.nanoTime() - end > 0) {
                    context.header("Retry-After", LONG_RETRY_S);
                    throw new BadRequest(Problem.of(503, "Planning took longer than the " + budget.toSeconds() + " s there are for it. Plan fewer sources at a time, allow fewer "
                            + "types with onlyMicTypes, or plan with the command line, which waits as long as it takes"));
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
