package pairwright.http;

import io.javalin.config.RoutesConfig;

/** Says why the locker did not do something: to a program as a problem, to a browser as a page. */
final class LockerFaults {
    private LockerFaults() {
    }

    static void handle(RoutesConfig routes, Faults faults) {
    }
}
