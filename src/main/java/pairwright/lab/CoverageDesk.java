package pairwright.lab;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * The coverage of what is known, counted once for each state of rules and catalogue, on a thread of its own, when it is first asked for. Safe to share between threads.
 */
public final class CoverageDesk {
    /** Rare rules show up with that many; more are not worth the wait. */
    private static final int EACH = 12;

    private final Kinds kinds;
    private String of;
    private CompletableFuture<Coverage> counting;

    public CoverageDesk(Kinds kinds) {
        this.kinds = kinds;
    }

    /** Empty while it is counted; ask again. */
    public synchronized Optional<Coverage> of(Lab lab) {
        String now = lab.rules().version() + " " + lab.catalogue().version();
        if (!now.equals(of) || counting.isCompletedExceptionally()) {
            of = now;
            counting = new CompletableFuture<>();
            CompletableFuture<Coverage> into = counting;
            Thread thread = new Thread(() -> count(lab, into), "lab-coverage");
            thread.setDaemon(true);
            thread.start();
        }
        return Optional.ofNullable(counting.isCompletedExceptionally() ? null : counting.getNow(null));
    }

    private void count(Lab lab, CompletableFuture<Coverage> into) {
        try {
            into.complete(Coverage.of(lab, kinds, EACH));
        } catch (RuntimeException failed) {
            into.completeExceptionally(failed);
        }
    }
}
