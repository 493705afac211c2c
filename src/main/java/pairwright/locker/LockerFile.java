package pairwright.locker;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/** A locker in one file, seen from outside: whether it is sound, and what it holds. */
final class LockerFile {
    private LockerFile() {
    }

    /** A connection of its own, which nothing else uses. */
    static Connection connection(Path file) throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + file);
    }

    /** What is wrong with it as a database; nothing, if it is sound. */
    static List<String> faults(Path file) {
        List<String> faults = new ArrayList<>();
        try (Connection connection = connection(file); Statement statement = connection.createStatement()) {
            try (ResultSet row = statement.executeQuery("PRAGMA integrity_check")) {
                while (row.next()) {
                    if (!row.getString(1).equals("ok")) {
                        faults.add(row.getString(1));
                    }
                }
            }
            try (ResultSet row = statement.executeQuery("PRAGMA foreign_key_check")) {
                while (row.next()) {
                    faults.add("a row of " + row.getString(1) + " belongs to one of " + row.getString(3) + " that is not there");
                }
            }
        } catch (SQLException fault) {
            faults.add(Database.innermost(fault));
        }
        return faults;
    }

    /** Number of its newest tables; 0 where it is no locker. */
    static long version(Database file) {
        return file.read(sql -> sql.number("SELECT COUNT(*) FROM sqlite_master WHERE type = 'table' AND name = 'locker_version'") == 0
                ? 0 : sql.number("SELECT COALESCE(MAX(number), 0) FROM locker_version"));
    }

    /** Its tables in the order they were made, so that none refers to a later one; without that of versions. */
    static List<String> tables(Database file) {
        return file.read(sql -> sql.all("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%' AND name <> 'locker_version' ORDER BY rowid",
                row -> row.getString(1)));
    }

    /** With the files that lie beside it while it is open. */
    static void delete(Path file) throws IOException {
        for (String companion : List.of("", "-wal", "-shm", "-journal")) {
            Files.deleteIfExists(file.resolveSibling(file.getFileName() + companion));
        }
    }
}
