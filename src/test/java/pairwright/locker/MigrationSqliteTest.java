package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class MigrationSqliteTest extends MigrationTests {
    private static final int ROUNDS = 60;

    private final AtomicInteger next = new AtomicInteger();

    @Override
    Place fresh() {
        return Place.in(folder.resolve("data" + next.incrementAndGet()));
    }

    @Override
    String dialect() {
        return "sqlite";
    }

    private String refusal(Path file) {
        LockerFault.Unreachable fault = assertThrows(LockerFault.Unreachable.class, () -> Locker.open(new Place(file, null), Load.CATALOGUE, CLOCK));
        assertTrue(fault.getMessage().contains(file.toString()), fault.getMessage());
        assertFalse(fault.getMessage().contains("SQLITE"), fault.getMessage());
        return fault.getMessage();
    }

    private List<String> names() throws Exception {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aDatabaseOfSomethingElseIsRefusedAndStaysAsItIs() throws Exception {
        Path file = folder.resolve("songs.db");
        try (Connection connection = LockerFile.connection(file); Statement statement = connection.createStatement()) {
            statement.execute("CREATE TABLE song (name TEXT)");
            statement.execute("INSERT INTO song VALUES ('Barn dance')");
        }
        byte[] before = Files.readAllBytes(file);
        assertTrue(refusal(file).contains("song"));
        assertArrayEquals(before, Files.readAllBytes(file));
        assertEquals(List.of("songs.db"), names());
    }

    @Test
    void aTextIsRefusedAndStaysAsItIs() throws Exception {
        Path file = Files.writeString(folder.resolve("notes.txt"), "Ribbons are in the Dairy.\n".repeat(300));
        byte[] before = Files.readAllBytes(file);
        assertTrue(refusal(file).contains("not a database"));
        assertArrayEquals(before, Files.readAllBytes(file));
        assertEquals(List.of("notes.txt"), names());
    }

    @Test
    void anEmptyFileIsAsGoodAsNone() throws Exception {
        Path file = Files.createFile(folder.resolve("empty.db"));
        try (Locker locker = Locker.open(new Place(file, null), Load.CATALOGUE, CLOCK)) {
            assertEquals(List.of(), locker.units());
        }
    }

    @Test
    void aFolderWhereTheFileShouldBeIsRefusedAndSoIsAFileWhereTheFolderShouldBe() throws Exception {
        Path taken = Files.createDirectory(folder.resolve("taken"));
        assertTrue(refusal(taken).contains("is a folder"));
        Path file = Files.writeString(folder.resolve("file"), "x");
        String says = refusal(file.resolve(Place.FILE));
        assertTrue(says.contains("there is a file of that name"), says);
        assertEquals("x", Files.readString(file));
    }

    @Test
    void whatMayNotBeWrittenIsToldAndStaysAsItIs() throws Exception {
        Place place = fresh();
        Locker.open(place, Load.CATALOGUE, CLOCK).close();
        Path data = place.file().getParent();
        assertTrue(place.file().toFile().setWritable(false) && data.toFile().setWritable(false));
        try {
            assumeFalse(Files.isWritable(place.file()), "Whoever runs the tests may write everywhere, so nothing was tried with a file that may not be written");
            byte[] before = Files.readAllBytes(place.file());
            refusal(place.file());
            refusal(data.resolve("deeper").resolve(Place.FILE));
            assertArrayEquals(before, Files.readAllBytes(place.file()));
        } finally {
            assertTrue(data.toFile().setWritable(true));
        }
    }

    /** A collision needs two within some microseconds: without waiting, one in twenty of these rounds met it. */
    @Test
    void programsThatOpenANewFileAtOnceWaitForEachOther() throws Exception {
        for (int round = 0; round < ROUNDS; round++) {
            Place place = fresh();
            List<Long> tables = Load.atOnce(PROGRAMS, program -> {
                try (Database database = Database.open(place)) {
                    return database.read(sql -> sql.number("SELECT count(*) FROM sqlite_master"));
                }
            });
            assertEquals(List.of(0L), tables.stream().distinct().toList());
        }
    }

    @Test
    void aFullDiskIsToldNothingIsHalfWrittenAndWithRoomItGoesOn() throws Exception {
        try (Database database = Database.open(fresh())) {
            Migrations.run(database, CLOCK);
            OldLocker.fill(database);
            long pages = database.read(sql -> sql.number("PRAGMA page_count"));
            database.write(sql -> sql.number("PRAGMA max_page_count = " + (pages + 2)));
            Map<String, List<String>> before = Contents.of(database);
            LockerFault.Unreachable fault = assertThrows(LockerFault.Unreachable.class, () -> database.write(sql -> {
                for (int number = 100; number < 2_000; number++) {
                    sql.run("INSERT INTO event (number, at_ts, who, what, about, says) VALUES (?, 0, 'Wren', 'booked', '1', ?)", number, "x".repeat(500));
                }
                return null;
            }));
            assertTrue(fault.getMessage().contains("full") && !fault.getMessage().contains("SQLITE"), fault.getMessage());
            assertEquals(before, Contents.of(database));
            database.write(sql -> sql.number("PRAGMA max_page_count = 100000"));
            OldLocker.booking(database, 7, 1, 2);
            assertEquals(3, rows(database, "booking"));
        }
    }
}
