package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;

/** More want the server than it has connections for; nobody says why, not even with a code. */
class BusyServerTest {
    private static final int CONNECTIONS = 12;

    @Test
    void whoGetsNoConnectionIsToldToTryAgain() throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(CONNECTIONS);
        CountDownLatch all = new CountDownLatch(CONNECTIONS);
        CountDownLatch end = new CountDownLatch(1);
        try (Database database = Database.open(Databases.freshServer())) {
            for (int reader = 0; reader < CONNECTIONS; reader++) {
                pool.submit(() -> database.read(sql -> {
                    all.countDown();
                    try {
                        end.await();
                    } catch (InterruptedException stopped) {
                        Thread.currentThread().interrupt();
                    }
                    return null;
                }));
            }
            all.await();
            assertThrows(LockerFault.Unreachable.class, () -> database.write(sql -> sql.number("SELECT 1")));
            end.countDown();
            assertEquals(1, database.write(sql -> sql.number("SELECT 1")).longValue());
        } finally {
            end.countDown();
            pool.shutdownNow();
        }
    }
}
