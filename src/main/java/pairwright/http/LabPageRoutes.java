package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.lab.CoverageDesk;
import pairwright.lab.Kinds;
import pairwright.lab.Lab;
import pairwright.locker.Role;
import pairwright.sheet.CoursePage;
import pairwright.sheet.Html;
import pairwright.sheet.LabPage;
import pairwright.sheet.Page;
import pairwright.sheet.PracticePage;
import pairwright.sheet.Visit;

/** The pages of the lab for everybody: what there is, and exercises to practise with. */
final class LabPageRoutes {
    /** Numbers of exercises that are dealt out. */
    private static final int MOST_SEEDS = 100_000;

    private final Supplier<Knowledge> knowledge;
    private final Html html;
    private final CoverageDesk coverage = new CoverageDesk(new Kinds());

    LabPageRoutes(Supplier<Knowledge> knowledge, Html html) {
        this.knowledge = knowledge;
        this.html = html;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/lab", context -> PageRoutes.show(context, LabPage.of(html, PageRoutes.visit(context), Access.role(context).covers(Role.INSTRUCTOR))));
        PageRoutes.page(routes, "/lab/course", visit -> CoursePage.of(html, knowledge.get(), visit, coverage.state(new Lab(knowledge.get(), null))));
        Routes.get(routes, "/lab/practice/{kind}/{level}", this::any);
        Routes.get(routes, "/lab/practice/{kind}/{level}/{seed}", this::practice);
    }

    private static Optional<PracticePage.Wanted> wanted(Context context) {
        return PracticePage.wanted(context.pathParam("kind"), context.pathParam("level"));
    }

    private void any(Context context) {
        Visit visit = PageRoutes.visit(context);
        Optional<PracticePage.Wanted> wanted = wanted(context);
        if (wanted.isEmpty()) {
            show(context, none(context, visit));
            return;
        }
        context.header("Cache-Control", "no-store"); // the next one is another
        context.redirect(visit.to(wanted.get().address(Integer.toString(1 + ThreadLocalRandom.current().nextInt(MOST_SEEDS)))), HttpStatus.FOUND);
    }

    private void practice(Context context) {
        Visit visit = PageRoutes.visit(context);
        show(context, wanted(context).map(wanted -> PracticePage.of(html, knowledge.get(), visit, wanted, context.pathParam("seed"))).orElseGet(() -> none(context, visit)));
    }

    private Page none(Context context, Visit visit) {
        return PracticePage.none(html, visit, context.pathParam("kind"), context.pathParam("level"));
    }

    private static void show(Context context, Page page) {
        context.status(page.status());
        PageRoutes.show(context, page.content());
    }
}
