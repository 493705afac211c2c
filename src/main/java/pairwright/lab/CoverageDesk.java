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
    private volatile int begun;

    public CoverageDesk(Kinds kinds) {
        this.kinds = kinds;
    }

    /**
     * How far it is.
     *
     * @param coverage empty while it is counted, and where it cannot be
     * @param begun how many kinds have been begun
     * @param of so many
     * @param failed what stopped it, in a sentence; null where nothing did. It is tried again when rules or catalogue are others
     */
    public record State(Optional<Coverage> coverage, int begun, int of, String failed) {
    }

    /** How far it is; begins where nothing is counted yet of what is known. */
    public synchronized State state(Lab lab) {
        String now = lab.rules().version() + " " + lab.catalogue().version();
        if (!now.equals(of)) {
            of = now;
            begun = 0;
            counting = new CompletableFuture<>();
            CompletableFuture<Coverage> into = counting;
            Thread thread = new Thread(() -> count(lab, into), "lab-coverage");
            thread.setDaemon(true);
            thread.start();
        }
        if (counting.isCompletedExceptionally()) {
            return new State(Optional.empty(), begun, kinds.all().size(), counting.handle((none, failed) -> String.valueOf(failed.getMessage())).join());
        }
        return new State(Optional.ofNullable(counting.getNow(null)), begun, kinds.all().size(), null);
    }

    private void count(Lab lab, CompletableFuture<Coverage> into) {
        try {
            into.complete(Coverage.of(lab, kinds, EACH, kind -> begun = kind + 1));
        } catch (RuntimeException failed) {
            into.completeExceptionally(failed);
        }
    }
}
