package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.locker.Locker;

/** Stored sessions, for programs. */
final class SessionRoutes {
    private final Locker locker;
    private final Supplier<Knowledge> knowledge;
    private final ObjectMapper json;
    private final int bodyMs;

    SessionRoutes(Locker locker, Supplier<Knowledge> knowledge, ObjectMapper json, int bodyMs) {
        this.locker = locker;
        this.knowledge = knowledge;
        this.json = json;
        this.bodyMs = bodyMs;
    }

    /** Addresses with a name of their own come before those of a session, which would take it for an id. */
    void add(RoutesConfig routes) {
        LockerJson exact = new LockerJson(json);
        LockerWrites writes = new LockerWrites(locker, exact);
        SessionStore store = new SessionStore(locker, knowledge, json);
        new SessionMarkRoutes(locker, store, knowledge, exact, writes, bodyMs).add(routes);
        new SessionStoreRoutes(locker, store, exact, writes, bodyMs).add(routes);
    }
}
