package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Place;

/** Stored sessions over the interface: what is put is what is read, nobody writes over what they did not see, and every answer is as it is described. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SessionApiTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final String ALL = "/api/sessions";
    private static final String ONE = ALL + "/{id}";
    private static final String LINE_UP = quoted("{'name': 'Barn, second day', 'room': {'room': 'barn', 'widthM': 9, 'depthM': 7, 'heightM': 4, 'reverbTimeS': 0.6}, 'lineUp': ["
            + "{'id': 'bass', 'player': 'Oluchi', 'source': 'double-bass', 'xM': 3, 'yM': 4, 'facingDegrees': 180},"
            + "{'id': 'horn', 'source': 'trumpet', 'xM': 6, 'yM': 4, 'facingDegrees': 200, 'must': false}],"
            + " 'from': '2027-03-05T10:00:00+01:00', 'until': '2027-03-05T18:00:00+01:00'}");
    private static final String PICKS = quoted("{'lines': [{'seat': 'bass', 'mic': 1, 'technique': 'single', 'micType': 'long-ribbon', 'position': 'bridge', 'distanceM': 0.3, 'unit': '%s', 'stand': '%s'},"
            + "{'seat': 'horn', 'mic': 1, 'micType': 'compact-ribbon', 'position': 'off-bell', 'distanceM': 0.5, 'unit': '%s', 'stand': '%s'}]}");

    private final List<String> wrong = new ArrayList<>();
    private LockerServing serving;
    private String firstPosition;

    private static String quoted(String text) {
        return text.replace('\'', '"');
    }

    @BeforeAll
    void open(@TempDir Path folder) {
        serving = LockerServing.demo(folder, TODAY);
        firstPosition = Serving.KNOWLEDGE.current().catalogue().sources().get("double-bass").positions().get(0).id();
    }

    @AfterAll
    void everyAnswerWasAsItIsDescribed() {
        serving.close();
        assertEquals(List.of(), wrong);
    }

    private Reply ask(String method, String path, String target, String body, String... headers) {
        Reply reply = serving.send(method, target, body, headers);
        Serving.OPEN_API.faults(method, path, reply).forEach(fault -> wrong.add(method + " " + target + " " + reply.status() + ": " + fault));
        return reply;
    }

    private String made(String name) {
        Reply reply = ask("POST", ALL, ALL, LINE_UP.replace("Barn, second day", name));
        assertEquals(201, reply.status(), reply.body());
        return reply.headers().get("location").substring((ALL + "/").length());
    }

    private String picks(String unit, String stand, String other, String otherStand) {
        return PICKS.formatted(unit, stand, other, otherStand).replace("\"bridge\"", "\"" + firstPosition + "\"");
    }

    private List<String> units(String micType) {
        return serving.locker.units().stream().filter(unit -> micType.equals(unit.micType()) && unit.condition().usable()).map(unit -> unit.id()).toList();
    }

    @Test
    void theExampleIsPlannedWithTheLockerOfTheDemoAndItsLeadsAreCounted() {
        Reply reply = ask("POST", ALL + "/plan", ALL + "/plan", serving.get(ALL + "/example.json").body().replaceFirst("\"plans\" ?: ?3", "\"plans\": 1"));
        assertEquals(200, reply.status(), reply.body());
        JsonNode plan = reply.json().at("/plans/0");
        assertEquals(plan.path("lines").size(), plan.at("/leads/runs").size());
        int leads = 0;
        for (JsonNode count : plan.at("/leads/counts")) {
            leads += count.path("count").asInt();
        }
        assertTrue(leads >= plan.path("lines").size(), plan.path("leads").toString());
        assertTrue(plan.at("/leads/box/assumed").isTextual(), plan.path("leads").toString());
    }

    private List<String> booms() {
        return serving.locker.units().stream().map(unit -> unit.id()).filter(id -> id.startsWith("boom-")).toList();
    }

    @Test
    void whatIsStoredIsReadAndCanBePutBack() {
        Reply made = ask("POST", ALL, ALL, LINE_UP.replace("second", "tenth"), "Idempotency-Key: tenth");
        assertEquals(201, made.status(), made.body());
        assertEquals("/api/sessions/barn-tenth-day", made.headers().get("location"));
        assertEquals(made.body(), ask("POST", ALL, ALL, LINE_UP.replace("second", "tenth"), "Idempotency-Key: tenth").body());
        Reply read = ask("GET", ONE, ALL + "/barn-tenth-day", null);
        assertEquals(made.body(), read.body());
        assertEquals(200, ask("PUT", ONE, ALL + "/barn-tenth-day", read.body(), "If-Match: \"1\"").status());
        assertEquals("\"1\"", ask("GET", ONE, ALL + "/barn-tenth-day", null).headers().get("etag"), "nothing was changed");
        assertEquals(304, ask("GET", ONE, ALL + "/barn-tenth-day", null, "If-None-Match: \"1\"").status());
        Reply moved = ask("PUT", ONE, ALL + "/barn-tenth-day", LINE_UP.replace("\"xM\": 3", "\"xM\": 2.5"), "If-Match: \"1\"");
        assertEquals("\"2\"", moved.headers().get("etag"), moved.body());
        assertEquals(412, ask("PUT", ONE, ALL + "/barn-tenth-day", read.body(), "If-Match: \"1\"").status());
        assertEquals(412, ask("PUT", ONE, ALL + "/nobody", read.body(), "If-Match: \"1\"").status());
        assertEquals(201, ask("PUT", ONE, ALL + "/my-own-id", read.body()).status());
        JsonNode list = ask("GET", ALL, ALL, null).json();
        assertEquals(list.path("count").asInt(), list.path("sessions").size());
        assertTrue(list.path("sessions").findValuesAsText("id").containsAll(List.of("barn-tenth-day", "my-own-id")), list.toString());
        assertEquals(1, ask("GET", ALL, ALL + "?most=1", null).json().path("sessions").size());
        assertEquals(412, ask("DELETE", ONE, ALL + "/my-own-id", null, "If-Match: \"9\"").status());
        assertEquals(204, ask("DELETE", ONE, ALL + "/my-own-id", null, "Idempotency-Key: gone").status());
        assertEquals(204, ask("DELETE", ONE, ALL + "/my-own-id", null, "Idempotency-Key: gone").status(), "once means once");
        assertEquals(404, ask("DELETE", ONE, ALL + "/my-own-id", null).status());
        assertEquals(404, ask("GET", ONE, ALL + "/my-own-id", null).status());
    }

    @Test
    void everyFaultOfALineUpIsToldAtOnceAndNothingIsStored() {
        Reply reply = ask("POST", ALL, ALL, quoted("{'lineUp': [{'source': 'trumpett'}], 'locker': 'owned', 'colour': 'red'}"));
        assertEquals(400, reply.status());
        assertTrue(reply.json().path("errors").findValuesAsText("at").containsAll(List.of("/locker", "/colour", "/lineUp/0/source")), reply.body());
        assertEquals("/name", ask("POST", ALL, ALL, quoted("{'lineUp': ['trumpet']}")).json().at("/errors/0/at").asText());
        assertEquals(400, ask("PUT", ONE, ALL + "/Not%20an%20id", LINE_UP).status());
        assertEquals(400, ask("PUT", ONE, ALL + "/buy", LINE_UP).status());
        assertEquals(400, ask("GET", ALL, ALL + "?least=1", null).status());
        assertEquals(415, ask("POST", ALL, ALL, LINE_UP, "Content-Type: text/plain").status());
        assertEquals(413, ask("POST", ALL, ALL, " ".repeat(5 * 1024 * 1024)).status());
    }

    @Test
    void whatWasPickedIsReadAgainAndBookedAsAWholeAndAnewInOneStep() {
        String session = ALL + "/" + made("Booked");
        String book = ONE + "/book";
        assertEquals(404, ask("POST", book, session + "/book", null).status(), "nothing is picked yet");
        assertEquals(404, ask("GET", ONE + "/picks", session + "/picks", null).status());
        List<String> ribbons = units("long-ribbon");
        List<String> others = units("compact-ribbon");
        List<String> booms = booms();
        String first = picks(ribbons.get(0), booms.get(0), others.get(0), booms.get(1));
        Reply picked = ask("PUT", ONE + "/picks", session + "/picks", first);
        assertEquals(201, picked.status(), picked.body());
        assertEquals(picked.body(), ask("GET", ONE + "/picks", session + "/picks", null).body());
        assertEquals(304, ask("GET", ONE + "/picks", session + "/picks", null, "If-None-Match: \"1\"").status());
        Reply booked = ask("POST", book, session + "/book", null, "Idempotency-Key: book-it");
        assertEquals(200, booked.status(), booked.body());
        assertEquals(booked.body(), ask("POST", book, session + "/book", null, "Idempotency-Key: book-it").body());
        assertEquals(4, booked.json().path("units").size());
        String id = booked.json().path("id").asText();
        assertTrue(ask("GET", ALL, ALL, null).json().path("sessions").findValuesAsText("booking").contains(id));
        Reply taken = serving.post("/api/locker/bookings", quoted("{'units': ['%s'], 'from': '2027-03-05T10:00:00+01:00', 'until': '2027-03-05T11:00:00+01:00'}".formatted(booms.get(2))));
        assertEquals(201, taken.status(), taken.body());
        assertEquals(200, ask("PUT", ONE + "/picks", session + "/picks", picks(ribbons.get(0), booms.get(0), others.get(0), booms.get(2)), "If-Match: \"1\"").status());
        assertEquals(412, ask("PUT", ONE + "/picks", session + "/picks", first, "If-Match: \"1\"").status());
        assertEquals(409, ask("POST", book, session + "/book", null).status());
        assertEquals(booked.json().path("units"), serving.get("/api/locker/bookings/" + id).json().path("units"), "it still has what it had");
        ask("PUT", ONE + "/picks", session + "/picks", picks(ribbons.get(0), booms.get(0), others.get(0), booms.get(0)));
        Reply anew = ask("POST", book, session + "/book", null);
        assertEquals(id, anew.json().path("id").asText(), anew.body());
        assertEquals(List.of(ribbons.get(0), booms.get(0), others.get(0)), texts(anew.json().path("units")), "what two share is taken once");
        String untimed = ALL + "/" + ask("POST", ALL, ALL, quoted("{'name': 'Untimed', 'lineUp': [{'id': 'bass', 'source': 'double-bass'}]}")).headers().get("location").substring(14);
        ask("PUT", ONE + "/picks", untimed + "/picks", quoted("{'lines': []}"));
        Reply no = ask("POST", book, untimed + "/book", null);
        assertEquals(List.of("/from", "/until", "/picks"), no.json().path("errors").findValuesAsText("at"), no.body());
        assertEquals(400, ask("PUT", ONE + "/picks", untimed + "/picks", quoted("{'lines': [{'seat': 'bass'}]}")).status());
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(one -> texts.add(one.asText()));
        return texts;
    }

    @Test
    void whatBecameOfAMicrophoneIsSaidOfTheOneThatWasPicked() {
        String session = ALL + "/" + made("Marked");
        String marks = ONE + "/marks";
        String kept = quoted("{'marks': [{'seat': 'bass', 'kept': true}]}");
        assertEquals(404, ask("PUT", marks, session + "/marks", kept).status(), "nothing is picked yet");
        ask("PUT", ONE + "/picks", session + "/picks", picks(units("long-ribbon").get(0), booms().get(0), units("compact-ribbon").get(0), booms().get(1)));
        JsonNode blank = ask("GET", marks, session + "/marks", null).json();
        assertEquals(List.of("bass", "horn"), blank.path("lines").findValuesAsText("seat"));
        assertTrue(blank.path("lines").findValues("became").isEmpty());
        String other = Serving.KNOWLEDGE.current().catalogue().sources().get("double-bass").positions().get(1).id();
        Reply marked = ask("PUT", marks, session + "/marks", quoted("{'marks': [{'seat': 'bass', 'mic': 1, 'kept': false, 'toPosition': '" + other + "', 'why': 'finger noise'},"
                + " {'seat': 'horn', 'kept': false, 'toMicType': 'long-ribbon', 'changedTo': 'Half a metre back'}]}"), "If-Match: \"0\"");
        assertEquals(200, marked.status(), marked.body());
        assertEquals(List.of("moved", "changed"), marked.json().path("lines").findValuesAsText("became"));
        assertEquals(marked.body(), ask("GET", marks, session + "/marks", null).body());
        assertEquals(412, ask("PUT", marks, session + "/marks", kept, "If-Match: \"0\"").status());
        var mark = serving.locker.marks().of(session.substring(14)).get(0);
        assertEquals(List.of("double-bass", "barn", "Oluchi", "long-ribbon", firstPosition, other, "finger noise"),
                List.of(mark.source(), mark.room(), mark.player(), mark.micType(), mark.position(), mark.toPosition(), mark.why()));
        Reply faults = ask("PUT", marks, session + "/marks", quoted("{'marks': [{'seat': 'drums', 'kept': true}, {'seat': 'bass', 'mic': 2, 'kept': true},"
                + " {'seat': 'horn', 'kept': false, 'toMicType': 'long-ribon', 'toPosition': 'moon'}]}"));
        assertEquals(List.of("/marks/0/seat", "/marks/1/mic", "/marks/2/toMicType", "/marks/2/toPosition"), faults.json().path("errors").findValuesAsText("at"), faults.body());
        assertEquals("there is no mic type \"long-ribon\". Did you mean long-ribbon?", faults.json().at("/errors/2/says").asText(faults.body()));
        assertEquals(400, ask("PUT", marks, session + "/marks", quoted("{'marks': [{'seat': 'bass', 'kept': true, 'toPosition': '" + other + "'}]}")).status());
        assertEquals(400, ask("PUT", marks, session + "/marks", quoted("{'marks': [{'kept': 'yes'}, 7], 'more': 1}")).status());
        assertTrue(ask("GET", ALL + "/marks.csv", ALL + "/marks.csv", null).body().contains("finger noise"));
        assertEquals("given-up", ask("PUT", marks, session + "/marks", quoted("{'marks': [{'seat': 'bass', 'kept': false}]}")).json().at("/lines/0/became").asText());
        assertEquals(0, ask("PUT", marks, session + "/marks", quoted("{'marks': []}")).json().path("lines").findValues("became").size());
    }

    @Test
    void whatWasKeptIsKnownByTheNextAnswer() {
        String question = quoted("{'source': 'violin', 'room': 'barn', 'locker': 'any', 'limits': {'mics': 1}}");
        Reply before = serving.post("/api/ask", question);
        assertFalse(before.body().contains("MEM-001"), before.body());
        JsonNode mic = before.json().at("/options/0/mics/0");
        String lineUp = quoted("{'name': 'Remembered', 'room': 'barn', 'lineUp': [{'id': 'fiddle', 'source': 'violin'}]}");
        String session = ask("POST", ALL, ALL, lineUp).headers().get("location");
        ask("PUT", ONE + "/picks", session + "/picks", quoted("{'lines': [{'seat': 'fiddle', 'micType': '%s', 'position': '%s'}]}".formatted(mic.path("micType").asText(), mic.path("position").asText())));
        assertEquals(200, ask("PUT", ONE + "/marks", session + "/marks", quoted("{'marks': [{'seat': 'fiddle', 'kept': true}]}")).status());
        String after = serving.post("/api/ask", question).body();
        assertTrue(after.contains("MEM-001") && after.contains("Kept in 1 of 1 sessions"), after);
        assertEquals(204, ask("DELETE", ONE, session, null).status());
        assertFalse(serving.post("/api/ask", question).body().contains("MEM-001"), "who removes a session takes away what it taught");
    }

    @Test
    void aReaderReadsAndAnEngineerWrites(@TempDir Path folder) {
        try (LockerServing guarded = LockerServing.guarded(Place.in(folder))) {
            String reader = "Authorization: Bearer " + guarded.reader;
            String engineer = "Authorization: Bearer " + guarded.engineer;
            assertEquals(401, guarded.get(ALL).status());
            assertEquals(403, guarded.send("POST", ALL, LINE_UP, reader).status());
            assertEquals(201, guarded.send("POST", ALL, LINE_UP, engineer).status());
            String session = ALL + "/barn-second-day";
            assertEquals(200, guarded.get(session, reader).status());
            for (String[] write : new String[][] {{"PUT", session, LINE_UP}, {"PUT", session + "/picks", "{}"}, {"PUT", session + "/marks", "{}"}, {"POST", session + "/book", null},
                    {"DELETE", session, null}}) {
                assertEquals(403, guarded.send(write[0], write[1], write[2], reader).status(), write[0] + " " + write[1]);
            }
            assertEquals("Wren", guarded.get(ALL, reader).json().at("/sessions/0/changedBy").asText());
            guarded.locker.close();
            assertNotNull(guarded.get(ALL, reader).headers().get("retry-after"));
        }
    }
}
