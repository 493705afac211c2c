package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pairwright.advice.AtHand;
import pairwright.advice.KnowledgeStore;
import pairwright.advice.MoveFinder;
import pairwright.advice.WhyNotFinder;

/** What is asked after an answer: why not another type, and what to move. */
final class AskMoreRoutes {
    private final ObjectMapper json;
    private final int bodyMs;
    private final WhyNotFinder whyNot;
    private final MoveFinder moves;

    AskMoreRoutes(KnowledgeStore knowledge, AtHand atHand, ObjectMapper json, int bodyMs) {
        this.json = json;
        this.bodyMs = bodyMs;
        this.whyNot = new WhyNotFinder(knowledge::current, atHand);
        this.moves = new MoveFinder(knowledge::current, atHand);
    }

    void add(RoutesConfig routes) {
        routes.post("/api/ask/why-not", context ->
                answer(context, whyNot.find(RequestBody.readWhyNot(Body.json(context, bodyMs), json))));
        routes.post("/api/ask/moves", context ->
                answer(context, moves.find(RequestBody.readMoves(Body.json(context, bodyMs), json))));
    }

    private void answer(Context context, Object entry) {
        context.contentType("application/json; charset=utf-8").result(Routes.write(json, entry));
    }
}
