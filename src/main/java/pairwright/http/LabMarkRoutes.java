package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import pairwright.lab.Answer;
import pairwright.lab.Handing;
import pairwright.lab.LabDesk;
import pairwright.locker.ExerciseSet;
import pairwright.locker.HandedIn;
import pairwright.locker.Role;
import pairwright.sheet.LabMarkTable;

/** What is handed in and what it earned, for programs. */
final class LabMarkRoutes {
    private final LabDesk desk;
    private final LockerJson json;
    private final LockerWrites writes;
    private final int bodyMs;

    /** What was kept, bench by bench. */
    record AnswersMarked(String id, List<LabView.AnswerMarked> benches) {
    }

    LabMarkRoutes(LabDesk desk, LockerJson json, LockerWrites writes, int bodyMs) {
        this.desk = desk;
        this.json = json;
        this.writes = writes;
        this.bodyMs = bodyMs;
    }

    void add(RoutesConfig routes) {
        routes.post("/api/lab/exercises/{id}/mark", this::mark);
        routes.post("/api/lab/exercises/{id}/answers", this::answers);
        Routes.get(routes, "/api/lab/exercises/{id}/marks", this::marks);
        Routes.get(routes, "/api/lab/exercises/{id}/marks.csv", this::table);
        Routes.get(routes, "/api/lab/exercises/{id}/summary", this::summary);
    }

    /** A reader hears only that it came, as long as the keys are shut. */
    private void mark(Context context) {
        new Query(context).check();
        String body = Body.json(context, bodyMs);
        LabBody.Answered answered = LabBody.answered(Body.object(body, json.mapper(), LabBody.MARK));
        ExerciseSet set = desk.set(context.pathParam("id"));
        Handing handing = desk.handing(set, answered.bench(), answered.answer(), Access.role(context));
        writes.write(context, body, changes -> {
            HandedIn kept = desk.handIn(changes, handing);
            return new LockerWrites.Said(handing.mark() == null ? 202 : 200, null, null, json.write(handing.mark() == null ? LabView.AnswerReceived.of(kept, set.opensAt()) : LabView.AnswerMarked.of(kept, handing.mark())));
        });
    }

    private void answers(Context context) {
        new Query(context).check();
        String body = Body.answers(context, bodyMs);
        ExerciseSet set = desk.set(context.pathParam("id"));
        Role role = Access.role(context);
        Map<Integer, Answer> answers = Body.isCsv(context) ? desk.answers(set, body) : LabBody.answers(Body.object(body, json.mapper(), LabBody.ANSWERS));
        List<Handing> handings = desk.handings(set, answers, role);
        writes.write(context, body, changes -> new LockerWrites.Said(200, null, null, json.write(new AnswersMarked(set.id(), handings.stream()
                .map(handing -> LabView.AnswerMarked.of(desk.handIn(changes, handing), handing.mark())).toList()))));
    }

    private void marks(Context context) {
        new Query(context).check();
        ExerciseSet set = desk.set(context.pathParam("id"));
        LockerRoutes.answer(context, json, LabView.ExerciseMarks.of(set.id(), desk.marks(set, Access.role(context))));
    }

    private void table(Context context) {
        new Query(context).check();
        ExerciseSet set = desk.set(context.pathParam("id"));
        String table = LabMarkTable.of(desk.marks(set, Access.role(context)));
        context.header("Cache-Control", "no-store");
        context.header("Content-Disposition", "attachment; filename=\"marks.csv\"");
        context.contentType("text/csv; charset=utf-8").result(table);
    }

    private void summary(Context context) {
        new Query(context).check();
        LockerRoutes.answer(context, json, desk.summary(desk.set(context.pathParam("id")), Access.role(context)));
    }
}
