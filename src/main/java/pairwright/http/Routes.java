package pairwright.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import io.micrometer.prometheusmetrics.PrometheusMeterRegistry;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import pairwright.advice.Advisor;
import pairwright.advice.AtHand;
import pairwright.advice.HouseState;
import pairwright.advice.Knowledge;
import pairwright.advice.KnowledgeStore;
import pairwright.catalogue.Shown;
import pairwright.model.Reading;
import pairwright.model.Suggestion;
import pairwright.rules.RuleBase;
import pairwright.rules.RuleInfo;
import pairwright.search.Suggester;

/** The addresses and what answers at each. */
final class Routes {
    private static final int LONGEST_SEARCH = 200;
    private static final int MOST_FOUND = 12;
    private static final Pattern SCHEMA_NAME = Pattern.compile("[a-z-]{1,40}\\.schema\\.json");

    private final KnowledgeStore knowledge;
    private final ObjectMapper json;
    private final PrometheusMeterRegistry metrics;
    private final AtHand atHand;
    private final Advisor advisor;
    private final int bodyMs;
    private final String openApi = resource("/pairwright/openapi.yaml");

    /** An entry in a list. */
    record Line(String id, String name, String family, String says) {
    }

    /** What a list holds. */
    record Lines(List<Line> entries) {
    }

    /** What a search found. */
    record Found(String words, List<Reading> found) {
    }

    /** How a sentence may go on. */
    record Suggestions(String words, List<Suggestion> suggestions) {
    }

    /** A rule in a list. */
    record RuleLine(String id, String title, String concern, String effect, double points, String says) {
    }

    /** The rules. */
    record RuleLines(String version, List<RuleLine> rules) {
    }

    /** How the server is. */
    record Health(String status, String version, String catalogueVersion, String rulesVersion, House house, List<String> faults) {
    }

    /** How the house folder is, and how much of it is in use. */
    record House(String state, int entries, int rules) {
    }

    Routes(KnowledgeStore knowledge, AtHand atHand, ObjectMapper json, PrometheusMeterRegistry metrics, int bodyMs) {
        this.knowledge = knowledge;
        this.atHand = atHand;
        this.json = json;
        this.metrics = metrics;
        this.bodyMs = bodyMs;
        this.advisor = new Advisor(knowledge::current, atHand);
    }

    void add(RoutesConfig routes) {
        routes.post("/api/ask", this::ask);
        new AskMoreRoutes(knowledge, atHand, json, bodyMs).add(routes);
        get(routes, "/api/complaints", context -> list(context, now().catalogue().complaints().values().stream()
                .map(complaint -> new Line(complaint.id(), complaint.name(), complaint.gauge().id(), complaint.says())).toList()));
        get(routes, "/api/complaints/{id}", context -> entry(context, now().catalogue().complaints(), "complaint"));
        get(routes, "/api/sources", context -> list(context, now().catalogue().sources().values().stream()
                .map(source -> new Line(source.id(), source.name(), source.family().id(), source.says())).toList()));
        get(routes, "/api/sources/{id}", context -> entry(context, now().catalogue().sources(), "source"));
        get(routes, "/api/mics", context -> list(context, now().catalogue().mics().values().stream()
                .map(mic -> new Line(mic.id(), mic.name(), mic.family().id(), mic.says())).toList()));
        get(routes, "/api/mics/{id}", context -> entry(context, now().catalogue().mics(), "mic type"));
        get(routes, "/api/characters", context -> list(context, now().catalogue().characters().values().stream()
                .map(character -> new Line(character.id(), character.name(), null, character.says())).toList()));
        get(routes, "/api/characters/{id}", context -> entry(context, now().catalogue().characters(), "character"));
        get(routes, "/api/rooms", context -> list(context, now().catalogue().rooms().values().stream()
                .map(room -> new Line(room.id(), room.name(), null, room.says())).toList()));
        get(routes, "/api/rooms/{id}", context -> entry(context, now().catalogue().rooms(), "room"));
        get(routes, "/api/techniques", context -> list(context, now().catalogue().techniques().values().stream()
                .map(technique -> new Line(technique.id(), technique.name(), technique.arrangement().id(), technique.says())).toList()));
        get(routes, "/api/techniques/{id}", context -> entry(context, now().catalogue().techniques(), "technique"));
        get(routes, "/api/rules", this::rules);
        get(routes, "/api/rules/{id}", this::rule);
        get(routes, "/api/search", this::search);
        get(routes, "/api/suggest", this::suggest);
        get(routes, "/health", this::health);
        get(routes, "/metrics", context -> context.contentType("text/plain; version=0.0.4; charset=utf-8").result(metrics.scrape()));
        get(routes, "/openapi.yaml", context -> context.contentType("application/yaml; charset=utf-8").result(openApi));
        get(routes, "/schema/{name}", this::schema);
        new NumbersRoutes(json, bodyMs).add(routes);
    }

    /** HEAD says the same as GET, less the body, which the server leaves out. */
    static void get(RoutesConfig routes, String path, Handler handler) {
        routes.get(path, handler);
        routes.head(path, handler);
    }

    private Knowledge now() {
        return knowledge.current();
    }

    private void ask(Context context) {
        answer(context, advisor.ask(RequestBody.read(Body.json(context, bodyMs), json)));
    }

    private void list(Context context, List<Line> lines) {
        answer(context, new Lines(lines));
    }

    private void entry(Context context, Map<String, ?> entries, String kind) {
        String id = context.pathParam("id");
        Object entry = entries.get(id);
        if (entry == null) {
            throw new BadRequest(Problem.of(404, noSuch(kind, id, entries.keySet())));
        }
        answer(context, entry);
    }

    private String noSuch(String kind, String id, Collection<String> known) {
        List<String> near = now().reader().nearest(Shown.of(id).replace('-', ' '), MOST_FOUND).stream()
                .map(Reading::id).filter(known::contains).distinct().limit(3).toList();
        return "There is no " + kind + " \"" + Shown.of(id) + "\"." + (near.isEmpty() ? "" : " Maybe " + String.join(" or ", near));
    }

    private void rules(Context context) {
        RuleBase rules = now().rules();
        answer(context, new RuleLines(rules.version(), rules.rules().stream()
                .map(rule -> new RuleLine(rule.id(), rule.title(), rule.concern(), rule.effect().id(), rule.points(), rule.says()))
                .toList()));
    }

    private void rule(Context context) {
        String id = context.pathParam("id");
        RuleInfo rule = now().rules().rules().stream().filter(one -> one.id().equalsIgnoreCase(id)).findFirst().orElseThrow(
                () -> new BadRequest(Problem.of(404, "There is no rule \"" + Shown.of(id) + "\". All ids are at /api/rules")));
        answer(context, rule);
    }

    private void search(Context context) {
        String words = words(context, LONGEST_SEARCH, "searched for");
        answer(context, new Found(words, now().reader().nearest(words, MOST_FOUND)));
    }

    private void suggest(Context context) {
        String words = words(context, Suggester.LONGEST, "completed");
        answer(context, new Suggestions(words, now().suggester().suggest(words)));
    }

    private static String words(Context context, int longest, String what) {
        String words = context.queryParam("words");
        if (words == null || words.isBlank()) {
            throw new BadRequest(Problem.of(400, "words is missing. Ask like " + context.path() + "?words=snare"));
        }
        if (words.length() > longest) {
            throw new BadRequest(Problem.of(400, "words is " + words.length() + " characters; at most " + longest + " are " + what));
        }
        return words;
    }

    private void health(Context context) {
        KnowledgeStore.Status status = knowledge.status();
        HouseState house = status.house();
        answer(context, new Health(house.faults().isEmpty() ? "ok" : "ok, with the last good set", knowledge.programVersion(),
                status.knowledge().catalogue().version(), status.knowledge().rules().version(),
                new House(house.state().says(), house.entries(), house.rules()), knowledge.faultsInside()));
    }

    private void schema(Context context) {
        String name = context.pathParam("name");
        String text = SCHEMA_NAME.matcher(name).matches() ? resource("/pairwright/schema/" + name) : null;
        if (text == null) {
            throw new BadRequest(Problem.of(404, "There is no schema \"" + Shown.of(name) + "\""));
        }
        context.contentType("application/schema+json").result(text);
    }

    private void answer(Context context, Object entry) {
        answer(context, json, entry);
    }

    static void answer(Context context, ObjectMapper json, Object entry) {
        context.contentType("application/json; charset=utf-8").result(write(json, entry));
    }

    static String write(ObjectMapper json, Object value) {
        try {
            return json.writeValueAsString(value);
        } catch (JsonProcessingException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static String resource(String path) {
        try (InputStream in = Routes.class.getResourceAsStream(path)) {
            return in == null ? null : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
