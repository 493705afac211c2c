package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sixteen at once want three of six microphones: nobody ever gets one that somebody has. */
class ManyAtOnceTest {
    private static final int THREADS = 16;
    private static final int FEW = 1_600;
    private static final int MANY = 20_000;

    @Test
    void neverTwoAtOnceInAFile(@TempDir Path folder) throws Exception {
        inAFile(folder, FEW);
    }

    @Test
    void neverTwoAtOnceOnAServer() throws Exception {
        onAServer(1, FEW);
    }

    @Test
    void neverTwoAtOnceWhereTwoProgramsShareAServer() throws Exception {
        onAServer(2, FEW);
    }

    @Test
    @Tag("long")
    void neverTwoAtOnceInTwentyThousandAttemptsOnAFile(@TempDir Path folder) throws Exception {
        inAFile(folder, MANY);
    }

    @Test
    @Tag("long")
    void neverTwoAtOnceInTwentyThousandAttemptsOnAServer() throws Exception {
        onAServer(1, MANY);
    }

    @Test
    @Tag("long")
    void neverTwoAtOnceInTwentyThousandAttemptsWhereTwoProgramsShareAServer() throws Exception {
        onAServer(2, MANY);
    }

    private static void inAFile(Path folder, int attempts) throws Exception {
        Place place = Place.in(folder);
        try (Locker locker = open(place)) {
            everybodyBooks("a file", List.of(locker), attempts);
        }
        SqlCheck.assertSound(place);
    }

    private static void onAServer(int programs, int attempts) throws Exception {
        Place place = Databases.freshServer();
        try (Locker one = open(place); Locker other = open(place)) {
            everybodyBooks(programs + " on a server", List.of(one, other).subList(0, programs), attempts);
        }
        SqlCheck.assertSound(place);
    }

    private static Locker open(Place place) {
        return Locker.open(place, Load.CATALOGUE, Clock.systemUTC());
    }

    private static void everybodyBooks(String where, List<Locker> lockers, int attempts) throws Exception {
        Load.fill(lockers.get(0));
        long start = System.nanoTime();
        List<Map<String, BookingDraft>> booked = Load.atOnce(THREADS, thread -> books(thread, lockers.get(thread % lockers.size()), attempts));
        double seconds = (System.nanoTime() - start) / 1e9;

        Map<String, BookingDraft> acknowledged = new HashMap<>();
        booked.forEach(acknowledged::putAll);
        for (Locker locker : lockers) {
            List<Booking> all = Load.all(locker);
            assertEquals(List.of(), Load.faults(all, acknowledged));
            assertEquals(acknowledged.size(), all.size(), "a booking that nobody was told of");
        }
        assertTrue(acknowledged.size() > attempts / 100, "too few came to it for the others to be in their way");
        System.out.printf("%s: %d attempts by %d threads, %d booked, all others told it is taken, %.1f s, %.0f attempts a second%n",
                where, attempts, THREADS, acknowledged.size(), seconds, attempts / seconds);
    }

    /** Any fault but that it is taken ends the test. */
    private static Map<String, BookingDraft> books(int thread, Locker locker, int attempts) {
        Random random = new Random(700 + thread);
        Map<String, BookingDraft> acknowledged = new HashMap<>();
        for (int attempt = 0; attempt < attempts / THREADS; attempt++) {
            BookingDraft draft = Load.anyThree(random, "day " + thread + "/" + attempt);
            try {
                acknowledged.put(Load.book(locker, "many-" + thread + "-" + attempt, draft).text(), draft);
            } catch (LockerFault.Taken taken) {
                assertInTheWay(taken, draft);
            }
        }
        return acknowledged;
    }

    /** What is named as in the way has one of the units at that time. */
    private static void assertInTheWay(LockerFault.Taken taken, BookingDraft draft) {
        Span span = new Span(draft.from(), draft.until());
        assertTrue(!taken.clashes().isEmpty(), taken.getMessage());
        for (Booking clash : taken.clashes()) {
            assertTrue(clash.lines().stream().anyMatch(line -> draft.units().contains(line.unit()) && line.span().touches(span)),
                    () -> clash + " is not in the way of " + draft);
        }
    }
}
