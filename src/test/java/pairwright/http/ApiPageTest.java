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
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Place;

/** The page about HTTP shows what really goes over the line. */
class ApiPageTest {
    private static final Path PAGE = Path.of("docs/api.md");
    private static final ZoneOffset OF_THE_PAGE = ZoneOffset.ofHours(1);
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
    void theLockerOnThePageAnswersAsOnThePage(@TempDir Path folder) throws IOException {
        try (LockerServing serving = LockerServing.open(Place.in(folder), Clock.system(OF_THE_PAGE))) {
            Reply unit = serving.post("/api/locker/units", region("unit request"));
            assertEquals(201, unit.status(), unit.body());
            same("unit answer", printed(unit.json()));
            Reply booked = serving.post("/api/locker/bookings", region("booking request"), "Idempotency-Key: one-of-the-page");
            assertEquals(201, booked.status(), booked.body());
            same("booking answer", atThePlaceOfThePage(printed(booked.json())));
            Reply taken = serving.post("/api/locker/bookings", region("booking request"), "Idempotency-Key: another-of-the-page");
            assertEquals(409, taken.status(), taken.body());
            same("clash", atThePlaceOfThePage(printed(taken.json())));
            Reply preview = serving.post("/api/locker/units/import?preview=true", region("table"), "Content-Type: text/csv");
            assertEquals(200, preview.status(), preview.body());
            same("table preview", printed(preview.json()));
        }
    }

    /** Times as a server in the zone of the page writes them: the moments stay the same. */
    private static String atThePlaceOfThePage(String text) {
        return Pattern.compile("\\d{4}-\\d\\d-\\d\\dT[0-9:]{8}(?:Z|[+-]\\d\\d:\\d\\d)").matcher(text)
                .replaceAll(time -> OffsetDateTime.parse(time.group()).withOffsetSameInstant(OF_THE_PAGE).format(DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx")));
    }

    @Test
    void everyAddressOnThePageIsDescribedAndTheOtherWayRound() throws IOException {
        String page = Files.readString(PAGE);
        Serving.OPEN_API.tree().path("paths").fieldNames().forEachRemaining(path -> {
            String shown = path.replace("/{id}", "").replace("/{name}", "/");
            assertTrue(page.contains(shown) || page.contains(path), path + " is not on the page");
        });
        Matcher addresses = Pattern.compile("`(?:GET |POST |PATCH |DELETE )?(/[a-z][a-z./{}-]*)").matcher(page);
        while (addresses.find()) {
            String address = addresses.group(1);
            assertTrue(Serving.OPEN_API.tree().path("paths").has(address) || address.equals("/schema/{kind}.schema.json"), address);
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
        Matcher region = Pattern.compile("<!-- region: " + name + " \\([^\\n]*-->\\n(?:```[a-z]+\\n)?(.*?)(?:```\\n)?<!-- endregion -->", Pattern.DOTALL).matcher(page);
        assertTrue(region.find(), "docs/api.md has no region " + name);
        return region;
    }
}
