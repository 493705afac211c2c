package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is asked after an answer, by real requests to the real server. */
class AskMoreTest {
    private static final String WHY_NOT = "/api/ask/why-not";
    private static final String MOVES = "/api/ask/moves";

    private static Reply post(String path, String body) {
        byte[] bytes = body.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
        return Serving.send(Serving.port(), Serving.joined("POST " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                + "Content-Type: application/json\r\nContent-Length: " + bytes.length + "\r\n\r\n", bytes));
    }

    /** The type that is first, whatever it is just now. */
    private static String first(String question) {
        return Serving.ask(question.replace('\'', '"')).json().at("/options/0/mics/0/micType").asText();
    }

    @Test
    void everyWhyNotIsWhatTheDescriptionPromises() {
        List<String> wrong = new ArrayList<>();
        TreeSet<String> standings = new TreeSet<>();
        TreeSet<String> fields = new TreeSet<>();
        for (String body : List.of(
                "{'question': {'words': 'brushed snare, small room'}, 'micType': 'small-condenser-omni'}",
                "{'question': {'words': 'trumpet'}, 'micType': 'handheld-moving-coil', 'pattern': null}",
                "{'question': {'words': 'claves', 'limits': {'mics': 1}}, 'micType': '" + first("{'words': 'claves', 'limits': {'mics': 1}}") + "'}",
                "{'question': {'words': 'trumpet, no phantom'}, 'micType': 'small-condenser-cardioid'}",
                "{'question': {'source': 'singing-voice'}, 'micType': 'passive-di'}",
                "{'question': {'words': 'snare', 'limits': {'mics': 1}}, 'micType': 'small-condenser-cardioid', 'position': 'under-head'}",
                "{'question': {'words': 'snare'}, 'micType': 'long-ribbon', 'pattern': 'figure-8', 'position': 'over-rim'}",
                "{'question': {'words': 'grand piano, stereo', 'limits': {'mics': 2}}, 'micType': 'large-condenser-cardioid'}",
                "{'question': {'source': 'triangle', 'limits': {'onlyFamilies': ['ribbon'], 'preampGainDb': 20}}, 'micType': 'long-ribbon'}")) {
            Reply reply = post(WHY_NOT, body);
            assertEquals(200, reply.status(), body + reply.body());
            Serving.OPEN_API.faults("POST", WHY_NOT, reply).forEach(fault -> wrong.add(body + ": " + fault));
            standings.add(reply.json().path("standing").asText());
            reply.json().fieldNames().forEachRemaining(fields::add);
        }
        assertEquals(List.of(), wrong);
        assertEquals(new TreeSet<>(List.of("first", "stands", "part", "ruled-out", "limited", "nowhere")), standings);
        TreeSet<String> described = new TreeSet<>();
        Serving.OPEN_API.tree().at("/components/schemas/WhyNot/properties").fieldNames().forEachRemaining(described::add);
        assertEquals(described, fields);
    }

    @Test
    void everyMoveIsWhatTheDescriptionPromisesAndItsOptionCanBeSentBack() {
        List<String> wrong = new ArrayList<>();
        TreeSet<String> fields = new TreeSet<>();
        for (String question : List.of("{'words': 'singing voice next to the drums, small room'}", "{'words': 'kick drum, inside and outside'}",
                "{'words': 'bass guitar DI'}", "{'words': 'driven guitar amp'}")) {
            JsonNode option = Serving.ask(question.replace('\'', '"')).json().at("/options/0");
            for (JsonNode complaint : Serving.get("/api/complaints").json().path("entries")) {
                String heard = complaint.path("id").asText();
                JsonNode moves = moves(question, option, heard, wrong);
                assertEquals(option.path("score"), moves.at("/option/score"), question);
                for (JsonNode move : moves.path("moves")) {
                    move.fieldNames().forEachRemaining(fields::add);
                    if (move.has("option")) {
                        JsonNode again = moves(question, move.path("option"), heard, wrong);
                        if (!move.path("change").asText().startsWith("source ")) {
                            assertEquals(move.at("/option/score"), again.at("/option/score"), heard + ": " + move.path("change"));
                        }
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
        TreeSet<String> described = new TreeSet<>();
        Serving.OPEN_API.tree().at("/components/schemas/Move/properties").fieldNames().forEachRemaining(described::add);
        assertEquals(described, fields);
    }

    private static JsonNode moves(String question, JsonNode option, String heard, List<String> wrong) {
        Reply reply = post(MOVES, "{'question': " + question + ", 'option': " + option + ", 'heard': '" + heard + "'}");
        assertEquals(200, reply.status(), reply.body());
        Serving.OPEN_API.faults("POST", MOVES, reply).forEach(fault -> wrong.add(question + " " + heard + ": " + fault));
        return reply.json();
    }

    @Test
    void aFaultInsideTheQuestionIsShownAtItsPlaceThere() {
        Reply reply = post(WHY_NOT, "{'question': {'words': 7, 'limits': {'mics': 'two', 'fantom': true}, 'neighbours': [{'distanceM': 1}]},"
                + " 'micType': 5, 'pattern': 'round', 'colour': 1}");
        assertEquals(400, reply.status());
        assertEquals(new TreeSet<>(List.of("/colour", "/question/words", "/question/limits/fantom", "/question/limits/mics",
                "/question/neighbours/0/source", "/micType", "/pattern")), new TreeSet<>(reply.json().findValuesAsText("at")));
        Reply meaning = post(WHY_NOT, "{'question': {'source': 'snare', 'limits': {'mics': 0}}, 'micType': 'x'}");
        assertEquals(List.of("/question/source", "/question/limits/mics", "/micType"), meaning.json().findValuesAsText("at"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "/api/ask/why-not | {} | /question /micType",
            "/api/ask/why-not | {'question': [], 'micType': 'long-ribbon'} | /question",
            "/api/ask/why-not | {'question': {'words': 'snare'}, 'micType': 'long-ribbon', 'position': 3} | /position",
            "/api/ask/why-not | [] | ",
            "/api/ask/why-not | {'question': {'words': 'snare'}, 'micType': 'long-ribbon' | ",
            "/api/ask/moves | {} | /question /option /heard",
            "/api/ask/moves | {'question': {'words': 'snare'}, 'option': 'first', 'heard': 'thin'} | /option",
            "/api/ask/moves | {'question': {'words': 'snare'}, 'option': {'mics': []}, 'heard': 'thin'} | /option/mics",
            "/api/ask/moves | {'question': {'words': 'snare'}, 'option': {'mics': [7]}, 'heard': 'thin'} | /option/mics/0",
            "/api/ask/moves | {'question': {'words': 'snare'}, 'option': {'mics': [null]}, 'heard': 'thin'} | /option/mics/0",
            "/api/ask/moves | {'question': {'words': 'snare'}, 'option': {'mics': [{'micType': 'long-ribbon', 'position': 'over-rim', 'distanceM': 1e999}]}, 'heard': 'thin'} | /option/mics/0/distanceM",
            "/api/ask/moves | {'question': {'words': 'snare'}, 'option': {'mics': [{'micType': 'long-ribbon', 'position': 'over-rim', 'distanceM': 0.05}]}, 'heard': 'lovely'} | /heard",
    })
    void whatCannotBeUsedIsA400WithEveryPlace(String path, String body, String places) {
        Reply reply = post(path, body);
        Serving.assertProblem(400, reply);
        assertEquals(places == null ? List.of() : List.of(places.split(" ")), reply.json().findValuesAsText("at"), reply.body());
    }

    @Test
    void whatElseAnOptionHoldsIsNotRead() {
        ObjectNode option = Serving.ask("{\"words\": \"cello\"}").json().at("/options/0").deepCopy();
        option.put("score", "much");
        option.put("whatever", 1);
        Reply reply = post(MOVES, "{'question': {'words': 'cello'}, 'option': " + option + ", 'heard': 'boxy'}");
        assertEquals(200, reply.status(), reply.body());
        assertTrue(reply.json().at("/option/score").isNumber());
    }
}
