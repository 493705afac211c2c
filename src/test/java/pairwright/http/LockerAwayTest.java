package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.http.Serving.assertProblem;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Act;
import pairwright.locker.Databases;
import pairwright.locker.Place;
import pairwright.locker.UnitDraft;

/** The database of the locker goes away and comes back while the server goes on. */
class LockerAwayTest {
    private static final String BOOKING = "{\"units\": [\"ribbon-1\"], \"from\": \"2027-03-01T10:00:00Z\", \"until\": \"2027-03-01T12:00:00Z\"}";
    private static final Map<String, String> BODIES = Map.of(
            "/api/locker/units", "{\"micType\": \"long-ribbon\"}",
            "/api/locker/units/{id}", "{\"storedAt\": \"Loft\"}",
            "/api/locker/units/import", "id,storedAt\r\nribbon-1,Loft\r\n",
            "/api/locker/bookings", BOOKING,
            "/api/locker/bookings/{id}", "{\"note\": \"Bring a lamp\"}",
            "/api/locker/out", "{\"unit\": \"ribbon-1\"}",
            "/api/locker/in", "{\"unit\": \"ribbon-1\"}");
    private static final String SECRET = "hush-barn-owl";

    @Test
    void whileItIsAwayEveryAddressSaysSoAndThenAllIsThereAgain(@TempDir Path folder) throws Exception {
        ByteArrayOutputStream logged = new ByteArrayOutputStream();
        PrintStream before = System.err;
        List<String> said = new ArrayList<>();
        try (Databases.Kept database = Databases.kept(folder);
                LockerServing serving = LockerServing.guarded(Place.at(database.place().address() + "&password=" + SECRET))) {
            System.setErr(new PrintStream(logged, true, StandardCharsets.UTF_8));
            String token = "Authorization: Bearer " + serving.engineer;
            serving.locker.change(Act.by("Ada"), changes -> changes.add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1")).id());
            Reply booked = serving.post("/api/locker/bookings", BOOKING, token, "Idempotency-Key: before");
            assertEquals(201, booked.status(), booked.body());
            database.stop();

            Map<String, Reply> replies = all(serving, token);
            assertTrue(replies.size() >= 18, replies.keySet().toString());
            replies.forEach((address, reply) -> {
                assertProblem(503, reply);
                assertTrue(Integer.parseInt(reply.headers().get("retry-after")) > 0, address);
                said.add(reply.body());
            });
            Reply wrong = serving.get("/api/locker/units", "Authorization: Bearer wrong" + serving.engineer);
            assertTrue(List.of(401, 503).contains(wrong.status()), wrong.body());
            said.add(wrong.body());
            assertEquals(200, serving.get("/health").status());

            database.start();
            long start = System.nanoTime();
            Reply now = serving.get("/api/locker/bookings/1", token);
            while (now.status() == 503 && System.nanoTime() - start < Duration.ofSeconds(20).toNanos()) {
                now = serving.get("/api/locker/bookings/1", token);
            }
            System.out.printf("LockerAwayTest: answers again %.1f s after the database is back%n", (System.nanoTime() - start) / 1e9);
            assertEquals(booked.body(), now.body());
            Reply again = serving.post("/api/locker/bookings", BOOKING, token, "Idempotency-Key: before");
            assertEquals(booked.body(), again.body());
            assertEquals("true", again.headers().get("idempotent-replay"));
            assertEquals(1, serving.locker.units().size(), "what was refused meanwhile was not done");
            for (String secret : List.of(SECRET, serving.engineer)) {
                assertFalse(logged.toString(StandardCharsets.UTF_8).contains(secret), "logged");
                assertFalse(said.toString().contains(secret), "said");
            }
        } finally {
            System.setErr(before);
        }
    }

    @Test
    void aQuestionIsAnsweredAllTheSame(@TempDir Path folder) {
        try (LockerServing serving = LockerServing.open(Place.in(folder))) {
            serving.locker.change(Act.by("Ada"), changes -> changes.add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1")).id());
            serving.locker.close();
            Reply reply = serving.post("/api/ask", "{\"words\": \"trumpet\", \"draws\": 0}");
            assertEquals(200, reply.status(), reply.body());
            assertFalse(reply.json().at("/stock/reachable").asBoolean(true), reply.body());
            assertFalse(reply.json().path("options").isEmpty());
        }
    }

    /** Every address of the locker, each in a thread of its own: each waits for the database as long as it may. */
    private static Map<String, Reply> all(LockerServing serving, String token) throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(12);
        try {
            Map<String, Future<Reply>> sent = new TreeMap<>();
            serving.addressesForPrograms().stream().filter(address -> address.contains(" /api/locker/") && !address.startsWith("HEAD ")).forEach(address -> {
                String method = address.substring(0, address.indexOf(' '));
                String path = address.substring(address.indexOf(' ') + 1);
                String body = List.of("POST", "PATCH").contains(method) ? BODIES.getOrDefault(path, "{}") : null;
                String target = path.replace("{id}", path.startsWith("/api/locker/bookings") ? "1" : "ribbon-1");
                String type = "Content-Type: " + (path.endsWith("import") ? "text/csv" : "application/json");
                sent.put(address, pool.submit(() -> body == null ? serving.send(method, target, null, token) : serving.send(method, target, body, token, type)));
            });
            Map<String, Reply> replies = new TreeMap<>();
            for (Map.Entry<String, Future<Reply>> one : sent.entrySet()) {
                replies.put(one.getKey(), one.getValue().get());
            }
            return replies;
        } finally {
            pool.shutdownNow();
        }
    }
}
