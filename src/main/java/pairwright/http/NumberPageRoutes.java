package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import pairwright.sheet.Html;
import pairwright.sheet.NumberPages;

/** Worked numbers as pages. */
final class NumberPageRoutes {
    private final NumberPages pages;

    NumberPageRoutes(Html html) {
        this.pages = new NumberPages(html);
    }

    void add(RoutesConfig routes) {
        PageRoutes.page(routes, "/numbers", pages::list);
        Routes.get(routes, "/numbers/{id}", this::one);
    }

    private void one(Context context) {
        NumberPages.Page page = pages.one(context.pathParam("id"), PageRoutes.visit(context));
        context.status(page.status());
        PageRoutes.show(context, page.html());
    }
}
