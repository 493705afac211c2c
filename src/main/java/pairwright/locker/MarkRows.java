package pairwright.locker;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;

/** Marks as rows. */
final class MarkRows {
    private static final String ALL = "SELECT session_id, seat, mic, source, room, player, mic_type, position, unit_id, kept, changed_to, to_mic_type, to_position,"
            + " why, at_ts, who FROM mark ";
    /** What was planned, and what it was changed to. A seat may have two alike: they count once, and as kept where both were. */
    private static final String USED = "SELECT session_id, room, player, mic_type, position, MIN(kept) AS kept FROM ("
            + " SELECT session_id, room, player, mic_type, position, kept FROM mark WHERE source = ?"
            + " UNION ALL SELECT session_id, room, player, COALESCE(to_mic_type, mic_type), COALESCE(to_position, position), 1 FROM mark"
            + " WHERE source = ? AND kept = 0 AND (to_mic_type IS NOT NULL OR to_position IS NOT NULL)) AS used"
            + " GROUP BY session_id, room, player, mic_type, position ORDER BY session_id, room, player, mic_type, position";

    private MarkRows() {
    }

    static List<Mark> of(Sql sql, String session) throws SQLException {
        return sql.all(ALL + "WHERE session_id = ? ORDER BY seat, mic", MarkRows::mark, session);
    }

    static List<Mark> all(Sql sql) throws SQLException {
        return sql.all(ALL + "ORDER BY session_id, seat, mic", MarkRows::mark);
    }

    static List<Marks.Used> used(Sql sql, String source) throws SQLException {
        return sql.all(USED, row -> new Marks.Used(row.getString("session_id"), row.getString("room"), row.getString("player"), row.getString("mic_type"),
                row.getString("position"), row.getLong("kept") == 1), source, source);
    }

    static void insert(Sql sql, Mark mark) throws SQLException {
        sql.run("INSERT INTO mark (session_id, seat, mic, source, room, player, mic_type, position, unit_id, kept, changed_to, to_mic_type, to_position, why, at_ts, who)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", mark.session(), mark.seat(), mark.mic(), mark.source(), mark.room(), mark.player(),
                mark.micType(), mark.position(), mark.unit(), mark.kept() ? 1L : 0L, mark.changedTo(), mark.toMicType(), mark.toPosition(), mark.why(),
                mark.at().getEpochSecond(), mark.by());
    }

    private static Mark mark(ResultSet row) throws SQLException {
        return new Mark(row.getString("session_id"), row.getString("seat"), row.getInt("mic"), row.getString("source"), row.getString("room"),
                row.getString("player"), row.getString("mic_type"), row.getString("position"), row.getString("unit_id"), row.getLong("kept") == 1,
                row.getString("changed_to"), row.getString("to_mic_type"), row.getString("to_position"), row.getString("why"),
                Instant.ofEpochSecond(row.getLong("at_ts")), row.getString("who"));
    }
}
