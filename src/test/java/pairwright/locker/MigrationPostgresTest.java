package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("postgresql")
class MigrationPostgresTest extends MigrationTests {
    @Override
    Place fresh() throws Exception {
        return Databases.freshServer();
    }

    @Override
    String dialect() {
        return "postgresql";
    }

    @Test
    void tablesOfSomethingElseStayAndOneOfTheSameNameIsTold() throws Exception {
        Place place = fresh();
        try (Connection connection = DriverManager.getConnection(place.address()); Statement statement = connection.createStatement()) {
            statement.execute("CREATE TABLE song (name TEXT)");
            statement.execute("INSERT INTO song VALUES ('Barn dance')");
            statement.execute("CREATE TABLE unit (name TEXT)");
            LockerFault.Unreachable fault = assertThrows(LockerFault.Unreachable.class, () -> Locker.open(place, Load.CATALOGUE, CLOCK));
            assertTrue(fault.getMessage().contains("unit") && fault.getMessage().contains("Nothing was changed"), fault.getMessage());
            try (ResultSet table = statement.executeQuery("SELECT table_name FROM information_schema.tables WHERE table_name IN ('state', 'locker_version')")) {
                assertFalse(table.next());
            }
            statement.execute("DROP TABLE unit");
            Locker.open(place, Load.CATALOGUE, CLOCK).close();
            try (ResultSet song = statement.executeQuery("SELECT name FROM song")) {
                song.next();
                assertEquals("Barn dance", song.getString(1));
            }
        }
    }

    @Test
    void aServerThatIsNotThereIsToldWithoutItsSecret() {
        for (String address : new String[] {"jdbc:postgresql://localhost:1/barn?user=wren&password=hush", "jdbc:mysql://localhost/barn?password=hush", "hush"}) {
            LockerFault.Unreachable fault = assertThrows(LockerFault.Unreachable.class, () -> Locker.open(Place.at(address), Load.CATALOGUE, CLOCK));
            assertFalse(fault.getMessage().contains("hush"), fault.getMessage());
        }
    }
}
