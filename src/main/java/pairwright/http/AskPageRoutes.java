package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.function.Function;
import java.util.function.Supplier;
import pairwright.advice.AtHand;
import pairwright.advice.Knowledge;
import pairwright.sheet.AskPage;
import pairwright.sheet.Html;
import pairwright.sheet.MovesPage;
import pairwright.sheet.Page;
import pairwright.sheet.SetUpPage;
import pairwright.sheet.Visit;
import pairwright.sheet.WhyNotPage;

/** Asking, and what is asked after an answer. */
final class AskPageRoutes {
    private final Supplier<Knowledge> knowledge;
    private final AtHand atHand;
    private final Html html;

    AskPageRoutes(Supplier<Knowledge> knowledge, AtHand atHand, Html html) {
        this.knowledge = knowledge;
        this.atHand = atHand;
        this.html = html;
    }

    void add(RoutesConfig routes) {
        page(routes, "/", new AskPage(knowledge, atHand, html)::page);
        page(routes, "/why-not", new WhyNotPage(knowledge, atHand, html)::page);
        page(routes, "/moves", new MovesPage(knowledge, atHand, html)::page);
        page(routes, "/set-up", new SetUpPage(knowledge, atHand, html)::page);
    }

    private static void page(RoutesConfig routes, String path, Function<Visit, Page> page) {
        Routes.get(routes, path, context -> show(context, page.apply(PageRoutes.visit(context))));
    }

    private static void show(Context context, Page page) {
        context.status(page.status());
        PageRoutes.show(context, page.content());
    }
}
