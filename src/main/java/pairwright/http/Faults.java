package pairwright.http;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import pairwright.drawing.Reader;
import pairwright.model.Fault;
import pairwright.sheet.Html;
import pairwright.sheet.Visit;

/** Says what went wrong: to a browser that looks for a page, as a page; to everyone else, as a problem. */
final class Faults {
    /** What programs ask for, whatever they say they accept. */
    private static final List<String> NO_PAGES = List.of("/api", "/assets", "/schema");

    private final ObjectMapper json;
    private final Html html;

    Faults(ObjectMapper json, Html html) {
        this.json = json;
        this.html = html;
    }

    void send(Context context, Problem problem) {
        context.status(problem.status());
        context.res().addHeader("Vary", "Accept");
        if (wantsPage(context.header("Accept"), context.path())) {
            PageRoutes.show(context, page(problem, visit(context)));
        } else {
            context.result(problem(problem)).contentType(Problem.MEDIA_TYPE);
        }
    }

    /** Whether somebody looks for a page. Programs that take anything get what is easier to read for them. */
    static boolean wantsPage(String accepted, String path) {
        return accepted != null && accepted.contains("text/html")
                && NO_PAGES.stream().noneMatch(start -> path.equals(start) || path.startsWith(start + "/"));
    }

    String page(Problem problem, Visit visit) {
        List<String> says = problem.errors().isEmpty() ? List.of(problem.detail()) : problem.errors().stream().map(Fault::says).toList();
        return html.fault(problem.title(), says, visit);
    }

    String problem(Problem problem) {
        return Routes.write(json, problem);
    }

    /** The query is left alone: it may be what is broken. */
    private static Visit visit(Context context) {
        return new Visit(context.path(), Map.of(), new Reader(false, PageRoutes.locale(context.header("Accept-Language"))));
    }

    static Visit unknown() {
        return new Visit("/", Map.of(), Reader.METRIC);
    }
}
