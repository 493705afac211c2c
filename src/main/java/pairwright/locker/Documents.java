package pairwright.locker;

import java.util.List;
import java.util.Optional;

/** What is kept of sessions, to be read. It is written within a transaction, as {@link Changes}. Safe to share between threads. */
public final class Documents {
    private final Database database;

    Documents(Database database) {
        this.database = database;
    }

    /**
     * Those of a kind: those of the latest session first; one without a time counts as of when it was last written.
     *
     * @param most how many
     */
    public List<Document> all(DocumentKind kind, int most) {
        return database.read(sql -> DocumentRows.all(sql, kind, most));
    }

    /** How many of a kind there are. */
    public long count(DocumentKind kind) {
        return database.read(sql -> sql.number("SELECT COUNT(*) FROM document WHERE kind = ?", kind.id()));
    }

    /** One by its id. */
    public Optional<Document> of(String id) {
        return database.read(sql -> DocumentRows.of(sql, id));
    }

    /** The only one of its kind that belongs to a line-up. */
    public Optional<Document> of(String lineUp, DocumentKind kind) {
        return of(Document.idOf(lineUp, kind));
    }

    /** Everything that belongs to a line-up, by id. */
    public List<Document> belonging(String lineUp) {
        return database.read(sql -> DocumentRows.belonging(sql, lineUp));
    }

    /** By what the history knows a session: a blank keeps it apart from any unit or booking. */
    public static String about(String lineUp) {
        return "session " + lineUp;
    }
}
