package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The database server goes away under load and comes back: first told to, then killed. */
class RestartedServerTest {
    private static final int WRITERS = 6;
    private static final Trial SHORT = new Trial(300, 500, List.of(true));
    private static final Trial LONG = new Trial(1_500, 2_500, List.of(false, true));

    /** How often it goes away, whether by a kill, for how long, and what time lies between. */
    private record Trial(long awayMs, long betweenMs, List<Boolean> kills) {
    }

    /** What a writer saw. */
    private static final class Seen {
        final Map<String, BookingDraft> acknowledged = new HashMap<>();
        int taken;
        int unreachable;
        int hadBeenDone;
    }

    @Test
    void writersRecoverByThemselvesAndNothingIsLost(@TempDir Path folder) throws Exception {
        recovers(folder, SHORT);
    }

    @Test
    @Tag("long")
    void writersRecoverWhereItIsStoppedAndThenKilled(@TempDir Path folder) throws Exception {
        recovers(folder, LONG);
    }

    private static void recovers(Path folder, Trial trial) throws Exception {
        AtomicBoolean stop = new AtomicBoolean();
        ExecutorService pool = Executors.newFixedThreadPool(WRITERS);
        try (Databases.Kept server = Databases.kept(folder);
                Locker one = Locker.open(server.place(), Load.CATALOGUE, Clock.systemUTC());
                Locker other = Locker.open(server.place(), Load.CATALOGUE, Clock.systemUTC())) {
            Load.fill(one);
            List<Future<Seen>> writers = IntStream.range(0, WRITERS)
                    .mapToObj(number -> pool.submit(() -> writes(number, number % 2 == 0 ? one : other, stop))).toList();
            Thread.sleep(trial.betweenMs());
            for (boolean kill : trial.kills()) {
                restart(server, kill, trial.awayMs());
                assertRecovers(one);
                Thread.sleep(trial.betweenMs());
            }
            stop.set(true);

            Seen sum = new Seen();
            for (Future<Seen> writer : writers) {
                add(sum, writer.get());
            }
            assertEquals(List.of(), Load.faults(Load.all(other), sum.acknowledged));
            assertEquals(sum.acknowledged.size(), Load.all(one).size(), "a booking that nobody was told of");
            assertTrue(sum.unreachable > 0, "nobody noticed that the server was away");
            SqlCheck.assertSound(server.place());
            System.out.printf("server away under load: %d booked, %d taken, %d times told it cannot be reached, %d had been done before they were sent again%n",
                    sum.acknowledged.size(), sum.taken, sum.unreachable, sum.hadBeenDone);
        } finally {
            stop.set(true);
            pool.shutdownNow();
        }
    }

    private static void restart(Databases.Kept server, boolean kill, long awayMs) throws Exception {
        if (kill) {
            server.kill();
        } else {
            server.stop();
        }
        Thread.sleep(awayMs);
        server.start();
    }

    /** Reading works again soon after the server does. */
    private static void assertRecovers(Locker locker) throws InterruptedException {
        long start = System.nanoTime();
        while (true) {
            try {
                assertFalse(locker.units().isEmpty());
                System.out.printf("reads again %.1f s after the server is back%n", (System.nanoTime() - start) / 1e9);
                return;
            } catch (LockerFault.Unreachable away) {
                assertTrue(System.nanoTime() - start < Duration.ofSeconds(20).toNanos(), away.getMessage());
                Thread.sleep(50);
            }
        }
    }

    private static Seen writes(int number, Locker locker, AtomicBoolean stop) throws InterruptedException {
        Random random = new Random(90 + number);
        Seen seen = new Seen();
        for (int attempt = 0; !stop.get(); attempt++) {
            untilSure(locker, "restart-" + number + "-" + attempt, Load.anyThree(random, "day " + number + "/" + attempt), seen);
        }
        return seen;
    }

    /** Sends one thing with its key until it is known whether it was done. */
    private static void untilSure(Locker locker, String key, BookingDraft draft, Seen seen) throws InterruptedException {
        while (true) {
            try {
                Outcome outcome = Load.book(locker, key, draft);
                seen.acknowledged.put(outcome.text(), draft);
                seen.hadBeenDone += outcome.repeated() ? 1 : 0;
                return;
            } catch (LockerFault.Taken taken) {
                seen.taken++;
                return;
            } catch (LockerFault.Unreachable away) {
                seen.unreachable++;
                Thread.sleep(20);
            }
        }
    }

    private static void add(Seen sum, Seen one) {
        sum.acknowledged.putAll(one.acknowledged);
        sum.taken += one.taken;
        sum.unreachable += one.unreachable;
        sum.hadBeenDone += one.hadBeenDone;
    }
}
