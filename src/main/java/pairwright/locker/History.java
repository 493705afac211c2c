package pairwright.locker;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What was done, by whom; and what was said of it, should it be sent twice. */
final class History {
    /** Whoever sends something again after this long is taken to mean it anew. */
    private static final long REMEMBERED_S = 30L * 24 * 3600;
    private static final int MOST = 1000;

    private History() {
    }

    /** Writes down that something was done. */
    static void add(Sql sql, Instant at, String who, String what, String about, List<String> alsoAbout, String says) throws SQLException {
        long number = sql.number("SELECT COALESCE(MAX(number), 0) + 1 FROM event");
        sql.run("INSERT INTO event (number, at_ts, who, what, about, says) VALUES (?, ?, ?, ?, ?, ?)", number, at.getEpochSecond(), who, what, about, says);
        Set<String> all = new LinkedHashSet<>(List.of(about));
        all.addAll(alsoAbout);
        List<Object[]> rows = new ArrayList<>();
        all.forEach(id -> rows.add(new Object[] {id, number}));
        sql.runAll("INSERT INTO event_about (id, number) VALUES (?, ?)", rows);
    }

    static List<Event> of(Sql sql, String about, Long before, int most) throws SQLException {
        long below = before == null ? Long.MAX_VALUE : before;
        int limit = Math.max(0, Math.min(MOST, most));
        String all = "SELECT e.number, e.at_ts, e.who, e.what, e.about, e.says FROM event e ";
        return about == null
                ? sql.all(all + "WHERE e.number < ? ORDER BY e.number DESC LIMIT ?", History::event, below, limit)
                : sql.all(all + "JOIN event_about a ON a.number = e.number WHERE a.id = ? AND a.number < ? ORDER BY a.number DESC LIMIT ?",
                        History::event, about, below, limit);
    }

    private static Event event(ResultSet row) throws SQLException {
        return new Event(row.getLong("number"), Instant.ofEpochSecond(row.getLong("at_ts")), row.getString("who"), row.getString("what"),
                row.getString("about"), row.getString("says"));
    }

    /** What was said of an act that was done before; null where it was not. */
    static String said(Sql sql, Act act) throws SQLException {
        record Before(String who, String print, String says) {
        }
        Before before = sql.first("SELECT who, print, says FROM act WHERE id = ?",
                row -> new Before(row.getString("who"), row.getString("print"), row.getString("says")), act.key()).orElse(null);
        if (before == null) {
            return null;
        }
        if (!before.who().equals(act.who()) || !before.print().equals(print(act))) {
            throw new LockerFault.KeyUsedOtherwise("The key " + Said.quoted(act.key()) + " was used for something else before. Choose a new key for each thing done");
        }
        return before.says();
    }

    static void remember(Sql sql, Act act, String says, Instant now) throws SQLException {
        sql.run("DELETE FROM act WHERE at_ts < ?", now.getEpochSecond() - REMEMBERED_S);
        sql.run("INSERT INTO act (id, who, print, says, at_ts) VALUES (?, ?, ?, ?, ?)", act.key(), act.who(), print(act), says, now.getEpochSecond());
    }

    private static String print(Act act) {
        return act.print() == null ? "" : Sql.kept(act.print());
    }
}
