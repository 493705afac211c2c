package pairwright.locker;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Bookings and their lines as rows. */
final class BookingRows {
    private static final int AT_ONCE = 500;
    private static final String ALL = "SELECT b.id, b.from_ts AS booked_from, b.until_ts AS booked_until, b.kind, b.for_what, b.by_whom, b.note, b.version,"
            + " l.unit_id, l.unit_label, l.from_ts, l.until_ts, l.taken_ts, l.taken_by, l.returned_ts FROM booking b JOIN line l ON l.booking_id = b.id ";
    private static final String ORDER = " ORDER BY b.from_ts, b.id, l.place";
    /** Words of the partial indexes (script 005): most are short, and a short one that touches a time begins little before it. The few long ones are looked through. */
    private static final String SHORT = " WHERE until_ts - from_ts <= 604800 AND from_ts > ? - 604800 AND from_ts < ? AND until_ts > ?";
    private static final String LONG = " WHERE until_ts - from_ts > 604800 AND until_ts > ? AND from_ts < ?";

    static final String TOUCHING = "SELECT id FROM booking" + SHORT + " UNION ALL SELECT id FROM booking" + LONG;
    /** What has a unit that is out then, although it may begin later: it left early. */
    static final String OUT_THEN = "SELECT booking_id FROM line WHERE taken_ts IS NOT NULL AND returned_ts IS NULL AND until_ts > ? AND from_ts < ?";
    /** Each half begins with the few lines of the unit; put together by OR, a server would look through all bookings. */
    static final String OF_UNIT = "SELECT h.id FROM line l JOIN booking h ON h.id = l.booking_id WHERE l.unit_id = ? AND h.until_ts > ? AND h.from_ts < ?"
            + " UNION ALL SELECT l.booking_id FROM line l JOIN line o ON o.booking_id = l.booking_id WHERE l.unit_id = ? AND o.taken_ts IS NOT NULL AND o.returned_ts IS NULL"
            + " AND o.until_ts > ? AND o.from_ts < ?";
    static final String TAKINGS = "SELECT unit_id, booking_id, from_ts, until_ts FROM line" + SHORT
            + " AND from_ts < until_ts UNION ALL SELECT unit_id, booking_id, from_ts, until_ts FROM line" + LONG;
    static final String OVERDUE = "SELECT unit_id, booking_id, from_ts, until_ts FROM line WHERE taken_ts IS NOT NULL AND returned_ts IS NULL AND until_ts <= ?";

    private BookingRows() {
    }

    /** One unit's time in a booking, without the rest of it. */
    record Taking(String unit, long booking, long from, long until) {
        static Taking of(ResultSet row) throws SQLException {
            return new Taking(row.getString("unit_id"), row.getLong("booking_id"), row.getLong("from_ts"), row.getLong("until_ts"));
        }
    }

    /** Bookings a condition on b (booking) holds for, earliest first. */
    static List<Booking> where(Sql sql, String condition, Object... with) throws SQLException {
        Map<Long, Booking> found = new LinkedHashMap<>();
        Map<Long, List<Booking.Line>> lines = new LinkedHashMap<>();
        sql.all(ALL + "WHERE " + condition + ORDER, row -> {
            long id = row.getLong("id");
            if (!lines.containsKey(id)) {
                lines.put(id, new ArrayList<>());
                found.put(id, head(row));
            }
            lines.get(id).add(new Booking.Line(row.getString("unit_id"), span(row.getLong("from_ts"), row.getLong("until_ts")), moment(row, "taken_ts"),
                    row.getString("taken_by"), moment(row, "returned_ts"), row.getString("unit_label")));
            return id;
        }, with);
        return found.entrySet().stream().map(entry -> withLines(entry.getValue(), lines.get(entry.getKey()))).toList();
    }

    static long count(Sql sql, long from, long until) throws SQLException {
        return sql.number("SELECT COUNT(*) FROM (" + TOUCHING + ") AS touching", from, until, from, from, until);
    }

    /** The first after a mark of those that touch a time. */
    static List<Booking> first(Sql sql, Span span, String unit, ListMark after, int most) throws SQLException {
        long from = span.from().getEpochSecond();
        long until = span.until().getEpochSecond();
        String touching = unit == null ? TOUCHING + " UNION ALL " + OUT_THEN : OF_UNIT;
        List<Object> with = new ArrayList<>(unit == null ? List.of(from, until, from, from, until, from, until) : List.of(unit, from, until, unit, from, until));
        with.addAll(List.of(after.fromS(), after.fromS(), after.id(), most));
        return where(sql, "b.id IN (SELECT o.id FROM booking o WHERE o.id IN (" + touching + ") AND (o.from_ts > ? OR o.from_ts = ? AND o.id > ?) ORDER BY o.from_ts, o.id LIMIT ?)",
                with.toArray());
    }

    /** Bookings that touch a time, earliest first. */
    static List<Booking> touching(Sql sql, long from, long until) throws SQLException {
        return where(sql, "b.id IN (" + TOUCHING + " UNION ALL " + OUT_THEN + ")", from, until, from, from, until, from, until);
    }

    static Optional<Booking> of(Sql sql, String id) throws SQLException {
        return id.matches("[1-9][0-9]{0,17}") ? where(sql, "b.id = ?", Long.parseLong(id)).stream().findFirst() : Optional.empty();
    }

    /** Those with these numbers, by number. */
    static Map<Long, Booking> of(Sql sql, Collection<Long> ids) throws SQLException {
        Map<Long, Booking> all = new LinkedHashMap<>();
        for (List<Long> some : portions(ids)) {
            where(sql, "b.id IN (" + marks(some.size()) + ")", some.toArray()).forEach(booking -> all.put(Long.parseLong(booking.id()), booking));
        }
        return all;
    }

    /** The same without their lines, where only what they are for is asked. */
    static Map<Long, Booking> heads(Sql sql, Collection<Long> ids) throws SQLException {
        Map<Long, Booking> all = new LinkedHashMap<>();
        for (List<Long> some : portions(ids)) {
            sql.all("SELECT id, from_ts AS booked_from, until_ts AS booked_until, kind, for_what, by_whom, note, version FROM booking WHERE id IN (" + marks(some.size()) + ")",
                    row -> all.put(row.getLong("id"), head(row)), some.toArray());
        }
        return all;
    }

    /** Each once and in order, as many at a time as a statement takes well. */
    static <T extends Comparable<T>> List<List<T>> portions(Collection<T> ids) {
        List<T> wanted = ids.stream().distinct().sorted().toList();
        List<List<T>> portions = new ArrayList<>();
        for (int from = 0; from < wanted.size(); from += AT_ONCE) {
            portions.add(wanted.subList(from, Math.min(wanted.size(), from + AT_ONCE)));
        }
        return portions;
    }

    /** What takes any unit for some of a time, in no order. */
    static List<Taking> takings(Sql sql, long from, long until) throws SQLException {
        return sql.all(TAKINGS, Taking::of, from, until, from, from, until);
    }

    /** What takes a unit for some of a time, earliest first. */
    static List<Taking> touching(Sql sql, String unit, long from, long until) throws SQLException {
        return sql.all("SELECT unit_id, booking_id, from_ts, until_ts FROM line WHERE unit_id = ? AND until_ts > ? AND from_ts < ? AND from_ts < until_ts"
                + " ORDER BY until_ts", Taking::of, unit, from, until);
    }

    /** What takes units from a moment on, each unit's earliest first. */
    static Map<String, List<Taking>> after(Sql sql, Collection<String> units, long from) throws SQLException {
        return touching(sql, units, from, Long.MAX_VALUE);
    }

    /** What takes units for some of a time, each unit's earliest first; nothing of a unit that is free. */
    static Map<String, List<Taking>> touching(Sql sql, Collection<String> units, long from, long until) throws SQLException {
        Map<String, List<Taking>> all = new LinkedHashMap<>();
        for (List<String> some : portions(units)) {
            List<Object> with = new ArrayList<>(some);
            with.addAll(List.of(from, until));
            sql.all("SELECT unit_id, booking_id, from_ts, until_ts FROM line WHERE unit_id IN (" + marks(some.size())
                    + ") AND until_ts > ? AND from_ts < ? AND from_ts < until_ts ORDER BY until_ts", Taking::of, with.toArray())
                    .forEach(taking -> all.computeIfAbsent(taking.unit(), unit -> new ArrayList<>()).add(taking));
        }
        return all;
    }

    /** What takes each unit first in a time. */
    static Map<String, Booking> next(Sql sql, Collection<String> units, long from, long until) throws SQLException {
        Map<String, Long> first = new LinkedHashMap<>();
        touching(sql, units, from, until).forEach((unit, takings) -> first.put(unit, takings.get(0).booking()));
        Map<Long, Booking> bookings = of(sql, first.values());
        Map<String, Booking> next = new LinkedHashMap<>();
        first.forEach((unit, booking) -> next.put(unit, bookings.get(booking)));
        return next;
    }

    /** Under what a unit is out; the time as it was booked. */
    static Optional<Taking> out(Sql sql, String unit) throws SQLException {
        return sql.first("SELECT unit_id, booking_id, from_ts, until_ts FROM line WHERE unit_id = ? AND taken_ts IS NOT NULL AND returned_ts IS NULL",
                Taking::of, unit);
    }

    /** What is out and should have been back by a moment. */
    static Map<String, Taking> overdue(Sql sql, long now) throws SQLException {
        Map<String, Taking> all = new LinkedHashMap<>();
        sql.all(OVERDUE, Taking::of, now).forEach(taking -> all.put(taking.unit(), taking));
        return all;
    }

    static void insert(Sql sql, Booking booking) throws SQLException {
        sql.run("INSERT INTO booking (id, from_ts, until_ts, kind, for_what, by_whom, note, version) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
                Long.parseLong(booking.id()), booking.span().from().getEpochSecond(), booking.span().until().getEpochSecond(), booking.kind().id(),
                booking.forWhat(), booking.by(), booking.note(), booking.version());
        lines(sql, Long.parseLong(booking.id()), booking.lines());
    }

    /** Writes what may change of it, and all its lines anew. */
    static void replace(Sql sql, Booking booking) throws SQLException {
        long id = Long.parseLong(booking.id());
        sql.run("UPDATE booking SET from_ts = ?, until_ts = ?, kind = ?, for_what = ?, by_whom = ?, note = ?, version = ? WHERE id = ?",
                booking.span().from().getEpochSecond(), booking.span().until().getEpochSecond(), booking.kind().id(), booking.forWhat(), booking.by(),
                booking.note(), booking.version(), id);
        // a line that came back at once is empty, which a span cannot say: it stays as it is
        sql.run("DELETE FROM line WHERE booking_id = ? AND returned_ts IS NULL", id);
        lines(sql, id, booking.lines());
        for (int place = 0; place < booking.lines().size(); place++) {
            sql.run("UPDATE line SET place = ? WHERE booking_id = ? AND unit_id = ? AND place <> ?", place, id, booking.lines().get(place).unit(), place);
        }
    }

    private static void lines(Sql sql, long booking, List<Booking.Line> lines) throws SQLException {
        List<Object[]> rows = new ArrayList<>();
        for (int place = 0; place < lines.size(); place++) {
            Booking.Line line = lines.get(place);
            if (line.returnedAt() == null) {
                rows.add(new Object[] {booking, place, line.unit(), line.label(), line.span().from().getEpochSecond(), line.span().until().getEpochSecond(),
                        line.takenAt() == null ? null : line.takenAt().getEpochSecond(), line.takenBy()});
            }
        }
        sql.runAll("INSERT INTO line (booking_id, place, unit_id, unit_label, from_ts, until_ts, taken_ts, taken_by) VALUES (?, ?, ?, ?, ?, ?, ?, ?)", rows);
    }

    private static Booking head(ResultSet row) throws SQLException {
        return new Booking(Long.toString(row.getLong("id")), List.of(), span(row.getLong("booked_from"), row.getLong("booked_until")),
                UnitRows.word(BookingKind.values(), row.getString("kind")), row.getString("for_what"), row.getString("by_whom"), row.getString("note"),
                row.getLong("version"));
    }

    private static Booking withLines(Booking booking, List<Booking.Line> lines) {
        return new Booking(booking.id(), lines, booking.span(), booking.kind(), booking.forWhat(), booking.by(), booking.note(), booking.version());
    }

    /** A line that came back in the second it left is shown as that second. */
    private static Span span(long from, long until) {
        return new Span(Instant.ofEpochSecond(from), Instant.ofEpochSecond(Math.max(until, from + 1)));
    }

    private static Instant moment(ResultSet row, String column) throws SQLException {
        Long seconds = Sql.wholeOrNull(row, column);
        return seconds == null ? null : Instant.ofEpochSecond(seconds);
    }

    static String marks(int many) {
        return "?" + ", ?".repeat(many - 1);
    }
}
