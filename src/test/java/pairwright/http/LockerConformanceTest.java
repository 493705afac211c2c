package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Place;

/** Every address of the locker, asked in each way it can be, answers as the description promises; and every answer and field it promises is really seen. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LockerConformanceTest {
    private static final LocalDate TODAY = LocalDate.now();
    private static final String UNITS = "/api/locker/units";
    private static final String COVERAGE = "/api/locker/coverage";
    private static final String BOOKINGS = "/api/locker/bookings";
    private static final String TABLE = "/api/locker/units/import";
    private static final String CSV = "Content-Type: text/csv; charset=utf-8";
    private static final String USED = "Idempotency-Key: used-before";
    /** What is sent where something is, so that nothing is wrong with it but what is meant to be. */
    private static final Map<String, String> BODIES = Map.of(
            "POST " + UNITS, "{\"micType\": \"long-ribbon\"}",
            "PATCH " + UNITS + "/{id}", "{\"storedAt\": \"Loft\"}",
            "POST " + TABLE, "id,storedAt\r\nboom-3,Loft\r\n",
            "POST " + BOOKINGS, "{\"units\": [\"boom-3\"], \"from\": \"2026-03-01T10:00:00Z\", \"until\": \"2026-03-01T11:00:00Z\"}",
            "PATCH " + BOOKINGS + "/{id}", "{\"note\": \"Bring a lamp\"}",
            "POST /api/locker/out", "{\"unit\": \"boom-3\"}",
            "POST /api/locker/in", "{\"unit\": \"boom-3\"}");

    private final HeldToDescription held = new HeldToDescription();

    /** Something that can be asked; what it answers, by status. */
    private record Operation(String method, String path, JsonNode responses) {
        String name() {
            return method + " " + path;
        }

        String body() {
            if (method.equals("GET") || method.equals("DELETE")) {
                return null;
            }
            assertTrue(BODIES.containsKey(name()), "say in BODIES what is sent to " + name());
            return BODIES.get(name());
        }

        String target() {
            return path.replace("{id}", path.startsWith(BOOKINGS) ? "1" : "boom-3");
        }
    }

    @BeforeAll
    void askEverything(@TempDir Path folder) {
        try (LockerServing open = LockerServing.demo(folder.resolve("open"), TODAY)) {
            units(open);
            tables(open);
            bookings(open);
            around(open);
            assertEquals(201, ask(open, "POST", UNITS, UNITS, "{\"micType\": \"long-ribbon\", \"label\": \"Used\"}", USED).status());
            refused(Set.of("304", "400", "404", "412", "413", "415", "422"), open);
        }
        try (LockerServing guarded = LockerServing.guarded(Place.in(folder.resolve("guarded")))) {
            refused(Set.of("401", "403", "429"), guarded);
        }
        try (LockerServing away = LockerServing.open(Place.in(folder.resolve("away")))) {
            away.locker.close();
            refused(Set.of("503"), away);
        }
    }

    @Test
    void everyAnswerIsAsItIsDescribed() {
        assertEquals(List.of(), held.wrong);
    }

    @Test
    void everyAnswerThatIsDescribedIsSeen() {
        Set<String> described = new TreeSet<>();
        operations().forEach(operation -> operation.responses().fieldNames().forEachRemaining(status -> described.add(operation.name() + " " + status)));
        described.removeIf(answer -> answer.endsWith(" default"));
        assertTrue(described.size() > 100, described.size() + " answers");
        described.removeAll(held.seen);
        assertEquals(Set.of(), described, "described, and never seen: ask for it");
    }

    @Test
    void everyFieldThatIsDescribedIsSeenInSomeAnswer() {
        Set<String> described = new TreeSet<>();
        operations().forEach(operation -> operation.responses().properties().forEach(response -> described.addAll(DescribedFields.of(HeldToDescription.schema(response.getValue())))));
        described.removeAll(held.fields);
        // what a session that cannot be served says is seen with sessions, and what exercises do not fit with the lab
        described.removeIf(field -> field.matches("(PlanWayOut|Short|Fits)\\..*|Problem.(short|waysOut|fits)"));
        assertEquals(Set.of(), described, "no answer has it: ask for something that does");
    }

    private void units(LockerServing serving) {
        String made = "{'id': 'ribbon-9', 'kind': 'mic', 'micType': 'long-ribbon', 'label': 'Ribbon 9', 'serial': '0907', 'tag': 'B-909', 'pairMate': 'ribbon-10', 'condition': 'limited',"
                + " 'note': 'Hums', 'storedAt': 'Dairy', 'response': [{'frequencyHz': 63, 'levelDb': -1.25}, {'frequencyHz': 10000, 'levelDb': 0}]}";
        Reply unit = ask(serving, "POST", UNITS, UNITS, quoted(made), "Idempotency-Key: ribbon-9");
        assertEquals("/api/locker/units/ribbon-9", unit.headers().get("location"));
        assertEquals("\"1\"", unit.headers().get("etag"));
        Reply again = ask(serving, "POST", UNITS, UNITS, quoted(made), "Idempotency-Key: ribbon-9");
        assertEquals("true", again.headers().get("idempotent-replay"));
        assertEquals(unit.body(), again.body());
        ask(serving, "GET", UNITS, UNITS, null);
        JsonNode standing = ask(serving, "GET", UNITS, UNITS + "?from=" + at(1, 12) + "&until=" + at(1, 13) + "&kind=mic", null).json();
        assertEquals(standing.path("units").size(), standing.path("standing").size());
        assertEquals(1, ask(serving, "GET", UNITS, UNITS + "?words=ribbon%209&condition=limited&micType=long-ribbon&kind=mic", null).json().path("units").size());
        assertEquals(unit.body(), ask(serving, "GET", UNITS + "/{id}", UNITS + "/ribbon-9", null).body(), "what was made is what is read");
        Reply altered = ask(serving, "PATCH", UNITS + "/{id}", UNITS + "/ribbon-9", "{\"note\": null, \"condition\": \"good\"}", "Content-Type: application/merge-patch+json", "If-Match: \"1\"");
        assertEquals("\"2\"", altered.headers().get("etag"));
        assertTrue(altered.json().path("note").isMissingNode(), altered.body());
        Reply whole = ask(serving, "PATCH", UNITS + "/{id}", UNITS + "/ribbon-9", altered.body());
        assertEquals(altered.body(), whole.body(), "sent back as it is, it stays as it is");
        assertEquals(409, ask(serving, "DELETE", UNITS + "/{id}", UNITS + "/pencil-1", null).status());
        ask(serving, "DELETE", UNITS + "/{id}", UNITS + "/ribbon-9", null);
        for (String other : List.of("{'kind': 'stand', 'label': 'Tall', 'stand': {'massKg': 3, 'reachM': 1, 'footRadiusM': 0.4, 'legs': 3, 'heightM': 2}}",
                "{'kind': 'channel', 'channel': {'bank': 'B', 'leastGainDb': 0, 'mostGainDb': 60, 'inputOhm': 2000, 'noiseDbu': -128.5, 'phantom': 'bank', 'phantomMa': 40}}",
                "{'kind': 'pad', 'pad': {'lossDb': 20}}", "{'kind': 'booster', 'booster': {'gainDb': 25, 'phantomMa': 3, 'passesPhantom': false}}")) {
            assertEquals(201, ask(serving, "POST", UNITS, UNITS, quoted(other)).status());
        }
    }

    private void tables(LockerServing serving) {
        ask(serving, "GET", "/api/locker/units.csv", "/api/locker/units.csv?decimals=comma", null);
        String table = "id,micType,label,note\r\nboom-3,,,Squeaks\r\n,long-ribbon,,\r\nround-1,large-condenser-multi-pattern,Round one,\r\n,long-ribbon,Ribbon 12,\r\n";
        Reply preview = ask(serving, "POST", TABLE, TABLE + "?preview=true", table, CSV);
        assertEquals(quoted("[{'line':2,'effect':'changed','unit':'boom-3','label':'Boom 3','changes':[{'column':'note','from':'','to':'Squeaks'}]},"
                + "{'line':3,'effect':'new','changes':[]},{'line':5,'effect':'new','label':'Ribbon 12','changes':[]}]"), preview.json().path("rows").toString());
        Reply faults = ask(serving, "POST", TABLE, TABLE + "?preview=true", "id,micType,colour\r\nboom-3,long-ribon,\r\n", CSV);
        assertEquals(2, faults.json().path("faults").size(), faults.body());
        assertTrue(ask(serving, "POST", TABLE, TABLE, table, CSV).json().path("done").asBoolean());
    }

    private void bookings(LockerServing serving) {
        ask(serving, "GET", BOOKINGS, BOOKINGS + "?from=" + at(-30, 0) + "&until=" + at(30, 0) + "&unit=pencil-1", null);
        List<String> all = new ArrayList<>();
        String month = BOOKINGS + "?from=" + at(-30, 0) + "&until=" + at(30, 0);
        ask(serving, "GET", BOOKINGS, month, null).json().path("bookings").forEach(booking -> all.add(booking.path("id").asText()));
        List<String> paged = new ArrayList<>();
        for (String after = ""; after != null;) {
            JsonNode page = ask(serving, "GET", BOOKINGS, month + "&most=2" + after, null).json();
            page.path("bookings").forEach(booking -> paged.add(booking.path("id").asText()));
            after = page.has("after") ? "&after=" + page.path("after").asText() : null;
        }
        assertTrue(all.size() > 4, all::toString);
        assertEquals(all, paged, "page by page it is the same");
        assertEquals(400, ask(serving, "GET", BOOKINGS, month + "&after=yesterday", null).status());
        String draft = "{'units': ['boom-3', 'pad-20-1'], 'from': '%s', 'until': '%s', 'kind': 'lab', 'for': 'Pads', 'by': 'Wren', 'note': 'Loft'}";
        Reply booked = ask(serving, "POST", BOOKINGS, BOOKINGS, quoted(draft.formatted(at(9, 10), at(9, 12))));
        String id = booked.json().path("id").asText();
        assertEquals(409, ask(serving, "POST", BOOKINGS, BOOKINGS, quoted(draft.formatted(at(9, 11), at(9, 13)))).status());
        assertEquals(booked.body(), ask(serving, "GET", BOOKINGS + "/{id}", BOOKINGS + "/" + id, null).body());
        Reply altered = ask(serving, "PATCH", BOOKINGS + "/{id}", BOOKINGS + "/" + id, quoted("{'until': '%s'}".formatted(at(9, 13))), "If-Match: \"1\"");
        assertEquals(2, altered.json().path("version").asInt(), altered.body());
        assertEquals(altered.body(), ask(serving, "PATCH", BOOKINGS + "/{id}", BOOKINGS + "/" + id, altered.body()).body(), "sent back as it is, it stays as it is");
        assertEquals(409, ask(serving, "PATCH", BOOKINGS + "/{id}", BOOKINGS + "/" + id, "{\"units\": [\"wide-body-1\"], \"from\": \"" + at(1, 10) + "\"}").status());
        ask(serving, "DELETE", BOOKINGS + "/{id}", BOOKINGS + "/" + id, null);
        String out = serving.get("/api/locker/out").json().at("/out/0/booking").asText();
        assertEquals(409, ask(serving, "DELETE", BOOKINGS + "/{id}", BOOKINGS + "/" + out, null).status());
        ask(serving, "GET", "/api/locker/free", "/api/locker/free?micType=long-ribbon", null);
        assertTrue(ask(serving, "GET", "/api/locker/free", "/api/locker/free?from=2027-02-29T10:00:00Z", null).body().contains("2027-02-29T10:00:00Z\\\" is on no calendar"),
                "it has an offset; what is wrong is the day");
        for (String address : List.of("/api/locker/free", UNITS)) {
            Reply typo = ask(serving, "GET", address, address + "?micType=long-ribon", null);
            assertEquals(400, typo.status(), "of a type that is mistyped nothing is free, but nobody has it");
            assertEquals("/micType", typo.json().at("/errors/0/at").asText(), typo.body());
        }
    }

    private void around(LockerServing serving) {
        assertTrue(ask(serving, "GET", "/api/locker/out", "/api/locker/out", null).json().path("now").asText().matches("[^.]*"), "in whole seconds, as all times of the locker");
        String taken = "{\"unit\": \"b-404\", \"by\": \"Finch\", \"until\": \"" + at(0, 11) + "\"}";
        ask(serving, "POST", "/api/locker/out", "/api/locker/out", taken);
        assertEquals(409, ask(serving, "POST", "/api/locker/out", "/api/locker/out", taken).status());
        ask(serving, "POST", "/api/locker/in", "/api/locker/in", "{\"unit\": \"Boom 3\"}");
        ask(serving, "GET", "/api/locker/history", "/api/locker/history?most=1&about=boom-3", null);
        ask(serving, "GET", "/api/locker/use", "/api/locker/use?month=" + TODAY.toString().substring(0, 7), null);
        assertTrue(ask(serving, "GET", "/api/locker/calendar.ics", "/api/locker/calendar.ics", null).body().startsWith("BEGIN:VCALENDAR"));
        ask(serving, "GET", UNITS + "/{id}/calendar.ics", UNITS + "/pencil-1/calendar.ics", null);
        assertTimeoutPreemptively(Duration.ofMinutes(3), () -> {
            for (String target : List.of(COVERAGE, COVERAGE + "?locker=free")) {
                while (ask(serving, "GET", COVERAGE, target, null).json().path("state").asText().equals("computing")) {
                    Thread.sleep(200);
                }
            }
        });
    }

    /** Asks every address for each of these answers that it is said to give. */
    private void refused(Set<String> statuses, LockerServing serving) {
        for (Operation operation : operations()) {
            operation.responses().fieldNames().forEachRemaining(status -> {
                if (statuses.contains(status)) {
                    Reply reply = refused(operation, status, serving);
                    assertEquals(status, Integer.toString(reply.status()), operation.name() + ": " + reply.body());
                    assertEquals(List.of("429", "503").contains(status), reply.headers().containsKey("retry-after"), operation.name() + " " + status);
                }
            });
        }
    }

    private Reply refused(Operation operation, String status, LockerServing serving) {
        String target = operation.target();
        String type = operation.path().equals(TABLE) ? CSV : "X-Nothing: 1";
        return switch (status) {
            case "304" -> ask(serving, operation, target, null, "If-None-Match: *");
            case "400" -> ask(serving, operation, target + "?nonsense=1", operation.body(), type);
            case "403" -> ask(serving, operation, target, operation.body(), type, "Authorization: Bearer " + serving.reader);
            case "404" -> operation.path().contains("{id}") ? ask(serving, operation, operation.path().replace("{id}", "nothing-there"), operation.body())
                    : ask(serving, operation, target + (operation.path().equals(BOOKINGS) ? "?unit=nothing-there" : ""), operation.body() == null ? null : "{\"unit\": \"nothing\"}");
            case "412" -> ask(serving, operation, target, operation.body(), "If-Match: \"999\"");
            case "413" -> ask(serving, operation, target, " ".repeat(5 * 1024 * 1024), type);
            case "415" -> ask(serving, operation, target, operation.body(), "Content-Type: text/plain");
            case "422" -> ask(serving, operation, target, operation.body(), type, USED);
            case "429" -> slowed(operation, target, type, serving);
            default -> ask(serving, operation, target, operation.body(), type);
        };
    }

    private Reply slowed(Operation operation, String target, String type, LockerServing serving) {
        String from = "X-Forwarded-For: 198.51.100." + (1 + operations().stream().map(Operation::name).toList().indexOf(operation.name()));
        for (int i = 0; i < Tries.FREE; i++) {
            assertEquals(401, ask(serving, operation, target, operation.body(), type, "Authorization: Bearer guess" + i, from).status());
        }
        return ask(serving, operation, target, operation.body(), type, "Authorization: Bearer " + serving.engineer, from);
    }

    private Reply ask(LockerServing serving, Operation operation, String target, String body, String... headers) {
        return ask(serving, operation.method(), operation.path(), target, body, headers);
    }

    private Reply ask(LockerServing serving, String method, String path, String target, String body, String... headers) {
        return held.ask(serving, method, path, target, body, headers);
    }

    private static List<Operation> operations() {
        return HeldToDescription.operations("/api/locker/", Operation::new);
    }

    private static String quoted(String text) {
        return text.replace('\'', '"');
    }

    private static String at(int day, int hour) {
        return TODAY.plusDays(day).atTime(hour, 0).atZone(ZoneId.systemDefault()).toOffsetDateTime().format(DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx"));
    }
}
