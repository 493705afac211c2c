package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.catalogue.Shown;
import pairwright.locker.Changes;
import pairwright.locker.Document;
import pairwright.locker.DocumentDraft;
import pairwright.locker.DocumentKind;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.model.Fault;
import pairwright.session.LineUp;
import pairwright.session.Picks;
import pairwright.session.Purchases;

/** Sessions as the locker keeps them, and what is written in them. */
public final class SessionStore {
    /** Of more sessions, those that come last are planned for. */
    static final int MOST_TOGETHER = 12;
    private static final List<String> NOT_KEPT = List.of("locker", "bookings");

    private final Locker locker;
    private final Supplier<Knowledge> knowledge;
    private final ObjectMapper json;

    public SessionStore(Locker locker, Supplier<Knowledge> knowledge, ObjectMapper json) {
        this.locker = locker;
        this.knowledge = knowledge;
        this.json = json;
    }

    private static final class Reader extends JsonReader {
    }

    /**
     * A session.
     *
     * @throws LockerFault.NotThere where there is none of that id
     */
    public Document session(String id) {
        return session(id, locker.documents().of(id));
    }

    /** The same within a transaction. */
    Document session(Changes changes, String id) {
        return session(id, changes.documentIfThere(id));
    }

    private static Document session(String id, Optional<Document> found) {
        return found.filter(document -> document.kind() == DocumentKind.LINE_UP).orElseThrow(() -> new LockerFault.NotThere(
                "There is no session \"" + Shown.of(id) + "\". All sessions are at /api/sessions"));
    }

    /**
     * What was picked for a session.
     *
     * @throws LockerFault.NotThere where nothing was yet
     */
    public Document picks(Document session) {
        return picks(session, locker.documents().of(session.id(), DocumentKind.PICKS));
    }

    /** The same within a transaction. */
    Document picks(Changes changes, Document session) {
        return picks(session, changes.documentIfThere(Document.idOf(session.id(), DocumentKind.PICKS)));
    }

    private static Document picks(Document session, Optional<Document> found) {
        return found.orElseThrow(() -> new LockerFault.NotThere("Nothing is picked for session \"" + Shown.of(session.name()) + "\" yet. Plan it, and put what is picked at /api/sessions/"
                + session.id() + "/picks"));
    }

    /**
     * A line-up as it is to be written.
     *
     * @param id null for one made from its name
     * @throws LockerFault.Unusable with every fault
     */
    public DocumentDraft draft(String id, JsonNode body) {
        List<Fault> faults = new ArrayList<>();
        NOT_KEPT.stream().filter(name -> !JsonReader.absent(body.path(name))).forEach(name ->
                faults.add(new Fault("/" + name, "what there is and what is booked is not kept with a line-up. Leave " + name + " out")));
        SessionBody.Read read = SessionBody.plan(body, knowledge.get());
        faults.addAll(read.faults());
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults);
        }
        return draft(id, read.request().lineUp());
    }

    /** The same of a line-up that was read already. */
    public DocumentDraft draft(String id, LineUp lineUp) {
        return DocumentDraft.lineUp(id, lineUp.name(), lineUp.from() == null ? null : lineUp.from().toInstant(), lineUp.until() == null ? null : lineUp.until().toInstant(),
                Routes.write(json, SessionJson.of(lineUp)));
    }

    /**
     * What a stored line-up says.
     *
     * @throws LockerFault.Unusable where the catalogue has since lost something it names, with every fault
     */
    public LineUp lineUp(Document session) {
        SessionBody.Read read = SessionBody.plan(tree(session), knowledge.get());
        return sound(session, read.request() == null ? null : read.request().lineUp(), read.faults());
    }

    /** The line-ups of all sessions that still fit the catalogue, the latest first, as many as are looked at together. */
    public List<Purchases.Session> lineUps() {
        List<Purchases.Session> sessions = new ArrayList<>();
        for (Document document : locker.documents().all(DocumentKind.LINE_UP, MOST_TOGETHER)) {
            SessionBody.Read read = SessionBody.plan(tree(document), knowledge.get());
            if (read.request() != null) {
                sessions.add(new Purchases.Session(document.id(), read.request().lineUp()));
            }
        }
        return List.copyOf(sessions);
    }

    /** What stored picks say. */
    public Picks picks(Document picks, LineUp lineUp) {
        Reader reader = new Reader();
        Picks read = new PicksBody(reader, lineUp).read(tree(picks), "");
        return sound(picks, read, reader.faults());
    }

    /**
     * Picks as they are to be written.
     *
     * @throws BadRequest with every fault
     */
    DocumentDraft picks(Document session, JsonNode body) {
        Reader reader = new Reader();
        Picks read = reader.sound(new PicksBody(reader, lineUp(session)).read(body, ""));
        return picks(session.id(), read);
    }

    /** The same of picks that were read already. */
    public DocumentDraft picks(String session, Picks picks) {
        return DocumentDraft.of(session, DocumentKind.PICKS, Routes.write(json, SessionJson.of(picks)));
    }

    private static <T> T sound(Document document, T read, List<Fault> faults) {
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults.stream().map(fault -> new Fault(fault.at(), "What is kept of session " + Shown.of(document.name())
                    + " no longer fits the catalogue: " + fault.says())).toList());
        }
        return read;
    }

    private JsonNode tree(Document document) {
        return Body.object(document.text(), json, SessionBody.EXAMPLE);
    }
}
