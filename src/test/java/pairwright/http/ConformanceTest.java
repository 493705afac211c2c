package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Real requests to the real server; every answer is what the description promises. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ConformanceTest {
    private static final DateTimeFormatter RFC_3339 = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx");
    private static final List<String> QUESTIONS = List.of(
            "{'words': 'brushed snare, quiet jazz trio, small room'}",
            "{'words': 'grand piano, stereo, church'}",
            "{'words': 'contrabass next to the drums, warm'}",
            "{'words': 'fingerpicked nylon guitar in a small untreated room, no phantom'}",
            "{'words': 'kick drum, inside and outside', 'options': 6}",
            "{'words': 'trumpet, dark, only ribbons'}",
            "{'words': 'screamed vocals, vocal booth'}",
            "{'words': 'choir in a concert hall, airy', 'options': 5}",
            "{'words': 'tenor sax on stage, live, drums behind'}",
            "{'words': 'bass guitar DI'}",
            "{'words': 'driven guitar amp, gritty, barn', 'limits': {'mics': 1}}",
            "{'words': 'accordion, stereo'}",
            "{'words': 'voice and guitar, one performer'}",
            "{'words': 'harmonica'}",
            "{'words': 'didgeridoo outside'}",
            "{'words': 'qwzx blorp'}",
            "{'words': 'violn'}",
            "{'words': 'bass'}",
            "{'words': '   ', 'source': 'flute'}",
            "{'source': 'bass-lead', 'limits': {'phantom': false}}",
            "{'source': 'keyboard-lead'}",
            "{'source': 'acoustic-pickup-lead', 'options': 2}",
            "{'source': 'double-bass', 'ways': ['bowed'], 'room': 'large-live-room', 'character': 'warm', 'dynamics': ['soft'], 'circumstances': ['live'],"
                    + " 'limits': {'mics': 2, 'phantom': true, 'preampGainDb': 60, 'preampNoiseDbu': -125.5, 'withoutFamilies': 'shotgun', 'withoutMicTypes': ['lo-fi']},"
                    + " 'neighbours': [{'source': 'drum-kit', 'distanceM': 3, 'angleDegrees': 120}, {'source': 'trumpet', 'distanceM': 5}],"
                    + " 'from': '2027-03-01T10:00:00+01:00', 'until': '2027-03-01T18:00:00+01:00', 'options': 6}",
            "{'source': 'snare-drum', 'limits': {'onlyFamilies': ['boundary'], 'phantom': false, 'mics': 1}}",
            "{'source': 'violin', 'limits': {'onlyMicTypes': ['passive-di']}}",
            "{'words': 'trumpet, ribbon please', 'wishes': ['moving-coil']}",
            "{'source': 'trumpet', 'wishes': 'ribbon'}",
            "{'source': 'trumpet', 'player': 'Ines'}",
            "{'source': 'trumpet', 'heard': {'typicalDbSpl': 104, 'peakDbSpl': 132.5, 'toneDb': [0, 0, 0, 0, 0, 3, 6, 6, 4], 'lowestHz': 150, 'highestHz': 1200}}",
            "{'source': 'bass-lead', 'heard': {'crestDb': 20, 'attack': 'impulsive', 'typicalDbSpl': 90}}",
            "{'words': 'double bass, warm', 'heard': {'toneDb': [0, 0, 3, 0, 0, 0, 0, 0, 0], 'lowestHz': null, 'crestDb': 24, 'attack': 'fast'}}",
            "{'words': 'trumpet, no phantom, one mic', 'lifted': ['phantom', 'mics']}",
            "{'source': 'triangle', 'limits': {'onlyFamilies': ['ribbon'], 'preampGainDb': 20}}",
            "{'source': 'kick-drum', 'limits': {'onlyFamilies': ['boundary'], 'mics': 1}}",
            "{'source': 'cello', 'room': 'open-air'}",
            "{'source': 'drum-kit', 'circumstances': ['stereo'], 'limits': {'onlyFamilies': ['small-diaphragm-condenser', 'stereo']}}",
            "{'source': 'grand-piano', 'limits': {'onlyFamilies': ['boundary']}, 'options': 6}",
            "{'source': 'kick-drum', 'limits': {'onlyFamilies': ['boundary', 'moving-coil']}, 'options': 6}",
            "{'source': 'choir', 'room': 'church', 'circumstances': ['stereo'], 'limits': {'onlyFamilies': ['small-diaphragm-condenser'], 'phantom': true}}",
            "{'words': null, 'source': 'tuba', 'limits': null, 'neighbours': null, 'options': null, 'character': null, 'from': null}");

    /** Asked of a server with the locker of the demo, for tomorrow noon, when half of it is taken. */
    private static final List<String> WITH_A_LOCKER = List.of(
            "{'words': 'trumpet, dark'}",
            "{'words': 'trumpet, dark', 'limits': {'onlyMicTypes': ['long-ribbon', 'compact-ribbon']}, 'locker': 'owned'}",
            "{'words': 'piano, stereo', 'limits': {'onlyMicTypes': ['small-condenser-omni', 'small-condenser-cardioid']}}",
            "{'words': 'piano, stereo', 'limits': {'onlyMicTypes': ['small-condenser-omni', 'small-condenser-cardioid']}, 'locker': 'owned'}",
            "{'words': 'trumpet', 'limits': {'onlyMicTypes': ['compact-ribbon', 'handheld-moving-coil']}}",
            "{'words': 'singing voice', 'limits': {'onlyMicTypes': ['large-valve-condenser']}}",
            "{'words': 'kick drum', 'locker': 'any'}");

    private final List<JsonNode> answers = new ArrayList<>();
    private final List<JsonNode> lockerAnswers = new ArrayList<>();

    @BeforeAll
    void askWithALocker(@TempDir Path folder) {
        List<String> wrong = new ArrayList<>();
        LocalDate today = LocalDate.now();
        ZonedDateTime noon = today.plusDays(1).atTime(12, 0).atZone(ZoneId.systemDefault());
        String time = ", 'from': '" + noon.toOffsetDateTime().format(RFC_3339) + "', 'until': '" + noon.plusHours(2).toOffsetDateTime().format(RFC_3339) + "'}";
        try (LockerServing serving = LockerServing.demo(folder, today)) {
            for (String question : WITH_A_LOCKER) {
                String asked = (question.substring(0, question.length() - 1) + time).replace('\'', '"');
                Reply reply = serving.post("/api/ask", asked);
                assertEquals(200, reply.status(), asked + ": " + reply.body());
                Serving.OPEN_API.faults("POST", "/api/ask", reply).forEach(fault -> wrong.add(question + ": " + fault));
                lockerAnswers.add(reply.json());
                Reply again = serving.post("/api/ask", reply.json().at("/question/meant").toString());
                assertEquals(reply.json().path("options"), again.json().path("options"), asked);
            }
        }
        assertEquals(List.of(), wrong);
    }

    @BeforeAll
    void ask() {
        List<String> wrong = new ArrayList<>();
        for (String question : QUESTIONS) {
            Reply reply = Serving.ask(question.replace('\'', '"'));
            assertEquals(200, reply.status(), question + ": " + reply.body());
            Serving.OPEN_API.faults("POST", "/api/ask", reply).forEach(fault -> wrong.add(question + ": " + fault));
            answers.add(reply.json());
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void theQuestionsReachEveryKindOfAnswer() {
        assertAll(
                () -> some("two placements", answer -> answer.at("/options/0/together/contrastDb").isNumber()),
                () -> some("a stereo pair", answer -> answer.findPath("together").has("recordingAngleDegrees")),
                () -> some("a lead", answer -> answer.at("/options/0/mics/0/family").asText().equals("line")),
                () -> some("a neighbour", answer -> answer.at("/options/0/mics/0/predicted/separationDb").isNumber()),
                () -> some("nothing that fits", answer -> answer.path("options").isEmpty() && !answer.path("instead").isEmpty()),
                () -> some("nothing understood", answer -> answer.path("options").isEmpty() && !answer.at("/question/meant").has("source")),
                () -> some("other readings", answer -> !answer.at("/question/otherReadings").isEmpty()),
                () -> some("something ruled out", answer -> !answer.path("ruledOut").isEmpty()),
                () -> some("six options", answer -> answer.path("options").size() == 6));
    }

    @Test
    void everyFieldThatIsDescribedIsSeenInSomeAnswer() {
        Set<String> seen = new TreeSet<>();
        Stream.concat(answers.stream(), lockerAnswers.stream()).forEach(answer -> DescribedFields.see("Answer", answer, seen));
        Set<String> described = DescribedFields.of("Answer");
        described.removeAll(seen);
        described.remove("Heard.seat"); // only a plan has seats
        assertEquals(Set.of(), described, "no answer has it: ask for something that does");
    }

    @Test
    void pointsOfTheReasonsAddUpToTheScore() {
        answers.forEach(answer -> answer.path("options").forEach(option -> {
            double sum = 0;
            for (JsonNode reason : option.path("reasons")) {
                sum += reason.path("points").asDouble();
            }
            assertEquals(option.path("score").asDouble(), sum, 1e-6, option.toString());
        }));
    }

    @Test
    void whatWasMeantSentBackAsksTheSame() {
        for (JsonNode answer : answers) {
            ObjectNode meant = answer.at("/question/meant").deepCopy();
            if (!meant.path("words").asText().isBlank() || meant.has("source")) {
                Reply again = Serving.ask(meant.toString());
                assertEquals(200, again.status(), again.body());
                assertEquals(answer.path("options"), again.json().path("options"), meant.toString());
            }
        }
    }

    @Test
    void theSameQuestionGetsTheSameAnswerByteForByte() {
        String question = QUESTIONS.get(2).replace('\'', '"');
        assertEquals(Serving.ask(question).body(), Serving.ask(question).body());
    }

    @Test
    void everyEntryThatIsListedCanBeRead() {
        List<String> wrong = new ArrayList<>();
        for (String list : List.of("/api/sources", "/api/mics", "/api/characters", "/api/rooms", "/api/techniques", "/api/complaints")) {
            JsonNode entries = read(list, list, wrong).path("entries");
            assertTrue(entries.size() > 9, list + " has " + entries.size());
            entries.forEach(entry -> {
                JsonNode whole = read(list + "/" + entry.path("id").asText(), list + "/{id}", wrong);
                assertEquals(entry.path("says"), whole.path("says"));
            });
        }
        JsonNode rules = read("/api/rules", "/api/rules", wrong);
        assertTrue(rules.path("rules").size() > 99, "only " + rules.path("rules").size() + " rules");
        rules.path("rules").forEach(rule -> {
            JsonNode whole = read("/api/rules/" + rule.path("id").asText(), "/api/rules/{id}", wrong);
            assertEquals(rule.path("says"), whole.path("says"));
        });
        assertEquals(List.of(), wrong);
    }

    @Test
    void everyRuleAndEntryAnAnswerNamesCanBeRead() {
        Set<String> named = new TreeSet<>();
        answers.forEach(answer -> {
            answer.findValuesAsText("rule").stream().filter(rule -> !rule.equals("limit")).forEach(rule -> named.add("/api/rules/" + rule));
            answer.findValuesAsText("micType").forEach(mic -> named.add("/api/mics/" + mic));
            answer.findValuesAsText("technique").stream().filter(one -> !one.equals("single")).forEach(one -> named.add("/api/techniques/" + one));
        });
        named.forEach(address -> assertEquals(200, Serving.get(address).status(), address));
    }

    @Test
    void everyCalculationThatIsListedCanBeWorked() {
        List<String> wrong = new ArrayList<>();
        JsonNode entries = read("/api/numbers", "/api/numbers", wrong).path("entries");
        assertEquals(16, entries.size());
        entries.forEach(entry -> {
            String address = "/api/numbers/" + entry.path("id").asText();
            Reply reply = Serving.post(Serving.port(), address, "application/json", entry.path("example").toString().getBytes(StandardCharsets.UTF_8));
            assertEquals(200, reply.status(), reply.body());
            Serving.OPEN_API.faults("POST", "/api/numbers/{id}", reply).forEach(fault -> wrong.add(address + ": " + fault));
            assertEquals(entry.path("id"), reply.json().path("id"));
            assertTrue(reply.json().path("result").size() > 0 && reply.json().path("steps").size() > 1, reply.body());
            assertEquals(reply.body(), Serving.post(Serving.port(), address, "application/json",
                    reply.json().path("inputs").toString().getBytes(StandardCharsets.UTF_8)).body(), "what was used, sent back");
        });
        assertEquals(List.of(), wrong);
    }

    @Test
    void theOtherAddressesAnswerAsDescribed() {
        List<String> wrong = new ArrayList<>();
        JsonNode found = read("/api/search?words=sna", "/api/search", wrong);
        assertEquals("snare-drum", found.at("/found/0/id").asText());
        assertEquals("sn\u00e4re drum", read("/api/search?words=sn%C3%A4re+drum", "/api/search", wrong).path("words").asText());
        JsonNode suggested = read("/api/suggest?words=brushed+sn", "/api/suggest", wrong);
        assertEquals("brushed snare drum", suggested.at("/suggestions/0/sentence").asText());
        assertTrue(read("/api/suggest?words=xyzzy", "/api/suggest", wrong).path("suggestions").isEmpty());
        assertEquals("Kontrabass \u2192 double bass", read("/api/suggest?words=kontrab", "/api/suggest", wrong).at("/suggestions/0/names").asText());
        assertEquals("ok", read("/health", "/health", wrong).path("status").asText());
        assertTrue(raw("/metrics", "/metrics", wrong).body().contains("pairwright_request_seconds_count{path=\"/api/ask\",status=\"200\"}"));
        raw("/openapi.yaml", "/openapi.yaml", wrong);
        for (String kind : List.of("mic-type", "source", "room", "character", "technique", "complaint", "common")) {
            assertNotNull(read("/schema/" + kind + ".schema.json", "/schema/{name}", wrong).path("title").textValue(), kind);
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void headSaysWhatGetSaysButTheBody() {
        Reply get = Serving.get("/api/rooms");
        Reply head = Serving.send(Serving.port(), "HEAD /api/rooms HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n");
        assertEquals("", head.body());
        assertEquals(get.headers().get("content-type"), head.headers().get("content-type"));
        assertEquals(404, Serving.send(Serving.port(), "HEAD /api/rooms/nowhere HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n").status());
    }

    private static JsonNode read(String address, String route, List<String> wrong) {
        return raw(address, route, wrong).json();
    }

    private static Reply raw(String address, String route, List<String> wrong) {
        Reply reply = Serving.get(address);
        assertEquals(200, reply.status(), address + ": " + reply.body());
        Serving.OPEN_API.faults("GET", route, reply).forEach(fault -> wrong.add(address + ": " + fault));
        return reply;
    }

    private void some(String what, java.util.function.Predicate<JsonNode> is) {
        assertTrue(answers.stream().anyMatch(is), "no answer has " + what);
    }
}
