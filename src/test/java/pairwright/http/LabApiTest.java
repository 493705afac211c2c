package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Act;
import pairwright.locker.Place;
import pairwright.locker.UnitDraft;

/** A class of the lab over HTTP, from the exercises to what came of them. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LabApiTest {
    private static final String SETS = "/api/lab/exercises";
    private static final List<String> TYPES = List.of("long-ribbon", "compact-ribbon", "small-condenser-cardioid", "small-condenser-omni", "large-condenser-cardioid", "handheld-moving-coil");

    private LockerServing serving;
    private String teacher;
    private String reader;

    @BeforeAll
    void open(@TempDir Path folder) {
        serving = LockerServing.guarded(Place.in(folder));
        teacher = "Authorization: Bearer " + serving.instructor;
        reader = "Authorization: Bearer " + serving.reader;
        serving.locker.change(Act.by("Wren"), changes -> {
            TYPES.forEach(type -> changes.add(UnitDraft.mic(type + "-1", type, type)));
            return "";
        });
    }

    @AfterAll
    void close() {
        serving.close();
    }

    private JsonNode made(String more) {
        Reply reply = serving.post(SETS, "{\"kind\": \"curves\", \"level\": 1, \"benches\": 2" + more + "}", teacher);
        assertEquals(201, reply.status(), reply.body());
        return reply.json();
    }

    private JsonNode best(String id, int bench) {
        return serving.get(SETS + "/" + id + "/key", teacher).json().path("benches").path(bench - 1).at("/key/best");
    }

    private static String answer(int bench, JsonNode answer) {
        return "{\"bench\": " + bench + ", \"answer\": " + answer + "}";
    }

    @Test
    void exercisesAreMadeHandedOutAndFoundAgain() {
        JsonNode made = made(", \"seed\": \"barn\"");
        assertEquals("barn", made.path("seed").asText());
        assertEquals(2, made.path("benches").size());
        assertTrue(made.at("/benches/0/handout/items").size() > 0 && made.at("/benches/0/kit").isArray(), made.toString());
        assertTrue(made.path("spreadShare").isNumber() && made.path("spreadSays").asText().contains("guess"), made.toString());
        String at = SETS + "/" + made.path("id").asText();
        assertEquals(made, serving.get(at, teacher).json());
        assertTrue(serving.get(SETS, reader).json().path("exercises").findValuesAsText("id").contains(made.path("id").asText()));
        JsonNode read = serving.get(at, reader).json();
        for (String secret : List.of("seed", "spreadShare", "spreadSays")) {
            assertTrue(read.path(secret).isMissingNode(), secret);
        }
        assertEquals(made.at("/benches/0/handout"), read.at("/benches/0/handout"));
        assertTrue(read.at("/benches/0/hardnessShare").isMissingNode(), "how hard it is tells how far a guess goes");
    }

    @Test
    void whoMayDoWhat() {
        String at = SETS + "/" + made("").path("id").asText();
        for (String token : List.of(reader, "Authorization: Bearer " + serving.engineer)) {
            assertEquals(403, serving.post(SETS, "{\"kind\": \"curves\", \"level\": 1, \"benches\": 2}", token).status());
            assertEquals(403, serving.get(at + "/key", token).status());
            assertEquals(403, serving.get(at + "/marks", token).status());
            assertEquals(403, serving.get(at + "/marks.csv", token).status());
            assertEquals(403, serving.get(at + "/summary", token).status());
            assertEquals(403, serving.send("PATCH", at, "{\"opensAt\": null}", token).status());
            assertEquals(403, serving.send("DELETE", at, null, token).status());
            assertEquals(403, serving.post(at + "/answers", "{}", token).status());
            assertEquals(202, serving.post(at + "/mark", "{\"bench\": 1, \"answer\": {}}", token).status());
        }
    }

    @Test
    void aReaderGetsAReceiptAndAnInstructorTheMark() {
        String id = made("").path("id").asText();
        Reply receipt = serving.post(SETS + "/" + id + "/mark", answer(1, best(id, 1)), reader);
        assertEquals(202, receipt.status(), receipt.body());
        for (String secret : List.of("mark", "of", "checks", "capped")) {
            assertTrue(receipt.json().path(secret).isMissingNode(), receipt.body());
        }
        Reply mark = serving.post(SETS + "/" + id + "/mark", answer(2, best(id, 2)), teacher);
        assertEquals(200, mark.status(), mark.body());
        assertEquals(mark.json().path("of"), mark.json().path("mark"));
        mark.json().path("checks").forEach(check -> assertTrue(check.has("name") && check.has("points") && check.has("of") && check.has("says"), check.toString()));
        JsonNode marks = serving.get(SETS + "/" + id + "/marks", teacher).json().path("benches");
        assertEquals(List.of("Finch", "Ida"), marks.findValuesAsText("by"));
        assertEquals(marks.at("/0/of"), marks.at("/0/mark"), "what was handed in while the keys were shut is marked when it is looked at");
    }

    @Test
    void onceTheKeysAreOpenEverybodySeesThemAndTheMark() {
        String id = made("").path("id").asText();
        Instant past = Instant.now().minusSeconds(60).truncatedTo(ChronoUnit.MINUTES); // of which the seconds are written all the same
        assertEquals(400, serving.post(SETS, "{\"kind\": \"curves\", \"level\": 1, \"benches\": 1, \"opensAt\": \"" + past + "\"}", teacher).status());
        Reply shut = serving.send("PATCH", SETS + "/" + id, "{\"opensAt\": \"" + past.plus(1, ChronoUnit.DAYS) + "\"}", teacher);
        assertEquals(200, shut.status(), shut.body());
        assertEquals(403, serving.get(SETS + "/" + id + "/key", reader).status());
        assertEquals(412, serving.send("PATCH", SETS + "/" + id, "{\"opensAt\": null}", teacher, "If-Match: \"1\"").status());
        assertEquals(200, serving.send("PATCH", SETS + "/" + id, "{\"opensAt\": \"" + past + "\"}", teacher, "If-Match: \"2\"").status());
        assertEquals(serving.get(SETS + "/" + id + "/key", teacher).json(), serving.get(SETS + "/" + id + "/key", reader).json());
        Reply late = serving.post(SETS + "/" + id + "/mark", answer(1, best(id, 1)), reader);
        assertEquals(200, late.status(), late.body());
        assertTrue(late.json().path("late").asBoolean(), late.body());
    }

    @Test
    void theBookingIsMadeWithTheExercisesAndWhatDoesNotFitSaysWhatDoes() {
        String time = ", \"from\": \"2032-03-01T10:00:00Z\", \"until\": \"2032-03-01T12:00:00Z\"}";
        Reply made = serving.post(SETS, "{\"kind\": \"choose\", \"level\": 1, \"benches\": 1" + time, teacher, "Idempotency-Key: once");
        assertEquals(201, made.status(), made.body());
        assertEquals("lab", serving.get("/api/locker/bookings/" + made.json().path("booking").asText(), reader).json().path("kind").asText());
        Reply again = serving.post(SETS, "{\"kind\": \"choose\", \"level\": 1, \"benches\": 1" + time, teacher, "Idempotency-Key: once");
        assertEquals(made.body(), again.body(), "sent again, it is said again, though nothing is free by now");
        Reply refused = serving.post(SETS, "{\"kind\": \"choose\", \"level\": 1, \"benches\": 2" + time, teacher);
        assertEquals(422, refused.status(), refused.body());
        assertTrue(refused.json().path("fits").size() > 0, refused.body());
        Reply elsewhen = serving.post(SETS, "{\"kind\": \"choose\", \"level\": 1, \"benches\": 2" + time.replace("2032", "2033"), teacher);
        assertTrue(elsewhen.json().path("short").size() > 0, elsewhen.body());
    }

    @Test
    void aWholeClassIsMarkedFromATableAndSummedUp() {
        String id = made("").path("id").asText();
        StringBuilder csv = new StringBuilder("bench,item,answer\n");
        for (int bench = 1; bench <= 2; bench++) {
            int number = bench;
            best(id, bench).properties().forEach(item -> {
                StringBuilder values = new StringBuilder();
                item.getValue().forEach(value -> values.append(values.isEmpty() ? "" : " ").append(value.asText()));
                csv.append(number).append(',').append(item.getKey()).append(',').append(values).append('\n');
            });
        }
        Reply marked = serving.post(SETS + "/" + id + "/answers", csv.toString(), teacher, "Content-Type: text/csv");
        assertEquals(200, marked.status(), marked.body());
        marked.json().path("benches").forEach(bench -> assertEquals(bench.path("of"), bench.path("mark"), bench.toString()));
        Reply wrong = serving.post(SETS + "/" + id + "/answers", "bench,item,answer\n9,x,y\n1,nothing,z\n", teacher, "Content-Type: text/csv");
        assertEquals(400, wrong.status());
        assertEquals(List.of("/2/bench", "/3/item"), wrong.json().path("errors").findValuesAsText("at"), wrong.body());
        JsonNode summary = serving.get(SETS + "/" + id + "/summary", teacher).json();
        assertEquals(1, summary.path("meanShare").asDouble(), summary.toString());
        assertEquals(0, summary.path("missed").size(), summary.toString());
        summary.path("items").forEach(item -> assertEquals(1, item.path("rightShare").asDouble(), item.toString()));
        String table = serving.get(SETS + "/" + id + "/marks.csv", teacher).body();
        assertEquals(3, table.lines().count(), table);
        assertTrue(table.startsWith("bench,mark,of,percent,late,at,by,capped,"), table);
        assertTrue(table.lines().skip(1).allMatch(line -> line.split(",")[3].equals("100")), table);
        Reply json = serving.post(SETS + "/" + id + "/answers", "{\"answers\": [{\"bench\": 1, \"answer\": {}}]}", teacher);
        assertEquals(0, json.json().at("/benches/0/mark").asDouble(), json.body());
    }

    @Test
    void practiceIsForEverybodyAndMarkedAtOnce() {
        assertTrue(serving.get("/api/lab/kinds", reader).json().path("kinds").size() >= 4);
        JsonNode tried = serving.get("/api/lab/practice?kind=reckon&level=2", reader).json();
        String about = "\"kind\": \"reckon\", \"level\": 2, \"seed\": " + tried.path("seed");
        JsonNode nothing = serving.post("/api/lab/practice/mark", "{" + about + ", \"answer\": {}}", reader).json();
        assertEquals(0, nothing.path("mark").asDouble(), nothing.toString());
        JsonNode all = serving.post("/api/lab/practice/mark", "{" + about + ", \"answer\": " + nothing.at("/key/best") + "}", reader).json();
        assertEquals(all.path("of"), all.path("mark"), all.toString());
        assertEquals(400, serving.get("/api/lab/practice?kind=rekon&level=9", reader).status());
        assertEquals(400, serving.post("/api/lab/practice/mark", "{}", reader).status());
    }

    @Test
    void whatIsRemovedIsGoneAndItsBookingStays() {
        String id = made("").path("id").asText();
        serving.post(SETS + "/" + id + "/mark", "{\"bench\": 1, \"answer\": {}}", reader);
        assertEquals(204, serving.send("DELETE", SETS + "/" + id, null, teacher).status());
        assertEquals(404, serving.get(SETS + "/" + id, teacher).status());
        assertEquals(404, serving.get(SETS + "/" + id + "/key", reader).status());
        JsonNode events = serving.get("/api/locker/history?about=lab%20" + id, reader).json().path("events");
        assertEquals(List.of("removed", "made"), events.findValuesAsText("what"), events.toString());
        assertFalse(events.toString().contains("seed"), events.toString());
    }
}
