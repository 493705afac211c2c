package pairwright.locker;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * One file. Writes go through one connection, reads through a few of their own, which see the last finished write meanwhile. A write that was
 * confirmed is on the disk ({@code synchronous=FULL}).
 */
final class SqliteDatabase extends Database {
    private static final int BUSY_MS = 10_000;
    private static final int AGAIN_MS = 5;
    private static final int READERS = 4;
    private static final Set<SQLiteErrorCode> AWAY = Set.of(SQLiteErrorCode.SQLITE_BUSY, SQLiteErrorCode.SQLITE_LOCKED, SQLiteErrorCode.SQLITE_FULL,
            SQLiteErrorCode.SQLITE_IOERR, SQLiteErrorCode.SQLITE_CANTOPEN, SQLiteErrorCode.SQLITE_READONLY, SQLiteErrorCode.SQLITE_NOTADB,
            SQLiteErrorCode.SQLITE_CORRUPT, SQLiteErrorCode.SQLITE_PERM, SQLiteErrorCode.SQLITE_PROTOCOL, SQLiteErrorCode.SQLITE_NOLFS);

    private final String address;
    private final HikariDataSource readers;
    /** Open while it works; null after it failed, and then opened anew by the next write. */
    private Connection writer;
    private boolean closed;

    SqliteDatabase(Place place) {
        super(place);
        address = "jdbc:sqlite:" + place.file().toAbsolutePath();
        try {
            Files.createDirectories(place.file().toAbsolutePath().getParent());
            writer = opened();
        } catch (IOException fault) {
            throw new LockerFault.Unreachable("The folder of the locker " + place + " cannot be made: " + (fault instanceof FileAlreadyExistsException
                    ? "there is a file of that name" : fault instanceof AccessDeniedException ? "it may not be written there" : innermost(fault)) + ". Name another folder");
        } catch (SQLException fault) {
            throw new LockerFault.Unreachable("The locker " + place + " cannot be opened: " + (Files.isDirectory(place.file()) ? "it is a folder" : innermost(fault))
                    + ". See that it is a locker and may be written");
        }
        HikariConfig pool = new HikariConfig();
        pool.setPoolName("locker");
        pool.setJdbcUrl(address);
        pool.setDataSourceProperties(settings().toProperties());
        pool.setConnectionInitSql("PRAGMA query_only = ON");
        pool.setMaximumPoolSize(READERS);
        pool.setConnectionTimeout(BUSY_MS);
        pool.setInitializationFailTimeout(-1);
        readers = new HikariDataSource(pool);
    }

    @Override
    String dialect() {
        return "sqlite";
    }

    @Override
    <T> T reading(Work<T> work) throws SQLException {
        try (Connection connection = readers.getConnection()) {
            return within(connection, "BEGIN", work);
        }
    }

    @Override
    <T> T writing(Work<T> work) throws SQLException {
        if (closed) {
            throw new LockerFault.Unreachable("The program is stopping; nothing was written");
        }
        if (writer == null) {
            writer = opened();
        }
        return within(writer, "BEGIN IMMEDIATE", work);
    }

    private <T> T within(Connection connection, String begin, Work<T> work) throws SQLException {
        run(connection, begin);
        boolean done = false;
        try {
            T result = work.in(new Sql(connection));
            run(connection, "COMMIT");
            done = true;
            return result;
        } finally {
            if (!done) {
                undo(connection);
            }
        }
    }

    private void undo(Connection connection) {
        try {
            run(connection, "ROLLBACK");
        } catch (SQLException alreadyUndone) {
            // a full disk, for one, ends the transaction by itself; a fresh connection is sure to be in none
            try {
                if (connection == writer) {
                    writer = null;
                }
                connection.close();
            } catch (SQLException gone) {
                alreadyUndone.addSuppressed(gone);
            }
        }
    }

    private Connection opened() throws SQLException {
        Connection connection = DriverManager.getConnection(address, settings().toProperties());
        try {
            toWriteAheadLog(connection);
            if (new Sql(connection).number("PRAGMA user_version") != 0) {
                run(connection, "PRAGMA user_version = 0"); // the mark of a finished backup, which no longer holds once it is written to
            }
            return connection;
        } catch (SQLException fault) {
            connection.close();
            throw fault;
        }
    }

    /** Two that change the mode of a new file at once are told that it is busy and, unlike everywhere else, not after the busy time but at once. */
    private static void toWriteAheadLog(Connection connection) throws SQLException {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(BUSY_MS);
        while (true) {
            try {
                run(connection, "PRAGMA journal_mode = WAL");
                return;
            } catch (SQLiteException fault) {
                if (fault.getResultCode().code != SQLiteErrorCode.SQLITE_BUSY.code || System.nanoTime() > end) {
                    throw fault;
                }
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(AGAIN_MS));
            }
        }
    }

    private static SQLiteConfig settings() {
        SQLiteConfig config = new SQLiteConfig();
        config.setBusyTimeout(BUSY_MS);
        config.enforceForeignKeys(true);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setCacheSize(-16_000); // in KiB, where negative
        return config;
    }

    private static void run(Connection connection, String statement) throws SQLException {
        try (Statement plain = connection.createStatement()) {
            plain.execute(statement);
        }
    }

    @Override
    boolean overlap(SQLException fault) {
        return String.valueOf(fault.getMessage()).contains("two lines of a unit at once");
    }

    @Override
    boolean away(SQLException fault) {
        if (fault instanceof SQLiteException known) {
            int primary = known.getResultCode().code & 0xff;
            return AWAY.stream().anyMatch(code -> code.code == primary);
        }
        return fault instanceof java.sql.SQLTransientException || readers.isClosed();
    }

    @Override
    public void close() {
        readers.close();
        try {
            // whoever writes just now may finish
            exclusively(() -> {
                closed = true;
                if (writer != null) {
                    writer.close();
                    writer = null;
                }
            });
        } catch (SQLException fault) {
            throw new IllegalStateException("The locker could not be closed", fault);
        }
    }
}
