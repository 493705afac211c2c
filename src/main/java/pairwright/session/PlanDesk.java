package pairwright.session;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import pairwright.advice.Knowledge;
import pairwright.session.allocation.NotDecided;

/**
 * Plans sessions for whoever looks at pages: in the background, one at a time, once for each state of line-up, gear and knowledge. Whoever asks is told at
 * once how far it has come. Safe to share between threads.
 */
public final class PlanDesk implements AutoCloseable {
    /** So many states are kept or worked on; the one nobody asked for longest is dropped. */
    private static final int KEPT = 8;
    /** So many ways out are said of a change that cannot be. */
    private static final int MOST_WAYS = 3;
    private static final Progress WAITING = new Progress("Waiting for another plan to be finished", 0, 0);

    private final Supplier<? extends List<?>> known;
    private final Planning planning;
    private final ExecutorService thread = OneThread.named("plans");
    /** What is shorter than planning does not wait behind it. */
    private final Shortly shorter = new Shortly("plans-again");
    private final Map<Asked, Work> works = new LinkedHashMap<>(KEPT * 2, 0.75f, true);

    /** What plans. */
    public interface Planning {
        /**
         * The plans for a line-up.
         *
         * @param progress is told how far it has come; what it throws ends the work
         */
        Planned plan(LineUp lineUp, Gear gear, Consumer<Progress> progress);

        /**
         * All that can be said of what was picked earlier.
         *
         * @throws IllegalArgumentException that says which pick no longer exists
         */
        Plan rebuilt(LineUp lineUp, Gear gear, Picks picks);

        /**
         * What to do when something is lost.
         *
         * @param progress is told how far it has come
         * @throws IllegalArgumentException that says which pick no longer exists
         * @throws IllegalStateException that says why no plan is left
         */
        Change again(LineUp lineUp, Gear gear, Picks before, Lost lost, double pricePoints, Consumer<Progress> progress);
    }

    /**
     * How far it has come.
     *
     * @param progress the last that is known of it
     * @param planned null until it is there
     * @param undecided why there will be none, in a sentence, where the search came to its limit; null otherwise
     */
    public record State(Progress progress, Planned planned, String undecided) {
    }

    private record Asked(LineUp lineUp, Gear gear, List<?> known) {
    }

    private record Rebuilt(LineUp lineUp, Gear gear, Picks picks, List<?> known) {
    }

    private record Again(LineUp lineUp, Gear gear, Picks before, Lost lost, double pricePoints, List<?> known) {
    }

    /**
     * @param known what a plan depends on beside line-up and gear, such as the versions of catalogue and rules; asked each time
     * @param planning does the work
     */
    public PlanDesk(Supplier<? extends List<?>> known, Planning planning) {
        this.known = known;
        this.planning = planning;
    }

    /**
     * Plans with a planner.
     *
     * @param knowledge of the planner
     * @param memory a number that differs whenever the planner minds something else of earlier sessions
     */
    public static PlanDesk of(Supplier<Knowledge> knowledge, LongSupplier memory, Planner planner) {
        return new PlanDesk(() -> {
            Knowledge now = knowledge.get();
            return List.of(now.catalogue().version(), now.rules().version(), memory.getAsLong());
        }, new Planning() {
            @Override
            public Planned plan(LineUp lineUp, Gear gear, Consumer<Progress> progress) {
                return planner.plan(lineUp, gear, progress);
            }

            @Override
            public Plan rebuilt(LineUp lineUp, Gear gear, Picks picks) {
                return planner.rebuilt(lineUp, gear, picks);
            }

            @Override
            public Change again(LineUp lineUp, Gear gear, Picks before, Lost lost, double pricePoints, Consumer<Progress> progress) {
                try {
                    return planner.again(lineUp, gear, before, lost, pricePoints, progress);
                } catch (IllegalStateException none) {
                    progress.accept(new Progress("Looking for what is short, and for ways out", 0, 0));
                    throw new IllegalStateException(without(planner.shortAgain(lineUp, gear, before, lost, step -> { })), none);
                }
            }
        });
    }

    /** What is short when something is lost, and the first ways out, in sentences. */
    private static String without(Planned none) {
        String shortOf = none.shortOf().stream().map(one -> one.resource() + " (" + one.needed() + " needed, " + one.there() + " there)").collect(Collectors.joining("; "));
        return "With what is left not every seat that must be served can be. " + (shortOf.isEmpty() ? "" : "Short: " + shortOf + ". ")
                + none.waysOut().stream().limit(MOST_WAYS).map(Planned.WayOut::says).collect(Collectors.joining(" Or: "));
    }

    /**
     * How far the plans of a session have come; begins where nobody asked for these yet, and then stops what was begun for the session as it was before.
     *
     * @param session id
     * @throws RuntimeException where it failed; asked again it is tried again. A search that came to its limit is not: it would again, see {@link #tryAgain}
     */
    public State state(String session, LineUp lineUp, Gear gear) {
        Asked asked = new Asked(lineUp, gear, List.copyOf(known.get()));
        synchronized (works) {
            Work work = works.get(asked);
            if (work == null) {
                stop(session);
                work = new Work(session, asked);
                works.put(asked, work);
                drop();
                thread.execute(work);
            }
            if (work.failed != null && !work.undecided()) {
                works.remove(asked);
                throw work.failed;
            }
            return new State(work.progress, work.planned, work.undecided() ? work.failed.getMessage() : null);
        }
    }

    /** Forgets that the search for the plans came to its limit: whoever asks next begins it anew. Nothing else is forgotten. */
    public void tryAgain(LineUp lineUp, Gear gear) {
        synchronized (works) {
            works.values().removeIf(work -> work.undecided() && work.asked.equals(new Asked(lineUp, gear, List.copyOf(known.get()))));
        }
    }

    /** The plans where they are there already; null otherwise. Begins nothing. */
    public Planned found(LineUp lineUp, Gear gear) {
        synchronized (works) {
            Work work = works.get(new Asked(lineUp, gear, List.copyOf(known.get())));
            return work == null ? null : work.planned;
        }
    }

    /** Stops what is being worked out for a session, at its next step; what is there stays. */
    public void cancel(String session) {
        synchronized (works) {
            stop(session);
        }
    }

    /**
     * All that can be said of what was picked earlier, worked out once for each state of things. Waits a moment for it.
     *
     * @return null where it takes longer; asked again it has come on
     * @throws IllegalArgumentException that says which pick no longer exists
     */
    public Plan rebuilt(LineUp lineUp, Gear gear, Picks picks) {
        return shorter.of(new Rebuilt(lineUp, gear, picks, List.copyOf(known.get())), progress -> planning.rebuilt(lineUp, gear, picks));
    }

    /**
     * What to do when something is lost, in the same way.
     *
     * @return null where it takes longer
     * @throws IllegalArgumentException that says which pick no longer exists
     * @throws IllegalStateException that says why no plan is left
     */
    public Change again(LineUp lineUp, Gear gear, Picks before, Lost lost, double pricePoints) {
        return shorter.of(asked(lineUp, gear, before, lost, pricePoints), progress -> planning.again(lineUp, gear, before, lost, pricePoints, progress));
    }

    /** Stops what is being planned anew from a line-up, at its next step. */
    public void cancelAgain(LineUp lineUp) {
        shorter.stop(asked -> asked instanceof Again again && again.lineUp().equals(lineUp));
    }

    /** How far that has come, where it takes longer. */
    public Progress far(LineUp lineUp, Gear gear, Picks before, Lost lost, double pricePoints) {
        return shorter.far(asked(lineUp, gear, before, lost, pricePoints));
    }

    private Again asked(LineUp lineUp, Gear gear, Picks before, Lost lost, double pricePoints) {
        return new Again(lineUp, gear, before, lost, pricePoints, List.copyOf(known.get()));
    }

    private void stop(String session) {
        for (Iterator<Work> each = works.values().iterator(); each.hasNext();) {
            Work work = each.next();
            if (work.session.equals(session) && work.planned == null) {
                work.stopped = true;
                each.remove();
            }
        }
    }

    private void drop() {
        while (works.size() > KEPT) {
            Work oldest = works.values().iterator().next();
            oldest.stopped = true;
            works.remove(oldest.asked);
        }
    }

    /** One state of things. */
    private final class Work implements Runnable {
        private final String session;
        private final Asked asked;
        private volatile Progress progress = WAITING;
        private volatile Planned planned;
        private volatile RuntimeException failed;
        private volatile boolean stopped;

        Work(String session, Asked asked) {
            this.session = session;
            this.asked = asked;
        }

        @Override
        public void run() {
            try {
                come(new Progress("Beginning", 0, 0));
                planned = planning.plan(asked.lineUp(), asked.gear(), this::come);
            } catch (CancellationException end) {
                failed = end; // nobody asks for it any more
            } catch (RuntimeException broken) {
                failed = broken;
            } catch (Error broken) {
                // whoever waits must not wait for good
                failed = new IllegalStateException("the plans could not be worked out", broken);
                throw broken;
            }
        }

        boolean undecided() {
            return failed instanceof NotDecided;
        }

        private void come(Progress far) {
            if (stopped) {
                throw new CancellationException("stopped");
            }
            progress = far;
        }
    }

    /** Stops; what is not done is left. */
    @Override
    public void close() {
        synchronized (works) {
            works.values().forEach(work -> work.stopped = true);
        }
        thread.shutdownNow();
        shorter.close();
    }
}
