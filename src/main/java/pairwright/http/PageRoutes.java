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
import pairwright.advice.AtHand;
import pairwright.advice.KnowledgeStore;
import pairwright.drawing.Reader;
import pairwright.sheet.Assets;
import pairwright.sheet.GuidePage;
import pairwright.sheet.Html;
import pairwright.sheet.Visit;

/** The pages for people, and what a browser needs to show them. Nothing on them comes from another host. */
final class PageRoutes {
    private static final Pattern CONTROL = Pattern.compile("\\p{Cc}");

    private final KnowledgeStore knowledge;
    private final AtHand atHand;
    private final Assets assets;
    private final Html html;

    PageRoutes(KnowledgeStore knowledge, AtHand atHand, Assets assets, Html html) {
        this.knowledge = knowledge;
        this.atHand = atHand;
        this.assets = assets;
        this.html = html;
    }

    void add(RoutesConfig routes) {
        Routes.get(routes, "/assets/{name}", this::asset);
        page(routes, "/guide", new GuidePage(html)::page);
        new ReadingRoutes(knowledge, html).add(routes);
        new AskPageRoutes(knowledge::current, atHand, html).add(routes);
        new NumberPageRoutes(html).add(routes);
        new LabPageRoutes(knowledge::current, html).add(routes);
    }

    /** A page at an address. */
    static void page(RoutesConfig routes, String path, Function<Visit, String> page) {
        Routes.get(routes, path, context -> show(context, page.apply(visit(context))));
    }

    static void show(Context context, String page) {
        PageHeaders.send(context, page);
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
    static Locale locale(String accepted) {
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
