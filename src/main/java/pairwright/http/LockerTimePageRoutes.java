package pairwright.http;

import io.javalin.config.RoutesConfig;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.locker.Locker;
import pairwright.sheet.Html;

/** The pages of time: bookings, the desk where units go out and come back, the month, coverage. */
final class LockerTimePageRoutes {
    LockerTimePageRoutes(Locker locker, Supplier<Knowledge> knowledge, Html html) {
    }

    void add(RoutesConfig routes) {
    }
}
