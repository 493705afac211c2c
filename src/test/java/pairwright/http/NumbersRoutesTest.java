package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.http.Serving.assertProblem;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Worked numbers from the real server. */
class NumbersRoutesTest {
    @Test
    void aNumberComesWithTheWayToIt() {
        Reply reply = work("phantom-budget", "{\"supplyRatingMa\": 20, \"currentsMa\": [3, 4.5, 10], \"system\": null}");
        assertEquals(200, reply.status(), reply.body());
        assertEquals("phantom-budget", reply.json().path("id").asText());
        assertEquals("{\"currentsMa\":[3,4.5,10],\"supplyRatingMa\":20,\"system\":\"P48\"}", reply.json().path("inputs").toString());
        assertEquals("{\"name\":\"headroomMa\",\"value\":2.5,\"unit\":\"mA\"}", reply.json().at("/result/0").toString());
        assertEquals("All together: 3 + 4.5 + 10 = 17.5 mA", reply.json().at("/steps/0").asText());
        assertEquals("care", reply.json().at("/cautions/0/severity").asText());
    }

    @Test
    void everyFaultIsSaidAtItsPlace() {
        Reply reply = work("phantom-budget", "{\"currentsMa\": [3, \"x\", -1, [1], {}], \"suplyRatingMa\": 4, \"system\": true, \"a/b\": 1}");
        assertProblem(400, reply);
        List<String> places = new ArrayList<>();
        reply.json().path("errors").forEach(error -> places.add(error.path("at").asText()));
        assertEquals(List.of("/a~1b", "/suplyRatingMa", "/currentsMa/1", "/currentsMa/2", "/currentsMa/3", "/currentsMa/4", "/supplyRatingMa", "/system"), places);
        assertEquals("there is no input \"suplyRatingMa\" here. Did you mean supplyRatingMa?", reply.json().at("/errors/1/says").asText());
        assertEquals("entry 2 of currentsMa must be a number from 0 to 50 mA, but was the text \"x\"", reply.json().at("/errors/2/says").asText());
    }

    @ParameterizedTest
    @ValueSource(strings = {"null", "1e999", "true", "\"2\"", "[2]", "{}", "0", "-1", "1e99", "[]"})
    void aDistanceThatIsNoneIsRefused(String distance) {
        Reply reply = work("delay", "{\"distanceM\": " + distance + "}");
        assertProblem(400, reply);
        assertEquals("/distanceM", reply.json().at("/errors/0/at").asText(), reply.body());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "[]", "null", "3", "{", "{\"distanceM\": 1, \"distanceM\": 2}", "{\"distanceM\": 1} x"})
    void aBodyThatIsNoObjectIsRefused(String body) {
        assertProblem(400, work("delay", body));
    }

    @Test
    void anIdThereIsNotIs404AndNamesTheNearest() {
        Reply reply = work("proximty", "{}");
        assertProblem(404, reply);
        assertEquals("There is no calculation \"proximty\". Did you mean proximity?", reply.json().path("detail").asText());
        assertTrue(work("x".repeat(900), "{}").body().length() < 700);
    }

    @Test
    void thousandsOfUnknownInputsAreCountedAndNotAllListed() {
        StringBuilder body = new StringBuilder("{\"distanceM\": 1");
        for (int i = 0; i < 3000; i++) {
            body.append(", \"f").append(i).append("\": 1");
        }
        Reply reply = work("delay", body + "}");
        assertProblem(400, reply);
        assertEquals(51, reply.json().path("errors").size());
    }

    @Test
    void onlyJsonIsTakenAndOnlyPost() {
        assertProblem(415, Serving.post(Serving.port(), "/api/numbers/delay", "text/plain", "{\"distanceM\": 1}".getBytes(StandardCharsets.UTF_8)));
        assertProblem(405, Serving.get("/api/numbers/delay"));
    }

    private static Reply work(String id, String body) {
        return Serving.post(Serving.port(), "/api/numbers/" + id, "application/json", body.getBytes(StandardCharsets.UTF_8));
    }
}
