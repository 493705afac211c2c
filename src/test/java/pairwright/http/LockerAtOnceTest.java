package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.http.Serving.assertProblem;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Act;
import pairwright.locker.Place;
import pairwright.locker.UnitDraft;

/** Many programs at one locker at once, and what is sent more than once. */
class LockerAtOnceTest {
    private static final String BOOKINGS = "/api/locker/bookings";
    private static final Instant START = Instant.parse("2027-03-01T00:00:00Z");
    private static final int UNITS = 6;
    private static final int THREADS = 16;
    private static final int ATTEMPTS_EACH = 40;
    private static final int HOURS = 60;

    @TempDir
    private Path folder;
    private LockerServing serving;

    @BeforeEach
    void open() {
        serving = LockerServing.open(Place.in(folder));
        serving.locker.change(Act.by("Ada"), changes -> {
            IntStream.range(0, UNITS).forEach(number -> changes.add(UnitDraft.mic("ribbon-" + number, "long-ribbon", "Ribbon " + number)));
            return "";
        });
    }

    @AfterEach
    void close() {
        serving.close();
    }

    private static String draft(int fromHour, int hours, List<Integer> units, String forWhat) {
        return "{\"units\": [" + units.stream().map(unit -> "\"ribbon-" + unit + "\"").collect(Collectors.joining(", ")) + "], \"from\": \"" + START.plusSeconds(fromHour * 3600L)
                + "\", \"until\": \"" + START.plusSeconds((fromHour + hours) * 3600L) + "\", \"for\": \"" + forWhat + "\"}";
    }

    /** Does the same many times, begun at once. */
    private static <T> List<T> atOnce(int threads, IntFunction<T> work) throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            CountDownLatch start = new CountDownLatch(threads);
            List<Future<T>> all = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                int number = i;
                Callable<T> one = () -> {
                    start.countDown();
                    start.await();
                    return work.apply(number);
                };
                all.add(pool.submit(one));
            }
            List<T> came = new ArrayList<>();
            for (Future<T> one : all) {
                came.add(one.get());
            }
            return came;
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void sixteenWhoBookTheSameSixUnitsNeverGetOneTwice() throws Exception {
        List<List<Reply>> replies = atOnce(THREADS, number -> {
            Random random = new Random(700 + number);
            List<Reply> mine = new ArrayList<>();
            for (int i = 0; i < ATTEMPTS_EACH; i++) {
                List<Integer> units = random.ints(0, UNITS).distinct().limit(1 + random.nextInt(3)).boxed().toList();
                mine.add(serving.post(BOOKINGS, draft(random.nextInt(HOURS), 1 + random.nextInt(4), units, number + "/" + i)));
            }
            return mine;
        });
        Map<Integer, Integer> statuses = new TreeMap<>();
        Set<String> acknowledged = new HashSet<>();
        for (Reply reply : replies.stream().flatMap(List::stream).toList()) {
            statuses.merge(reply.status(), 1, Integer::sum);
            if (reply.status() == 201) {
                acknowledged.add(reply.json().path("id").asText());
            } else {
                assertProblem(409, reply);
                assertTrue(reply.json().path("clashes").size() > 0, reply.body());
            }
        }
        System.out.println("LockerAtOnceTest: " + statuses);
        assertTrue(statuses.get(201) > 20 && statuses.get(409) > 100, statuses.toString());
        JsonNode kept = serving.get(BOOKINGS + "?from=2027-02-28T00:00:00Z&until=2027-03-10T00:00:00Z").json().path("bookings");
        Map<String, TreeMap<Instant, Instant>> byUnit = new TreeMap<>();
        Set<String> ids = new HashSet<>();
        kept.forEach(booking -> {
            ids.add(booking.path("id").asText());
            booking.path("units").forEach(unit -> {
                Instant before = byUnit.computeIfAbsent(unit.asText(), id -> new TreeMap<>()).put(moment(booking, "from"), moment(booking, "until"));
                assertEquals(null, before, "two begin at once: " + booking);
            });
        });
        assertEquals(acknowledged, ids, "what was said to be booked is, and nothing else");
        byUnit.forEach((unit, times) -> times.forEach((from, until) -> {
            Instant next = times.higherKey(from);
            assertTrue(next == null || !next.isBefore(until), unit + " is taken twice at " + next);
        }));
    }

    private static Instant moment(JsonNode booking, String name) {
        return OffsetDateTime.parse(booking.path(name).asText()).toInstant();
    }

    @Test
    void oneKeySentFiftyTimesAtOnceIsOneBooking() throws Exception {
        String body = draft(1, 2, List.of(0, 1), "Once");
        List<Reply> replies = atOnce(50, number -> serving.post(BOOKINGS, body, "Idempotency-Key: one-for-all"));
        assertEquals(Set.of(201), replies.stream().map(Reply::status).collect(Collectors.toSet()));
        assertEquals(1, replies.stream().map(Reply::body).distinct().count());
        assertEquals(1, replies.stream().map(reply -> reply.headers().get("location") + reply.headers().get("etag")).distinct().count());
        assertEquals(49, replies.stream().filter(reply -> "true".equals(reply.headers().get("idempotent-replay"))).count());
        assertEquals(1, serving.get(BOOKINGS + "?from=2027-03-01T00:00:00Z").json().path("bookings").size());
    }

    @Test
    void aKeyIsForOneThing() {
        String body = draft(1, 2, List.of(0), "Once");
        assertEquals(201, serving.post(BOOKINGS, body, "Idempotency-Key: k-1").status());
        assertProblem(422, serving.post(BOOKINGS, draft(1, 3, List.of(0), "Once"), "Idempotency-Key: k-1"));
        assertProblem(422, serving.post("/api/locker/units", "{\"micType\": \"long-ribbon\"}", "Idempotency-Key: k-1"));
        assertProblem(422, serving.send("DELETE", BOOKINGS + "/1", null, "Idempotency-Key: k-1"));
        assertEquals(UNITS, serving.locker.units().size());
        assertEquals(204, serving.send("DELETE", BOOKINGS + "/1", null, "Idempotency-Key: k-2").status());
        Reply gone = serving.send("DELETE", BOOKINGS + "/1", null, "Idempotency-Key: k-2");
        assertEquals(204, gone.status(), "a retry of what was done is no fault");
        assertEquals("true", gone.headers().get("idempotent-replay"));
        assertProblem(404, serving.send("DELETE", BOOKINGS + "/1", null, "Idempotency-Key: k-3"));
    }

    @Test
    void aKeyOfSomethingThatFailedIsAsGoodAsNew() {
        assertEquals(201, serving.post(BOOKINGS, draft(1, 2, List.of(0), "First")).status());
        String body = draft(2, 2, List.of(0), "Second");
        assertProblem(409, serving.post(BOOKINGS, body, "Idempotency-Key: again"));
        assertProblem(400, serving.post(BOOKINGS, "{\"units\": []}", "Idempotency-Key: again"));
        assertEquals(204, serving.send("DELETE", BOOKINGS + "/1", null).status());
        Reply booked = serving.post(BOOKINGS, body, "Idempotency-Key: again");
        assertEquals(201, booked.status(), booked.body());
        assertEquals(booked.body(), serving.post(BOOKINGS, body, "Idempotency-Key: again").body());
    }

    @Test
    void ofManyWhoAlterTheSameVersionOneDoes() throws Exception {
        String unit = "/api/locker/units/ribbon-0";
        List<Reply> replies = atOnce(THREADS, number -> serving.send("PATCH", unit, "{\"storedAt\": \"Shelf " + number + "\"}", "If-Match: \"1\""));
        assertEquals(1, replies.stream().filter(reply -> reply.status() == 200).count());
        for (Reply reply : replies) {
            if (reply.status() != 200) {
                assertProblem(412, reply);
                assertEquals(2, reply.json().path("version").asInt());
                assertEquals("\"2\"", reply.headers().get("etag"));
            }
        }
        Reply now = serving.get(unit);
        assertEquals("\"2\"", now.headers().get("etag"));
        assertEquals(200, serving.send("PATCH", unit, "{\"storedAt\": \"Loft\"}", "If-Match: " + now.headers().get("etag")).status());
        assertProblem(412, serving.send("DELETE", unit, null, "If-Match: \"2\""));
        assertEquals(200, serving.get(unit).status());
    }

    @Test
    void aVersionThatIsTooLargeToBeOneIsAnotherVersion() {
        for (String version : List.of("0", "-1", "18446744073709551617", "1" + "0".repeat(300))) {
            Reply reply = serving.send("PATCH", "/api/locker/units/ribbon-0", "{\"storedAt\": \"Loft\", \"version\": " + version + "}");
            assertProblem(412, reply);
            assertEquals(1, reply.json().path("version").asInt(), version);
        }
        assertProblem(400, serving.send("PATCH", "/api/locker/units/ribbon-0", "{\"storedAt\": \"Loft\", \"version\": 1.5}"));
    }

    @Test
    void aTimeThatCouldNotBeWrittenBackIsNotLookedAt() {
        for (String far : List.of("9999-12-31T23:00:00Z", "0000-01-01T00:00:00%2B18:00", "0001-01-01T00:00:00Z")) {
            for (String path : List.of("/api/locker/free", "/api/locker/units", BOOKINGS)) {
                assertProblem(400, serving.get(path + "?from=" + far));
            }
        }
    }
}
