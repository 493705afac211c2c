package pairwright.locker;

import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import pairwright.model.Fault;

/** Marks written within a transaction. */
final class MarkWork {
    private static final int WORDS = 80;
    private static final int WHY = 500;
    private static final int MOST_MARKS = 400;
    private static final int MOST_MICS = 20;

    private final Sql sql;
    private final DocumentWork documents;
    private final Instant now;
    private final String who;
    private boolean changed;

    MarkWork(Sql sql, DocumentWork documents, Instant now, String who) {
        this.sql = sql;
        this.documents = documents;
        this.now = Instant.ofEpochSecond(now.getEpochSecond());
        this.who = who;
    }

    boolean changed() {
        return changed;
    }

    /** Whoever counted marks sees that they are others now. */
    static void told(Sql sql) throws SQLException {
        sql.run("UPDATE state SET marks_revision = marks_revision + 1");
    }

    long version(String session) throws SQLException {
        return sql.first("SELECT marks_version FROM document WHERE id = ?", row -> row.getLong(1), session).orElse(0L);
    }

    /** Those of a session and no others; who noted one that stays as it was stays as well. */
    List<Mark> replace(String session, List<MarkDraft> drafts, Long version) throws SQLException {
        Document document = documents.session(session);
        long has = version(session);
        if (version != null && version != has) {
            throw new LockerFault.Changed("The marks of session " + Said.quoted(document.name()) + " were altered meanwhile. Look at them again, then alter them", has);
        }
        Map<MarkDraft, Mark> before = new HashMap<>();
        MarkRows.of(sql, session).forEach(mark -> before.put(mark.draft(), mark));
        List<MarkDraft> read = checked(drafts);
        if (before.keySet().equals(new HashSet<>(read))) {
            return MarkRows.of(sql, session);
        }
        sql.run("DELETE FROM mark WHERE session_id = ?", session);
        for (MarkDraft draft : read) {
            MarkRows.insert(sql, before.getOrDefault(draft, mark(session, draft)));
        }
        return done(document);
    }

    /** One of a session; the others stay. */
    List<Mark> put(String session, MarkDraft draft) throws SQLException {
        Document document = documents.session(session);
        MarkDraft read = checked(List.of(draft)).get(0);
        Mark before = MarkRows.of(sql, session).stream().filter(mark -> mark.seat().equals(read.seat()) && mark.mic() == read.mic()).findFirst().orElse(null);
        if (before != null && before.draft().equals(read)) {
            return MarkRows.of(sql, session);
        }
        sql.run("DELETE FROM mark WHERE session_id = ? AND seat = ? AND mic = ?", session, read.seat(), read.mic());
        MarkRows.insert(sql, mark(session, read));
        return done(document);
    }

    private List<Mark> done(Document session) throws SQLException {
        changed = true;
        told(sql);
        sql.run("UPDATE document SET marks_version = marks_version + 1 WHERE id = ?", session.id());
        List<Mark> marks = MarkRows.of(sql, session.id());
        long kept = marks.stream().filter(Mark::kept).count();
        History.add(sql, now, who, "marked", Documents.about(session.id()), List.of(), "Marked session " + Said.quoted(session.name()) + " (" + session.id() + "): "
                + kept + " of " + marks.size() + " microphones kept.");
        return marks;
    }

    private Mark mark(String session, MarkDraft draft) {
        return new Mark(session, draft.seat(), draft.mic(), draft.source(), draft.room(), draft.player(), draft.micType(), draft.position(), draft.unit(),
                draft.kept(), draft.changedTo(), draft.toMicType(), draft.toPosition(), draft.why(), now, who);
    }

    private static List<MarkDraft> checked(List<MarkDraft> drafts) {
        List<Fault> faults = new ArrayList<>();
        if (drafts.size() > MOST_MARKS) {
            throw new LockerFault.Unusable(List.of(new Fault("/marks", "there are " + drafts.size() + " marks, and a session may have " + MOST_MARKS + ". Send fewer")));
        }
        List<MarkDraft> read = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < drafts.size(); i++) {
            MarkDraft mark = checked(drafts.get(i), "/marks/" + i, faults);
            if (!seen.add(mark.seat() + " " + mark.mic())) {
                faults.add(new Fault("/marks/" + i, "microphone " + mark.mic() + " of " + Said.quoted(String.valueOf(mark.seat())) + " is marked twice. Take one out"));
            }
            read.add(mark);
        }
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults);
        }
        return read;
    }

    private static MarkDraft checked(MarkDraft draft, String at, List<Fault> faults) {
        if (draft.mic() < 1 || draft.mic() > MOST_MICS) {
            faults.add(new Fault(at + "/mic", "is " + draft.mic() + ". Count the microphones of a seat from 1 to " + MOST_MICS));
        }
        MarkDraft read = new MarkDraft(needed(draft.seat(), at + "/seat", "the seat", faults), draft.mic(), needed(draft.source(), at + "/source", "the source", faults),
                Said.line(draft.room(), WORDS, at + "/room", faults), Said.line(draft.player(), WORDS, at + "/player", faults),
                needed(draft.micType(), at + "/micType", "the mic type", faults), Said.line(draft.position(), WORDS, at + "/position", faults),
                Said.line(draft.unit(), WORDS, at + "/unit", faults), draft.kept(), Said.line(draft.changedTo(), WHY, at + "/changedTo", faults),
                Said.line(draft.toMicType(), WORDS, at + "/toMicType", faults), Said.line(draft.toPosition(), WORDS, at + "/toPosition", faults),
                Said.lines(draft.why(), WHY, at + "/why", faults));
        String changes = List.of("changedTo", "toMicType", "toPosition").stream().filter(field -> value(read, field) != null).collect(Collectors.joining(", "));
        if (read.kept() && !changes.isEmpty()) {
            faults.add(new Fault(at + "/kept", "it was kept and it was changed (" + changes + "). Say one of the two"));
        }
        return read;
    }

    private static String value(MarkDraft draft, String field) {
        return field.equals("changedTo") ? draft.changedTo() : field.equals("toMicType") ? draft.toMicType() : draft.toPosition();
    }

    private static String needed(String text, String at, String what, List<Fault> faults) {
        String line = Said.line(text, WORDS, at, faults);
        if (line == null) {
            faults.add(new Fault(at, "it is not said what " + what + " is. Give its id"));
        }
        return line;
    }
}
