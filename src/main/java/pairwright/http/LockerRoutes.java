package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.locker.Locker;

/** The locker, for programs. */
final class LockerRoutes {
    private final Locker locker;
    private final Supplier<Knowledge> knowledge;
    private final ObjectMapper json;
    private final int bodyMs;

    LockerRoutes(Locker locker, Supplier<Knowledge> knowledge, ObjectMapper json, int bodyMs) {
        this.locker = locker;
        this.knowledge = knowledge;
        this.json = json;
        this.bodyMs = bodyMs;
    }

    void add(RoutesConfig routes) {
        LockerJson exact = new LockerJson(json);
        LockerWrites writes = new LockerWrites(locker, exact);
        new LockerUnitRoutes(locker, exact, writes, bodyMs).add(routes);
        new LockerTableRoutes(locker, knowledge, exact, writes, bodyMs).add(routes);
        new LockerBookingRoutes(locker, exact, writes, bodyMs).add(routes);
        new LockerAroundRoutes(locker, exact, writes, bodyMs).add(routes);
    }

    /** Says something that changes from one moment to the next and may hold names of people: nobody is to keep it. */
    static void answer(Context context, LockerJson json, Object value) {
        context.header("Cache-Control", "no-store");
        context.contentType("application/json; charset=utf-8").result(json.write(value));
    }

    /** Says something that whoever asks may keep for themselves, as long as they ask each time whether it still holds. */
    static void answerUnlessHad(Context context, String tag, Supplier<String> body) {
        context.header("Cache-Control", "private, no-cache");
        context.header("ETag", tag);
        if (IfMatch.has(context, tag)) {
            context.status(304);
        } else {
            context.contentType("application/json; charset=utf-8").result(body.get());
        }
    }
}
