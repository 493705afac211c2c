package pairwright.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.function.Supplier;
import pairwright.advice.HouseMemory;
import pairwright.advice.Knowledge;

/**
 * Works out what to buy: in the background, one wish at a time, once for each state of sessions, gear and knowledge. Whoever asks is told at once how far it
 * has come. What nobody asked for longest is given up for something newer. Safe to share between threads.
 */
public final class PurchaseDesk implements AutoCloseable {
    /** So many states are kept or worked on. */
    private static final int KEPT = 4;

    private final Supplier<Knowledge> knowledge;
    private final HouseMemory memory;
    private final ExecutorService thread = OneThread.named("purchases");
    private final Map<Asked, Work> works = new LinkedHashMap<>(KEPT * 2, 0.75f, true);

    /**
     * How far it has come.
     *
     * @param progress the last that is known of it
     * @param purchased null until it is there
     */
    public record State(Progress progress, Purchased purchased) {
    }

    private record Asked(Purchases.Wish wish, String rulesVersion, String catalogueVersion, List<?> remembered) {
    }

    /**
     * @param knowledge asked each time
     * @param memory what was kept in this house before
     */
    public PurchaseDesk(Supplier<Knowledge> knowledge, HouseMemory memory) {
        this.knowledge = knowledge;
        this.memory = memory;
    }

    /**
     * How far it has come with a wish; begins where nobody asked for that yet.
     *
     * @throws RuntimeException where it failed; asked again it is tried again
     */
    public State state(Purchases.Wish wish) {
        Knowledge now = knowledge.get();
        Asked asked = new Asked(wish, now.rules().version(), now.catalogue().version(), wish.sessions().stream().flatMap(session -> session.lineUp().seats().stream()
                .map(seat -> memory.of(seat.source(), session.lineUp().floor().room(), seat.player()))).toList());
        synchronized (works) {
            Work work = works.get(asked);
            if (work == null) {
                work = new Work(wish, now);
                works.put(asked, work);
                while (works.size() > KEPT) {
                    Work oldest = works.values().iterator().next();
                    oldest.dropped = true;
                    works.values().remove(oldest);
                }
                thread.execute(work);
            }
            if (work.failed != null) {
                works.remove(asked);
                throw work.failed;
            }
            return new State(work.progress, work.purchased);
        }
    }

    /** One state of things. */
    private final class Work implements Runnable {
        private final Purchases.Wish wish;
        private final Knowledge now;
        private volatile Progress progress = new Progress("Waiting for something else to be finished", 0, 0);
        private volatile Purchased purchased;
        private volatile RuntimeException failed;
        private volatile boolean dropped;

        Work(Purchases.Wish wish, Knowledge now) {
            this.wish = wish;
            this.now = now;
        }

        @Override
        public void run() {
            try {
                purchased = Purchases.of(wish, now, memory, this::told);
            } catch (RuntimeException broken) {
                failed = broken;
            } catch (Error broken) {
                // whoever waits must not wait for good
                failed = new IllegalStateException("What to buy could not be worked out", broken);
                throw broken;
            }
        }

        private void told(Progress step) {
            if (dropped || thread.isShutdown()) {
                throw new CancellationException("nobody waits for it any more");
            }
            progress = step;
        }
    }

    /** Stops; what is not done is left. */
    @Override
    public void close() {
        thread.shutdownNow();
    }
}
