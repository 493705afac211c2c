package pairwright.locker;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.SQLNonTransientConnectionException;
import java.sql.SQLRecoverableException;
import java.sql.SQLTransientException;
import java.sql.Statement;
import java.util.List;
import java.util.Properties;

/**
 * A server that several programs share. One program writes at a time: each write waits for an advisory lock that ends with its transaction. A
 * lost connection is replaced by the next one who needs it, so that a server that comes back is used again by itself.
 */
final class PostgresDatabase extends Database {
    private static final int CONNECTIONS = 12;
    private static final int CONNECT_MS = 2_000;
    private static final int TRIES = 5;
    /** Two that block each other: one of them is asked to begin again. */
    private static final List<String> AGAIN = List.of("40001", "40P01");
    /** Connection lost; shutting down; out of room; cancelled; lock not had in time; idle too long. */
    private static final List<String> AWAY = List.of("08", "57P", "53", "57014", "55P03", "25P03", "25006", "58");
    /** A program that vanishes in the middle of a write must not keep the others waiting. To start helpers takes longer than any of our questions. */
    private static final String SETTINGS = "SET lock_timeout = '10s'; SET idle_in_transaction_session_timeout = '15s'; SET statement_timeout = '60s'; SET max_parallel_workers_per_gather = 0";
    private static final String ONE_WRITER = "SELECT pg_advisory_xact_lock(hashtext('pairwright locker ' || current_schema()))";

    private final HikariDataSource pool;
    private volatile boolean reached;

    PostgresDatabase(Place place) {
        super(place);
        if (!place.address().startsWith("jdbc:postgresql:")) {
            throw new LockerFault.Unreachable("The address of the database does not begin with jdbc:postgresql:. Give it as jdbc:postgresql://HOST/NAME?user=USER&password=PASSWORD");
        }
        if (place.address().replaceFirst("(?s)\\?.*", "").contains("@")) {
            throw new LockerFault.Unreachable("The address of the database has a name before its host, which the driver takes for a part of the host. Give it as "
                    + "jdbc:postgresql://HOST/NAME?user=USER&password=PASSWORD");
        }
        HikariConfig config = new HikariConfig();
        config.setPoolName("locker");
        config.setJdbcUrl(place.address());
        Properties usual = new Properties();
        usual.setProperty("connectTimeout", "2");
        usual.setProperty("loginTimeout", "5");
        usual.setProperty("socketTimeout", "70");
        usual.setProperty("tcpKeepAlive", "true");
        usual.setProperty("ApplicationName", "pairwright");
        config.setDataSourceProperties(usual);
        config.setMaximumPoolSize(CONNECTIONS);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(CONNECT_MS);
        config.setValidationTimeout(1_000);
        config.setInitializationFailTimeout(-1);
        config.setAutoCommit(false);
        config.setConnectionInitSql(SETTINGS);
        try {
            pool = new HikariDataSource(config);
        } catch (RuntimeException unreadable) {
            // its message has the address in it, and the address may have a password; so neither is told
            throw new LockerFault.Unreachable("The address of the database cannot be read (" + place + "). Give it as jdbc:postgresql://HOST:PORT/NAME?user=USER&password=PASSWORD");
        }
    }

    @Override
    String dialect() {
        return "postgresql";
    }

    @Override
    <T> T reading(Work<T> work) throws SQLException {
        return within("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ READ ONLY", work);
    }

    @Override
    <T> T writing(Work<T> work) throws SQLException {
        for (int tried = 1; ; tried++) {
            try {
                return within(ONE_WRITER, work);
            } catch (SQLException fault) {
                if (!AGAIN.contains(String.valueOf(fault.getSQLState())) || tried == TRIES) {
                    throw fault;
                }
            }
        }
    }

    private <T> T within(String first, Work<T> work) throws SQLException {
        try (Connection connection = connection()) {
            boolean done = false;
            try {
                try (Statement plain = connection.createStatement()) {
                    plain.execute(first);
                }
                T result = work.in(new Sql(connection));
                connection.commit();
                done = true;
                return result;
            } finally {
                if (!done) {
                    undo(connection);
                }
            }
        }
    }

    /** The very first takes longest. Where it is only slow, on a busy machine, it is waited for; where it is refused, that is said at once. */
    private Connection connection() throws SQLException {
        for (int tried = 1; ; tried++) {
            try {
                Connection connection = pool.getConnection();
                reached = true;
                return connection;
            } catch (SQLTransientException fault) {
                if (reached || pool.isClosed() || tried == TRIES || fault.getCause() != null && !innermost(fault).contains("timed out")) {
                    throw fault;
                }
            }
        }
    }

    private static void undo(Connection connection) {
        try {
            connection.rollback();
        } catch (SQLException lost) {
            // with a lost connection the server undoes it by itself; the pool sees that it is lost
        }
    }

    @Override
    boolean overlap(SQLException fault) {
        return "23P01".equals(fault.getSQLState());
    }

    @Override
    boolean away(SQLException fault) {
        String state = String.valueOf(fault.getSQLState());
        return fault instanceof SQLTransientException || fault instanceof SQLRecoverableException || fault instanceof SQLNonTransientConnectionException
                || AGAIN.contains(state) || AWAY.stream().anyMatch(state::startsWith) || pool.isClosed();
    }

    @Override
    public void close() {
        pool.close();
    }
}
