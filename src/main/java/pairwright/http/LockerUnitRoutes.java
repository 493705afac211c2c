package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import pairwright.catalogue.Shown;
import pairwright.locker.Condition;
import pairwright.locker.Locker;
import pairwright.locker.Span;
import pairwright.locker.Standing;
import pairwright.locker.Unit;
import pairwright.locker.UnitDraft;
import pairwright.locker.UnitKind;

/** Units, for programs. */
final class LockerUnitRoutes {
    private static final Duration USUAL = Duration.ofHours(4);

    private final Locker locker;
    private final LockerJson json;
    private final LockerWrites writes;
    private final int bodyMs;

    LockerUnitRoutes(Locker locker, LockerJson json, LockerWrites writes, int bodyMs) {
        this.locker = locker;
        this.json = json;
        this.writes = writes;
        this.bodyMs = bodyMs;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/api/locker/units", this::list);
        routes.post("/api/locker/units", this::make);
        Routes.get(routes, "/api/locker/units/{id}", this::one);
        routes.patch("/api/locker/units/{id}", this::alter);
        routes.delete("/api/locker/units/{id}", this::remove);
        Routes.get(routes, "/api/locker/free", this::free);
    }

    private void list(Context context) {
        Query query = new Query(context, "micType", "kind", "condition", "words", "from", "until");
        Predicate<Unit> wanted = wanted(query.text("micType"), query.word("kind", UnitKind.values()), query.word("condition", Condition.values()), query.text("words"));
        boolean timed = query.has("from") || query.has("until");
        Span span = timed ? query.span(locker.now(), USUAL) : null;
        query.check();
        locker.checkType(query.text("micType"));
        List<Standing> standing = timed ? locker.standing(span).stream().filter(one -> wanted.test(one.unit())).toList() : List.of();
        List<Unit> units = timed ? standing.stream().map(Standing::unit).toList() : locker.units().stream().filter(wanted).toList();
        LockerRoutes.answer(context, json, new LockerView.Units(timed ? LockerView.shown(span.from()) : null, timed ? LockerView.shown(span.until()) : null, units,
                standing.stream().map(LockerView.Stands::of).toList()));
    }

    private static Predicate<Unit> wanted(String micType, UnitKind kind, Condition condition, String words) {
        List<String> each = words == null ? List.of() : List.of(words.toLowerCase(Locale.ROOT).split("\\s+"));
        return unit -> (micType == null || micType.equals(unit.micType()))
                && (kind == null || kind == unit.kind())
                && (condition == null || condition == unit.condition())
                && each.stream().allMatch(said(unit)::contains);
    }

    /** All that is written of a unit, to look for words in. */
    private static String said(Unit unit) {
        return String.join("\n", Stream.of(unit.id(), unit.micType(), unit.label(), unit.serial(), unit.tag(), unit.note(), unit.storedAt())
                .filter(text -> text != null).toList()).toLowerCase(Locale.ROOT);
    }

    private void free(Context context) {
        Query query = new Query(context, "from", "until", "micType");
        Span span = query.span(locker.now(), USUAL);
        String micType = query.text("micType");
        query.check();
        locker.checkType(micType);
        LockerRoutes.answer(context, json, LockerView.Free.of(span, locker.free(span, micType)));
    }

    private void one(Context context) {
        new Query(context).check();
        String id = context.pathParam("id");
        Unit unit = locker.unit(id).orElseThrow(() -> new BadRequest(Problem.of(404,
                "There is no unit \"" + Shown.of(id) + "\". All units are at /api/locker/units")));
        LockerRoutes.answerUnlessHad(context, IfMatch.tag(unit.version()), () -> json.write(unit));
    }

    private void make(Context context) {
        new Query(context).check();
        String body = Body.json(context, bodyMs);
        UnitDraft draft = UnitBody.read(Body.object(body, json.mapper(), UnitBody.EXAMPLE));
        writes.write(context, body, changes -> writes.made(changes.add(draft)));
    }

    private void alter(Context context) {
        new Query(context).check();
        String id = context.pathParam("id");
        IfMatch meant = IfMatch.of(context);
        String body = Body.patch(context, bodyMs);
        ObjectNode patch = (ObjectNode) Body.object(body, json.mapper(), "{\"condition\": \"in-repair\"}");
        writes.write(context, body, changes -> {
            Unit unit = changes.unit(id);
            meant.check("unit " + unit.label(), unit.version());
            JsonNode merged = Patched.of(json.tree(unit), patch, unit.version(), "unit " + unit.label(), List.of("id"));
            return writes.altered(changes.alter(id, UnitBody.read(merged), null));
        });
    }

    private void remove(Context context) {
        new Query(context).check();
        String id = context.pathParam("id");
        IfMatch meant = IfMatch.of(context);
        writes.write(context, "", changes -> {
            Unit unit = changes.unit(id);
            meant.check("unit " + unit.label(), unit.version());
            changes.remove(id, null);
            return LockerWrites.Said.GONE;
        });
    }
}
