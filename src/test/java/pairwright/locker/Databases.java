package pairwright.locker;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** Database servers for tests. */
public final class Databases {
    private static final AtomicInteger NEXT = new AtomicInteger();

    private Databases() {
    }

    private static final class Shared {
        static final EmbeddedPostgres SERVER = started();

        private static EmbeddedPostgres started() {
            try {
                return EmbeddedPostgres.start();
            } catch (IOException fault) {
                throw new java.io.UncheckedIOException(fault);
            }
        }
    }

    /** An empty database of its own on a server that all tests share. */
    public static Place freshServer() throws SQLException {
        String name = "locker" + NEXT.incrementAndGet();
        try (Connection connection = Shared.SERVER.getPostgresDatabase().getConnection(); Statement statement = connection.createStatement()) {
            statement.execute("CREATE DATABASE " + name);
        }
        return Place.at(Shared.SERVER.getJdbcUrl("postgres", name));
    }

    /** A server that can go away and come back with what it had. */
    public static Kept kept(Path folder) throws IOException {
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
