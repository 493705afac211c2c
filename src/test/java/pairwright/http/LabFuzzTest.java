package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Place;

/** Requests to every address of the lab that mean no good: none is a mistake of the program's, and none shows its inside. */
class LabFuzzTest {
    private static final long SEED = 20_270_407;
    private static final int REQUESTS = 900;
    private static final String SETS = "/api/lab/exercises";
    private static final Pattern INSIDE = Pattern.compile("Exception|\\bat [a-z]+\\.[a-z.]+\\(|\\.java\\b|java\\.|fasterxml|jetty|javalin|sqlite|/tmp/");
    private static final List<String> ODD = List.of("null", "true", "0", "-1", "1.5", "1e999", "1e308", "-1e-320", "9".repeat(400), "12345678901234567890", "\"\"", "\" \"", "[]", "[[]]", "[null]", "{}",
            "{\"\": 1}", "{\"xM\": 1}", "{\"xM\": 1, \"yM\": \"a\", \"aimDegrees\": null}", "[1, \"a\", null, true]", "\"\\u0000\"", "\"\\ud800\"", "\"a\\nb\"", "\"a\\tb\"", "\"\\\\t\"", "\"=1+1\"", "\"a\"",
            "[\"a\", \"a\"]", "[\"a\", \"b\", \"c\", \"d\", \"e\", \"f\", \"g\"]", "\"9999-12-31T23:59:59-18:00\"", "\"0000-01-01T00:00:00+18:00\"", "\"2027-02-30T10:00:00Z\"", "\"2032-01-01T00:00:00Z\"",
            "\"-999999999\"", "\"1e5\"", "\"\u2212 3,5 \u00b5s\"", "\"NaN\"", "\"Infinity\"", "1", "2", "60", "61", "5", "\"choose\"", "\"" + "x".repeat(5000) + "\"");
    private static final List<String> ODD_IDS = List.of("x", "%00", "..%2f..", "x".repeat(2000), "%F0%9F%A5%81", "marks.csv", "{id}", "practice", "'--", "1", "X%20");
    private static final List<String> CELLS = List.of("1", "2", "99", "-1", "", "\"", "\"\"\"", "=1+1", "\u0000", "\ud83e\udd41", ";", "\t", "\r", "\ufeff", "mic", "a b c", "x".repeat(500), "1e999", "first", "value", "'=2");

    private final Random random = new Random(SEED);

    /** Sound bodies in parts, each of which may be replaced. */
    private Map<String, String> parts(String path) {
        Map<String, String> parts = new LinkedHashMap<>();
        if (path.equals(SETS)) {
            parts.putAll(Map.of("kind", "\"reckon\"", "level", "1", "benches", "1", "seed", "\"s\"", "opensAt", "\"2032-01-01T00:00:00Z\""));
        } else if (path.endsWith("/mark") && random.nextInt(3) == 0) {
            parts.putAll(path.startsWith(SETS) ? Map.of("bench", "1", "answer", "{}") : Map.of("kind", "\"reckon\"", "level", "1", "seed", "\"s\"", "answer", "{}"));
        } else if (path.endsWith("/mark") && path.startsWith(SETS)) {
            parts.putAll(Map.of("bench", "1", "answer", "{\"mic\": " + pick(ODD) + ", \"distance\": " + pick(ODD) + ", \"reasons\": " + pick(ODD) + "}"));
        } else if (path.endsWith("/answers")) {
            parts.put("answers", "[{\"bench\": 1, \"answer\": {\"mic\": " + pick(ODD) + "}}, {\"bench\": " + pick(ODD) + ", \"answer\": {}}]");
        } else if (path.endsWith("practice/mark")) {
            parts.putAll(Map.of("kind", "\"reckon\"", "level", "1", "seed", "\"s\"", "answer", "{\"value\": " + pick(ODD) + "}"));
        } else {
            parts.put("opensAt", "null");
        }
        return parts;
    }

    private String body(String path) {
        Map<String, String> parts = parts(path);
        for (String name : List.copyOf(parts.keySet())) {
            switch (random.nextInt(8)) {
                case 0 -> parts.put(name, pick(ODD));
                case 1 -> parts.remove(name);
                case 2 -> parts.put(name.toUpperCase(java.util.Locale.ROOT), pick(ODD));
                default -> {
                    // as it is
                }
            }
        }
        List<String> fields = new ArrayList<>();
        parts.forEach((name, value) -> fields.add("\"" + name + "\": " + value));
        String body = "{" + String.join(", ", fields) + "}";
        return random.nextInt(12) == 0 ? body.substring(0, random.nextInt(body.length())) : body;
    }

    private String table() {
        StringBuilder table = new StringBuilder(random.nextInt(5) == 0 ? pick(CELLS) + "," + pick(CELLS) : "bench,item,answer").append("\n");
        for (int row = random.nextInt(6); row >= 0; row--) {
            table.append(pick(CELLS)).append(',').append(pick(CELLS)).append(',').append(pick(CELLS)).append("\n");
        }
        return table.toString();
    }

    private <T> T pick(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    @Test
    void nothingHostileIsAMistakeOfTheProgramsOrShowsItsInside(@TempDir Path folder) {
        Map<String, Map<Integer, Integer>> tally = new TreeMap<>();
        List<String> wrong = new ArrayList<>();
        try (LockerServing serving = LockerServing.open(Place.in(folder))) {
            List<String> ids = new ArrayList<>();
            for (String kind : List.of("choose", "reckon", "curves")) {
                ids.add(serving.post(SETS, "{\"kind\": \"" + kind + "\", \"level\": 1, \"benches\": 2}").json().path("id").asText());
            }
            List<String> routes = serving.addressesForPrograms().stream().filter(address -> address.contains(" /api/lab/") && !address.startsWith("HEAD") && !address.startsWith("DELETE")).toList();
            for (int i = 0; i < REQUESTS; i++) {
                String route = pick(routes);
                String method = route.substring(0, route.indexOf(' '));
                String path = route.substring(route.indexOf(' ') + 1);
                String target = path.replace("{id}", random.nextInt(4) > 0 ? pick(ids) : pick(ODD_IDS))
                        + (random.nextInt(5) == 0 ? pick(List.of("?", "?kind=reckon&level=1&seed=%00", "?kind=reckon&level=1&seed=%F0%9F%A5%81", "?most=0", "?most=1", "?level=99999999999", "?kind=curves&level=2", "?a=%ED%A0%80")) : "");
                boolean csv = path.endsWith("/answers") && random.nextBoolean();
                String body = method.equals("GET") ? null : csv ? table() : body(path);
                Reply reply = serving.send(method, target, body, csv ? "Content-Type: text/csv" : random.nextInt(20) == 0 ? "Content-Type: text/plain" : "Content-Type: application/json");
                tally.computeIfAbsent(route, any -> new TreeMap<>()).merge(reply.status(), 1, Integer::sum);
                boolean odd = reply.status() >= 500 || INSIDE.matcher(reply.body()).find()
                        || reply.status() >= 400 && (!reply.mediaType().equals(Problem.MEDIA_TYPE) || !Serving.OPEN_API.faultsAs("Problem", reply.json()).isEmpty());
                if (odd) {
                    wrong.add(i + " " + method + " " + shown(target) + " " + shown(String.valueOf(body)) + "\n  " + reply.status() + " " + shown(reply.body()));
                }
            }
        }
        tally.forEach((route, statuses) -> System.out.println("LabFuzzTest: " + route + " " + statuses));
        assertEquals(List.of(), wrong, "seed " + SEED);
        assertTrue(tally.get("POST " + SETS).containsKey(201) && tally.get("POST " + SETS + "/{id}/mark").containsKey(200) && tally.get("GET /api/lab/practice").containsKey(200), "some of it was sound: " + tally);
    }

    private static String shown(String text) {
        return text.length() < 400 ? text : text.substring(0, 400) + " ...";
    }
}
