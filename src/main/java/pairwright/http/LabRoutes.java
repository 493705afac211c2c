package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.lab.Candidates;
import pairwright.lab.DoesNotFit;
import pairwright.lab.LabDesk;
import pairwright.lab.Wanted;
import pairwright.locker.ExerciseSet;
import pairwright.locker.Locker;
import pairwright.locker.Role;
import pairwright.session.Planned;

/** Exercises of a class, for programs: made, handed out, and their keys. */
final class LabRoutes {
    private static final int USUAL = 100;
    private static final int MOST = 1_000;

    private final Locker locker;
    private final LabDesk desk;
    private final LockerJson json;
    private final LockerWrites writes;
    private final int bodyMs;

    LabRoutes(Locker locker, Supplier<Knowledge> knowledge, ObjectMapper usual, int bodyMs) {
        this.locker = locker;
        this.desk = new LabDesk(locker, knowledge);
        this.json = new LockerJson(usual);
        this.writes = new LockerWrites(locker, json);
        this.bodyMs = bodyMs;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/api/lab/exercises", this::list);
        routes.post("/api/lab/exercises", this::make);
        Routes.get(routes, "/api/lab/exercises/{id}", this::one);
        routes.patch("/api/lab/exercises/{id}", this::alter);
        routes.delete("/api/lab/exercises/{id}", this::remove);
        Routes.get(routes, "/api/lab/exercises/{id}/key", this::key);
        new LabMarkRoutes(desk, json, writes, bodyMs).add(routes);
    }

    private void list(Context context) {
        Query query = new Query(context, "most");
        Long most = query.whole("most", 1, MOST);
        query.check();
        Instant now = locker.now();
        LockerRoutes.answer(context, json, new LabView.ExerciseLines(desk.count(),
                desk.sets(most == null ? USUAL : most.intValue()).stream().map(set -> LabView.ExerciseLine.of(set, now)).toList()));
    }

    private void one(Context context) {
        new Query(context).check();
        ExerciseSet set = desk.set(context.pathParam("id"));
        LabView.ExercisesMade made = made(set, Access.role(context));
        context.header("ETag", IfMatch.tag(set.version()));
        LockerRoutes.answer(context, json, made);
    }

    private LabView.ExercisesMade made(ExerciseSet set, Role role) {
        return LabView.ExercisesMade.of(set, desk, role, locker.now(), json.mapper());
    }

    private void make(Context context) {
        new Query(context).check();
        String body = Body.json(context, bodyMs);
        Wanted wanted = LabBody.wanted(Body.object(body, json.mapper(), LabBody.WANTED));
        Candidates drawn = desk.draw(wanted);
        Role role = Access.role(context);
        try {
            writes.write(context, body, changes -> {
                ExerciseSet set = desk.make(changes, drawn, Access.who(context));
                return new LockerWrites.Said(201, "/api/lab/exercises/" + set.id(), IfMatch.tag(set.version()), json.write(made(set, role)));
            });
        } catch (DoesNotFit refused) {
            throw new BadRequest(Problem.of(422, refused.getMessage() + ". fits says what can be had").with(refused.shortOf().stream()
                    .map(lack -> new Planned.Short(lack.name(), lack.needed(), lack.there(), List.of())).toList(), List.of()).instead(desk.instead(refused)));
        }
    }

    private void alter(Context context) {
        new Query(context).check();
        String id = context.pathParam("id");
        IfMatch meant = IfMatch.of(context);
        String body = Body.patch(context, bodyMs);
        Instant opensAt = LabBody.opensAt(Body.object(body, json.mapper(), LabBody.OPENS));
        Instant now = locker.now();
        Role role = Access.role(context);
        writes.write(context, body, changes -> {
            meant.check("exercises " + id, changes.exercises(id).version());
            ExerciseSet set = desk.openKeys(changes, id, opensAt, null);
            return new LockerWrites.Said(200, null, IfMatch.tag(set.version()), json.write(LabView.ExercisesMade.of(set, desk, role, now, json.mapper())));
        });
    }

    private void remove(Context context) {
        new Query(context).check();
        String id = context.pathParam("id");
        IfMatch meant = IfMatch.of(context);
        writes.write(context, "", changes -> {
            meant.check("exercises " + id, changes.exercises(id).version());
            changes.removeExercises(id, null);
            return LockerWrites.Said.GONE;
        });
    }

    private void key(Context context) {
        new Query(context).check();
        ExerciseSet set = desk.set(context.pathParam("id"));
        LockerRoutes.answer(context, json, LabView.ExerciseKeys.of(set.id(), desk.key(set, Access.role(context))));
    }
}
