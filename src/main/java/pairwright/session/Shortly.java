package pairwright.session;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What takes no longer than a reader waits, most of the time: worked out once for each state of things it was asked for, one after the other. Safe to share
 * between threads.
 */
final class Shortly implements AutoCloseable {
    /** So many are kept; the one nobody asked for longest is dropped. */
    private static final int KEPT = 24;
    /** Whoever looks at a page waits so long before it says that something is still being worked out. */
    private static final int WAIT_MS = 1500;

    private final ExecutorService thread;
    private static final Progress WAITING = new Progress("Waiting for something else to be worked out", 0, 0);
    private static final Progress BEGINNING = new Progress("Beginning", 0, 0);

    private final Map<Object, Task<?>> tasks = new LinkedHashMap<>(KEPT * 2, 0.75f, true);

    /** @param name of its thread */
    Shortly(String name) {
        this.thread = OneThread.named(name);
    }

    /** How far one thing has come, and whether anybody still wants it. */
    private static final class Far implements Consumer<Progress> {
        private volatile Progress progress = WAITING;
        private volatile boolean stopped;

        @Override
        public void accept(Progress come) {
            if (stopped) {
                throw new CancellationException("stopped");
            }
            progress = come;
        }
    }

    private static final class Task<T> extends FutureTask<T> {
        private final Far far;

        Task(Function<Consumer<Progress>, T> work) {
            this(work, new Far());
        }

        private Task(Function<Consumer<Progress>, T> work, Far far) {
            super(() -> {
                far.accept(BEGINNING);
                return work.apply(far);
            });
            this.far = far;
        }
    }

    /**
     * Waits a moment for it.
     *
     * @param asked equal where the same is asked for in the same state of things
     * @param work says how far it has come; is not begun again where it said that it would fail again: by an IllegalArgumentException or an IllegalStateException
     * @return null where it takes longer; asked again it has come on
     */
    @SuppressWarnings("unchecked") // what was asked for says what it is
    <T> T of(Object asked, Function<Consumer<Progress>, T> work) {
        Task<T> task;
        synchronized (tasks) {
            task = (Task<T>) tasks.get(asked);
            if (task == null) {
                task = new Task<>(work);
                tasks.put(asked, task);
                while (tasks.size() > KEPT) {
                    tasks.remove(tasks.keySet().iterator().next());
                }
                thread.execute(task);
            }
        }
        try {
            return task.get(WAIT_MS, TimeUnit.MILLISECONDS);
        } catch (TimeoutException stillGoing) {
            return null;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return null;
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof CancellationException) {
                return null; // somebody stopped it meanwhile; asked again it begins anew
            }
            throw said(asked, failed.getCause());
        }
    }

    /** How far something has come that was asked for. */
    Progress far(Object asked) {
        synchronized (tasks) {
            Task<?> task = tasks.get(asked);
            return task == null ? WAITING : task.far.progress;
        }
    }

    /** Stops what is being worked out, at its next step; what is there stays. */
    void stop(Predicate<Object> asked) {
        synchronized (tasks) {
            tasks.entrySet().removeIf(one -> {
                boolean stops = asked.test(one.getKey()) && !one.getValue().isDone();
                one.getValue().far.stopped |= stops;
                return stops;
            });
        }
    }

    private RuntimeException said(Object asked, Throwable cause) {
        if (!(cause instanceof IllegalArgumentException || cause instanceof IllegalStateException)) {
            synchronized (tasks) {
                tasks.remove(asked);
            }
        }
        return cause instanceof RuntimeException broken ? broken : new IllegalStateException("this could not be worked out", cause);
    }

    /** Stops; what is not done is left. */
    @Override
    public void close() {
        thread.shutdownNow();
    }
}
