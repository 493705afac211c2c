package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Looks at the tables themselves, past the program, after {@link Load} wrote to them. */
final class SqlCheck {
    /** What must not be, and how to count it. */
    private static final Map<String, String> NEVER = new TreeMap<>(Map.of(
            "two at once", """
                    SELECT COUNT(*) FROM line a JOIN line b ON a.unit_id = b.unit_id AND a.booking_id < b.booking_id
                    WHERE a.from_ts < b.until_ts AND b.from_ts < a.until_ts""",
            "a booking without its three lines", """
                    SELECT COUNT(*) FROM booking WHERE (SELECT COUNT(*) FROM line WHERE line.booking_id = booking.id) <> 3""",
            "a line without its booking", """
                    SELECT COUNT(*) FROM line WHERE NOT EXISTS (SELECT 1 FROM booking WHERE booking.id = line.booking_id)""",
            "a booking without its history", """
                    SELECT COUNT(*) FROM booking WHERE NOT EXISTS (SELECT 1 FROM event_about WHERE event_about.id = CAST(booking.id AS TEXT))""",
            "a booking without its key", """
                    SELECT COUNT(*) FROM booking WHERE NOT EXISTS (SELECT 1 FROM act WHERE act.says = CAST(booking.id AS TEXT))""",
            "a key without its booking", """
                    SELECT COUNT(*) FROM act WHERE NOT EXISTS (SELECT 1 FROM booking WHERE act.says = CAST(booking.id AS TEXT))"""));

    private SqlCheck() {
    }

    static void assertSound(Place place) throws SQLException {
        if (place.file() != null) {
            assertEquals(List.of(), LockerFile.faults(place.file()));
        }
        assertNever(place.file() == null ? place.address() : "jdbc:sqlite:" + place.file());
    }

    private static void assertNever(String address) throws SQLException {
        Map<String, Long> found = new TreeMap<>();
        try (Connection connection = DriverManager.getConnection(address); Statement statement = connection.createStatement()) {
            for (Map.Entry<String, String> one : NEVER.entrySet()) {
                try (ResultSet row = statement.executeQuery(one.getValue())) {
                    row.next();
                    if (row.getLong(1) > 0) {
                        found.put(one.getKey(), row.getLong(1));
                    }
                }
            }
        }
        assertEquals(Map.of(), found);
    }
}
