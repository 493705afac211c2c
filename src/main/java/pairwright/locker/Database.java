package pairwright.locker;

import java.sql.SQLException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.regex.Pattern;

/**
 * Where the tables are. A read sees one moment; a write happens as a whole or not at all, and one at a time, on a server as in a file, so that
 * what was looked at before a write still holds when it is written.
 */
abstract sealed class Database implements AutoCloseable permits SqliteDatabase, PostgresDatabase {
    private static final long PATIENCE_S = 20;
    /** How SQLite says what is wrong: a code, what it means, and in brackets the same again. */
    private static final Pattern CODED = Pattern.compile("(?s)^\\[SQLITE_\\w+\\]\\s*(.*?)\\s*\\([^()]*\\)$");

    private final Place place;
    /** First come, first served. */
    private final ReentrantLock writing = new ReentrantLock(true);

    Database(Place place) {
        this.place = place;
    }

    /** Something done within one transaction. It may be done again from the start where the database asks for that. */
    @FunctionalInterface
    interface Work<T> {
        T in(Sql sql) throws SQLException;
    }

    /** Opens it, its tables as they are. */
    static Database open(Place place) {
        return place.file() != null ? new SqliteDatabase(place) : new PostgresDatabase(place);
    }

    /** Reads, all of it as it was at one moment. */
    final <T> T read(Work<T> work) {
        try {
            return reading(work);
        } catch (SQLException fault) {
            throw told(fault);
        }
    }

    /** Writes all of it or, where the work throws anything, nothing. */
    final <T> T write(Work<T> work) {
        if (writing.isHeldByCurrentThread()) {
            throw new IllegalStateException("a write within a write");
        }
        try {
            if (!writing.tryLock(PATIENCE_S, TimeUnit.SECONDS)) {
                throw new LockerFault.Unreachable("The locker is busy: nothing could be written for " + PATIENCE_S + " s. Try again");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new LockerFault.Unreachable("The program is stopping; nothing was written");
        }
        try {
            return writing(work);
        } catch (SQLException fault) {
            throw told(fault);
        } finally {
            writing.unlock();
        }
    }

    /** Does something while nobody writes. */
    final void exclusively(Last last) throws SQLException {
        writing.lock();
        try {
            last.run();
        } finally {
            writing.unlock();
        }
    }

    @FunctionalInterface
    interface Last {
        void run() throws SQLException;
    }

    /** The folder of its scripts. */
    abstract String dialect();

    abstract <T> T reading(Work<T> work) throws SQLException;

    abstract <T> T writing(Work<T> work) throws SQLException;

    /** Whether the database itself refused two lines of one unit at once. */
    abstract boolean overlap(SQLException fault);

    /** Whether it is away, broken or full, which is nobody's mistake. */
    abstract boolean away(SQLException fault);

    /** Where it is, without any secret. */
    final Place place() {
        return place;
    }

    @Override
    public abstract void close();

    private RuntimeException told(SQLException fault) {
        if (overlap(fault)) {
            return new LockerFault.Taken("Somebody took one of the units just now. Look again what is free", List.of());
        }
        if (away(fault)) {
            LockerFault.Unreachable unreachable = new LockerFault.Unreachable(
                    "The locker (" + place + ") does not answer just now: " + place.hidden(innermost(fault))
                            + (full(fault) ? ". Nothing was written: make room on its disk, and it goes on by itself" : ". Try again in a moment"));
            unreachable.initCause(fault);
            return unreachable;
        }
        return new IllegalStateException("The database of the locker refused a statement", fault);
    }

    private static boolean full(SQLException fault) {
        return String.valueOf(fault.getMessage()).contains("SQLITE_FULL") || "53100".equals(fault.getSQLState());
    }

    /** The first cause says what is wrong; those around it say that something is. */
    static String innermost(Throwable fault) {
        Throwable inner = fault;
        while (inner.getCause() != null && inner.getCause() != inner) {
            inner = inner.getCause();
        }
        return CODED.matcher(String.valueOf(inner.getMessage()).strip()).replaceFirst("$1").replaceAll("\\.$", "");
    }
}
