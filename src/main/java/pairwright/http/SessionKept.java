package pairwright.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pairwright.advice.Knowledge;
import pairwright.catalogue.Shown;
import pairwright.locker.Act;
import pairwright.locker.Document;
import pairwright.locker.DocumentDraft;
import pairwright.locker.DocumentKind;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.session.Gear;
import pairwright.session.GearOf;
import pairwright.session.LineUp;
import pairwright.session.Picks;
import pairwright.sheet.AtPlan;

/** What the locker keeps of a session, read and written: its line-up, the plan that was taken, the ticks of its line check. */
final class SessionKept {
    /** A line check of a hundred lines, a few plans over. */
    private static final int MOST_TICKS = 2000;
    private static final int TRIES = 20;

    private final Locker locker;
    private final ObjectMapper json;

    SessionKept(Locker locker, ObjectMapper json) {
        this.locker = locker;
        this.json = json;
    }

    /** A session as it is kept; picks is null where no plan was taken. */
    record Session(Document document, LineUp lineUp, Picks picks) {
    }

    /**
     * A session by its id.
     *
     * @throws BadRequest 404 where there is none, 409 where its line-up does not hold any more
     */
    Session session(String id, Knowledge known) {
        Document document = locker.documents().of(id).filter(one -> one.kind() == DocumentKind.LINE_UP).orElseThrow(() -> new BadRequest(Problem.of(404,
                "There is no session \"" + Shown.of(id) + "\". All of them are at /sessions")));
        Optional<Document> taken = locker.documents().of(id, DocumentKind.PICKS);
        JsonNode root = tree(document.text());
        if (taken.isPresent() && root instanceof ObjectNode whole) {
            ObjectNode again = whole.deepCopy();
            again.set("plan", tree(taken.get().text()));
            SessionBody.Read read = SessionBody.again(again, known);
            if (read.faults().isEmpty()) {
                return new Session(document, read.request().lineUp(), read.request().before());
            }
        }
        SessionBody.Read read = SessionBody.plan(root, known);
        if (!read.faults().isEmpty()) {
            throw new BadRequest(Problem.of(409, Problem.listed(read.faults())));
        }
        return new Session(document, read.request().lineUp(), null);
    }

    private JsonNode tree(String text) {
        try {
            return json.readTree(text);
        } catch (JsonProcessingException broken) {
            return json.missingNode();
        }
    }

    /** What there is for the time of a session; what was booked for it does not stand in its way. */
    Gear gear(Session session) {
        Set<String> own = session.document().booking() == null ? Set.of() : Set.of(session.document().booking());
        return GearOf.free(locker, LockerAtHand.span(session.lineUp().from(), session.lineUp().until(), locker.now()), own);
    }

    void take(Act act, String id, Picks picks) {
        locker.change(act, changes -> {
            changes.put(DocumentDraft.of(id, DocumentKind.PICKS, Routes.write(json, SessionJson.of(picks))), null);
            return id;
        });
    }

    /** Writes the line-up anew. */
    void seat(Act act, Session session, LineUp lineUp) {
        Document before = session.document();
        locker.change(act, changes -> {
            changes.put(DocumentDraft.lineUp(before.id(), before.name(), before.from(), before.until(), Routes.write(json, SessionJson.of(lineUp))), before.version());
            return before.id();
        });
    }

    /** The ticks of its line check, by key. */
    Map<String, AtPlan.Tick> ticks(String id) {
        return locker.documents().of(id, DocumentKind.TICKS).map(document -> read(document.text())).orElse(Map.of());
    }

    /** Sets and takes away ticks; of each key the last who says something is right, and what others do to other keys meanwhile stays. */
    void tick(Act act, String id, Map<String, Boolean> changed, OffsetDateTime now) {
        for (int tries = 0; !changed.isEmpty(); tries++) {
            Optional<Document> there = locker.documents().of(id, DocumentKind.TICKS);
            Map<String, AtPlan.Tick> ticks = new LinkedHashMap<>(there.map(document -> read(document.text())).orElse(Map.of()));
            changed.forEach((key, on) -> ticks.put(key, new AtPlan.Tick(on, act.who(), now)));
            ticks.entrySet().stream().sorted(Comparator.comparing(one -> one.getValue().at())).limit(Math.max(0, ticks.size() - MOST_TICKS)).map(Map.Entry::getKey).toList()
                    .forEach(ticks::remove);
            try {
                locker.change(act, changes -> changes.put(DocumentDraft.of(id, DocumentKind.TICKS, written(ticks)), there.map(Document::version).orElse(0L)).id());
                return;
            } catch (LockerFault.Changed | LockerFault.NotThere meanwhile) {
                if (tries >= TRIES) {
                    throw meanwhile;
                }
            }
        }
    }

    private String written(Map<String, AtPlan.Tick> ticks) {
        ObjectNode all = json.createObjectNode();
        ticks.forEach((key, tick) -> all.putObject(key).put("on", tick.on()).put("who", tick.who()).put("at", tick.at().toString()));
        return Routes.write(json, all);
    }

    private Map<String, AtPlan.Tick> read(String text) {
        Map<String, AtPlan.Tick> ticks = new LinkedHashMap<>();
        tree(text).fields().forEachRemaining(one -> {
            try {
                ticks.put(one.getKey(), new AtPlan.Tick(one.getValue().path("on").asBoolean(), one.getValue().path("who").asText(), OffsetDateTime.parse(one.getValue().path("at").asText())));
            } catch (DateTimeParseException broken) {
                // a tick of which nobody knows when it was set is none
            }
        });
        return ticks;
    }
}
