package pairwright.locker;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pairwright.model.Fault;

/** Documents written and removed within a transaction. */
final class DocumentWork {
    /** Words that addresses use beside ids. */
    private static final Set<String> TAKEN = Set.of("new", "plan", "replan", "check", "moves", "purchases", "buy", "demo", "marks", "import");
    private static final int NAME = 120;
    private static final int NUMBERS = 1_000;

    private final Sql sql;
    private final Instant now;
    private final String who;
    private boolean changed;

    DocumentWork(Sql sql, Instant now, String who) {
        this.sql = sql;
        this.now = Instant.ofEpochSecond(now.getEpochSecond());
        this.who = who;
    }

    boolean changed() {
        return changed;
    }

    Optional<Document> of(String id) throws SQLException {
        return DocumentRows.of(sql, id);
    }

    Document present(String id) throws SQLException {
        return of(id).orElseThrow(() -> new LockerFault.NotThere("There is no session " + Said.quoted(String.valueOf(id))
                + ", or nothing of that kind is kept of it. Look at the list of sessions"));
    }

    /** A line-up by its id. */
    Document session(String id) throws SQLException {
        Document document = present(id);
        if (document.kind() != DocumentKind.LINE_UP) {
            throw new LockerFault.NotThere(Said.quoted(id) + " is no session but what belongs to one. Name the session");
        }
        return document;
    }

    Document put(DocumentDraft asked, Long version) throws SQLException {
        DocumentDraft draft = checked(asked);
        Document before = draft.id() == null ? null : DocumentRows.of(sql, draft.id()).orElse(null);
        mayMeet(draft.id(), before, version);
        Document document = new Document(draft.id() == null ? freeId(draft.name()) : draft.id(), draft.kind(), draft.name(), draft.belongsTo(), draft.from(),
                draft.until(), null, draft.text(), before == null ? 1 : before.version() + 1, now, who);
        if (before == null) {
            DocumentRows.insert(sql, document);
        } else if (before.draft().equals(document.draft())) {
            return before;
        } else if (before.kind() != document.kind()) {
            throw new LockerFault.Unusable(List.of(new Fault("/id", Said.quoted(document.id()) + " is something else already: " + before.kind().id() + ". Choose another id")));
        } else {
            DocumentRows.update(sql, document);
        }
        changed = true;
        // whoever ticks off a list does it a hundred times: that would bury what was done
        if (document.kind() != DocumentKind.TICKS) {
            tell(before == null ? "wrote" : "altered", document, (before == null ? "Wrote " : "Altered ") + what(document) + ".");
        }
        return present(document.id());
    }

    Void remove(String id, Long version) throws SQLException {
        Document document = present(id);
        mayMeet(id, document, version);
        long marks = sql.number("SELECT COUNT(*) FROM mark WHERE session_id = ?", id);
        if (marks > 0) {
            sql.run("DELETE FROM mark WHERE session_id = ?", id);
            MarkWork.told(sql);
        }
        sql.run("DELETE FROM document WHERE belongs_to = ?", id);
        sql.run("DELETE FROM document WHERE id = ?", id);
        changed = true;
        tell("removed", document, "Removed " + what(document) + (marks == 0 ? "" : " and its " + marks + (marks == 1 ? " mark" : " marks"))
                + (document.booking() == null ? "" : "; its booking " + document.booking() + " stays unless it is cancelled") + ".");
        return null;
    }

    /** Minds which booking was made for a session. What is written does not change with that, and so its version does not. */
    void booked(String id, String booking) throws SQLException {
        sql.run("UPDATE document SET booking_id = ? WHERE id = ?", Long.parseLong(booking), id);
        changed = true;
    }

    private void mayMeet(String id, Document there, Long version) {
        long has = there == null ? 0 : there.version();
        if (version == null || version == has) {
            return;
        }
        if (there == null) {
            throw new LockerFault.NotThere("There is no " + Said.quoted(String.valueOf(id)) + " any more. Somebody removed it; write it as a new one");
        }
        throw new LockerFault.Changed(version == 0 ? "There is a " + what(there) + " already. Choose another id, or alter that one"
                : "The " + what(there) + " was altered meanwhile, by " + there.by() + ". Look at it again, then alter it", has);
    }

    private DocumentDraft checked(DocumentDraft draft) throws SQLException {
        List<Fault> faults = new ArrayList<>();
        if (draft.kind() == null) {
            throw new LockerFault.Unusable(List.of(new Fault("/kind", "it is not said what is written. Give its kind")));
        }
        boolean alone = draft.kind() == DocumentKind.LINE_UP;
        if (alone && draft.belongsTo() != null || !alone && draft.belongsTo() == null) {
            throw new LockerFault.Unusable(List.of(new Fault("/belongsTo", alone ? "a line-up belongs to nothing. Leave it out" : draft.kind().id()
                    + " belong to a line-up. Name it")));
        }
        Document of = alone ? null : session(draft.belongsTo());
        String id = alone ? Said.id(draft.id(), "/id", faults) : Document.idOf(of.id(), draft.kind());
        if (alone && TAKEN.contains(id == null ? "" : id)) {
            faults.add(new Fault("/id", Said.quoted(id) + " is an address of its own. Choose another id"));
        }
        if (!alone && draft.id() != null && !draft.id().equals(id)) {
            faults.add(new Fault("/id", "the id of the " + draft.kind().id() + " of " + of.id() + " is " + id + ". Leave it out"));
        }
        String name = Said.line(draft.name(), NAME, "/name", faults);
        if (alone && name == null) {
            faults.add(new Fault("/name", "the session has no name. Name it, such as Barn, first day"));
        }
        if (draft.from() != null && draft.until() != null && !draft.from().isBefore(draft.until())) {
            faults.add(new Fault("/until", "is " + draft.until() + ", not after " + draft.from() + ". Let it end after it begins"));
        }
        text(draft.text(), faults);
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults);
        }
        return new DocumentDraft(id, draft.kind(), name == null ? of.name() : name, draft.belongsTo(), whole(draft.from()), whole(draft.until()), Sql.kept(draft.text()));
    }

    private static void text(String text, List<Fault> faults) {
        if (text == null || text.isBlank()) {
            faults.add(new Fault("", "nothing is written. Send what is to be kept"));
        } else if (text.length() > DocumentDraft.LONGEST) {
            faults.add(new Fault("", "has " + text.length() + " characters, but may have " + DocumentDraft.LONGEST + ". Shorten it"));
        } else if (text.codePoints().anyMatch(code -> Character.getType(code) == Character.SURROGATE)) {
            faults.add(new Fault("", "holds half of a character. Take it out"));
        }
    }

    private static Instant whole(Instant moment) {
        return moment == null ? null : Instant.ofEpochSecond(moment.getEpochSecond());
    }

    private String freeId(String name) throws SQLException {
        String wanted = Said.kebab(name);
        for (int number = 1; number <= NUMBERS; number++) {
            String id = number == 1 ? wanted : wanted + "-" + number;
            Optional<Document> there = DocumentRows.of(sql, id);
            if (there.isEmpty() && !TAKEN.contains(id)) {
                return id;
            }
        }
        throw new LockerFault.Unusable(List.of(new Fault("/name", "there are " + NUMBERS + " sessions of that name already. Choose another")));
    }

    private static String what(Document document) {
        return (document.kind() == DocumentKind.LINE_UP ? "session " : document.kind().id() + " of session ") + Said.quoted(document.name())
                + " (" + root(document) + ")";
    }

    private static String root(Document document) {
        return document.belongsTo() == null ? document.id() : document.belongsTo();
    }

    private void tell(String what, Document document, String says) throws SQLException {
        History.add(sql, now, who, what, Documents.about(root(document)), List.of(), says);
    }
}
