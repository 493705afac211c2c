package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;

/** A locker as it was written by an earlier program: rows as they were then, in whatever tables there were. */
final class OldLocker {
    static final List<String> TABLES = List.of("unit", "booking", "line", "event", "event_about", "act", "token", "state", "document", "mark", "exercise_set", "exercise", "exercise_kit", "exercise_answer");
    private static final long NOON_S = LockerCase.NOON.getEpochSecond();

    private OldLocker() {
    }

    /** Fills the tables there are, and says which columns they have. */
    static Map<String, List<String>> fill(Database database) {
        Map<String, List<String>> columns = Contents.columns(database);
        booking(database, 1, NOON_S - 50, NOON_S + 50);
        booking(database, 2, NOON_S + 50, NOON_S + 90);
        database.write(sql -> {
            sql.run("INSERT INTO unit (id, kind, mic_type, label, tag, tag_key, pair_mate, state, note, response, version)"
                    + " VALUES ('barn-1', 'mic', 'long-ribbon', 'M\u00e4rta 1', 'B-1', 'b-1', 'barn-2', 'limited', 'hums', '63.0 -1.5;12500.0 0.25', 3)");
            sql.run("INSERT INTO unit (id, kind, label, state, channel_noise_dbu, channel_phantom, version) VALUES ('rack-1', 'channel', 'Rack 1', 'good', -127.25, 'bank', 1)");
            sql.run("INSERT INTO unit (id, kind, label, state, booster_gain_db, booster_passes_phantom, version) VALUES ('boost-1', 'booster', 'Boost', 'good', 20, 0, 1)");
            sql.run("UPDATE line SET taken_ts = ?, taken_by = 'Bo' WHERE booking_id = 1", NOON_S - 10);
            sql.run("UPDATE state SET revision = 70, units_revision = 60, next_booking = 9");
            if (columns.containsKey("event")) {
                sql.run("INSERT INTO event (number, at_ts, who, what, about, says) VALUES (1, ?, 'Wren', 'booked', '1', 'Booked.')", NOON_S - 60);
                sql.run("INSERT INTO event_about (id, number) VALUES ('1', 1)");
                sql.run("INSERT INTO act (id, who, print, says, at_ts) VALUES ('key-1', 'Wren', 'p', 'said then', ?)", NOON_S - 60);
            }
            if (columns.containsKey("token")) {
                sql.run("INSERT INTO token (name, role, hash, since_ts) VALUES ('Wren', 'engineer', 'abc', ?)", NOON_S);
            }
            if (columns.containsKey("document")) {
                sql.run("INSERT INTO document (id, kind, name, from_ts, content, version, marks_version, at_ts, who)"
                        + " VALUES ('barn-day', 'line-up', 'Barn day', ?, '{\"seats\": []}', 2, 1, ?, 'Wren')", NOON_S, NOON_S - 60);
                sql.run("INSERT INTO mark (session_id, seat, mic, source, mic_type, kept, at_ts, who) VALUES ('barn-day', 'bass', 1, 'upright-bass', 'long-ribbon', 1, ?, 'Wren')", NOON_S);
            }
            if (columns.containsKey("exercise_set")) {
                sql.run("INSERT INTO exercise_set (id, kind, level, seed, purpose, opens_ts, booking_id, version, at_ts, who)"
                        + " VALUES ('x1', 'choose', 2, 'barn', 'CLASS', ?, 1, 1, ?, 'Wren')", NOON_S, NOON_S - 60);
                sql.run("INSERT INTO exercise (set_id, bench, drawn, hardness) VALUES ('x1', 1, 'format 1', 0.625)");
                sql.run("INSERT INTO exercise_kit (set_id, bench, place, mic_type, unit_id, unit_label) VALUES ('x1', 1, 0, 'long-ribbon', 'barn-1', 'M\u00e4rta 1')");
                sql.run("INSERT INTO exercise_answer (set_id, bench, number, answer, points, of_points, late, at_ts, who) VALUES ('x1', 1, 1, 'mic', 2.5, 10.0, 0, ?, 'Wren')", NOON_S);
            }
            return null;
        });
        return columns;
    }

    /** One of one unit, written around everything that would refuse it. */
    static void booking(Database database, int id, long from, long until) {
        database.write(sql -> {
            sql.run("INSERT INTO booking (id, from_ts, until_ts, kind, for_what, by_whom, version) VALUES (?, ?, ?, 'session', 'x', 'Wren', 1)", id, from, until);
            return sql.run("INSERT INTO line (booking_id, place, unit_id, unit_label, from_ts, until_ts) VALUES (?, 0, 'barn-1', 'M\u00e4rta 1', ?, ?)", id, from, until);
        });
    }

    /** All of it is there, means what it meant, and can be gone on with. */
    static void assertReadable(Locker locker, int since) {
        assertEquals(List.of("boost-1", "barn-1", "rack-1"), LockerCase.ids(locker.units()));
        Unit unit = locker.unit("barn-1").orElseThrow();
        assertEquals(List.of(new ResponsePoint(63, -1.5), new ResponsePoint(12500, 0.25)), unit.response());
        assertEquals(Condition.LIMITED, unit.condition());
        assertEquals(-127.25, locker.unit("rack-1").orElseThrow().channel().noiseDbu());
        assertEquals(new BoosterData(20.0, null, false), locker.unit("boost-1").orElseThrow().booster());
        assertEquals("1", locker.out().get(0).booking().id());
        Instant noon = LockerCase.NOON;
        assertEquals(2, locker.bookings(new Span(noon, noon.plusSeconds(90)), "barn-1").size());
        assertTrue(locker.revision() >= 70);
        if (since >= 2) {
            assertEquals("Booked.", locker.history("1", null, 1).get(0).says());
            assertEquals(new Outcome("said then", true), locker.change(new Act("Wren", "key-1", "p"), changes -> "anew"));
        }
        if (since >= 3) {
            assertEquals(List.of(new Token("Wren", Role.ENGINEER, noon)), locker.tokens().all());
        }
        if (since >= 6) {
            assertEquals(2, locker.documents().of("barn-day").orElseThrow().version());
            assertEquals("long-ribbon", locker.marks().of("barn-day").get(0).micType());
        }
        if (since >= 7) {
            assertEquals("barn-1", locker.exercises().of("x1").orElseThrow().benches().get(0).kit().get(0).unit());
            assertEquals(2.5, locker.exercises().handedIn("x1").get(0).points());
        }
        assertThrows(LockerFault.Taken.class, () -> books(locker, noon.plusSeconds(60)));
        assertEquals("9", books(locker, noon.plusSeconds(90)));
        locker.change(Act.by("Wren"), changes -> changes.bringBack("B-1").id());
        assertEquals("brought back", locker.history("barn-1", null, 1).get(0).what());
    }

    private static String books(Locker locker, Instant from) {
        return locker.change(Act.by("Wren"), changes -> changes.book(new BookingDraft(List.of("barn-1"), from, from.plusSeconds(9), null, null, null, null)).id()).text();
    }
}
