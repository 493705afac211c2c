package pairwright.locker;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;

/** Six microphones, and people who want three of them at a time. */
final class Load {
    static final List<String> UNITS = List.of("barn-1", "barn-2", "barn-3", "barn-4", "barn-5", "barn-6");
    static final Supplier<Catalogue> CATALOGUE = new CatalogueStore()::builtIn;
    private static final Instant START = Instant.parse("2031-03-01T08:00:00Z");
    private static final int DAYS = 400;
    private static final int MOST_HOURS = 12;
    private static final int MINUTES_A_DAY = 1440;

    private Load() {
    }

    /** What was asked for and said to be done. */
    record Done(String id, BookingDraft draft) {
    }

    /** Puts the six into an empty locker. */
    static void fill(Locker locker) {
        locker.change(Act.by("Wren"), changes -> {
            UNITS.forEach(id -> changes.add(UnitDraft.mic(id, "small-condenser-cardioid", id)));
            return "six";
        });
    }

    /** Three of the six for a random time of up to twelve hours in 400 days, so that most of 20,000 come too late for one of them. */
    static BookingDraft anyThree(Random random, String forWhat) {
        Instant from = START.plusSeconds(60L * random.nextInt(DAYS * MINUTES_A_DAY));
        return draft(three(random), from, from.plusSeconds(60L * (1 + random.nextInt(MOST_HOURS * 60))), forWhat);
    }

    /** Three of the six, in random order. */
    static List<String> three(Random random) {
        List<String> units = new ArrayList<>(UNITS);
        Collections.shuffle(units, random);
        return units.subList(0, 3);
    }

    static BookingDraft draft(List<String> units, Instant from, Instant until, String forWhat) {
        return new BookingDraft(units, from, until, BookingKind.SESSION, forWhat, "Wren", null);
    }

    /** Books and says the id; with its key, so that it may be sent again. */
    static Outcome book(Locker locker, String key, BookingDraft draft) {
        return locker.change(new Act("Wren", key, draft.toString()), changes -> changes.book(draft).id());
    }

    /** Runs as many at once, and fails with the first that failed. */
    static <T> List<T> atOnce(int threads, IntTask<T> task) throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Callable<T>> tasks = new ArrayList<>();
            for (int thread = 0; thread < threads; thread++) {
                int number = thread;
                tasks.add(() -> task.run(number));
            }
            List<T> results = new ArrayList<>();
            for (Future<T> result : pool.invokeAll(tasks)) {
                results.add(result.get());
            }
            return results;
        } finally {
            pool.shutdownNow();
        }
    }

    /** What one of many does. */
    interface IntTask<T> {
        T run(int number) throws Exception;
    }

    /** Every booking there is. */
    static List<Booking> all(Locker locker) {
        return locker.bookings(new Span(Instant.parse("2000-01-01T00:00:00Z"), Instant.parse("2100-01-01T00:00:00Z")), null);
    }

    /** What is wrong with a locker that was written to by {@link #book}: nothing, if all is well. */
    static List<String> faults(List<Booking> bookings, Map<String, BookingDraft> acknowledged) {
        List<String> faults = new ArrayList<>(Overlaps.of(bookings));
        for (Booking booking : bookings) {
            if (booking.lines().size() != 3) {
                faults.add("booking " + booking.id() + " has " + booking.lines().size() + " lines of 3");
            }
        }
        Map<String, Booking> byId = Overlaps.byId(bookings);
        acknowledged.forEach((id, draft) -> {
            Booking found = byId.get(id);
            if (found == null) {
                faults.add("booking " + id + " was acknowledged and is not there");
            } else if (!found.units().equals(draft.units()) || !found.span().equals(new Span(draft.from(), draft.until()))
                    || found.lines().stream().anyMatch(line -> !line.span().equals(found.span()))) {
                faults.add("booking " + id + " is not as it was asked for: " + found + " instead of " + draft);
            }
        });
        return faults;
    }
}
