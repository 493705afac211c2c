package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import pairwright.numbers.CalculationInfo;
import pairwright.numbers.Input;
import pairwright.numbers.InputKind;
import pairwright.numbers.Numbers;

/** Worked numbers as pages, from the real server. */
class NumberPagesTest {
    private static final Numbers NUMBERS = new Numbers();
    private static final List<String> NONSENSE = List.of("far", "1e999", "NaN", "--1", "1;2;x", "<script>alert(1)</script>", "\"'&", "5 parsecs", "9".repeat(2_000), "\u202e1", "%", "1,2,3.4.5");

    static Stream<CalculationInfo> calculations() {
        return NUMBERS.all().stream();
    }

    @Test
    void theListLeadsToEachCalculationOnceAndSaysWhatItAnswers() {
        String page = Serving.get("/numbers").body();
        calculations().forEach(info -> {
            assertEquals(2, page.split("href=\"/numbers/" + info.id() + "\"", -1).length, info.id());
            assertTrue(page.contains(info.answers()), info.answers());
        });
        assertFalse(page.contains("<h2>Others</h2>"));
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void theExampleIsWorkedAsTheAddressForProgramsWorksIt(CalculationInfo info) {
        Reply page = Serving.get("/numbers/" + info.id());
        JsonNode worked = posted(info);
        assertEquals(200, page.status(), page.body());
        assertTrue(page.body().contains("<p class=\"answer\" data-says>" + worked.path("says").asText().replace("<", "&lt;") + "</p>"), page.body());
        List<String> cells = cells(page.body());
        assertEquals(worked.path("result").size(), cells.size());
        for (int i = 0; i < cells.size(); i++) {
            JsonNode value = worked.path("result").path(i);
            String[] cell = cells.get(i).split(" ", 2);
            assertEquals(value.path("value").asDouble(), Double.parseDouble(cell[0]), 0.0006 * Math.abs(value.path("value").asDouble()) + 0.00006, cells.get(i));
            assertEquals(value.path("unit").asText(), cell.length == 1 ? "1" : cell[1]);
        }
        worked.path("steps").forEach(step -> assertTrue(page.body().contains("<li>" + step.asText() + "</li>"), step.asText()));
        int at = 0;
        for (JsonNode caution : worked.path("cautions")) {
            int found = page.body().indexOf("<p class=\"" + caution.path("severity").asText() + "\">", at);
            assertTrue(found > at, caution.toString());
            at = found + 1;
        }
        assertTrue(at < page.body().indexOf("data-says"), "cautions come first");
        assertTrue(page.body().contains("<svg"), "a picture");
        info.inputs().forEach(input -> assertTrue(page.body().contains("<label for=\"in-" + input.name() + "\">"), input.name()));
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void theAddressOfTheFormReproducesTheCalculation(CalculationInfo info) {
        Reply page = Serving.get("/numbers/" + info.id());
        Reply again = Serving.get(address(info, example(info)));
        assertEquals(200, again.status(), again.body());
        assertEquals(cells(page.body()), cells(again.body()));
        Reply part = Serving.get(address(info, example(info)) + "&part=worked");
        assertTrue(again.body().contains(part.body().strip()));
        assertFalse(part.body().contains("<html"));
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void nonsenseInAFieldIsSaidAtThatFieldAndKept(CalculationInfo info) {
        for (Input input : info.inputs()) {
            for (String text : NONSENSE) {
                Map<String, String> asked = example(info);
                asked.put(input.name(), text);
                Reply page = Serving.get(address(info, asked));
                String about = info.id() + " " + input.name() + "=" + text;
                assertEquals(400, page.status(), about);
                assertTrue(page.body().contains("<li class=\"fault\" data-field=\"" + input.name() + "\">"), about + page.body());
                assertTrue(page.body().contains("id=\"in-" + input.name() + "\""), about);
                assertFalse(page.body().contains("<script>alert"), about);
                assertFalse(page.body().contains("data-says"), about);
                if (input.kind() != InputKind.WORD && input.kind() != InputKind.PATTERN) {
                    String field = page.body().substring(page.body().indexOf("id=\"in-" + input.name() + "\""));
                    assertTrue(field.startsWith("id=\"in-" + input.name() + "\" name=\"" + input.name() + "\" type=\"text\" autocomplete=\"off\" spellcheck=\"false\" value=\""
                            + escaped(text) + "\""), about + field.substring(0, 300));
                    String tag = field.substring(0, field.indexOf(">\n"));
                    assertTrue(tag.contains("aria-invalid=\"true\"") && tag.contains("fault-" + input.name() + "\""), about + tag);
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void anEmptyFieldIsMissedOnlyWhereItIsNeeded(CalculationInfo info) {
        for (Input input : info.inputs()) {
            if (input.kind() == InputKind.WORD || input.kind() == InputKind.PATTERN) {
                continue; // a word is chosen, so it is never empty
            }
            Map<String, String> asked = example(info);
            asked.put(input.name(), "");
            Reply page = Serving.get(address(info, asked));
            boolean needed = input.required() || info.id().equals("noise") && input.name().equals("selfNoiseDba");
            assertEquals(needed ? 400 : 200, page.status(), info.id() + " " + input.name() + page.body());
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "delay?distanceM=80 cm | delay?distanceM=0.8",
            "delay?distanceM=0,8 | delay?distanceM=0.8",
            "delay?distanceM=3 ft | delay?distanceM=0.9144",
            "delay?distanceM=10 in | delay?distanceM=0.254",
            "delay?distanceM=5'3\" | delay?distanceM=1.6002",
            "delay?distanceM=1&frequencyHz=2,5 kHz | delay?distanceM=1&frequencyHz=2500",
            "delay?distanceM=1&sampleRateHz=48k | delay?distanceM=1&sampleRateHz=48000",
            "proximity?distanceM=0.1&pattern=0.37 | proximity?distanceM=0.1&pattern=cardioid&omniPart=0,37",
            "exposure?levelDba=100; 90&hours=1 h; 30 min | exposure?levelDba=100;90&hours=1;0.5",
            "phantom-budget?currentsMa=3, 4.5&supplyRatingMa=20 | phantom-budget?currentsMa=3;4.5&supplyRatingMa=20 mA",
            "phantom-budget?currentsMa=3,4.5&supplyRatingMa=20 | phantom-budget?currentsMa=3;4,5&supplyRatingMa=20",
            "ribbon-loading?loadOhm=1.5 kohm | ribbon-loading?loadOhm=1500",
            "delay?distanceM=2&units=imperial&measures=metric | delay?distanceM=2",
            "delay?distanceM=2 m&units=imperial | delay?distanceM=2"})
    void unitsAndCommasAreRead(String typed, String plain) {
        Reply one = Serving.get("/numbers/" + escapedQuery(typed));
        Reply other = Serving.get("/numbers/" + escapedQuery(plain));
        assertEquals(200, one.status(), one.body());
        assertEquals(cells(other.body()), cells(one.body()));
    }

    @Test
    void allFaultsAreSaidAtOnceInTheOrderOfTheFields() {
        String page = Serving.get("/numbers/proximity?pattern=cardoid&distanceM=50&frequencyHz=1,200&angleDegrees=front").body();
        List<String> fields = Stream.of(page.split("data-field=\"", -1)).skip(1).map(rest -> rest.substring(0, rest.indexOf('"'))).toList();
        assertEquals(List.of("pattern", "distanceM", "frequencyHz", "angleDegrees"), fields);
        assertTrue(page.contains("Distance must be 1 cm to 20 m, but was 50 m"), page);
        assertTrue(page.contains("may mean 1.200 or 1200"), page);
    }

    @Test
    void whatDoesNotGoTogetherIsSaidAtItsFieldInWordsOfThePage() {
        String page = Serving.get("/numbers/noise?sensitivityMvPerPa=20&levelDba=74&selfNoiseDba=10&resistanceOhm=200").body();
        assertTrue(page.contains("data-field=\"selfNoiseDba\""), page);
        assertTrue(page.contains("Self noise and \u201cResistance\u201d are both given"), page);
        assertFalse(page.contains("selfNoiseDba and"), page);
    }

    @Test
    void inFeetAndInchesTheNumberIsShownAndReadInThemAndTheSiValueStandsBeside() {
        String page = Serving.get("/numbers/proximity?pattern=cardioid&distanceM=4&frequencyHz=100&angleDegrees=0&measures=imperial&units=imperial").body();
        assertTrue(page.contains("A cardioid at 4 in gives"), page);
        assertTrue(page.contains("4 in (0.1016 m)"), page);
        assertTrue(page.contains("<span class=\"unit\">in</span>"), page);
        assertTrue(page.contains("href=\"/numbers?units=imperial\""), page);
    }

    @Test
    void aChangeOfMeasuresChangesWhatStandsInTheFieldAndNotTheDistance() {
        String page = Serving.get("/numbers/proximity?pattern=cardioid&distanceM=0.3&measures=metric&units=imperial").body();
        assertTrue(page.contains("name=\"distanceM\" type=\"text\" autocomplete=\"off\" spellcheck=\"false\" value=\"11.81\""), page);
        assertTrue(page.contains("12 in (0.3 m)"), page);
    }

    @Test
    void aReaderWithADecimalCommaSeesAndTypesIt() {
        Reply page = Serving.send(Serving.port(), "GET /numbers/delay?distanceM=1,234 HTTP/1.1\r\nHost: localhost\r\nAccept-Language: de\r\nConnection: close\r\n\r\n");
        assertEquals(200, page.status());
        assertTrue(page.body().contains("Over 1,23 m sound takes 3,6 ms"), page.body());
        assertTrue(page.body().contains("1,234 m"), page.body());
    }

    @Test
    void aCalculationThereIsNotIs404AndNamesTheNearest() {
        Reply page = Serving.get("/numbers/proximty");
        assertEquals(404, page.status());
        assertTrue(page.body().contains("Did you mean proximity?"), page.body());
        assertEquals(404, Serving.get("/numbers/%3Cscript%3E").status());
        assertFalse(Serving.get("/numbers/%3Cscript%3E").body().contains("<script>"));
    }

    @Test
    void anAddressThatIsTooLongIsRefusedAndNeverAMistakeOfTheProgram() {
        assertEquals(414, Serving.get("/numbers/delay?distanceM=" + "9".repeat(10_000)).status());
    }

    @Test
    void aCautionLeadsToTheCalculationItSpeaksOf() {
        String page = Serving.get("/numbers/level-at-distance").body();
        assertTrue(page.contains("<a href=\"/numbers/exposure\">noise exposure</a>"), page);
    }

    private static Map<String, String> example(CalculationInfo info) {
        Map<String, String> asked = new LinkedHashMap<>();
        info.inputs().forEach(input -> {
            Object value = info.example().getOrDefault(input.name(), input.usual());
            if (value != null) {
                asked.put(input.name(), value instanceof List<?> list ? list.stream().map(Object::toString).collect(Collectors.joining("; ")) : value.toString());
            }
        });
        return asked;
    }

    private static String address(CalculationInfo info, Map<String, String> asked) {
        return "/numbers/" + info.id() + "?" + asked.entrySet().stream().map(one -> one.getKey() + "=" + URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    private static String escapedQuery(String query) {
        return query.replace(" ", "%20").replace("\"", "%22").replace("'", "%27").replace(";", "%3B");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&#34;").replace("'", "&#39;");
    }

    /** The values of the table of results. */
    private static List<String> cells(String page) {
        String table = page.substring(page.indexOf("<caption>Result</caption>"), page.indexOf("<caption>Worked with</caption>"));
        return Stream.of(table.split("<td class=\"number\">", -1)).skip(1).map(cell -> cell.substring(0, cell.indexOf('<'))).toList();
    }

    private static JsonNode posted(CalculationInfo info) {
        Reply reply = Serving.post(Serving.port(), "/api/numbers/" + info.id(), "application/json",
                OpenApi.JSON.valueToTree(info.example()).toString().getBytes(StandardCharsets.UTF_8));
        assertEquals(200, reply.status(), reply.body());
        return reply.json();
    }
}
