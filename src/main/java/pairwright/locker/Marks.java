package pairwright.locker;

import java.util.List;

/** What became of the microphones of all sessions, to be read and counted. It is written within a transaction, as {@link Changes}. */
public final class Marks {
    private final Database database;

    Marks(Database database) {
        this.database = database;
    }

    /**
     * One set-up at one seat in one session. What a microphone was changed to counts as one that was kept: it is how the session ended.
     *
     * @param session id
     * @param room null for not named
     * @param player null for not named
     * @param micType id
     * @param position id; null for not known
     * @param kept whether all of it stayed to the end
     */
    public record Used(String session, String room, String player, String micType, String position, boolean kept) {
    }

    /** Every mark of a session, seat by seat. */
    public List<Mark> of(String session) {
        return database.read(sql -> MarkRows.of(sql, session));
    }

    /** The version of a session's marks as a whole, which rises with every change; 0 where there never was one. */
    public long version(String session) {
        return database.read(sql -> sql.first("SELECT marks_version FROM document WHERE id = ?", row -> row.getLong(1), session).orElse(0L));
    }

    /** Every mark there is, session by session. */
    public List<Mark> all() {
        return database.read(MarkRows::all);
    }

    /** What was used on a source in which session, and whether it was kept. */
    public List<Used> used(String source) {
        return database.read(sql -> MarkRows.used(sql, source));
    }

    /** A number that differs after every change of any mark, whoever made it. */
    public long revision() {
        return database.read(sql -> sql.number("SELECT marks_revision FROM state"));
    }
}
