package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.util.function.Function;
import java.util.function.Supplier;
import pairwright.advice.AtHand;
import pairwright.advice.Knowledge;
import pairwright.sheet.AskPage;
import pairwright.sheet.AtQuestion;
import pairwright.sheet.Html;
import pairwright.sheet.MovesPage;
import pairwright.sheet.Page;
import pairwright.sheet.SetUpPage;
import pairwright.sheet.WhyNotPage;

/** Asking, and what is asked after an answer. */
final class AskPageRoutes {
    private final Supplier<Knowledge> knowledge;
    private final AtHand atHand;
    private final Html html;
    private final Clock clock = Clock.systemDefaultZone();

    AskPageRoutes(Supplier<Knowledge> knowledge, AtHand atHand, Html html) {
        this.knowledge = knowledge;
        this.atHand = atHand;
        this.html = html;
    }

    void add(RoutesConfig routes) {
        page(routes, "/", AskPage::of);
        page(routes, "/why-not", WhyNotPage::of);
        page(routes, "/moves", MovesPage::of);
        page(routes, "/set-up", SetUpPage::of);
    }

    private void page(RoutesConfig routes, String path, Function<AtQuestion, Page> page) {
        Routes.get(routes, path, context -> show(context,
                page.apply(new AtQuestion(html, knowledge, atHand, PageRoutes.visit(context), Access.role(context), clock))));
    }

    private static void show(Context context, Page page) {
        context.status(page.status());
        PageRoutes.show(context, page.content());
    }
}
