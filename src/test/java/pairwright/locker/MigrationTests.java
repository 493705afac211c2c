package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables come up to date from wherever they were, with all that is in them, and refuse by themselves what must not be. */
abstract class MigrationTests {
    static final Clock CLOCK = Clock.fixed(LockerCase.NOON, ZoneOffset.UTC);
    private static final int NEWEST = Migrations.SCRIPTS.size();
    static final int PROGRAMS = 4;

    @TempDir
    Path folder;

    /** A new and empty one. */
    abstract Place fresh() throws Exception;

    abstract String dialect();

    static long rows(Database database, String table) {
        return database.read(sql -> sql.number("SELECT COUNT(*) FROM " + table));
    }

    static IntStream earlier() {
        return IntStream.range(1, NEWEST);
    }

    @ParameterizedTest
    @MethodSource("earlier")
    void fromEveryEarlierOneAllIsKeptAndGoesOn(int version) throws Exception {
        Place place = fresh();
        try (Database database = Database.open(place)) {
            Migrations.run(database, CLOCK, version);
            Map<String, List<String>> columns = OldLocker.fill(database);
            columns.remove("locker_version");
            Map<String, List<String>> before = Contents.of(database, columns);
            before.forEach((table, rows) -> assertFalse(rows.isEmpty() && OldLocker.TABLES.contains(table), table + " had nothing in it to lose"));
            Migrations.run(database, CLOCK);
            assertEquals(before, Contents.of(database, columns));
        }
        try (Locker locker = Locker.open(place, Load.CATALOGUE, CLOCK)) {
            OldLocker.assertReadable(locker, version);
        }
    }

    @Test
    void everyScriptIsCountedAndNoneIsMissing() throws Exception {
        try (Stream<Path> scripts = Files.list(Path.of("src/main/resources/pairwright/locker", dialect()))) {
            assertEquals(Migrations.SCRIPTS.stream().sorted().toList(), scripts.map(script -> script.getFileName().toString().replace(".sql", "")).sorted().toList());
        }
    }

    @Test
    void oneOfANewerProgramIsRefusedAndStaysAsItIs() throws Exception {
        Place place = fresh();
        try (Database database = Database.open(place)) {
            Migrations.run(database, CLOCK);
            OldLocker.fill(database);
            database.write(sql -> sql.run("INSERT INTO locker_version (number, topic, at_ts) VALUES (?, 'later', 0)", NEWEST + 1));
            Map<String, List<String>> before = Contents.of(database);
            LockerFault.Unreachable fault = assertThrows(LockerFault.Unreachable.class, () -> Locker.open(place, Load.CATALOGUE, CLOCK));
            assertTrue(fault.getMessage().contains("newer Pairwright") && fault.getMessage().contains("number " + (NEWEST + 1)), fault.getMessage());
            assertEquals(before, Contents.of(database));
        }
    }

    @Test
    void programsThatBeginAtOnceDoNotTrip() throws Exception {
        Place place = fresh();
        try (Database database = Database.open(place)) {
            Migrations.run(database, CLOCK, 1);
            OldLocker.fill(database);
        }
        for (Place each : List.of(place, fresh())) {
            List<Integer> units = Load.atOnce(PROGRAMS, program -> {
                try (Locker locker = Locker.open(each, Load.CATALOGUE, CLOCK)) {
                    return locker.units().size();
                }
            });
            assertEquals(1, units.stream().distinct().count(), units.toString());
            try (Database database = Database.open(each)) {
                assertEquals(NEWEST, rows(database, "locker_version"));
            }
        }
    }

    @Test
    void aStepThatCannotBeTakenIsTakenBackWholeAndTold() throws Exception {
        Place place = fresh();
        try (Database database = Database.open(place)) {
            Migrations.run(database, CLOCK, 1);
            OldLocker.fill(database);
            database.write(sql -> sql.run("CREATE TABLE act (mine TEXT)"));
            Map<String, List<String>> before = Contents.of(database);
            LockerFault.Unreachable fault = assertThrows(LockerFault.Unreachable.class, () -> Locker.open(place, Load.CATALOGUE, CLOCK));
            assertTrue(fault.getMessage().contains("002-history-and-acts") && fault.getMessage().contains("Nothing was changed"), fault.getMessage());
            assertEquals(before, Contents.of(database));
            database.write(sql -> sql.run("DROP TABLE act"));
        }
        Locker.open(place, Load.CATALOGUE, CLOCK).close();
    }

    @Test
    void theDatabaseItselfRefusesTwoAtOnce() throws Exception {
        try (Database database = Database.open(fresh())) {
            Migrations.run(database, CLOCK);
            OldLocker.booking(database, 1, 100, 200);
            for (long[] clash : new long[][] {{150, 250}, {50, 101}, {100, 200}, {120, 130}, {50, 300}, {199, 200}}) {
                assertThrows(LockerFault.Taken.class, () -> OldLocker.booking(database, 2, clash[0], clash[1]), clash[0] + " to " + clash[1]);
            }
            OldLocker.booking(database, 2, 200, 300);
            OldLocker.booking(database, 3, 50, 100);
            OldLocker.booking(database, 4, 400, 500);
            database.write(sql -> sql.run("UPDATE line SET until_ts = from_ts WHERE booking_id = 4"));
            OldLocker.booking(database, 5, 300, 500);
            for (String change : List.of("until_ts = 201", "from_ts = 99", "from_ts = 250, until_ts = 350")) {
                assertThrows(LockerFault.Taken.class, () -> database.write(sql -> sql.run("UPDATE line SET " + change + " WHERE booking_id = 1")), change);
            }
            database.write(sql -> sql.run("UPDATE line SET from_ts = 101, until_ts = 199 WHERE booking_id = 1"));
            assertEquals(5, rows(database, "line"));
        }
    }
}
