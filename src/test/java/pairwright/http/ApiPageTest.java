package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page about HTTP shows what really goes over the line. */
class ApiPageTest {
    private static final Path PAGE = Path.of("docs/api.md");
    private static final Set<String> WHOLE = Set.of("understood", "errors");
    private static final Set<String> SHOWN = Set.of("question", "understood", "words", "as", "id", "name", "assumed", "options", "rank", "score", "technique", "mics", "micType", "family",
            "pattern", "position", "positionName", "distanceM", "aimDegrees", "phantom", "predicted", "peakDbSpl", "headroomDb", "signalToNoiseDb", "gainDb", "separationDb", "together",
            "delayMs", "contrastDb", "reasons", "rule", "mic", "effect", "points", "says", "values", "value", "unit", "cautions", "severity", "ruledOut", "sureness", "draws", "sure", "firstShare", "firstThreeShare");

    @Test
    void theQuestionOnThePageGetsTheAnswerOnThePage() throws IOException {
        Reply reply = Serving.ask(region("request"));
        assertEquals(200, reply.status(), reply.body());
        same("answer", printed(shortened(reply.json())));
    }

    @Test
    void theProblemOnThePageIsWhatSuchABodyGets() throws IOException {
        same("problem", printed(Serving.ask("{\"words\": \"snare\", \"limits\": {\"mics\": 0, \"phantom\": \"no\"}, \"rooms\": \"barn\"}").json()));
    }

    @Test
    void theNumberOnThePageIsWorkedAsOnThePage() throws IOException {
        Reply reply = Serving.post(Serving.port(), "/api/numbers/proximity", "application/json",
                region("number request").getBytes(StandardCharsets.UTF_8));
        assertEquals(200, reply.status(), reply.body());
        same("number answer", printed(reply.json()));
    }

    @Test
    void thePageListsTheCalculations() throws IOException {
        StringBuilder table = new StringBuilder("| id | answers | inputs |\n|---|---|---|\n");
        Serving.get("/api/numbers").json().path("entries").forEach(entry -> {
            List<String> inputs = new ArrayList<>();
            entry.path("inputs").forEach(input -> inputs.add("`" + input.path("name").asText() + "`" + (input.path("required").asBoolean() ? "" : "?")));
            table.append("| `").append(entry.path("id").asText()).append("` | ").append(entry.path("answers").asText()).append(" | ")
                    .append(String.join(", ", inputs)).append(" |\n");
        });
        same("numbers", table.toString());
    }

    @Test
    void everyAddressOnThePageIsDescribedAndTheOtherWayRound() throws IOException {
        String page = Files.readString(PAGE);
        Serving.OPEN_API.tree().path("paths").fieldNames().forEachRemaining(path -> {
            String shown = path.replace("/{id}", "").replace("/{name}", "/");
            assertTrue(page.contains(shown), path + " is not on the page");
        });
        Matcher addresses = Pattern.compile("`(?:GET |POST )?(/[a-z][a-z./-]*)").matcher(page);
        while (addresses.find()) {
            String address = addresses.group(1);
            assertTrue(Serving.OPEN_API.tree().path("paths").has(address) || address.equals("/api/rules/") || address.equals("/api/numbers/") || address.equals("/schema/"), address);
        }
    }

    private static JsonNode shortened(JsonNode node) {
        if (!node.isObject()) {
            return node;
        }
        ObjectNode less = JsonNodeFactory.instance.objectNode();
        node.properties().stream().filter(field -> SHOWN.contains(field.getKey())).forEach(field -> {
            if (field.getValue().isArray()) {
                ArrayNode list = less.putArray(field.getKey());
                field.getValue().forEach(entry -> {
                    if (list.isEmpty() || WHOLE.contains(field.getKey())) {
                        list.add(shortened(entry));
                    }
                });
            } else {
                less.set(field.getKey(), shortened(field.getValue()));
            }
        });
        return less;
    }

    private static String printed(JsonNode node) throws IOException {
        return OpenApi.JSON.writerWithDefaultPrettyPrinter().writeValueAsString(node).replace(System.lineSeparator(), "\n") + "\n";
    }

    private static void same(String name, String real) throws IOException {
        if (Boolean.getBoolean("rewrite")) {
            String page = Files.readString(PAGE);
            Matcher region = find(name, page);
            Files.writeString(PAGE, page.substring(0, region.start(1)) + real + page.substring(region.end(1)));
        }
        assertEquals(real, region(name), "write it anew with: mvn -q test -Dtest=ApiPageTest -Drewrite=true");
    }

    private static String region(String name) throws IOException {
        return find(name, Files.readString(PAGE)).group(1);
    }

    private static Matcher find(String name, String page) {
        Matcher region = Pattern.compile("<!-- region: " + name + " \\([^\\n]*-->\\n(?:```json\\n)?(.*?)(?:```\\n)?<!-- endregion -->", Pattern.DOTALL).matcher(page);
        assertTrue(region.find(), "docs/api.md has no region " + name);
        return region;
    }
}
