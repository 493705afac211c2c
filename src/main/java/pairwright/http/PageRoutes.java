package pairwright.http;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import pairwright.advice.KnowledgeStore;
import pairwright.drawing.Reader;
import pairwright.model.Fault;
import pairwright.sheet.Assets;
import pairwright.sheet.GuidePage;
import pairwright.sheet.Html;
import pairwright.sheet.Visit;

/** The pages for people, and what a browser needs to show them. Nothing on them comes from another host. */
final class PageRoutes {
    private static final Pattern CONTROL = Pattern.compile("\\p{Cc}");

    private final Assets assets = new Assets();
    private final Html html = new Html(assets);
    private final KnowledgeStore knowledge;

    PageRoutes(KnowledgeStore knowledge) {
        this.knowledge = knowledge;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/assets/{name}", this::asset);
        page(routes, "/guide", new GuidePage(html)::page);
        new AskPageRoutes(knowledge::current, html).add(routes);
    }

    /** A page at an address. */
    static void page(RoutesConfig routes, String path, Function<Visit, String> page) {
        Routes.get(routes, path, context -> show(context, page.apply(visit(context))));
    }

    static void show(Context context, String page) {
        PageHeaders.send(context, page);
    }

    /** Whether a person looks on, rather than a program: then even what went wrong is a page. */
    static boolean wantsPage(Context context) {
        String path = context.path();
        String accepts = context.header("Accept");
        return accepts != null && accepts.contains("text/html") && !path.startsWith("/api/") && !path.startsWith("/assets/") && !path.startsWith("/schema/");
    }

    /** What went wrong, for a person. The query is left alone: it may be what is wrong. */
    void problem(Context context, Problem problem) {
        Visit visit = new Visit(context.path(), Map.of(), new Reader(false, locale(context.header("Accept-Language"))));
        List<String> says = problem.errors().isEmpty() ? List.of(problem.detail()) : problem.errors().stream().map(Fault::says).toList();
        context.status(problem.status());
        context.res().addHeader("Vary", "Accept");
        show(context, html.fault(problem.title(), says, visit));
    }

    private void asset(Context context) {
        Assets.Asset asset = assets.at(context.path());
        if (asset == null) {
            throw new BadRequest(Problem.of(404, "There is no such file. Load the page anew"));
        }
        context.contentType(asset.type()).result(asset.content());
        context.header("Cache-Control", "public, max-age=31536000, immutable");
    }

    static Visit visit(Context context) {
        Map<String, List<String>> query = new LinkedHashMap<>();
        // a page can show no control character, and no field has a use for one
        context.queryParamMap().forEach((name, values) -> query.put(name, values.stream().map(value -> CONTROL.matcher(value).replaceAll(" ")).toList()));
        return new Visit(context.path(), query, new Reader("imperial".equals(context.queryParam("units")), locale(context.header("Accept-Language"))));
    }

    /** The language the reader likes best, for the way numbers are written; with a decimal point where none is named. */
    private static Locale locale(String accepted) {
        if (accepted == null || accepted.isBlank()) {
            return Locale.UK;
        }
        try {
            return Locale.LanguageRange.parse(accepted).stream().max(Comparator.comparingDouble(Locale.LanguageRange::getWeight))
                    .map(range -> Locale.forLanguageTag(range.getRange())).filter(locale -> !locale.getLanguage().isEmpty()).orElse(Locale.UK);
        } catch (IllegalArgumentException nonsense) {
            return Locale.UK;
        }
    }
}
