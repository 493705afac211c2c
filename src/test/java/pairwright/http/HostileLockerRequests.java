package pairwright.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/** Requests to the locker that nobody in their right mind sends, the same ones for the same seed; none names what begins with "keep". */
final class HostileLockerRequests {
    private static final List<String> ODD_VALUES = List.of("null", "true", "0", "-1", "1.5", "1e999", "9".repeat(400), "12345678901234567890", "\"\"", "\" \"", "[]", "[[]]", "[null]", "[{}]", "{}",
            "{\"\": 1}", "[1, \"a\", null, true]", "\"\\u0000\"", "\"\\ud800\"", "\"\\udc00x\"", "\"a\\nb\"", "\"\\u202eB-7\"", "\"\\ud83e\\udd41\"", "\"../../..\"", "\"'; DROP TABLE unit; --\"",
            "\"%00\"", "\"${user.dir}\"", "\"=1+1\"", "\"0000-01-01T00:00:00+18:00\"", "\"9999-12-31T23:59:59-18:00\"", "\"2027-02-30T10:00:00Z\"", "\"2027-03-01T10:00:00.999999999Z\"",
            "\"2027-03-01T10:00:00+01:00\"", "\"2027-03-01T12:00:00Z\"", "\"ribbon-1\"", "[\"ribbon-1\", \"ribbon-1\"]", "[\"ribbon-1\", \"pad-1\"]", "\"repair\"", "\"lost\"", "\"in-repair\"", "\"limited\"");
    private static final List<String> ODD_IDS = List.of("ribbon-1", "pad-1", "1", "2", "0", "-1", "01", "99999999999999999999", "a%2Fb", "a%2fb%2f..", "%2e%2e", "..%2f..", "%00", "%0d%0aX-A:1", "%ff%fe", "%",
            "%zz", "x".repeat(3000), "%F0%9F%A5%81", "ribbon-1;a=b", "ribbon-1%20", "RIBBON-1", "'--", "\u00e9", "a//b", ".", "import", "calendar.ics", "{id}", "%7Bid%7D", "<script>", "a%5Cb");
    private static final List<String> ODD_QUERIES = List.of("", "?", "?from=", "?from=now", "?from=2027-03-01T10:00:00%2B01:00", "?from=2027-03-01T10:00:00+01:00", "?from=%00", "?from=a&from=b", "?until=1",
            "?from=9999-12-31T23:59:59Z", "?from=2027-03-01T10:00:00Z&until=2027-03-01T10:00:00Z", "?from=-999999999-01-01T00:00:00Z", "?about=%00", "?about=%ED%A0%80", "?about='--", "?before=0",
            "?before=99999999999999999999", "?before=1&most=501", "?most=1", "?month=2027-13", "?month=0000-01", "?month=9999-12", "?month=2027-03", "?unit=%00", "?unit=ribbon-1", "?micType=%F0%9F%A5%81", "?words=%ff",
            "?words=" + "a".repeat(500), "?kind=mic", "?kind=%00", "?condition=LOST", "?preview=true", "?preview=2", "?decimals=comma", "?%00=1", "?=", "?&&&", "?from[]=1", "?a=%", "?from=0000-01-01T00:00:00%2B18:00");
    private static final List<String> ODD_HEADERS = List.of("Idempotency-Key: ", "Idempotency-Key: a b", "Idempotency-Key: " + "k".repeat(201), "Idempotency-Key: \u00e9", "Idempotency-Key: k1\r\nIdempotency-Key: k2",
            "Idempotency-Key: fuzz", "If-Match: ", "If-Match: 1", "If-Match: \"1", "If-Match: \"1\"", "If-Match: *", "If-Match: W/\"1\"", "If-Match: \"99999999999999999999\"", "If-Match: \"\",,", "If-None-Match: *",
            "If-None-Match: \"1", "Content-Type: text/plain", "Content-Type: text/csv", "Content-Type: application/json; charset=utf-16", "Content-Type: ;", "Content-Type: application/json;charset=\"",
            "Content-Encoding: gzip", "Accept: text/html", "Accept: application/xml", "Authorization: Bearer ", "X-HTTP-Method-Override: DELETE", "Origin: null", "Range: bytes=0-1", "Expect: 100-continue");
    private static final Map<String, String> SOUND = Map.of(
            "/api/locker/units", "{\"id\": \"fuzz-%d\", \"kind\": \"mic\", \"micType\": \"long-ribbon\", \"label\": \"Fuzz\", \"serial\": \"1\", \"note\": \"n\", \"pairMate\": \"fuzz-1\", \"condition\": \"good\","
                    + " \"response\": [{\"frequencyHz\": 20, \"levelDb\": 0}, {\"frequencyHz\": 20000, \"levelDb\": -3}]}",
            "/api/locker/units/{id}", "{\"storedAt\": \"Loft %d\", \"label\": \"Ribbon\", \"condition\": \"good\", \"version\": 1, \"stand\": {\"legs\": 3}, \"pad\": {\"lossDb\": 20}, \"tag\": \"T\"}",
            "/api/locker/bookings", "{\"units\": [\"ribbon-1\"], \"from\": \"2027-03-%02dT10:00:00Z\", \"until\": \"2027-03-31T12:00:00Z\", \"kind\": \"lab\", \"for\": \"x\", \"by\": \"y\", \"note\": \"z\"}",
            "/api/locker/bookings/{id}", "{\"units\": [\"pad-1\"], \"until\": \"2027-03-01T%02d:00:00Z\", \"kind\": \"lab\", \"by\": \"y\", \"version\": 1}",
            "/api/locker/out", "{\"unit\": \"ribbon-1\", \"by\": \"Finch\", \"until\": \"2027-03-01T%02d:00:00Z\"}",
            "/api/locker/in", "{\"unit\": \"pad-1\"}",
            "/api/locker/units/import", "id,kind,micType,label,tag,note,lossDb,response\r\nfuzz-%d,mic,long-ribbon,Fuzz,,\"a, b\",,20:0 20000:-3\r\n,pad,,,,,20,\r\n");

    private final Random random;
    private final List<String> routes;

    /**
     * @param routes as in {@code GET /api/locker/units/{id}}
     */
    HostileLockerRequests(long seed, List<String> routes) {
        random = new Random(seed);
        this.routes = routes;
    }

    /**
     * One request.
     *
     * @param route where it is meant to go
     * @param bytes as they go over the line
     * @param body null for none
     */
    record Hostile(String route, byte[] bytes, byte[] body) {
    }

    Hostile next() {
        String route = pick(routes);
        String method = route.substring(0, route.indexOf(' '));
        String path = route.substring(route.indexOf(' ') + 1);
        List<String> headers = new ArrayList<>();
        byte[] body = List.of("POST", "PATCH").contains(method) ? body(path) : random.nextInt(12) == 0 ? "{}".getBytes(StandardCharsets.UTF_8) : null;
        String target = path.replace("{id}", random.nextInt(3) > 0 ? pick(List.of("ribbon-1", "pad-1", "1", "2", "fuzz-3")) : pick(ODD_IDS)) + (random.nextInt(3) == 0 ? pick(ODD_QUERIES) : "");
        for (int more = random.nextInt(3); more > 0; more--) {
            headers.add(pick(ODD_HEADERS));
        }
        if (body != null && headers.stream().noneMatch(header -> header.startsWith("Content-Type"))) {
            headers.add("Content-Type: " + (path.endsWith("import") ? "text/csv" : "application/json"));
        }
        if (random.nextInt(40) == 0) {
            method = pick(List.of("PUT", "TRACE", "OPTIONS", "get", "PROPFIND", "POST", "DELETE"));
        }
        String head = method + " " + target + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n" + (body == null ? "" : "Content-Length: " + body.length + "\r\n")
                + String.join("\r\n", headers) + (headers.isEmpty() ? "" : "\r\n") + "\r\n";
        return new Hostile(method + " " + path, Serving.joined(head, body == null ? new byte[0] : body), body);
    }

    private byte[] body(String path) {
        String sound = SOUND.getOrDefault(path, "{}").formatted(1 + random.nextInt(20));
        byte[] bytes = sound.getBytes(StandardCharsets.UTF_8);
        switch (random.nextInt(10)) {
            case 0:
                return bytes;
            case 1:
                return Arrays.copyOf(bytes, random.nextInt(bytes.length));
            case 2:
                byte[] noise = new byte[random.nextInt(2000)];
                random.nextBytes(noise);
                return noise;
            case 3:
                return (pick(List.of("[", "{\"units\":", "{\"stand\":", "[{\"response\":", "\"")).repeat(500 + random.nextInt(4000))).getBytes(StandardCharsets.UTF_8);
            case 4:
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
                return bytes;
            case 5:
                return sound.replace(pick(List.of("\"ribbon-1\"", "Fuzz", "\"x\"", "Loft", "long-ribbon", "good", "lab")), pick(ODD_VALUES)).getBytes(StandardCharsets.UTF_8);
            case 6:
                return ("{\"units\": [" + "\"ribbon-1\",".repeat(random.nextInt(6000)) + "\"pad-1\"]}").getBytes(StandardCharsets.UTF_8);
            default:
                return path.endsWith("import") ? cells(sound) : fields(sound);
        }
    }

    /** A sound body with some of its fields, also inner ones, given another value, taken away or doubled in an odd case. */
    private byte[] fields(String sound) {
        try {
            ObjectNode body = (ObjectNode) OpenApi.JSON.readTree(sound);
            String text = sound;
            for (int changes = 1 + random.nextInt(3); changes > 0; changes--) {
                List<String> names = new ArrayList<>();
                body.fieldNames().forEachRemaining(names::add);
                String name = pick(names);
                JsonNode value = body.get(name);
                text = text.replace("\"" + name + "\": " + written(value), "\"" + (random.nextInt(8) == 0 ? name.toUpperCase(Locale.ROOT) : name) + "\": " + pick(ODD_VALUES));
            }
            return text.getBytes(StandardCharsets.UTF_8);
        } catch (java.io.IOException impossible) {
            throw new java.io.UncheckedIOException(impossible);
        }
    }

    private static String written(JsonNode value) {
        return value.toString().replace("\":", "\": ").replace(",\"", ", \"").replace("},{", "}, {");
    }

    private byte[] cells(String sound) {
        String cell = pick(List.of("long-ribbon", "Fuzz", "mic", "20:0 20000:-3", "\"a, b\"", "lossDb", "\r\n", ",", "20"));
        return sound.replace(cell, pick(List.of("", "\"", "=1+1", "\u0000", "\ud83e\udd41", "1e999", ";", "\t", "\"\"\"", "x".repeat(5000), "NaN", "-", "\r", "\ufeff", "lost", "'", "keep")).replace("keep", "'k"))
                .getBytes(StandardCharsets.UTF_8);
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
