package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import pairwright.session.Progress;

class SessionTurnsTest {
    private static final Progress STEP = new Progress("Searching", 1, 2);

    @Test
    void whoFindsAllPlacesTakenIsToldWhenToComeAgainAndThenComesIn() throws Exception {
        SessionTurns turns = new SessionTurns(2, Duration.ofMillis(50), Duration.ofMinutes(1));
        CountDownLatch begun = new CountDownLatch(2);
        CountDownLatch end = new CountDownLatch(1);
        ExecutorService pool = Executors.newFixedThreadPool(2);
        try {
            Future<?> one = pool.submit(() -> turns.taken(progress -> held(begun, end)));
            Future<?> other = pool.submit(() -> turns.taken(progress -> held(begun, end)));
            begun.await();
            SessionTurns.Later later = assertThrows(SessionTurns.Later.class, () -> turns.taken(progress -> "third"));
            assertTrue(later.retryAfterS() > 0 && later.getMessage().startsWith("Others are planning just now"), later.getMessage());
            end.countDown();
            one.get();
            other.get();
            assertEquals("third", turns.taken(progress -> "third"));
        } finally {
            pool.shutdownNow();
        }
    }

    private static String held(CountDownLatch begun, CountDownLatch end) {
        begun.countDown();
        try {
            end.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return "";
    }

    @Test
    void whatTakesTooLongEndsAtItsNextStepAndLeavesItsPlace() {
        SessionTurns turns = new SessionTurns(1, Duration.ofMillis(50), Duration.ZERO);
        SessionTurns.Later later = assertThrows(SessionTurns.Later.class, () -> turns.taken(progress -> {
            progress.accept(STEP);
            return "never";
        }));
        assertTrue(later.getMessage().startsWith("Planning took longer than the 0 s there are for it"), later.getMessage());
        assertEquals("next", turns.taken(progress -> "next"));
    }

    @Test
    void whatFailsLeavesItsPlaceAsWell() {
        SessionTurns turns = new SessionTurns(1, Duration.ofMillis(50), Duration.ofMinutes(1));
        assertThrows(IllegalStateException.class, () -> turns.taken(progress -> {
            throw new IllegalStateException("broken");
        }));
        assertEquals("next", turns.taken(progress -> "next"));
    }
}
