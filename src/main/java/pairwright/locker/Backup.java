package pairwright.locker;

import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import pairwright.model.Fault;

/**
 * All of a locker as one file, and back. Whatever it is kept in, the file is a locker of its own in SQLite, so that a backup of a file can be
 * restored on a server, and the other way round.
 */
final class Backup {
    /** Marks a file as ours for whoever looks at its head: "Pair" in ASCII. */
    private static final int APPLICATION_ID = 0x50616972;
    /** The tables from which on a locker has an id of its own. */
    private static final int WITH_OWN_ID = 4;
    private static final byte[] SQLITE = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

    private final Database database;
    private final Clock clock;

    Backup(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /**
     * Writes all of it as it is at one moment. The file has its name only when it is whole and on the disk.
     *
     * @param file must not be there yet
     * @throws LockerFault.Unusable where it is there, or its folder is not
     * @throws LockerFault.Unreachable where it cannot be written; then nothing is left behind
     */
    void into(Path file) {
        Path target = file.toAbsolutePath().normalize();
        if (Files.exists(target)) {
            throw unusable(target + " is there already, and a backup never replaces anything. Give a name that is free");
        }
        if (!Files.isDirectory(target.getParent())) {
            throw unusable("There is no folder " + target.getParent() + " to write the backup into. Make it, or name one that is there");
        }
        try {
            // only its owner may read it: it holds names, and hashes of tokens
            Path part = Files.createTempFile(target.getParent(), target.getFileName() + "-", ".part");
            try {
                copyInto(part);
                finish(part, clock.instant());
                sync(part, StandardOpenOption.WRITE);
                Files.move(part, target);
                syncFolder(target.getParent());
            } finally {
                LockerFile.delete(part);
            }
        } catch (FileAlreadyExistsException meanwhile) {
            throw unusable(target + " came to be meanwhile, and a backup never replaces anything. Give a name that is free");
        } catch (IOException | SQLException fault) {
            throw unreachable("The backup " + target + " could not be written: " + Database.innermost(fault) + ". Nothing is left of it", fault);
        }
    }

    private void copyInto(Path part) throws SQLException {
        Path own = database.place().file();
        if (own != null) {
            try (Connection connection = LockerFile.connection(own);
                    PreparedStatement copy = connection.prepareStatement("VACUUM INTO ?")) {
                copy.setString(1, part.toString());
                copy.execute();
            }
            return;
        }
        try (Database copy = Database.open(new Place(part, null))) {
            Migrations.run(copy, clock);
            List<String> tables = LockerFile.tables(copy);
            database.read(from -> copy.write(to -> {
                Tables.replace(from, to, tables);
                return null;
            }));
        }
    }

    /** One file without companions, marked, and looked over: a backup that cannot be read is noticed when it is made. */
    private static void finish(Path part, Instant made) throws IOException, SQLException {
        try (Connection connection = LockerFile.connection(part); Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA journal_mode = DELETE");
            statement.execute("PRAGMA application_id = " + APPLICATION_ID);
            statement.execute("UPDATE state SET backed_up_ts = " + made.getEpochSecond());
        }
        List<String> faults = LockerFile.faults(part);
        if (!faults.isEmpty()) {
            throw new SQLException("the copy is not sound: " + faults.get(0));
        }
        LockerFile.seal(part);
    }

    /**
     * Replaces all of it by what a backup holds, in one transaction; who reads meanwhile sees all of the one or all of the other. Tokens that are
     * there stay, and those of the backup come only where there are none: what was revoked must not come back, and who restores must not lock
     * themselves out. No number of a booking is given twice.
     *
     * @param who does it, for the history that was in the backup
     * @throws LockerFault.Unusable where it is no sound backup, or of a newer program; then nothing was changed
     */
    void from(Path file, String who) {
        Path source = file.toAbsolutePath().normalize();
        check(source);
        try {
            Path folder = Files.createTempDirectory("pairwright-restore-");
            Path copy = folder.resolve(Place.FILE);
            try {
                Files.copy(source, copy);
                restore(source, copy, who);
            } finally {
                LockerFile.delete(copy);
                Files.deleteIfExists(folder);
            }
        } catch (IOException | SQLException fault) {
            throw unreachable("The backup " + source + " could not be read: " + Database.innermost(fault) + ". Nothing was changed", fault);
        }
    }

    /** An older one is brought up to date on a copy, so that the backup itself stays as it is. */
    private void restore(Path source, Path copy, String who) throws IOException, SQLException {
        if (!LockerFile.sealHolds(copy)) {
            throw unusable(source + " is damaged: it is not what was written, to the byte. Nothing was changed; take another backup");
        }
        List<String> unsound = LockerFile.faults(copy);
        if (!unsound.isEmpty()) {
            throw unusable(source + " is damaged: " + unsound.get(0) + ". Nothing was changed; take another backup");
        }
        try (Database backup = Database.open(new Place(copy, null))) {
            boolean ownIdKnown = checkVersion(source, backup) >= WITH_OWN_ID;
            Migrations.run(backup, clock);
            List<String> tables = LockerFile.tables(backup);
            try {
                database.write(to -> backup.read(from -> {
                    String ownId = to.first("SELECT own_id FROM state", row -> row.getString(1)).orElseThrow();
                    replace(from, to, tables);
                    if (!ownIdKnown) {
                        to.run("UPDATE state SET own_id = ?", ownId);
                    }
                    tell(to, source, who);
                    return null;
                }));
            } catch (LockerFault.Taken overlap) {
                throw unusable(source + " holds two bookings of one unit at once, which no backup of a locker does. Nothing was changed; take another backup");
            }
        }
    }

    private static void replace(Sql from, Sql to, List<String> tables) throws SQLException {
        boolean tokensStay = to.number("SELECT COUNT(*) FROM token") > 0;
        long revision = to.number("SELECT revision FROM state");
        long unitsRevision = to.number("SELECT units_revision FROM state");
        long marksRevision = to.number("SELECT marks_revision FROM state");
        long nextBooking = to.number("SELECT next_booking FROM state");
        Tables.replace(from, to, tables.stream().filter(table -> !(tokensStay && table.equals("token"))).toList());
        // whoever remembers something by a revision must see that it is another one now
        to.run("UPDATE state SET revision = ? WHERE revision <= ?", revision + 1, revision);
        to.run("UPDATE state SET units_revision = ? WHERE units_revision <= ?", unitsRevision + 1, unitsRevision);
        to.run("UPDATE state SET marks_revision = ? WHERE marks_revision <= ?", marksRevision + 1, marksRevision);
        to.run("UPDATE state SET next_booking = ? WHERE next_booking < ?", nextBooking, nextBooking);
    }

    private void tell(Sql to, Path source, String who) throws SQLException {
        long made = to.number("SELECT COALESCE(backed_up_ts, 0) FROM state");
        to.run("UPDATE state SET backed_up_ts = NULL");
        History.add(to, clock.instant(), who, "restored", "locker", List.of(), "Restored the locker from the backup " + source.getFileName()
                + (made == 0 ? "" : ", made " + Said.time(Instant.ofEpochSecond(made), clock.getZone())) + ". What was done after that is no longer in it.");
    }

    private static void check(Path source) {
        if (!Files.isRegularFile(source)) {
            throw unusable("There is no file " + source + ". Name a backup that is there");
        }
        try (InputStream in = Files.newInputStream(source)) {
            if (!Arrays.equals(in.readNBytes(SQLITE.length), SQLITE)) {
                throw unusable(source + " is no backup of a locker. Name a file that was made by a backup");
            }
            Path log = source.resolveSibling(source.getFileName() + "-wal");
            if (Files.exists(log) && Files.size(log) > 0) {
                throw unusable(source + " is a locker in use, and its newest part is still in " + log.getFileName() + " beside it. Make a backup of it and restore that");
            }
        } catch (IOException fault) {
            throw unreachable("The backup " + source + " could not be read: " + Database.innermost(fault) + ". Nothing was changed", fault);
        }
    }

    private static long checkVersion(Path source, Database backup) {
        long version = LockerFile.version(backup);
        if (version == 0) {
            throw unusable(source + " is a database, but no backup of a locker. Name a file that was made by a backup");
        }
        if (version > Migrations.SCRIPTS.size()) {
            throw unusable(source + " was written by a newer Pairwright: its tables are number " + version + ", and this program knows them up to "
                    + Migrations.SCRIPTS.size() + ". Restore it with the newer program");
        }
        return version;
    }

    private static void syncFolder(Path folder) {
        try {
            sync(folder, StandardOpenOption.READ);
        } catch (IOException notHere) {
            // some systems cannot open a folder; there the name of the file is as safe as they make it
        }
    }

    private static void sync(Path path, StandardOpenOption how) throws IOException {
        try (FileChannel channel = FileChannel.open(path, how)) {
            channel.force(true);
        }
    }

    private static LockerFault.Unusable unusable(String says) {
        return new LockerFault.Unusable(List.of(new Fault("/file", says)));
    }

    private static LockerFault.Unreachable unreachable(String says, Exception cause) {
        LockerFault.Unreachable fault = new LockerFault.Unreachable(says);
        fault.initCause(cause);
        return fault;
    }
}
