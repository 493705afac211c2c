package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pairwright.lab.Kind;
import pairwright.lab.Kinds;
import pairwright.locker.Act;
import pairwright.locker.ExerciseSet;
import pairwright.locker.ExerciseSetDraft;
import pairwright.locker.Place;
import pairwright.model.HeardBefore;

/** Every address of the lab, asked in each way it can be, answers as the description promises; and every answer and field it promises is really seen. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LabConformanceTest {
    private static final String SETS = "/api/lab/exercises";
    private static final String PRACTICE = "/api/lab/practice";
    private static final String USED = "Idempotency-Key: used-before";
    private static final String TIME = "\"from\": \"2032-03-01T10:00:00Z\", \"until\": \"2032-03-01T12:00:00Z\"";
    private static final Map<String, String> BODIES = Map.of(
            "POST " + SETS, "{\"kind\": \"choose\", \"level\": 1, \"benches\": 60, " + TIME + "}",
            "PATCH " + SETS + "/{id}", "{\"opensAt\": null}",
            "POST " + SETS + "/{id}/mark", "{\"bench\": 1, \"answer\": {}}",
            "POST " + SETS + "/{id}/answers", "{\"answers\": [{\"bench\": 1, \"answer\": {}}]}",
            "POST " + PRACTICE + "/mark", "{\"kind\": \"reckon\", \"level\": 1, \"seed\": 7, \"answer\": {}}");

    private final HeldToDescription held = new HeldToDescription();

    /** Something that can be asked; what it answers, by status. */
    private record Operation(String method, String path, JsonNode responses) {
        String name() {
            return method + " " + path;
        }

        String body() {
            return BODIES.get(name());
        }

        String target(String id) {
            return path.replace("{id}", id) + (path.equals(PRACTICE) ? "?kind=reckon&level=1" : "");
        }
    }

    @BeforeAll
    void askEverything(@TempDir Path folder) {
        try (LockerServing open = LockerServing.demo(folder.resolve("open"), LocalDate.now())) {
            aClass(open);
            everyKind(open);
            assertEquals(200, ask(open, "GET", "/api/lab/kinds", "/api/lab/kinds", null).status());
            JsonNode tried = ask(open, "GET", PRACTICE, PRACTICE + "?kind=mend&level=1&seed=try", null).json();
            ask(open, "GET", PRACTICE, PRACTICE + "?kind=reckon&level=1&seed=try", null);
            assertTrue(tried.isObject());
            ask(open, "POST", PRACTICE + "/mark", PRACTICE + "/mark", BODIES.get("POST " + PRACTICE + "/mark"));
            String id = made(open, "{\"kind\": \"reckon\", \"level\": 1, \"benches\": 1}").path("id").asText();
            ask(open, "POST", SETS, SETS, "{\"kind\": \"reckon\", \"level\": 1, \"benches\": 1}", USED);
            refused(Set.of("400", "404", "412", "413", "415", "422"), open, id);
        }
        try (LockerServing guarded = LockerServing.guarded(Place.in(folder.resolve("guarded")))) {
            String teacher = "Authorization: Bearer " + guarded.instructor;
            String reader = "Authorization: Bearer " + guarded.reader;
            String id = guarded.post(SETS, "{\"kind\": \"curves\", \"level\": 1, \"benches\": 1, \"opensAt\": \"2999-01-01T00:00:00Z\"}", teacher).json().path("id").asText();
            assertEquals(202, ask(guarded, "POST", SETS + "/{id}/mark", SETS + "/" + id + "/mark", "{\"bench\": 1, \"answer\": {}}", reader).status());
            assertEquals(200, ask(guarded, "GET", SETS + "/{id}", SETS + "/" + id, null, reader).status());
            refused(Set.of("401", "403", "429"), guarded, id);
        }
        try (LockerServing away = LockerServing.open(Place.in(folder.resolve("away")))) {
            away.locker.close();
            refused(Set.of("503"), away, "x");
        }
    }

    private JsonNode made(LockerServing serving, String body) {
        Reply reply = ask(serving, "POST", SETS, SETS, body);
        assertEquals(201, reply.status(), reply.body());
        return reply.json();
    }

    /** From the exercises to what came of them. */
    private void aClass(LockerServing open) {
        String id = made(open, "{\"kind\": \"choose\", \"seed\": 12, \"level\": 1, \"benches\": 3, \"opensAt\": \"2032-03-01T12:00:00Z\", " + TIME + "}").path("id").asText();
        Reply refused = ask(open, "POST", SETS, SETS, "{\"kind\": \"choose\", \"level\": 1, \"benches\": 5, " + TIME + "}");
        assertEquals(422, refused.status(), refused.body());
        assertEquals(422, ask(open, "POST", SETS, SETS, "{\"kind\": \"choose\", \"seed\": 3, \"level\": 1, \"benches\": 7, " + TIME.replace("2032", "2033") + "}").status());
        ask(open, "GET", SETS, SETS + "?most=5", null);
        String at = SETS + "/" + id;
        JsonNode keys = ask(open, "GET", SETS + "/{id}/key", at + "/key", null).json();
        ask(open, "POST", SETS + "/{id}/mark", at + "/mark", "{\"bench\": 1, \"answer\": " + keys.at("/benches/0/key/best") + "}");
        String wide = "{\"answers\": [{\"bench\": 2, \"answer\": {\"distance\": 4000}}]}";
        assertEquals(200, ask(open, "POST", SETS + "/{id}/answers", at + "/answers", wide).status());
        assertEquals(200, ask(open, "POST", SETS + "/{id}/answers", at + "/answers", "bench,item,answer\r\n2,distance,40 cm\r\n", "Content-Type: text/csv").status());
        ask(open, "GET", SETS + "/{id}/marks", at + "/marks", null);
        ask(open, "GET", SETS + "/{id}/marks.csv", at + "/marks.csv", null);
        JsonNode summary = ask(open, "GET", SETS + "/{id}/summary", at + "/summary", null).json();
        assertEquals(2, summary.path("handedIn").asInt(), summary.toString());
        ask(open, "GET", SETS + "/{id}", at, null);
        ask(open, "PATCH", SETS + "/{id}", at, "{\"opensAt\": \"2027-01-01T00:00:00Z\"}", "If-Match: \"1\"");
        ask(open, "DELETE", SETS + "/{id}", at, null);
    }

    /** What is shown and asked differs from kind to kind; a mark that was given by other rules says so. */
    private void everyKind(LockerServing open) {
        for (Kind kind : new Kinds().all()) {
            for (int level = 1; level <= 5; level += 2) {
                Reply reply = ask(open, "POST", SETS, SETS, "{\"kind\": \"" + kind.info().id() + "\", \"seed\": \"conform\", \"level\": " + level + ", \"benches\": 2}");
                if (reply.status() == 201) {
                    String at = SETS + "/" + reply.json().path("id").asText();
                    JsonNode keys = ask(open, "GET", SETS + "/{id}/key", at + "/key", null).json();
                    ask(open, "POST", SETS + "/{id}/mark", at + "/mark", "{\"bench\": 1, \"answer\": " + keys.at("/benches/0/key/best") + "}");
                    ask(open, "POST", SETS + "/{id}/mark", at + "/mark", "{\"bench\": 2, \"answer\": {}}");
                    open.locker.change(Act.by("Ida"), changes -> Integer.toString(changes.handIn(reply.json().path("id").asText(), 2, "", 0.5, 10.0, false).number()));
                    ask(open, "GET", SETS + "/{id}/marks", at + "/marks", null);
                    ask(open, "GET", SETS + "/{id}/summary", at + "/summary", null);
                }
            }
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
        assertTrue(described.size() > 90, described.size() + " answers");
        described.removeAll(held.seen);
        assertEquals(Set.of(), described, "described, and never seen: ask for it");
    }

    @Test
    void everyFieldThatIsDescribedIsSeenInSomeAnswer() {
        Set<String> described = new TreeSet<>();
        operations().forEach(operation -> operation.responses().properties().forEach(response -> described.addAll(DescribedFields.of(HeldToDescription.schema(response.getValue())))));
        described.removeAll(held.fields);
        // what a line-up holds is seen with sessions, and what clashes with bookings
        described.removeIf(field -> field.matches("(PlanWayOut|Booked|BookingLine|Session.*|Seat|SetUpTime|Gear.*|Ask.*|GoboGiven|HeardBefore)\\..*|Problem.clashes"));
        // no kind may ask for a place or an order, show a room from above, or miss a danger in what is asked here
        described.removeIf(field -> field.matches("HandoutItem.(picture|leftM|rightM|lowM|highM)|HandoutPicture.lineUp|HandoutPicture.(columns|rows)|.*Marked.capped"));
        assertEquals(Set.of(), described, "no answer has it: ask for something that does");
    }

    private void refused(Set<String> statuses, LockerServing serving, String id) {
        for (Operation operation : operations()) {
            operation.responses().fieldNames().forEachRemaining(status -> {
                if (statuses.contains(status)) {
                    Reply reply = refused(operation, status, serving, id);
                    assertEquals(status, Integer.toString(reply.status()), operation.name() + ": " + reply.body());
                    assertEquals(List.of("429", "503").contains(status), reply.headers().containsKey("retry-after"), operation.name() + " " + status);
                }
            });
        }
    }

    private Reply refused(Operation operation, String status, LockerServing serving, String id) {
        String target = operation.target(id);
        return switch (status) {
            case "400" -> ask(serving, operation, target + (target.contains("?") ? "&" : "?") + "nonsense=1", operation.body());
            case "403" -> ask(serving, operation, target, operation.body(), "Authorization: Bearer " + serving.reader);
            case "404" -> ask(serving, operation, operation.target("nothing-there"), operation.body());
            case "412" -> ask(serving, operation, target, operation.body(), "If-Match: \"999\"");
            case "413" -> ask(serving, operation, target, " ".repeat(2 * 1024 * 1024));
            case "415" -> ask(serving, operation, target, operation.body(), "Content-Type: text/plain");
            case "422" -> operation.method().equals("GET") ? ask(serving, operation, operation.target(old(serving)), null) : ask(serving, operation, target, operation.body(), USED);
            case "429" -> slowed(operation, target, serving);
            default -> ask(serving, operation, target, operation.body());
        };
    }

    /** Exercises as a program wrote them that is no more. */
    private static String old(LockerServing serving) {
        ExerciseSetDraft draft = new ExerciseSetDraft("choose", 1, "s", "CLASS", null, null, null, List.of(new ExerciseSet.Bench(1, "format 0", 0.5, List.of())));
        return serving.locker.change(Act.by("Ida"), changes -> {
            String id = changes.makeExercises(draft, null).id();
            changes.handIn(id, 1, "mic\tx", null, null, false);
            changes.openKeys(id, Instant.EPOCH, null);
            return id;
        }).text();
    }

    private Reply slowed(Operation operation, String target, LockerServing serving) {
        String from = "X-Forwarded-For: 198.51.100." + (1 + operations().stream().map(Operation::name).toList().indexOf(operation.name()));
        for (int i = 0; i < Tries.FREE; i++) {
            assertEquals(401, ask(serving, operation, target, operation.body(), "Authorization: Bearer guess" + i, from).status());
        }
        return ask(serving, operation, target, operation.body(), "Authorization: Bearer " + serving.engineer, from);
    }

    private Reply ask(LockerServing serving, Operation operation, String target, String body, String... headers) {
        return ask(serving, operation.method(), operation.path(), target, body, headers);
    }

    private Reply ask(LockerServing serving, String method, String path, String target, String body, String... headers) {
        return held.ask(serving, method, path, target, body, headers);
    }

    private static List<Operation> operations() {
        return HeldToDescription.operations("/api/lab/", Operation::new);
    }
}
