package pairwright.http;

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
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.locker.Act;
import pairwright.locker.Booking;
import pairwright.locker.Document;
import pairwright.locker.DocumentDraft;
import pairwright.locker.DocumentKind;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.session.Booked;
import pairwright.session.Gear;
import pairwright.session.GearOf;
import pairwright.session.LineUp;
import pairwright.session.Picks;
import pairwright.sheet.AtPlan;

/** What the pages of a plan read and write of a session: its line-up, the plan that was taken, the ticks of its line check. */
final class SessionKept {
    /** A line check of a hundred lines, a few plans over. */
    private static final int MOST_TICKS = 2000;

    private final Locker locker;
    private final SessionStore store;
    private final ObjectMapper json;

    SessionKept(Locker locker, Supplier<Knowledge> knowledge, ObjectMapper json) {
        this.locker = locker;
        this.store = new SessionStore(locker, knowledge, json);
        this.json = json;
    }

    /** A session as it is kept; picks is null where no plan was taken. */
    record Session(Document document, LineUp lineUp, Picks picks) {
    }

    /**
     * A session by its id.
     *
     * @throws LockerFault.NotThere where there is none
     * @throws LockerFault.Unusable where what is kept of it no longer fits the catalogue, with every fault
     */
    Session session(String id) {
        Document document = store.session(id);
        LineUp lineUp = store.lineUp(document);
        return new Session(document, lineUp, locker.documents().of(id, DocumentKind.PICKS).map(picks -> store.picks(picks, lineUp)).orElse(null));
    }

    /** What there is for the time of a session; what was booked for it does not stand in its way. */
    Gear gear(Session session) {
        Set<String> own = session.document().booking() == null ? Set.of() : Set.of(session.document().booking());
        return GearOf.free(locker, LockerAtHand.span(session.lineUp().from(), session.lineUp().until(), locker.now()), own);
    }

    void take(Act act, String id, Picks picks) {
        locker.change(act, changes -> changes.put(store.picks(id, picks), null).id());
    }

    /** Books what was picked for the time of the session, in place of what was booked for it before; says the booking. */
    String book(Act act, Session session, Picks picks) {
        return locker.change(act, changes -> {
            Booking made = changes.bookFor(session.document().id(), Booked.draft(session.lineUp(), picks, session.document().name(), act.who()));
            return made.id();
        }).text();
    }

    /** Writes the line-up anew, where nobody did meanwhile. */
    void seat(Act act, Session session, LineUp lineUp) {
        locker.change(act, changes -> changes.put(store.draft(session.document().id(), lineUp), session.document().version()).id());
    }

    /** The ticks of its line check, by key. */
    Map<String, AtPlan.Tick> ticks(String id) {
        return locker.documents().of(id, DocumentKind.TICKS).map(document -> read(document.text())).orElse(Map.of());
    }

    /** Sets and takes away ticks; of each key the last who says something is right, and what others do to other keys meanwhile stays. */
    void tick(String who, String id, Map<String, Boolean> changed, OffsetDateTime now) {
        if (changed.isEmpty()) {
            return;
        }
        locker.change(Act.by(who), changes -> {
            Optional<Document> there = changes.documentIfThere(Document.idOf(id, DocumentKind.TICKS));
            Map<String, AtPlan.Tick> ticks = new LinkedHashMap<>(there.map(document -> read(document.text())).orElse(Map.of()));
            changed.forEach((key, on) -> ticks.put(key, new AtPlan.Tick(on, who, now)));
            ticks.entrySet().stream().sorted(Comparator.comparing(one -> one.getValue().at())).limit(Math.max(0, ticks.size() - MOST_TICKS)).map(Map.Entry::getKey).toList()
                    .forEach(ticks::remove);
            return changes.put(DocumentDraft.of(id, DocumentKind.TICKS, written(ticks)), null).id();
        });
    }

    private String written(Map<String, AtPlan.Tick> ticks) {
        ObjectNode all = json.createObjectNode();
        ticks.forEach((key, tick) -> all.putObject(key).put("on", tick.on()).put("who", tick.who()).put("at", tick.at().toString()));
        return Routes.write(json, all);
    }

    private Map<String, AtPlan.Tick> read(String text) {
        Map<String, AtPlan.Tick> ticks = new LinkedHashMap<>();
        Body.object(text, json, "{}").properties().forEach(one -> {
            JsonNode tick = one.getValue();
            try {
                ticks.put(one.getKey(), new AtPlan.Tick(tick.path("on").asBoolean(), tick.path("who").asText(), OffsetDateTime.parse(tick.path("at").asText())));
            } catch (DateTimeParseException broken) {
                // a tick of which nobody knows when it was set is none
            }
        });
        return ticks;
    }
}
