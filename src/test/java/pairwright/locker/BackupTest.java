package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-09-14T09:30:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    @Test
    @Tag("postgresql")
    void aBackupOfAFileIsRestoredOnAServerAndBackTheSame() throws Exception {
        Path first = folder.resolve("first.backup");
        Path second = folder.resolve("second.backup");
        try (Database file = fresh(Place.in(folder));
                Database server = fresh(Databases.freshServer());
                Database other = fresh(Place.in(folder.resolve("other")))) {
            fill(file);
            Map<String, List<String>> before = Contents.restored(file);
            new Backup(file, CLOCK).into(first);
            new Backup(server, CLOCK).from(first, "Wren");
            assertEquals(before, Contents.restored(server));
            new Backup(server, CLOCK).into(second);
            new Backup(other, CLOCK).from(second, "Wren");
            assertEquals(before, Contents.restored(other));
        }
    }

    @Test
    void itIsOneSoundFileAndNothingElse() throws Exception {
        Path backup = folder.resolve("backups").resolve("one.backup");
        Files.createDirectory(backup.getParent());
        try (Database file = fresh(Place.in(folder))) {
            fill(file);
            new Backup(file, CLOCK).into(backup);
            assertThrows(LockerFault.Unusable.class, () -> new Backup(file, CLOCK).into(backup), "it replaced one that was there");
            assertThrows(LockerFault.Unusable.class, () -> new Backup(file, CLOCK).into(folder.resolve("nowhere/x")));
        }
        try (var files = Files.list(backup.getParent())) {
            assertEquals(List.of(backup), files.toList());
        }
        assertEquals(List.of(), LockerFile.faults(backup));
    }

    @Test
    void aBackupMadeWhileSomebodyWritesHoldsWholeBookings() throws Exception {
        AtomicBoolean stop = new AtomicBoolean();
        try (Database file = fresh(Place.in(folder))) {
            Thread writer = new Thread(() -> {
                for (int id = 1; !stop.get(); id++) {
                    book(file, id);
                }
            });
            writer.start();
            long most = 0;
            for (int one = 0; one < 4; one++) {
                Path backup = folder.resolve(one + ".backup");
                Thread.sleep(150);
                new Backup(file, CLOCK).into(backup);
                try (Database copy = Database.open(new Place(backup, null))) {
                    long bookings = copy.read(sql -> sql.number("SELECT COUNT(*) FROM booking"));
                    long lines = copy.read(sql -> sql.number("SELECT COUNT(*) FROM line"));
                    assertEquals(3 * bookings, lines);
                    assertTrue(bookings > most, "nothing was written between two backups");
                    most = bookings;
                }
            }
            stop.set(true);
            writer.join();
        }
    }

    @Test
    void tokensStayAndNoNumberOfABookingIsGivenTwice() {
        Path backup = folder.resolve("old.backup");
        try (Database file = fresh(Place.in(folder))) {
            Tokens tokens = new Tokens(file, CLOCK);
            String revoked = tokens.add("Wren", Role.READER);
            book(file, 1);
            new Backup(file, CLOCK).into(backup);
            tokens.revoke("Wren");
            String present = tokens.add("Linnet", Role.INSTRUCTOR);
            file.write(sql -> sql.run("UPDATE state SET revision = 90, next_booking = 50"));
            book(file, 2);
            new Backup(file, CLOCK).from(backup, "Wren");
            assertEquals(1L, count(file, "SELECT COUNT(*) FROM booking"));
            assertEquals(50L, count(file, "SELECT next_booking FROM state"));
            assertEquals(91L, count(file, "SELECT revision FROM state"));
            assertFalse(tokens.of(revoked).isPresent(), "a revoked token came back");
            assertTrue(tokens.of(present).isPresent());
        }
    }

    @Test
    void whatIsNoBackupOrOfANewerProgramIsRefusedAndNothingChanges() throws Exception {
        Path text = Files.writeString(folder.resolve("text"), "SQLite is not in here");
        Path newer = folder.resolve("newer.backup");
        Path cut = folder.resolve("cut.backup");
        try (Database file = fresh(Place.in(folder))) {
            fill(file);
            new Backup(file, CLOCK).into(newer);
            byte[] whole = Files.readAllBytes(newer);
            Files.write(cut, java.util.Arrays.copyOf(whole, whole.length / 2));
            try (var connection = LockerFile.connection(newer); var statement = connection.createStatement()) {
                statement.execute("INSERT INTO locker_version (number, topic, at_ts) VALUES (999, 'later', 0)");
            }
            LockerFile.seal(newer);
            Map<String, List<String>> before = Contents.restored(file);
            for (Path wrong : List.of(text, newer, cut, folder.resolve("missing"))) {
                LockerFault.Unusable fault = assertThrows(LockerFault.Unusable.class, () -> new Backup(file, CLOCK).from(wrong, "Wren"), wrong.toString());
                assertTrue(fault.getMessage().contains(wrong.toString()), fault.getMessage());
            }
            assertEquals(before, Contents.restored(file));
        }
    }

    @Test
    void anOlderBackupIsBroughtUpToDateOnACopy() throws Exception {
        Path old = folder.resolve("old.db");
        try (Database first = Database.open(new Place(old, null))) {
            Migrations.run(first, CLOCK, 1);
            book(first, 7, false);
        }
        byte[] before = Files.readAllBytes(old);
        try (Database file = fresh(Place.in(folder.resolve("data")))) {
            new Backup(file, CLOCK).from(old, "Wren");
            assertEquals(7L, count(file, "SELECT id FROM booking"));
        }
        assertTrue(java.util.Arrays.equals(before, Files.readAllBytes(old)), "the backup itself was altered");
    }

    @Test
    void theHistorySaysThatItWasRestoredFromWhatAndByWhom() {
        Path backup = folder.resolve("barn.backup");
        try (Database file = fresh(Place.in(folder)); Database other = fresh(Place.in(folder.resolve("other")))) {
            book(file, 1);
            new Backup(file, CLOCK).into(backup);
            new Backup(other, Clock.offset(CLOCK, Duration.ofDays(1))).from(backup, "Linnet");
            Event said = other.read(sql -> History.of(sql, null, null, 1)).get(0);
            assertEquals("Linnet", said.who());
            assertEquals("restored", said.what());
            assertEquals(CLOCK.instant().plus(Duration.ofDays(1)).getEpochSecond(), said.at().getEpochSecond());
            assertTrue(said.says().startsWith("Restored the locker from the backup barn.backup, made " + Said.time(CLOCK.instant(), CLOCK.getZone()) + "."), said.says());
            assertEquals(2, other.read(sql -> History.of(sql, null, null, 9)).size(), "what the backup knew stays");
        }
    }

    @Test
    void aRestoredCopyIsTheSameLockerAndEveryOtherIsAnother() throws Exception {
        Path backup = folder.resolve("barn.backup");
        Path old = folder.resolve("old.db");
        try (Database first = Database.open(new Place(old, null))) {
            Migrations.run(first, CLOCK, 3);
        }
        try (Database file = fresh(Place.in(folder)); Database other = fresh(Place.in(folder.resolve("other")))) {
            assertTrue(ownId(file).matches("[0-9a-f]{32}"), ownId(file));
            assertNotEquals(ownId(file), ownId(other));
            String own = ownId(other);
            new Backup(other, CLOCK).from(old, "Wren");
            assertEquals(own, ownId(other), "a backup that knows none changes none");
            new Backup(file, CLOCK).into(backup);
            new Backup(other, CLOCK).from(backup, "Wren");
            assertEquals(ownId(file), ownId(other));
        }
    }

    private static String ownId(Database database) {
        return database.read(sql -> sql.first("SELECT own_id FROM state", row -> row.getString(1)).orElseThrow());
    }

    private static long count(Database database, String query) {
        return database.read(sql -> sql.number(query));
    }

    private static Database fresh(Place place) {
        Database database = Database.open(place);
        Migrations.run(database, CLOCK);
        return database;
    }

    private static void fill(Database database) {
        database.write(sql -> sql.run("INSERT INTO unit (id, kind, mic_type, label, state, channel_noise_dbu, version) VALUES ('barn-1', 'mic', 'long-ribbon', 'Märta 1', 'good', -127.25, 3)"));
        for (int id = 1; id <= 1_200; id++) {
            book(database, id);
        }
        database.write(sql -> sql.run("UPDATE state SET revision = 70, units_revision = 60, next_booking = 1201"));
        new Tokens(database, CLOCK).add("Wren", Role.ENGINEER);
    }

    private static void book(Database database, int id) {
        book(database, id, true);
    }

    private static void book(Database database, int id, boolean withHistory) {
        database.write(sql -> {
            sql.run("INSERT INTO booking (id, from_ts, until_ts, kind, for_what, by_whom, version) VALUES (?, ?, ?, 'session', 'x', 'Wren', 1)", id, id * 100, id * 100 + 50);
            for (int place = 0; place < 3; place++) {
                sql.run("INSERT INTO line (booking_id, place, unit_id, unit_label, from_ts, until_ts) VALUES (?, ?, ?, 'x', ?, ?)", id, place, "barn-" + place, id * 100, id * 100 + 50);
            }
            if (withHistory) {
                sql.run("INSERT INTO event (number, at_ts, who, what, about, says) VALUES (?, 1, 'Wren', 'booked', ?, 'x')", id, Integer.toString(id));
                sql.run("INSERT INTO event_about (id, number) VALUES (?, ?)", Integer.toString(id), id);
                sql.run("INSERT INTO act (id, who, print, says, at_ts) VALUES (?, 'Wren', 'p', ?, 1)", "key-" + id, Integer.toString(id));
            }
            return null;
        });
    }
}
