package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that may not grow says the same as one on a disk that is full. */
class FullDiskTest {
    @Test
    void aFullDiskIsToldWithWhatToDoAndNothingIsHalfWritten(@TempDir Path folder) {
        Place place = Place.in(folder);
        try (Locker locker = Locker.open(place, Load.CATALOGUE, Clock.systemUTC())) {
            Load.fill(locker);
        }
        try (Database database = Database.open(place)) {
            LockerFault.Unreachable full = assertThrows(LockerFault.Unreachable.class, () -> database.write(sql -> {
                sql.first("PRAGMA max_page_count = 1", row -> row.getLong(1));
                for (int number = 0; ; number++) {
                    sql.run("INSERT INTO token (name, role, hash, since_ts) VALUES (?, 'reader', ?, 0)", "name " + number, "hash " + number);
                }
            }));
            assertTrue(full.getMessage().contains("make room on its disk"), full.getMessage());
            assertEquals(List.of(0L), database.read(sql -> sql.all("SELECT COUNT(*) FROM token", row -> row.getLong(1))));
        }
        try (Locker again = Locker.open(place, Load.CATALOGUE, Clock.systemUTC())) {
            assertEquals(Load.UNITS, again.units().stream().map(Unit::id).toList());
        }
    }
}
