package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.OffsetDateTime;
import java.util.List;
import pairwright.catalogue.Shown;
import pairwright.locker.Changes;
import pairwright.locker.Document;
import pairwright.locker.DocumentDraft;
import pairwright.locker.DocumentKind;
import pairwright.locker.Locker;
import pairwright.session.Booked;
import pairwright.session.LineUp;
import pairwright.session.Picks;

/** Stored sessions, for programs: their line-ups, what was picked, and what is booked for them. */
final class SessionStoreRoutes {
    private static final int MOST = 1_000;

    private final Locker locker;
    private final SessionStore store;
    private final LockerJson json;
    private final LockerWrites writes;
    private final int bodyMs;

    SessionStoreRoutes(Locker locker, SessionStore store, LockerJson json, LockerWrites writes, int bodyMs) {
        this.locker = locker;
        this.store = store;
        this.json = json;
        this.writes = writes;
        this.bodyMs = bodyMs;
    }

    /**
     * A session in a list.
     *
     * @param booking number of the one that was made for it; null for none
     */
    record Line(String id, String name, OffsetDateTime from, OffsetDateTime until, String booking, long version, OffsetDateTime changedAt, String changedBy) {
        static Line of(Document document) {
            return new Line(document.id(), document.name(), document.from() == null ? null : LockerView.shown(document.from()),
                    document.until() == null ? null : LockerView.shown(document.until()), document.booking(), document.version(), LockerView.shown(document.at()),
                    document.by());
        }
    }

    /**
     * Sessions, the latest first.
     *
     * @param count how many there are, also where not all are listed
     */
    record Sessions(long count, List<Line> sessions) {
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/api/sessions", this::list);
        routes.post("/api/sessions", this::make);
        Routes.get(routes, "/api/sessions/{id}", this::one);
        routes.put("/api/sessions/{id}", this::put);
        routes.delete("/api/sessions/{id}", this::remove);
        Routes.get(routes, "/api/sessions/{id}/picks", this::picks);
        routes.put("/api/sessions/{id}/picks", this::putPicks);
        routes.post("/api/sessions/{id}/book", this::book);
    }

    private void list(Context context) {
        Query query = new Query(context, "most");
        Long most = query.whole("most", 1, MOST);
        query.check();
        LockerRoutes.answer(context, json, new Sessions(locker.documents().count(DocumentKind.LINE_UP),
                locker.documents().all(DocumentKind.LINE_UP, most == null ? MOST : most.intValue()).stream().map(Line::of).toList()));
    }

    private void one(Context context) {
        new Query(context).check();
        Document session = store.session(context.pathParam("id"));
        LockerRoutes.answerUnlessHad(context, IfMatch.tag(session.version()), session::text);
    }

    private void make(Context context) {
        new Query(context).check();
        String body = Body.json(context, bodyMs);
        DocumentDraft draft = store.draft(null, Body.object(body, json.mapper(), SessionBody.EXAMPLE));
        writes.write(context, body, changes -> made(changes.put(draft, null), ""));
    }

    private void put(Context context) {
        new Query(context).check();
        String id = context.pathParam("id");
        IfMatch meant = IfMatch.of(context);
        String body = Body.json(context, bodyMs);
        DocumentDraft draft = store.draft(id, Body.object(body, json.mapper(), SessionBody.EXAMPLE));
        writes.write(context, body, changes -> written(changes, draft, meant, "session", id, ""));
    }

    private void remove(Context context) {
        new Query(context).check();
        String id = context.pathParam("id");
        IfMatch meant = IfMatch.of(context);
        writes.write(context, "", changes -> {
            Document session = store.session(changes, id);
            meant.check("session " + session.name(), session.version());
            changes.removeDocument(id, null);
            return LockerWrites.Said.GONE;
        });
    }

    private void picks(Context context) {
        new Query(context).check();
        Document picks = store.picks(store.session(context.pathParam("id")));
        LockerRoutes.answerUnlessHad(context, IfMatch.tag(picks.version()), picks::text);
    }

    private void putPicks(Context context) {
        new Query(context).check();
        IfMatch meant = IfMatch.of(context);
        String body = Body.json(context, bodyMs);
        JsonNode root = Body.object(body, json.mapper(), "{\"lines\": [{\"seat\": \"bass\", \"micType\": \"long-ribbon\", \"position\": \"bridge\"}]}");
        String id = context.pathParam("id");
        writes.write(context, body, changes -> written(changes, store.picks(store.session(changes, id), root), meant, "picks of session", id, "/picks"));
    }

    private void book(Context context) {
        new Query(context).check();
        String id = context.pathParam("id");
        writes.write(context, "", changes -> {
            Document session = store.session(changes, id);
            LineUp lineUp = store.lineUp(session);
            Picks picks = store.picks(store.picks(changes, session), lineUp);
            return writes.altered(changes.bookFor(id, Booked.draft(lineUp, picks, session.name(), Access.who(context))));
        });
    }

    private LockerWrites.Said written(Changes changes, DocumentDraft draft, IfMatch meant, String what, String id, String behind) {
        Document before = changes.documentIfThere(draft.kind() == DocumentKind.LINE_UP ? id : Document.idOf(id, draft.kind())).orElse(null);
        if (before == null && meant.versions() != null) {
            throw new BadRequest(Problem.of(412, "There is no " + what + " " + Shown.of(id) + " any more, or not yet. Put it without If-Match to make it anew"));
        }
        if (before == null) {
            return made(changes.put(draft, 0L), behind);
        }
        meant.check(what + " " + id, before.version());
        Document after = changes.put(draft, null);
        return new LockerWrites.Said(200, null, IfMatch.tag(after.version()), after.text());
    }

    private static LockerWrites.Said made(Document document, String behind) {
        String session = document.belongsTo() == null ? document.id() : document.belongsTo();
        return new LockerWrites.Said(201, "/api/sessions/" + session + behind, IfMatch.tag(document.version()), document.text());
    }
}
