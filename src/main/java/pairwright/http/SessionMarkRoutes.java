package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.locker.Changes;
import pairwright.locker.Document;
import pairwright.locker.Locker;
import pairwright.locker.Mark;
import pairwright.locker.MarkTable;
import pairwright.session.After;
import pairwright.session.LineUp;
import pairwright.session.Picks;

/** What became of the microphones of stored sessions, for programs. */
final class SessionMarkRoutes {
    static final String EXAMPLE = "{\"marks\": [{\"seat\": \"bass\", \"mic\": 1, \"kept\": false, \"toPosition\": \"bridge\", \"why\": \"too much boom\"}]}";

    private final Locker locker;
    private final SessionStore store;
    private final LockerJson json;
    private final LockerWrites writes;
    private final Supplier<Knowledge> knowledge;
    private final int bodyMs;

    SessionMarkRoutes(Locker locker, SessionStore store, Supplier<Knowledge> knowledge, LockerJson json, LockerWrites writes, int bodyMs) {
        this.locker = locker;
        this.store = store;
        this.knowledge = knowledge;
        this.json = json;
        this.writes = writes;
        this.bodyMs = bodyMs;
    }

    /**
     * One microphone of a session and what became of it.
     *
     * @param became kept, moved, changed or given-up; null while nobody has said
     */
    record Line(String seat, int mic, String source, String player, String micType, String position, String unit, After.Became became, String changedTo,
            String toMicType, String toPosition, String why, OffsetDateTime at, String by) {
        static Line of(After.Line line) {
            Mark mark = line.mark();
            return new Line(line.seat(), line.mic(), line.source(), line.player(), line.planned().micType(), line.planned().position(), line.planned().unit(),
                    line.became(), mark == null ? null : mark.changedTo(), mark == null ? null : mark.toMicType(), mark == null ? null : mark.toPosition(),
                    mark == null ? null : mark.why(), mark == null ? null : LockerView.shown(mark.at()), mark == null ? null : mark.by());
        }
    }

    /** All microphones of a session, in the order of its line-up. */
    record Marked(String session, long version, List<Line> lines) {
    }

    private static final class MarkBody extends JsonReader {
        private static final Set<String> FIELDS = Set.of("seat", "mic", "kept", "changedTo", "toMicType", "toPosition", "why");

        List<After.Told> read(JsonNode root) {
            onlyKnown(root, "", Set.of("marks"));
            if (absent(root.path("marks"))) {
                fault("/marks", "there are no marks. List them, or an empty list to take all of them away, such as " + EXAMPLE);
            }
            return sound(list(root, "/marks", this::told));
        }

        private After.Told told(JsonNode root, String at) {
            JsonNode node = root.at(at);
            if (!node.isObject()) {
                wrong(at, node, "an object with seat, mic and kept");
                return null;
            }
            onlyKnown(node, at, FIELDS);
            String seat = text(root, at + "/seat");
            if (absent(node.path("seat"))) {
                fault(at + "/seat", "it is not said which seat. Give the id of one of the line-up");
            }
            Boolean kept = yesOrNo(root, at + "/kept");
            if (absent(node.path("kept"))) {
                fault(at + "/kept", "it is not said whether it was kept. Say true or false");
            }
            Integer mic = whole(root, at + "/mic");
            return new After.Told(seat, mic == null ? 1 : mic, Boolean.TRUE.equals(kept), text(root, at + "/changedTo"), text(root, at + "/toMicType"),
                    text(root, at + "/toPosition"), text(root, at + "/why"));
        }
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/api/sessions/marks.csv", this::table);
        Routes.get(routes, "/api/sessions/{id}/marks", this::marks);
        routes.put("/api/sessions/{id}/marks", this::put);
    }

    private void table(Context context) {
        new Query(context).check();
        context.header("Cache-Control", "no-store");
        context.header("Content-Disposition", "attachment; filename=\"marks.csv\"");
        context.contentType("text/csv; charset=utf-8").result(MarkTable.write(locker.marks().all()));
    }

    private void marks(Context context) {
        new Query(context).check();
        Document session = store.session(context.pathParam("id"));
        LineUp lineUp = store.lineUp(session);
        Picks picks = store.picks(store.picks(session), lineUp);
        long version = locker.marks().version(session.id());
        Marked marked = marked(session.id(), version, lineUp, picks, locker.marks().of(session.id()));
        context.header("ETag", IfMatch.tag(version));
        LockerRoutes.answer(context, json, marked);
    }

    private void put(Context context) {
        new Query(context).check();
        String id = context.pathParam("id");
        IfMatch meant = IfMatch.of(context);
        String body = Body.json(context, bodyMs);
        List<After.Told> told = new MarkBody().read(Body.object(body, json.mapper(), EXAMPLE));
        writes.write(context, body, changes -> written(changes, id, told, meant));
    }

    private LockerWrites.Said written(Changes changes, String id, List<After.Told> told, IfMatch meant) {
        Document session = store.session(changes, id);
        LineUp lineUp = store.lineUp(session);
        Picks picks = store.picks(store.picks(changes, session), lineUp);
        meant.check("marks of session " + id, changes.marksVersion(id));
        List<Mark> marks = changes.marks(id, After.drafts(lineUp, picks, told, knowledge.get().catalogue()), null);
        long version = changes.marksVersion(id);
        return new LockerWrites.Said(200, null, IfMatch.tag(version), json.write(marked(id, version, lineUp, picks, marks)));
    }

    private static Marked marked(String id, long version, LineUp lineUp, Picks picks, List<Mark> marks) {
        return new Marked(id, version, After.of(lineUp, picks, marks).lines().stream().map(Line::of).toList());
    }
}
