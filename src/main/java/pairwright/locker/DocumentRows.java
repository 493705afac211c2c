package pairwright.locker;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Documents as rows. */
final class DocumentRows {
    private static final String ALL = "SELECT id, kind, name, belongs_to, from_ts, until_ts, booking_id, content, version, at_ts, who FROM document ";

    private DocumentRows() {
    }

    static List<Document> all(Sql sql, DocumentKind kind, int most) throws SQLException {
        return sql.all(ALL + "WHERE kind = ? ORDER BY COALESCE(from_ts, at_ts) DESC, id LIMIT ?", DocumentRows::document, kind.id(), Math.max(0, most));
    }

    static Optional<Document> of(Sql sql, String id) throws SQLException {
        return sql.first(ALL + "WHERE id = ?", DocumentRows::document, id);
    }

    static List<Document> belonging(Sql sql, String to) throws SQLException {
        return sql.all(ALL + "WHERE belongs_to = ? ORDER BY id", DocumentRows::document, to);
    }

    static void insert(Sql sql, Document document) throws SQLException {
        sql.run("INSERT INTO document (id, kind, name, belongs_to, from_ts, until_ts, content, version, marks_version, at_ts, who) VALUES (?, ?, ?, ?, ?, ?, ?, ?, 0, ?, ?)",
                document.id(), document.kind().id(), document.name(), document.belongsTo(), seconds(document.from()), seconds(document.until()), document.text(),
                document.version(), seconds(document.at()), document.by());
    }

    static void update(Sql sql, Document document) throws SQLException {
        sql.run("UPDATE document SET name = ?, from_ts = ?, until_ts = ?, content = ?, version = ?, at_ts = ?, who = ? WHERE id = ?", document.name(),
                seconds(document.from()), seconds(document.until()), document.text(), document.version(), seconds(document.at()), document.by(), document.id());
    }

    private static Long seconds(Instant moment) {
        return moment == null ? null : moment.getEpochSecond();
    }

    private static Instant moment(ResultSet row, String column) throws SQLException {
        Long seconds = Sql.wholeOrNull(row, column);
        return seconds == null ? null : Instant.ofEpochSecond(seconds);
    }

    private static Document document(ResultSet row) throws SQLException {
        Long booking = Sql.wholeOrNull(row, "booking_id");
        return new Document(row.getString("id"), UnitRows.word(DocumentKind.values(), row.getString("kind")), row.getString("name"), row.getString("belongs_to"),
                moment(row, "from_ts"), moment(row, "until_ts"), booking == null ? null : booking.toString(), row.getString("content"), row.getLong("version"),
                moment(row, "at_ts"), row.getString("who"));
    }
}
