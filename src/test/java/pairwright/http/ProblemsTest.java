package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.http.Serving.assertProblem;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a request gets that cannot be used: every fault at once, with its place and a remedy. */
class ProblemsTest {
    private static final String END = " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "99", "\"two\"", "1.5", "true", "[]", "{}", "33", "1e99", "-2147483649", "1e999"})
    void aNumberOfChannelsThatIsNoneIsRefusedAtItsPlace(String mics) {
        Reply reply = Serving.ask("{\"source\": \"snare-drum\", \"limits\": {\"mics\": " + mics + "}}");
        assertProblem(400, reply);
        assertEquals(1, reply.json().path("errors").size(), reply.body());
        assertEquals("/limits/mics", reply.json().at("/errors/0/at").asText());
        assertTrue(reply.json().at("/errors/0/says").asText().startsWith("mics must be "), reply.body());
    }

    @ParameterizedTest
    @ValueSource(strings = {"null", "1", "2.0", "32"})
    void aNumberOfChannelsThatIsOneIsTaken(String mics) {
        Reply reply = Serving.ask("{\"source\": \"snare-drum\", \"limits\": {\"mics\": " + mics + "}}");
        assertEquals(200, reply.status(), reply.body());
        assertEquals(!mics.equals("null"), reply.json().at("/question/meant/limits").has("mics"));
    }

    @Test
    void everyFaultOfFormIsSaidAtOnce() {
        Reply reply = Serving.ask("""
                {"words": 4, "source": [], "ways": {}, "dynamics": 1, "room": true, "character": ["warm", 7, null], "limits": {"mics": "x", "phantom": "no",
                 "preampGainDb": "loud", "preampNoiseDbu": [], "onlyFamilies": ["ribbons"], "onlyMicTypes": 1, "tape": 1},
                 "neighbours": [3, {"distanceM": "far", "who": 1}], "circumstances": 3, "wishes": ["ribbons"], "options": 1.5, "draws": "many", "from": "tomorrow", "until": "+12000-01-01T00:00:00Z", "mood": 1}""");
        assertProblem(400, reply);
        assertEquals(List.of("/mood", "/words", "/source", "/ways", "/dynamics", "/room", "/character/1", "/character/2", "/limits/tape", "/limits/mics",
                "/limits/phantom", "/limits/preampGainDb", "/limits/preampNoiseDbu", "/limits/onlyFamilies/0", "/limits/onlyMicTypes", "/neighbours/0",
                "/neighbours/1/who", "/neighbours/1/source", "/neighbours/1/distanceM", "/circumstances", "/options", "/from", "/until", "/wishes/0", "/draws"), places(reply));
    }

    @Test
    void everyFaultOfSenseIsSaidAtOnce() {
        Reply reply = Serving.ask("""
                {"words": "", "source": "snare", "room": "small", "ways": ["brushes"], "dynamics": ["loudly"], "character": ["dark", "sad"], "circumstances": ["rain"],
                 "limits": {"mics": 0, "preampGainDb": 500, "preampNoiseDbu": 0, "onlyMicTypes": ["ribbon"], "withoutMicTypes": ["x"]},
                 "neighbours": [{"source": "drums", "distanceM": 0, "angleDegrees": 1000}],
                 "options": 7, "draws": 5000, "from": "2027-03-01T10:00:00+01:00", "until": "2027-03-01T10:00:00+01:00"}""");
        assertProblem(400, reply);
        assertEquals(List.of("/source", "/room", "/character/1", "/ways/0", "/dynamics/0", "/circumstances/0", "/options", "/draws", "/limits/mics", "/limits/preampGainDb",
                "/limits/preampNoiseDbu", "/limits/onlyMicTypes/0", "/limits/withoutMicTypes/0", "/neighbours/0/source", "/neighbours/0/distanceM",
                "/neighbours/0/angleDegrees", "/until"), places(reply));
        assertTrue(reply.json().at("/errors/0/says").asText().contains("snare-drum"), "the nearest id is offered: " + reply.body());
    }

    @Test
    void thousandsOfFaultsAreCountedAndNotAllListed() {
        StringBuilder body = new StringBuilder("{\"words\": \"snare\"");
        for (int i = 0; i < 5000; i++) {
            body.append(", \"f").append(i).append("\": 1");
        }
        Reply reply = Serving.ask(body + "}");
        assertProblem(400, reply);
        assertEquals(51, reply.json().path("errors").size());
        assertEquals("4950 more faults are not listed. Mend these first", reply.json().at("/errors/50/says").asText());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "null", "[]", "3", "\"snare\"", "{", "{\"words\": \"snare\"} x", "{\"words\": \"snare\", \"words\": \"tuba\"}", "{words: 'snare'}",
            "{\"words\": \"snare\",}", "{\"words\": NaN}", "{\"words\": \"\\ud8\"}", "{}", "{\"words\": null}", "{\"words\": \"  \"}"})
    void aBodyThatIsNoQuestionIsRefused(String body) {
        Reply reply = Serving.ask(body);
        assertProblem(400, reply);
        assertTrue(reply.json().path("detail").asText().length() > 20, reply.body());
    }

    @Test
    void aBrokenBodySaysWhereItBreaks() {
        Reply reply = Serving.ask("{\"words\": \"snare\",\n  \"room\" \"barn\"}");
        assertTrue(reply.json().path("detail").asText().contains("line 2, column 10"), reply.body());
    }

    @Test
    void tenThousandLevelsAreRefusedAndHarmNothing() {
        for (String body : List.of("[".repeat(10_000), "{\"a\":".repeat(10_000), "{\"words\": " + "[".repeat(10_000) + "]".repeat(10_000) + "}")) {
            assertProblem(400, Serving.ask(body));
        }
    }

    @Test
    void bytesThatAreNotUtf8AreRefused() {
        assertProblem(400, Serving.post(Serving.port(), "application/json", "{\"words\": \"gro\u00dfe Trommel\"}".getBytes(StandardCharsets.ISO_8859_1)));
    }

    @Test
    void whatIsNotThereIs404() {
        for (String address : List.of("/nothing", "/api", "/api/nothing", "/api/sources/lute-of-glass", "/api/mics/x", "/api/characters/x", "/api/rooms/x",
                "/api/techniques/x", "/api/rules/TON-999", "/schema/nothing.schema.json", "/schema/pom.xml", "/api/sources/" + "x".repeat(500))) {
            Reply reply = Serving.get(address);
            assertProblem(404, reply);
            assertTrue(reply.body().length() < 600, "all of a long address is said back");
        }
    }

    @ParameterizedTest
    @CsvSource({"GET,/api/ask,POST", "DELETE,/api/ask,POST", "PUT,/api/sources,'GET, HEAD'", "POST,/health,'GET, HEAD'", "PATCH,/api/rules/TON-001,'GET, HEAD'",
            "OPTIONS,/api/ask,POST", "TRACE,/health,'GET, HEAD'", "HELLO,/health,'GET, HEAD'"})
    void aWrongMethodIs405AndSaysWhichIsRight(String method, String address, String allowed) {
        Reply reply = Serving.send(Serving.port(), method + " " + address + END);
        assertProblem(405, reply);
        assertEquals(allowed, reply.headers().get("allow"));
    }

    @Test
    void aBodyOverTheLimitIs413AndOneJustUnderItIsRead() {
        String pad = " ".repeat(64 * 1024 - 20);
        assertEquals(200, Serving.ask(pad + "{\"words\": \"snare\"}").status());
        assertProblem(413, Serving.ask(pad + pad + "{\"words\": \"snare\"}"));
        String chunk = "8000\r\n" + " ".repeat(0x8000) + "\r\n";
        assertProblem(413, Serving.send(Serving.port(), "POST /api/ask HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/json\r\n"
                + "Transfer-Encoding: chunked\r\n\r\n" + chunk.repeat(3) + "0\r\n\r\n"));
    }

    @Test
    void moreWordsThanAnyoneSaysAre400() {
        Reply reply = Serving.ask("{\"words\": \"" + "snare ".repeat(1700) + "\"}");
        assertProblem(400, reply);
        assertEquals(List.of("/words"), places(reply));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "text/plain", "application/x-www-form-urlencoded", "application/jsonx", "application/problem+json", ";", "multipart/form-data; boundary=x",
            "application/json; charset=iso-8859-1"})
    void whatIsNotSentAsJsonIs415(String type) {
        assertProblem(415, Serving.post(Serving.port(), type.isEmpty() ? null : type, "{\"words\": \"snare\"}".getBytes(StandardCharsets.UTF_8)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"application/json", "Application/JSON", "application/json; charset=utf-8", "application/json;charset=\"UTF-8\""})
    void whatIsSentAsJsonIsRead(String type) {
        assertEquals(200, Serving.post(Serving.port(), type, "{\"words\": \"qwzx\"}".getBytes(StandardCharsets.UTF_8)).status());
    }

    @Test
    void aPackedBodyIs415() {
        assertProblem(415, Serving.send(Serving.port(), "POST /api/ask HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/json\r\n"
                + "Content-Encoding: gzip\r\nContent-Length: 2\r\n\r\n{}"));
    }

    @Test
    void anAddressThatIsTooLongOrHeadersThatAreTooLargeAreRefused() {
        assertProblem(414, Serving.get("/api/search?words=" + "x".repeat(9000)));
        assertProblem(431, Serving.send(Serving.port(), "GET /health HTTP/1.1\r\nHost: localhost\r\nX-Large: " + "x".repeat(9000) + "\r\nConnection: close\r\n\r\n"));
    }

    @Test
    void aSearchNeedsWordsAndNotTooMany() {
        for (String query : List.of("", "?words=", "?words=%20", "?word=snare", "?words=" + "x".repeat(201))) {
            Reply reply = Serving.get("/api/search" + query);
            assertProblem(400, reply);
        }
    }

    @Test
    void suggestionsNeedWordsAndNotTooMany() {
        for (String query : List.of("", "?words=", "?words=%20", "?word=snare", "?words=" + "x".repeat(301))) {
            assertProblem(400, Serving.get("/api/suggest" + query));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET /health", "GET /health HTTP/1.1\r\n\r\n", "GET  HTTP/1.1\r\nHost: a\r\n\r\n", "GET /health HTTP/1.1\r\nHost a\r\n\r\n",
            "GET /health HTTP/9.9\r\nHost: a\r\n\r\n", "\u0016\u0003\u0001\u0002", "GET /health HTTP/1.1\r\nHost: a\r\nHost: b\r\n\r\n",
            "POST /api/ask HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: two\r\n\r\n{}",
            "POST /api/ask HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n",
            "POST /api/ask HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\nzz\r\n{}\r\n0\r\n\r\n",
            "POST /api/ask HTTP/1.1\r\nHost: a\r\nContent-Type: application/json\r\nContent-Length: 500\r\n\r\n{\"words\"",
            "GET /../../pom.xml HTTP/1.1\r\nHost: a\r\n\r\n", "GET /api/sources/%2e%2e%2f HTTP/1.1\r\nHost: a\r\n\r\n", "GET /api/sources/%zz HTTP/1.1\r\nHost: a\r\n\r\n",
            "GET /api/sources/a%00b HTTP/1.1\r\nHost: a\r\n\r\n", "GET /api/sources/%C3%28 HTTP/1.1\r\nHost: a\r\n\r\n"})
    void brokenHttpIsAProblemToo(String request) {
        Reply reply = Serving.send(Serving.port(), request);
        if (reply != null) { // a server may also close on what is no HTTP at all
            assertTrue(reply.status() >= 400 && reply.status() < 500 || reply.status() == 505, request + reply);
            assertProblem(reply.status(), reply);
        }
    }

    private static List<String> places(Reply reply) {
        List<String> places = new ArrayList<>();
        reply.json().path("errors").forEach(fault -> places.add(fault.path("at").asText()));
        return places;
    }
}
