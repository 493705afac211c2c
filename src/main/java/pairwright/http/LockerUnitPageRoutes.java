package pairwright.http;

import io.javalin.config.RoutesConfig;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.locker.Locker;
import pairwright.sheet.Html;

/** The pages of units: the list, one unit, adding, altering, import. */
final class LockerUnitPageRoutes {
    LockerUnitPageRoutes(Locker locker, Supplier<Knowledge> knowledge, Html html) {
    }

    void add(RoutesConfig routes) {
    }
}
