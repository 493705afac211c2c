package pairwright.locker;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.lifecycle.LifecycleContext;
import net.jqwik.api.lifecycle.SkipExecutionHook;

/**
 * Database servers for tests. Where there can be none the tests that ask for one are skipped and say so, unless
 * {@code PAIRWRIGHT_POSTGRES=required} is set: then they fail.
 */
public final class Databases {
    private static final AtomicInteger NEXT = new AtomicInteger();

    private Databases() {
    }

    /** One for all tests of a run. */
    private static final class Shared {
        private static final EmbeddedPostgres SERVER;
        private static final String MISSING;

        static {
            EmbeddedPostgres server = null;
            String missing = unfit(System.getProperty("os.name"), System.getProperty("os.arch"));
            if (missing == null) {
                try {
                    server = EmbeddedPostgres.start();
                } catch (IOException | IllegalStateException fault) {
                    missing = "PostgreSQL does not start here, so nothing was tried on a server: " + Database.innermost(fault)
                            + ". See that the temporary folder has 200 MB left and lets programs run";
                }
            }
            SERVER = server;
            MISSING = missing;
        }
    }

    /** Why no server can be had on a system, and what to do; null where one can. */
    static String unfit(String system, String machine) {
        return system.equals("Linux") && (machine.equals("amd64") || machine.equals("x86_64")) ? null
                : "No PostgreSQL comes with the tests for " + system + " on " + machine + ", so nothing was tried on a server. Run them on Linux on amd64";
    }

    /** Why tests that need a server are to be skipped; null where they are not, because there is one or because there has to be. */
    static String skipped() {
        return "required".equals(System.getenv("PAIRWRIGHT_POSTGRES")) ? null : Shared.MISSING;
    }

    private static void need() {
        if (skipped() != null) {
            abort(skipped());
        }
        if (Shared.MISSING != null) {
            fail(Shared.MISSING);
        }
    }

    /** For properties, which would take a test that is aborted for a try without meaning. */
    static final class OrSkipped implements SkipExecutionHook {
        @Override
        public SkipResult shouldBeSkipped(LifecycleContext context) {
            return skipped() == null ? SkipResult.doNotSkip() : SkipResult.skip(skipped());
        }
    }

    /** An empty database of its own on a server that all tests share. */
    public static Place freshServer() throws SQLException {
        need();
        String name = "locker" + NEXT.incrementAndGet();
        try (Connection connection = Shared.SERVER.getPostgresDatabase().getConnection(); Statement statement = connection.createStatement()) {
            statement.execute("CREATE DATABASE " + name);
        }
        return Place.at(Shared.SERVER.getJdbcUrl("postgres", name));
    }

    /** One whose tables were made once. */
    private static final class Reused {
        private static final Place PLACE = made();

        private static Place made() {
            try {
                Place place = freshServer();
                try (Database database = Database.open(place)) {
                    Migrations.run(database, Clock.systemUTC());
                }
                return place;
            } catch (SQLException fault) {
                throw new IllegalStateException(fault);
            }
        }
    }

    /** One that was there before, emptied, for tests that come one after the other: to make a new one takes longer than most of them. */
    static Place emptied() throws SQLException {
        need();
        try (Connection connection = DriverManager.getConnection(Reused.PLACE.address()); Statement statement = connection.createStatement()) {
            for (String table : List.of("exercise_answer", "exercise_kit", "exercise", "exercise_set", "mark", "document", "event_about", "event", "act", "line", "booking", "unit", "token")) {
                statement.execute("DELETE FROM " + table);
            }
            statement.execute("UPDATE state SET next_booking = 1");
        }
        return Reused.PLACE;
    }

    /** A server that can go away and come back with what it had. */
    public static Kept kept(Path folder) throws IOException {
        need();
        return new Kept(folder.resolve("server"));
    }

    /** Always at the same port and folder. */
    public static final class Kept implements AutoCloseable {
        private final Path data;
        private final int port;
        private EmbeddedPostgres server;

        private Kept(Path data) throws IOException {
            this.data = Files.createDirectories(data);
            try (ServerSocket free = new ServerSocket(0)) {
                port = free.getLocalPort();
            }
            start();
        }

        public void start() throws IOException {
            server = EmbeddedPostgres.builder().setDataDirectory(data).setCleanDataDirectory(false).setPort(port)
                    // a server for tests leaves these off, and then a commit it acknowledged may be gone after a kill
                    .setServerConfig("synchronous_commit", "on").setServerConfig("fsync", "on").start();
        }

        /** As an administrator does: whoever is connected is cut off. */
        public void stop() throws IOException {
            server.close();
        }

        /** As a power cut does to it. */
        public void kill() throws Exception {
            long id = Long.parseLong(Files.readAllLines(data.resolve("postmaster.pid")).get(0).strip());
            ProcessHandle process = ProcessHandle.of(id).orElseThrow();
            process.destroyForcibly();
            process.onExit().get(10, TimeUnit.SECONDS);
            server.close();
        }

        public Place place() {
            return Place.at("jdbc:postgresql://localhost:" + port + "/postgres?user=postgres");
        }

        @Override
        public void close() throws IOException {
            server.close();
        }
    }
}
