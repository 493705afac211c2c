package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.locker.Locker;
import pairwright.session.Change;
import pairwright.session.Gear;
import pairwright.session.Planned;
import pairwright.session.Planner;

/** Planning a session, and planning it again when something has changed; for programs. */
final class SessionPlanRoutes {
    static final int AT_ONCE = 2;
    static final Duration PATIENCE = Duration.ofSeconds(5);
    private static final Duration BUDGET = Duration.ofSeconds(120);

    private final Locker locker;
    private final Supplier<Knowledge> knowledge;
    private final Planner planner;
    private final ObjectMapper json;
    private final int bodyMs;
    private final SessionTurns turns = new SessionTurns(AT_ONCE, PATIENCE, BUDGET);

    /**
     * @param locker null for none
     * @param planner plans
     */
    SessionPlanRoutes(Locker locker, Supplier<Knowledge> knowledge, Planner planner, ObjectMapper json, int bodyMs) {
        this.locker = locker;
        this.knowledge = knowledge;
        this.planner = planner;
        this.json = json;
        this.bodyMs = bodyMs;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/api/sessions/example.json", this::example);
        routes.post("/api/sessions/plan", this::plan);
        routes.post("/api/sessions/replan", this::again);
    }

    private void example(Context context) {
        new Query(context).check();
        Routes.answer(context, json, SessionExample.tree());
    }

    private void plan(Context context) {
        new Query(context).check();
        String body = Body.session(context, bodyMs);
        SessionRequest request = sound(SessionBody.plan(Body.object(body, json, SessionBody.EXAMPLE), knowledge.get()));
        Gear gear = SessionGear.of(request, locker);
        Planned planned = turns.taken(progress -> planner.plan(request.lineUp(), gear, progress));
        if (planned.plans().isEmpty()) {
            throw impossible(planned);
        }
        Routes.answer(context, json, SessionView.Plans.of(planned, request, knowledge.get().catalogue()));
    }

    private void again(Context context) {
        new Query(context).check();
        String body = Body.session(context, bodyMs);
        SessionRequest request = sound(SessionBody.again(Body.object(body, json, "{\"lineUp\": [...], \"plan\": {\"lines\": [...]}, \"lost\": {\"units\": [\"pencil-1\"]}}"), knowledge.get()));
        Gear gear = SessionGear.of(request, locker);
        Change change = turns.taken(progress -> {
            try {
                return planner.again(request.lineUp(), gear, request.before(), request.lost(), request.pricePoints(), progress);
            } catch (IllegalStateException none) {
                throw impossible(planner.shortAgain(request.lineUp(), gear, request.before(), request.lost(), progress));
            }
        });
        Routes.answer(context, json, SessionView.Changed.of(change, request, knowledge.get().catalogue()));
    }

    private static SessionRequest sound(SessionBody.Read read) {
        if (!read.faults().isEmpty()) {
            throw new BadRequest(Problem.of(400, Problem.listed(read.faults())));
        }
        return read.request();
    }

    private static BadRequest impossible(Planned planned) {
        List<Planned.Short> shortOf = planned.shortOf();
        String says = shortOf.isEmpty() ? "Not everybody who must be served can be. Drop somebody, or name more of what there is"
                : "There is no plan that serves everybody who must be served: " + String.join("; ", shortOf.stream()
                        .map(one -> one.resource() + ": " + one.needed() + " needed, " + one.there() + " there").toList()) + ". waysOut says what would make one possible";
        return new BadRequest(Problem.of(422, says).with(shortOf, planned.waysOut()));
    }
}
