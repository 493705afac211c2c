package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Supplier;
import pairwright.model.Coverage;
import pairwright.model.FromLocker;
import pairwright.model.Source;
import pairwright.model.Stock;

/**
 * Works out how well a locker serves the sources of the catalogue: in the background, source by source, once for each state of catalogue, rules and locker.
 * Whoever asks is told at once how far it has come. Safe to share between threads.
 */
public final class CoverageDesk implements AutoCloseable {
    /** So many states are kept or worked on; the one nobody asked for longest is dropped. */
    private static final int KEPT = 8;
    private static final int MOST_THREADS = 4;
    private static final int IDLE_S = 10;

    private final Supplier<Knowledge> knowledge;
    private final ExecutorService pool;
    private final Map<Asked, Work> works = new LinkedHashMap<>(KEPT * 2, 0.75f, true);

    /** @param knowledge asked each time */
    public CoverageDesk(Supplier<Knowledge> knowledge) {
        this.knowledge = knowledge;
        // one processor is left to whoever asks something else meanwhile
        int threads = Math.max(1, Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors() - 1));
        ThreadPoolExecutor bounded = new ThreadPoolExecutor(threads, threads, IDLE_S, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), work -> {
            Thread thread = new Thread(work, "coverage");
            thread.setDaemon(true);
            return thread;
        });
        bounded.allowCoreThreadTimeOut(true);
        this.pool = bounded;
    }

    /**
     * How far it has come.
     *
     * @param done sources that are judged
     * @param of so many
     * @param coverage null until all are
     */
    public record State(int done, int of, Coverage coverage) {
    }

    /** What the result depends on, and nothing else: who has a unit does not matter where all that is owned may be used. */
    private record Asked(String catalogueVersion, String rulesVersion, FromLocker use, List<Stock.Held> units) {
    }

    /**
     * How far it has come with a stock; begins where nobody asked for that yet.
     *
     * @param stock null or without units for an empty locker
     * @param use free or owned
     * @throws RuntimeException where it failed; asked again it is tried again
     */
    public State state(Stock stock, FromLocker use) {
        Knowledge now = knowledge.get();
        List<Stock.Held> units = stock == null ? List.of() : stock.units().stream().filter(unit -> now.catalogue().mics().containsKey(unit.micType()))
                .map(unit -> ServedFinder.counts(unit, use) && !unit.free() ? back(unit) : unit).toList();
        Asked asked = new Asked(now.catalogue().version(), now.rules().version(), use, units);
        synchronized (works) {
            Work work = works.get(asked);
            if (work == null) {
                work = new Work(now, new ServedFinder(now, new Stock(true, units), use));
                works.put(asked, work);
                drop();
                work.begin();
            }
            if (work.failed != null) {
                works.remove(asked);
                throw work.failed;
            }
            return new State(work.done.get(), work.sources.size(), work.found);
        }
    }

    private static Stock.Held back(Stock.Held unit) {
        return new Stock.Held(unit.id(), unit.micType(), unit.label(), unit.tag(), unit.storedAt(), unit.note(), unit.pairMate(), unit.ownResponseDb(), null);
    }

    private void drop() {
        while (works.size() > KEPT) {
            Work oldest = works.values().iterator().next();
            oldest.dropped = true;
            works.values().remove(oldest);
        }
    }

    /** One state of things. */
    private final class Work {
        private final Knowledge now;
        private final ServedFinder finder;
        private final List<Source> sources;
        private final AtomicReferenceArray<ServedFinder.Result> results;
        private final AtomicInteger done = new AtomicInteger();
        private volatile Coverage found;
        private volatile RuntimeException failed;
        private volatile boolean dropped;

        Work(Knowledge now, ServedFinder finder) {
            this.now = now;
            this.finder = finder;
            this.sources = now.catalogue().sources().values().stream().sorted(Comparator.comparing(Source::family).thenComparing(Source::name)).toList();
            this.results = new AtomicReferenceArray<>(sources.size());
        }

        void begin() {
            for (int i = 0; i < sources.size(); i++) {
                int at = i;
                pool.execute(() -> one(at));
            }
        }

        private void one(int at) {
            if (dropped || failed != null) {
                return;
            }
            try {
                results.set(at, finder.of(sources.get(at)));
                if (done.incrementAndGet() == sources.size()) {
                    List<ServedFinder.Result> all = new ArrayList<>();
                    for (int i = 0; i < results.length(); i++) {
                        all.add(results.get(i));
                    }
                    found = new Coverage(all.stream().map(ServedFinder.Result::served).toList(), Helps.of(all), now.rules().version(), now.catalogue().version());
                }
            } catch (RuntimeException broken) {
                failed = broken;
            } catch (Error broken) {
                // whoever waits must not wait for good
                failed = new IllegalStateException(sources.get(at).id() + " could not be judged", broken);
                throw broken;
            }
        }
    }

    /** Stops; what is not done is left. */
    @Override
    public void close() {
        pool.shutdownNow();
    }
}
