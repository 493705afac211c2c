package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.lab.KindInfo;
import pairwright.lab.Practice;

/** What can be made in the lab, and exercises for whoever tries alone, for programs. Nothing of it is kept. */
final class LabPracticeRoutes {
    private final Practice practice;
    private final LockerJson json;
    private final int bodyMs;

    /** The kinds there are. */
    record ExerciseKinds(List<KindInfo> kinds) {
    }

    LabPracticeRoutes(Supplier<Knowledge> knowledge, ObjectMapper usual, int bodyMs) {
        this.practice = new Practice(knowledge);
        this.json = new LockerJson(usual);
        this.bodyMs = bodyMs;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/api/lab/kinds", this::kinds);
        Routes.get(routes, "/api/lab/practice", this::practise);
        routes.post("/api/lab/practice/mark", this::mark);
    }

    private void kinds(Context context) {
        new Query(context).check();
        Routes.answer(context, json.mapper(), new ExerciseKinds(practice.kinds()));
    }

    private void practise(Context context) {
        Query query = new Query(context, "kind", "level", "seed");
        String kind = query.text("kind");
        Long level = query.whole("level", 1, KindInfo.LEVELS);
        String seed = query.text("seed");
        query.check();
        LockerRoutes.answer(context, json, LabView.PracticeTried.of(practice.draw(kind, level == null ? null : level.intValue(), seed), json.mapper()));
    }

    private void mark(Context context) {
        new Query(context).check();
        LabBody.Practised practised = LabBody.practised(Body.object(Body.json(context, bodyMs), json.mapper(), LabBody.PRACTICE));
        LockerRoutes.answer(context, json, LabView.PracticeMarked.of(practice.mark(practised.kind(), practised.level(), practised.seed(), practised.answer())));
    }
}
