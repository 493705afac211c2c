package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.function.Function;
import pairwright.advice.KnowledgeStore;
import pairwright.sheet.Html;
import pairwright.sheet.Page;
import pairwright.sheet.Readings;
import pairwright.sheet.Shelf;
import pairwright.sheet.Visit;

/** The catalogue and the rules to read. */
final class ReadingRoutes {
    private final Readings readings;

    ReadingRoutes(KnowledgeStore knowledge, Html html) {
        readings = new Readings(html, knowledge::current);
    }

    void add(RoutesConfig routes) {
        page(routes, "/catalogue", context -> readings.catalogue(visit(context)));
        for (Shelf shelf : Shelf.values()) {
            page(routes, "/" + shelf.id(), context -> readings.list(shelf, visit(context)));
            page(routes, "/" + shelf.id() + "/{id}", context -> readings.entry(shelf, context.pathParam("id"), visit(context)));
        }
        for (Shelf shelf : Shelf.values()) {
            moved(routes, "/catalogue/" + shelf.id());
            moved(routes, "/catalogue/" + shelf.id() + "/{id}");
        }
        page(routes, "/rules", context -> readings.rules(visit(context)));
        page(routes, "/rules/{id}", context -> readings.rule(context.pathParam("id"), visit(context)));
    }

    /** The way one guesses from the menu: the kinds of entries stand beside the catalogue, not below it. */
    private static void moved(RoutesConfig routes, String path) {
        Routes.get(routes, path, context -> {
            String query = context.queryString();
            context.header("Location", context.path().substring("/catalogue".length()) + (query == null ? "" : "?" + query));
            context.status(308);
        });
    }

    private static void page(RoutesConfig routes, String path, Function<Context, Page> made) {
        Routes.get(routes, path, context -> {
            Page page = made.apply(context);
            context.status(page.status());
            PageRoutes.show(context, page.content());
        });
    }

    private static Visit visit(Context context) {
        return PageRoutes.visit(context);
    }
}
