package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A server on a busy machine answers, but not soon. */
class SlowServerTest {
    private static final int LATE_MS = 3_000;

    @Test
    void aServerThatIsSlowAtFirstIsWaitedFor() throws Exception {
        String address = Databases.freshServer().address();
        int port = URI.create(address.substring("jdbc:".length())).getPort();
        try (ServerSocket slow = new ServerSocket(0, 50, InetAddress.getByName("localhost"))) {
            start(() -> {
                while (!slow.isClosed()) {
                    Socket caller = slow.accept();
                    start(() -> passOn(caller, port));
                }
            });
            try (Locker locker = Locker.open(Place.at(address.replace(":" + port, ":" + slow.getLocalPort())), Load.CATALOGUE, Clock.systemUTC())) {
                assertEquals(List.of(), locker.units());
            }
        }
    }

    private static void passOn(Socket caller, int port) throws Exception {
        Thread.sleep(LATE_MS);
        try (caller; Socket server = new Socket("localhost", port)) {
            start(() -> server.getInputStream().transferTo(caller.getOutputStream()));
            caller.getInputStream().transferTo(server.getOutputStream());
        }
    }

    @FunctionalInterface
    private interface Work {
        void run() throws Exception;
    }

    private static void start(Work work) {
        Thread thread = new Thread(() -> {
            try {
                work.run();
            } catch (IOException closed) {
                // at the end
            } catch (Exception fault) {
                throw new IllegalStateException(fault);
            }
        });
        thread.setDaemon(true);
        thread.start();
    }
}
