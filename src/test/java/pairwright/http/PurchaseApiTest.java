package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to buy, asked for over HTTP and read as a page, while it is worked out and after. */
class PurchaseApiTest {
    private static final String PURCHASES = "/api/sessions/purchases";
    private static final String HTML = "Accept: text/html";

    private static Reply asked(LockerServing serving, String target) {
        Reply reply = serving.get(target);
        assertEquals(List.of(), Serving.OPEN_API.faults("GET", PURCHASES, reply), reply.body());
        return reply;
    }

    @Test
    void whatToBuyIsWorkedOutForTheStoredSessionsAndShown(@TempDir Path folder) {
        try (LockerServing serving = LockerServing.demo(folder, LocalDate.of(2027, 3, 1))) {
            assertTrue(serving.get("/sessions/buy", HTML).body().contains("There is no session yet"));
            assertEquals(400, asked(serving, PURCHASES + "?budget=ten").status());
            assertEquals(400, serving.get("/sessions/buy?budget=ten", HTML).status());
            String lineUp = "{'name': 'Duo', 'room': 'barn', 'lineUp': [{'id': 'fiddle', 'source': 'violin', 'maxMics': 1}, {'id': 'bass', 'source': 'double-bass', 'maxMics': 1}]}".replace('\'', '"');
            assertEquals(201, serving.post("/api/sessions", lineUp).status());
            assertEquals("computing", asked(serving, PURCHASES + "?budget=2&mostTier=2").json().path("state").asText());
            assertTrue(serving.get("/sessions/buy?budget=2&tier=2", HTML).body().contains("<progress"));
            JsonNode ready = assertTimeoutPreemptively(Duration.ofMinutes(4), () -> {
                JsonNode now = asked(serving, PURCHASES + "?budget=2&mostTier=2").json();
                while (now.path("state").asText().equals("computing")) {
                    Thread.sleep(200);
                    now = asked(serving, PURCHASES + "?budget=2&mostTier=2").json();
                }
                return now.path("purchases");
            });
            assertEquals("Duo", ready.at("/before/0/name").asText(), ready.toString());
            assertTrue(ready.at("/before/0/points").isNumber());
            int spent = 0;
            for (JsonNode step : ready.path("steps")) {
                spent += step.path("price").asInt();
                assertEquals(spent, step.path("spent").asInt());
                assertTrue(step.path("price").asInt() <= 2 * step.path("units").asInt());
            }
            assertTrue(spent <= 2);
            assertTrue(ready.path("idle").size() > 0, "two players do not need a whole locker");
            String page = serving.get("/sessions/buy?budget=2&tier=2", HTML).body();
            assertTrue(page.contains("What is never needed") && page.contains("/sessions/duo"), page);
        }
    }
}
