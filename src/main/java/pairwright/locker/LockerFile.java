package pairwright.locker;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;

/** A locker in one file, seen from outside: whether it is sound, and what it holds. */
final class LockerFile {
    private static final int NAMED = 5;
    /** Where the head of a file has room for four bytes of whoever made it (user_version). */
    private static final int SEAL_AT = 60;
    private static final int SEAL_BYTES = 4;

    private LockerFile() {
    }

    /** A connection of its own, which nothing else uses. */
    static Connection connection(Path file) throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + file);
    }

    /**
     * Looks before anything is written whether a database of something else is in the file.
     *
     * @throws LockerFault.Unreachable where there is one
     */
    static void refuseForeign(Path file) {
        List<String> tables = new ArrayList<>();
        try {
            if (Files.isRegularFile(file) && Files.size(file) > 0) {
                try (Connection connection = connection(file); Statement statement = connection.createStatement();
                        ResultSet row = statement.executeQuery("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%' ORDER BY rowid")) {
                    while (row.next()) {
                        tables.add(row.getString(1));
                    }
                }
            }
        } catch (IOException | SQLException unreadable) {
            return; // whoever opens it says why
        }
        if (!tables.isEmpty() && !tables.contains("locker_version")) {
            throw new LockerFault.Unreachable("The file " + file + " is no locker but a database of something else, with the tables " + Said.list(tables, NAMED)
                    + ". Nothing in it was changed. Name another folder for the locker");
        }
    }

    /**
     * Marks a finished file with a checksum of all its bytes. Whoever opens it as a locker takes the mark away, since it is to change then.
     */
    static void seal(Path file) throws IOException {
        ByteBuffer mark = ByteBuffer.allocate(SEAL_BYTES).putInt(0, checksum(file));
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.write(mark, SEAL_AT);
        }
    }

    /** Whether a file that was marked is still what it was to the byte; one without a mark may be anything. */
    static boolean sealHolds(Path file) throws IOException {
        ByteBuffer mark = ByteBuffer.allocate(SEAL_BYTES);
        try (FileChannel channel = FileChannel.open(file)) {
            return channel.read(mark, SEAL_AT) == SEAL_BYTES && (mark.getInt(0) == 0 || mark.getInt(0) == checksum(file));
        }
    }

    private static int checksum(Path file) throws IOException {
        CRC32 sum = new CRC32();
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            sum.update(in.readNBytes(SEAL_AT));
            in.skipNBytes(SEAL_BYTES);
            byte[] some = new byte[1 << 16];
            for (int many = in.read(some); many > 0; many = in.read(some)) {
                sum.update(some, 0, many);
            }
        }
        return sum.getValue() == 0 ? 1 : (int) sum.getValue();
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
