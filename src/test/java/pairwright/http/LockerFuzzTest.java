package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Databases;
import pairwright.locker.Place;

/** Requests to every address of the locker that mean no good: none is a mistake of the program's, none shows its inside, and what nobody named stays as it was. */
class LockerFuzzTest {
    private static final long SEED = 20_270_301;
    private static final Pattern INSIDE = Pattern.compile("Exception|\\bat [a-z]+\\.[a-z.]+\\(|\\.java\\b|java\\.|jakarta|kotlin|fasterxml|jackson|jetty|javalin|hikari|sqlite|postgres|SELECT |INSERT "
            + "|/root/|/home/|/tmp/|" + Pattern.quote(System.getProperty("user.dir")));
    private static final Map<String, String> SCHEMAS = Map.of("POST /api/locker/units", "UnitDraft", "PATCH /api/locker/units/{id}", "UnitPatch", "POST /api/locker/bookings", "BookingDraft",
            "PATCH /api/locker/bookings/{id}", "BookingPatch", "POST /api/locker/out", "Leaving", "POST /api/locker/in", "ComingBack");

    @Test
    void nothingHostileIsAMistakeOfTheProgramsInAFile(@TempDir Path folder) {
        fuzz(Place.in(folder), SEED, 1_500);
    }

    @Test
    void norOnAServer() throws Exception {
        fuzz(Databases.freshServer(), SEED + 1, 700);
    }

    private static void fuzz(Place place, long seed, int count) {
        try (LockerServing serving = LockerServing.open(place)) {
            made(serving, "/api/locker/units", "{\"id\": \"keep-1\", \"micType\": \"long-ribbon\", \"tag\": \"K-1\", \"note\": \"Stays\"}");
            made(serving, "/api/locker/units", "{\"id\": \"ribbon-1\", \"micType\": \"long-ribbon\", \"label\": \"Ribbon\"}");
            made(serving, "/api/locker/units", "{\"id\": \"pad-1\", \"kind\": \"pad\", \"pad\": {\"lossDb\": 20}}");
            made(serving, "/api/locker/bookings", "{\"units\": [\"pad-1\"], \"from\": \"2027-03-01T10:00:00Z\", \"until\": \"2027-03-01T12:00:00Z\"}");
            made(serving, "/api/locker/bookings", "{\"units\": [\"ribbon-1\"], \"from\": \"2027-04-01T10:00:00Z\", \"until\": \"2027-04-01T12:00:00Z\"}");
            String booking = made(serving, "/api/locker/bookings", "{\"units\": [\"keep-1\"], \"from\": \"2027-03-01T10:00:00Z\", \"until\": \"2027-03-01T12:00:00Z\", \"for\": \"Stays\"}");
            String unit = serving.get("/api/locker/units/keep-1").body();

            List<String> routes = serving.addressesForPrograms().stream().filter(address -> address.contains(" /api/locker/")).toList();
            HostileLockerRequests requests = new HostileLockerRequests(seed, routes);
            Map<String, Map<Integer, Integer>> tally = new TreeMap<>();
            List<String> wrong = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                HostileLockerRequests.Hostile hostile = requests.next();
                Reply reply = Serving.send(serving.port(), hostile.bytes());
                tally.computeIfAbsent(hostile.route(), route -> new TreeMap<>()).merge(reply == null ? 0 : reply.status(), 1, Integer::sum);
                String fault = reply == null ? "closed without a word" : fault(hostile, reply);
                if (fault != null) {
                    wrong.add("request " + i + ", " + hostile.route() + ": " + fault + "\n  " + shown(new String(hostile.bytes(), StandardCharsets.UTF_8)) + "\n  "
                            + (reply == null ? "" : reply.status() + " " + shown(reply.body())));
                }
            }
            tally.forEach((route, statuses) -> System.out.println("LockerFuzzTest: " + route + " " + statuses));
            assertEquals(List.of(), wrong, "seed " + seed);
            assertEquals(unit, serving.get("/api/locker/units/keep-1").body());
            assertEquals(booking, serving.get("/api/locker/bookings/3").body());
            Reply all = serving.get("/api/locker/units");
            assertEquals(List.of(), Serving.OPEN_API.faults("GET", "/api/locker/units", all));
            Reply table = serving.post("/api/locker/units/import", serving.get("/api/locker/units.csv").body(), "Content-Type: text/csv");
            assertEquals(all.json().path("units").size(), table.json().path("same").asInt(), "what got in comes out and goes in: " + shown(table.body()));
            assertTrue(tally.get("POST /api/locker/units").containsKey(201) && tally.get("POST /api/locker/units/import").containsKey(200), "some of it was sound: " + tally);
        }
    }

    private static String made(LockerServing serving, String target, String body) {
        Reply reply = serving.post(target, body);
        assertEquals(201, reply.status(), reply.body());
        return reply.body();
    }

    private static String fault(HostileLockerRequests.Hostile hostile, Reply reply) {
        if (INSIDE.matcher(reply.mediaType().equals("text/csv") ? "" : reply.body()).find()) {
            return "shows the inside";
        }
        String method = hostile.route().substring(0, hostile.route().indexOf(' '));
        if (method.equals("HEAD")) {
            return reply.status() >= 500 ? "a mistake of the program's" : null;
        }
        if (reply.status() >= 400) {
            if (reply.status() >= 500 && reply.status() != 501) {
                return "a mistake of the program's";
            }
            return !reply.mediaType().equals(Problem.MEDIA_TYPE) ? "no problem but " + reply.mediaType()
                    : Serving.OPEN_API.faultsAs("Problem", reply.json()).stream().findFirst().orElse(reply.json().path("status").asInt() == reply.status() ? null : "another status inside");
        }
        String schema = SCHEMAS.get(hostile.route());
        if (schema != null && reply.headers().get("idempotent-replay") == null) {
            List<String> faults = Serving.OPEN_API.faultsAs(schema, sent(hostile.body()));
            if (!faults.isEmpty()) {
                return "taken against the description: " + faults;
            }
        }
        return null;
    }

    private static JsonNode sent(byte[] body) {
        try {
            return OpenApi.JSON.readTree(body);
        } catch (java.io.IOException broken) {
            return OpenApi.JSON.getNodeFactory().textNode("no JSON");
        }
    }

    private static String shown(String text) {
        return text.length() < 700 ? text : text.substring(0, 500) + " ... " + text.substring(text.length() - 100);
    }
}
