package pairwright.http;

import io.javalin.config.RoutesConfig;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.locker.Locker;
import pairwright.sheet.Html;

/** The pages of the locker. */
final class LockerPageRoutes {
    private final Locker locker;
    private final Supplier<Knowledge> knowledge;
    private final Html html;

    LockerPageRoutes(Locker locker, Supplier<Knowledge> knowledge, Html html) {
        this.locker = locker;
        this.knowledge = knowledge;
        this.html = html;
    }

    void add(RoutesConfig routes) {
        new LockerUnitPageRoutes(locker, knowledge, html).add(routes);
        new LockerTimePageRoutes(locker, knowledge, html).add(routes);
    }
}
