package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.catalogue.Shown;
import pairwright.listen.TracksHeard;
import pairwright.model.Fault;
import pairwright.sheet.HeardPages;
import pairwright.sheet.Html;
import pairwright.sheet.ListenPage;
import pairwright.sheet.Visit;

/** Where recordings are given to be measured. The answer to a form is a page at once: as nothing is kept, there is no address to send a browser on to. */
final class ListenPageRoutes {
    private final ListenWork work;
    private final Supplier<Knowledge> knowledge;
    private final Html html;

    ListenPageRoutes(ListenWork work, Supplier<Knowledge> knowledge, Html html) {
        this.work = work;
        this.knowledge = knowledge;
        this.html = html;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/listen", this::form);
        routes.post("/listen", this::heard);
    }

    private void form(Context context) {
        String what = context.queryParam("what");
        if (what == null || ListenPage.ways().contains(what)) {
            show(context, List.of());
        } else {
            context.status(400);
            show(context, List.of("There is nothing to be measured as \"" + Shown.of(what) + "\". Choose one of those below"));
        }
    }

    private void heard(Context context) {
        Visit visit = PageRoutes.visit(context);
        HeardPages pages = new HeardPages(html, visit);
        try {
            String page = switch (Objects.requireNonNullElse(visit.first("what"), "source")) {
                case "source" -> {
                    ListenWork.SourceHeard heard = work.source(context);
                    yield pages.source(heard.measured(), heard.traits());
                }
                case "pair" -> {
                    TracksHeard heard = work.pairs(context);
                    yield pages.pairs(heard);
                }
                case "change" -> {
                    ListenWork.ChangeHeard heard = work.change(context);
                    yield pages.change(heard.before(), heard.after(), heard.change());
                }
                case "bleed" -> {
                    ListenWork.NeighbourHeard heard = work.bleed(context);
                    yield pages.bleed(heard.own(), heard.neighbour(), heard.bleed());
                }
                default -> throw new BadRequest(Problem.of(400, "There is nothing to be measured as \"" + Shown.of(visit.first("what")) + "\". Choose one of those below"));
            };
            context.header("Cache-Control", "no-store");
            PageRoutes.show(context, page);
        } catch (BadRequest bad) {
            Problem problem = bad.problem();
            context.status(problem.status());
            show(context, problem.errors().isEmpty() ? List.of(problem.detail()) : problem.errors().stream().map(Fault::says).toList());
        } catch (SessionTurns.Later later) {
            context.header("Retry-After", Long.toString(later.retryAfterS()));
            context.status(503);
            show(context, List.of(later.getMessage()));
        }
    }

    private void show(Context context, List<String> faults) {
        PageRoutes.show(context, ListenPage.form(html, PageRoutes.visit(context), knowledge.get().catalogue(), faults));
    }
}
