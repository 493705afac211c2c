package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import pairwright.locker.Locker;

/** The locker, for programs. */
final class LockerRoutes {
    private final Locker locker;
    private final ObjectMapper json;
    private final int bodyMs;

    LockerRoutes(Locker locker, ObjectMapper json, int bodyMs) {
        this.locker = locker;
        this.json = json;
        this.bodyMs = bodyMs;
    }

    void add(RoutesConfig routes) {
    }
}
