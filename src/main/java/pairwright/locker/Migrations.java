package pairwright.locker;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;

/** Brings the tables up to date, forward only, all in one transaction. Two programs that begin at once do not trip: the second finds it done. */
final class Migrations {
    /** In order; the first is number 1. A script that was published is never altered, a new one is added. */
    static final List<String> SCRIPTS = List.of("001-units-and-bookings", "002-history-and-acts", "003-tokens", "004-own-id", "005-by-time",
            "006-documents-and-marks", "007-exercises");

    private static final String VERSIONS = "CREATE TABLE IF NOT EXISTS locker_version (number BIGINT PRIMARY KEY, topic TEXT NOT NULL, at_ts BIGINT NOT NULL)";
    /** A statement ends with a semicolon and an empty line, so that the body of a trigger is not cut. */
    private static final String END = ";[ \\t]*\\R\\s*\\R|;\\s*$";

    private Migrations() {
    }

    /**
     * Up to the newest.
     *
     * @throws LockerFault.Unreachable where a newer program wrote it, or something of the same name is in the way; then nothing was changed
     */
    static void run(Database database, Clock clock) {
        run(database, clock, SCRIPTS.size());
    }

    /** Up to one of them, for a test that begins from there. */
    static void run(Database database, Clock clock, int last) {
        database.write(sql -> {
            sql.run(VERSIONS);
            int present = (int) sql.number("SELECT COALESCE(MAX(number), 0) FROM locker_version");
            if (present > SCRIPTS.size()) {
                throw new LockerFault.Unreachable("The locker (" + database.place() + ") was written by a newer Pairwright: its tables are number " + present
                        + ", and this program knows them up to " + SCRIPTS.size() + ". Start the newer program, or take a backup that is older");
            }
            for (int number = present + 1; number <= last; number++) {
                String name = SCRIPTS.get(number - 1);
                step(database, sql, name);
                sql.run("INSERT INTO locker_version (number, topic, at_ts) VALUES (?, ?, ?)", number, name, clock.instant().getEpochSecond());
            }
            return null;
        });
    }

    private static void step(Database database, Sql sql, String name) throws SQLException {
        try {
            script(sql, "/pairwright/locker/" + database.dialect() + "/" + name + ".sql");
        } catch (SQLException fault) {
            if (database.away(fault)) {
                throw fault;
            }
            LockerFault.Unreachable stuck = new LockerFault.Unreachable("The tables of the locker (" + database.place() + ") could not be brought up to date by "
                    + name + ": " + Database.innermost(fault) + ". Nothing was changed. Take away what is in the way, or keep the locker in a database of its own");
            stuck.initCause(fault);
            throw stuck;
        }
    }

    private static void script(Sql sql, String resource) throws SQLException {
        try (InputStream in = Migrations.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException(resource + " is missing");
            }
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8).replaceAll("(?m)^--.*$\\R?", "");
            for (String statement : text.split(END)) {
                if (!statement.isBlank()) {
                    sql.run(statement.strip());
                }
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
