package pairwright.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Supplier;
import pairwright.numbers.CalculationInfo;
import pairwright.numbers.Input;
import pairwright.numbers.Numbers;

/** Requests nobody in their right mind sends, the same ones for the same seed. */
final class HostileRequests {
    private static final Numbers NUMBERS = new Numbers();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final List<String> FIELDS = List.of("words", "source", "ways", "dynamics", "room", "character", "limits", "neighbours", "circumstances",
            "techniques", "options", "wishes", "player", "lifted", "draws", "from", "until");
    private static final List<String> LIMITS = List.of("mics", "phantom", "preampGainDb", "preampNoiseDbu", "onlyFamilies", "withoutFamilies", "onlyMicTypes",
            "withoutMicTypes");
    private static final List<String> ODD_VALUES = List.of("null", "true", "0", "-1", "1.5", "1e999", "-1e999", "1e-999", "-0", "9".repeat(400), "0." + "3".repeat(900),
            "12345678901234567890", "\"\"", "\" \"", "\"two\"", "[]", "[[]]", "[null]", "[{}]", "{}", "{\"\": 1}", "[1, \"a\", null, true]", "\"\\u0000\"", "\"\\ud800\"",
            "\"2027-13-01T00:00:00Z\"", "\"+999999999-12-31T23:59:59+18:00\"", "\"2027-03-01T10:00:00+01:00:30\"", "\"$.*\"", "\"../../..\"", "\"'; --\"",
            "\"<script>1</script>\"", "\"{micType}\"", "\"${user.dir}\"", "\"%s%n%x\"");
    private static final List<String> ODD_WORDS = List.of("\ud83e\udd41\ud83c\udfba\ud83c\udfbb", "\u202etrumpet\u202c", "s\u0301\u0302\u0303n\u0323are", "\uff53\uff4e\uff41\uff52\uff45",
            "\u0000snare\u0007", "\u001b[31msnare\u001b[0m", "\u0130stanbul snare", "\ufb01ddle", "\ud835\udd1f\ud835\udd1e\ud835\udd30\ud835\udd30", "\u4e2d\u56fd\u9f13", "\u0637\u0628\u0644\u0629",
            "\u200bsnare\u200d\ufeff", "ke\u0301r", "\ud83d\udc68\u200d\ud83d\udc69\u200d\ud83d\udc67 choir", "\ufffd\uffff", "no no no not without no", "1 2 3 99999999999999999999 mics",
            "only without only ribbons", "-1 mics at -3 m", "0 dB gain", "1e308 m away from the drums", "next to next to next to", "and and and", "snare,snare;snare.snare");

    private final Random random;

    HostileRequests(long seed) {
        random = new Random(seed);
    }

    /**
     * One request.
     *
     * @param kind what is wrong with it
     * @param bytes as they go over the line
     * @param target where it goes
     * @param body the body, where it is a question with JSON behind a sound head; else null
     */
    record Hostile(String kind, byte[] bytes, String target, byte[] body) {
        Hostile(String kind, byte[] bytes) {
            this(kind, bytes, null, null);
        }
    }

    Hostile next() {
        return pick(List.<Supplier<Hostile>>of(this::noise, this::truncated, this::deep, this::huge, this::twice, this::wrongTypes, this::wrongTypes, this::sound, this::sound, this::unicode,
                this::endless, this::invented, this::invented, this::numbers, this::numbers, this::whyNot, this::whyNot, this::moves, this::moves, this::headers, this::traversal, this::methods, this::types, this::queries, this::flipped,
                this::broken)).get();
    }

    private Hostile noise() {
        byte[] body = new byte[random.nextInt(3000)];
        random.nextBytes(body);
        return ask("random bytes", body);
    }

    private Hostile truncated() {
        byte[] whole = valid().toString().getBytes(StandardCharsets.UTF_8);
        return ask("truncated JSON", java.util.Arrays.copyOf(whole, random.nextInt(whole.length)));
    }

    private Hostile deep() {
        int levels = 500 + random.nextInt(9_501);
        String open = pick(List.of("[", "{\"words\":", "{\"limits\":", "[{\"neighbours\":"));
        String body = open.repeat(Math.min(levels, 60_000 / open.length()));
        return ask("deep nesting", random.nextBoolean() ? body : "{\"words\": \"snare\", \"" + pick(FIELDS) + "\": " + body);
    }

    private Hostile huge() {
        String number = pick(List.of("9".repeat(1 + random.nextInt(2000)), "1e" + random.nextInt(1_000_000), "-1e" + random.nextInt(1_000_000), "0.".concat("0".repeat(900)) + "1",
                "1E+2147483648", "4.9e-324", "1.7976931348623159e308"));
        String where = pick(List.of("\"options\": #", "\"limits\": {\"mics\": #}", "\"limits\": {\"preampGainDb\": #}", "\"limits\": {\"preampNoiseDbu\": #}",
                "\"neighbours\": [{\"source\": \"tuba\", \"distanceM\": #}]", "\"neighbours\": [{\"source\": \"tuba\", \"distanceM\": 1, \"angleDegrees\": #}]"));
        return ask("huge number", "{\"source\": \"bass-lead\", " + where.replace("#", number) + "}");
    }

    private Hostile twice() {
        String field = pick(FIELDS);
        return ask("duplicate key", "{\"" + field + "\": " + pick(ODD_VALUES) + ", \"words\": \"snare\", \"" + field + "\": " + pick(ODD_VALUES) + "}");
    }

    private Hostile wrongTypes() {
        StringBuilder body = new StringBuilder("{\"source\": \"bass-lead\""); // a source with few answers, as speed matters here
        for (String field : FIELDS) {
            if (!field.equals("source") && random.nextInt(4) == 0) {
                body.append(", \"").append(field).append("\": ").append(field.equals("limits") && random.nextBoolean()
                        ? "{\"" + pick(LIMITS) + "\": " + pick(ODD_VALUES) + "}"
                        : field.equals("neighbours") && random.nextBoolean()
                                ? "[{\"source\": " + pick(ODD_VALUES) + ", \"distanceM\": " + pick(ODD_VALUES) + ", \"angleDegrees\": " + pick(ODD_VALUES) + "}]"
                                : pick(ODD_VALUES));
            }
        }
        return ask("wrong types", body + "}");
    }

    /** Odd but, for the most part, allowed. */
    private Hostile sound() {
        ObjectNode body = NODES.objectNode().put(random.nextInt(8) == 0 ? "words" : "source", "bass-lead");
        List<Runnable> more = List.of(
                () -> body.put("words", pick(ODD_WORDS)),
                () -> body.put("room", pick(List.of("small-room", "open-air", "smal-room", ""))),
                () -> body.put("options", pick(List.of(1, 2, 6, 7, 0))),
                () -> body.put("character", pick(List.of("warm", "Warm", "sad"))),
                () -> body.set("ways", many("way", random.nextInt(60))),
                () -> body.putArray("lifted").add(pick(List.of("phantom", "mics", "gain"))),
                () -> body.putArray("wishes").add(pick(List.of("ribbon", "line", "Ribbon", "ribbons"))),
                () -> body.putNull(pick(FIELDS.subList(2, 12))),
                () -> body.putObject("limits").put("mics", pick(List.of(1, 2, 3, 32, 33))).put("onlyFamilies", pick(List.of("ribbon", "line", "Ribbon"))),
                () -> body.putObject("limits").put("preampGainDb", pick(List.of(0.0, 20.5, 100.0, 100.001))).put("preampNoiseDbu", pick(List.of(-131, -130, -80, -79))),
                () -> body.putArray("neighbours").addObject().put("source", pick(List.of("tuba", "snare-drum", "Tuba"))).put("distanceM", pick(List.of(0.05, 3.0, 200.0, 0.049))),
                () -> body.put("from", pick(List.of("2027-03-01T10:00:00+01:00", "2027-03-01t10:00:00z", "0000-01-01T00:00:00Z", "2027-03-01T10:00:00", "2027-02-30T10:00:00Z", "2027-03-01T10:00Z", "2027-03-01T24:00:00Z", "2027-03-01T10:00:60Z",
                        "2027-03-01T10:00:00.123456789-12:00", "2027-03-01T10:00:00+19:00"))));
        for (int i = random.nextInt(4); i >= 0; i--) {
            pick(more).run();
        }
        return ask("nearly sound", body.toString());
    }

    private Hostile unicode() {
        ObjectNode body = NODES.objectNode().put("words", pick(ODD_WORDS) + pick(List.of("", " ", ", ")) + pick(ODD_WORDS));
        if (random.nextInt(3) == 0) {
            body.put(pick(List.of("source", "room", "ways", "character", pick(ODD_WORDS))), pick(ODD_WORDS));
        }
        String text = body.toString();
        return switch (random.nextInt(4)) {
            case 0 -> ask("byte order mark", "\ufeff" + text);
            case 1 -> ask("UTF-16", text.getBytes(StandardCharsets.UTF_16));
            case 2 -> ask("lone surrogate", "{\"words\": \"\\u" + Integer.toHexString(0xd800 + random.nextInt(0x800)) + " qwzx\"}");
            default -> ask("unicode", text);
        };
    }

    private Hostile endless() {
        String word = pick(List.of("snare ", "a", "no ", "snaer violn ", "\ud83e\udd41", "next to the ", "\u0301", "ribbon or ", "% ", "\t"));
        int length = pick(List.of(1_990, 2_000, 2_001, 10_000, 20_000));
        String words = word.repeat(1 + length / word.length()).substring(0, length);
        return random.nextInt(3) == 0
                ? ask("endless list", NODES.objectNode().put("words", "snare").set("character", many(word, 1 + random.nextInt(1200))).toString())
                : ask("endless words", NODES.objectNode().put("words", words).toString());
    }

    private ArrayNode many(String word, int count) {
        ArrayNode list = NODES.arrayNode();
        for (int i = 0; i < count; i++) {
            list.add(word + i);
        }
        return list;
    }

    /** JSON of any shape, with names that are half right. */
    private Hostile invented() {
        return ask("invented JSON", value(0));
    }

    private String value(int depth) {
        int kind = random.nextInt(depth > 4 ? 3 : 6);
        if (kind < 3) {
            return pick(ODD_VALUES);
        }
        StringBuilder text = new StringBuilder(kind == 3 ? "[" : "{");
        for (int i = random.nextInt(5); i > 0; i--) {
            text.append(kind == 3 ? "" : "\"" + pick(random.nextInt(4) == 0 ? LIMITS : FIELDS) + (random.nextInt(6) == 0 ? "s" : "") + i + "\": ")
                    .append(value(depth + 1)).append(i > 1 ? "," : "");
        }
        return text.append(kind == 3 ? "]" : "}").toString();
    }

    /** Calculations with inputs that are missing, odd, unknown or at an edge. */
    private Hostile numbers() {
        CalculationInfo info = pick(NUMBERS.all());
        StringBuilder body = new StringBuilder("{");
        for (Input input : info.inputs()) {
            if (random.nextInt(5) > 0) {
                String edge = input.least() == null ? "\"" + pick(input.choices()) + "\"" : pick(List.of(input.least(), input.most())).toString();
                String value = random.nextInt(3) == 0 ? pick(ODD_VALUES) : random.nextInt(4) == 0 ? "[" + edge + ", " + pick(ODD_VALUES) + "]" : edge;
                body.append(body.length() > 1 ? ", \"" : "\"").append(input.name()).append(random.nextInt(20) == 0 ? "s" : "").append("\": ").append(value);
            }
        }
        byte[] bytes = body.append("}").toString().getBytes(StandardCharsets.UTF_8);
        String id = random.nextInt(20) == 0 ? pick(List.of("%00", "..", "proximty", "x".repeat(900), "%F0%9F%A5%81", "%")) : info.id();
        return new Hostile("numbers", Serving.joined("POST /api/numbers/" + id + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/json\r\n"
                + "Content-Length: " + bytes.length + "\r\n\r\n", bytes));
    }

    /** Why not, with a question inside that is odd, half right or not one at all. */
    private Hostile whyNot() {
        return nested("why not", "/api/ask/why-not", Map.of("question", this::question, "micType", () -> name("active-di", "long-ribbon"),
                "pattern", () -> name("electrical", "cardioid"), "position", () -> name("lead", "bell")));
    }

    /** Moves, with a set-up that is odd as well. */
    private Hostile moves() {
        return nested("moves", "/api/ask/moves", Map.of("question", this::question, "option", this::option, "heard", () -> name("noisy", "Boomy")));
    }

    /** Each field mostly there, now and then misnamed, sometimes all of them cut off. */
    private Hostile nested(String kind, String target, Map<String, Supplier<String>> fields) {
        StringBuilder body = new StringBuilder("{");
        for (String field : new TreeMap<>(fields).keySet()) {
            if (random.nextInt(6) > 0) {
                body.append(body.length() > 1 ? ", \"" : "\"").append(field).append(random.nextInt(25) == 0 ? "s" : "").append("\": ").append(fields.get(field).get());
            }
        }
        byte[] bytes = body.append("}").toString().getBytes(StandardCharsets.UTF_8);
        return post(kind, target, random.nextInt(12) == 0 ? java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes);
    }

    private String question() {
        return switch (random.nextInt(5)) {
            case 0 -> pick(ODD_VALUES);
            case 1 -> value(3);
            default -> new String(pick(List.<Supplier<Hostile>>of(this::sound, this::sound, this::wrongTypes)).get().body(), StandardCharsets.UTF_8);
        };
    }

    private String option() {
        if (random.nextInt(5) == 0) {
            return random.nextBoolean() ? pick(ODD_VALUES) : value(3);
        }
        StringBuilder mics = new StringBuilder();
        for (int i = random.nextInt(12) == 0 ? random.nextInt(400) : 1 + random.nextInt(2); i > 0; i--) {
            mics.append(mics.isEmpty() ? "" : ", ").append("{\"micType\": ").append(name("active-di", "long-ribbon"))
                    .append(", \"position\": ").append(name("lead", "bell")).append(", \"distanceM\": ").append(figure("0.3"))
                    .append(random.nextInt(3) == 0 ? ", \"pattern\": " + name("electrical", "cardioid") : "")
                    .append(random.nextInt(3) == 0 ? ", \"aimDegrees\": " + figure("-180") : "").append("}");
        }
        return "{\"mics\": [" + mics + "]" + (random.nextInt(3) == 0 ? ", \"technique\": " + name("single", "near-and-far") : "") + "}";
    }

    private String figure(String right) {
        return random.nextInt(4) > 0 ? right : pick(ODD_VALUES);
    }

    private String name(String fits, String other) {
        return random.nextInt(5) == 0 ? pick(ODD_VALUES) : "\"" + (random.nextInt(3) > 0 ? fits : other) + "\"";
    }

    private Hostile headers() {
        String tricks = pick(List.of("X-A: " + "b".repeat(random.nextInt(20_000)), "X-A: b\r\n".repeat(random.nextInt(3000)) + "X-A: b", "X-A: b\rX-B: c", "X-A: b\nX-B: c",
                "X-A: b\r\n folded", ": nameless", "X A: b", "X-\u00e4: b", "X-A: \u0000", "Content-Length: 2", "Content-Length: -1", "Content-Length: 99999999999999999999",
                "Content-Length: 0x10", "Content-Length: 1, 2", "Transfer-Encoding: chunked", "Transfer-Encoding: gzip", "Transfer-Encoding: chunked, chunked", "Host: other",
                "Host: [::1", "Expect: 100-continue", "Expect: something else", "Upgrade: websocket\r\nConnection: Upgrade", "Upgrade: h2c\r\nHTTP2-Settings: AAMAAABkAAQAoAAAAAIAAAAA",
                "Accept-Encoding: gzip;q=9, *;q=x", "Range: bytes=5-1", "If-None-Match: *", "Cookie: " + "a=b;".repeat(900), "X-HTTP-Method-Override: DELETE",
                "X-Forwarded-For: 1.2.3.4", "Authorization: Bearer x", "Accept: image/png", "Accept-Charset: x", "Connection: keep-alive, close, upgrade"));
        byte[] body = "{\"words\": \"qwzx\"}".getBytes(StandardCharsets.UTF_8);
        String end = tricks.contains("Content-Length") || tricks.contains("Transfer") ? "" : "\r\nContent-Length: " + body.length;
        return new Hostile("header trick", Serving.joined("POST /api/ask HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/json\r\n"
                + tricks + end + "\r\n\r\n", body));
    }

    private Hostile traversal() {
        String step = pick(List.of("../", "..%2f", "%2e%2e/", "%2e%2e%2f", "..\\", "..%5c", "..;/", "%252e%252e%252f", "..%c0%af", "./", "//", "%00/", ".%00./"));
        String start = pick(List.of("/", "/api/", "/api/sources/", "/schema/", "/api/rules/", "/health/"));
        return line("path traversal", "GET", start + step.repeat(1 + random.nextInt(8)) + pick(List.of("pom.xml", "secret", "Main.class", "catalogue/", "", "?")));
    }

    private Hostile methods() {
        String method = pick(List.of("PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT", "PROPFIND", "get", "Post", "G\u00cbT", "BREW", "QUERY", "X".repeat(500), "GET\t", "PRI"));
        return line("wrong method", method, pick(List.of("/api/ask", "/api/sources", "/health", "*", "localhost:80", "http://localhost/health", "/")));
    }

    private Hostile types() {
        String type = pick(List.of("text/plain", "text/xml", "application/xml", "application/x-www-form-urlencoded", "multipart/form-data", "multipart/form-data; boundary=",
                "application/octet-stream", "application/json-seq", "application/*", "*/*", "json", ";;;", "application/json; charset=utf-16", "application/json; charset=nonsense",
                "application/json; charset=", "application / json", "\u00e4"));
        byte[] body = valid().toString().getBytes(StandardCharsets.UTF_8);
        return new Hostile("wrong type", Serving.joined("POST /api/ask HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: " + type
                + "\r\nContent-Length: " + body.length + "\r\n\r\n", body));
    }

    private Hostile queries() {
        String query = pick(List.of("", "?", "?words", "?words=", "?words=%", "?words=%zz", "?words=%ff%fe", "?words=%00", "?words=%0d%0aX-A:%20b", "?words=a&words=b", "?words[]=a",
                "?" + "&".repeat(500), "?words=" + "a".repeat(random.nextInt(5000)), "?words=%F0%9F%A5%81", "?words=*:*", "?words=snare~2^9", "?words=(((", "?words=\"", "?words=a%20AND%20NOT",
                "?words=%ED%A0%80", "?w\u00f6rds=\u00e4"));
        return line("query trick", "GET", pick(List.of("/api/search", "/api/suggest")) + query + (random.nextInt(4) > 0 ? "" : " HTTP/1.1\r\nContent-Type: text/plain; charset=nonsense\r\nX-A: b"));
    }

    private Hostile flipped() {
        byte[] bytes = ask("", valid().toString()).bytes();
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return new Hostile("flipped bytes", bytes);
    }

    private Hostile broken() {
        byte[] bytes = switch (random.nextInt(4)) {
            case 0 -> new byte[1 + random.nextInt(500)];
            case 1 -> "GET /health".getBytes(StandardCharsets.US_ASCII);
            case 2 -> new byte[] {0x16, 3, 1, 2, 0, 1, 0, 1, (byte) 0xfc, 3, 3};
            default -> "\r\n".repeat(random.nextInt(3000)).concat("GET / HTTP/1.1").getBytes(StandardCharsets.US_ASCII);
        };
        if (bytes.length > 20 && bytes[0] == 0) {
            random.nextBytes(bytes);
        }
        return new Hostile("no HTTP", bytes);
    }

    private ObjectNode valid() {
        try {
            return (ObjectNode) OpenApi.JSON.readTree("""
                    {"words": "brushed snare", "source": "snare-drum", "ways": ["brushed"], "room": "small-room", "character": ["warm"],
                     "limits": {"mics": 1, "phantom": false, "preampGainDb": 60, "onlyFamilies": ["ribbon"]},
                     "neighbours": [{"source": "double-bass", "distanceM": 3.0, "angleDegrees": 120}],
                     "from": "2027-03-01T10:00:00+01:00", "until": "2027-03-01T18:00:00+01:00", "options": 3, "draws": 2}""");
        } catch (JsonProcessingException impossible) {
            throw new AssertionError(impossible);
        }
    }

    private Hostile ask(String kind, String body) {
        return ask(kind, body.getBytes(StandardCharsets.UTF_8));
    }

    private Hostile ask(String kind, byte[] body) {
        return post(kind, "/api/ask", body);
    }

    private Hostile post(String kind, String target, byte[] body) {
        return new Hostile(kind, Serving.joined("POST " + target + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/json\r\nContent-Length: "
                + body.length + "\r\n\r\n", body), target, body);
    }

    private Hostile line(String kind, String method, String target) {
        String version = target.contains(" HTTP/1.1") ? "" : " HTTP/1.1";
        return new Hostile(kind, (method + " " + target + version + "\r\nHost: localhost\r\nConnection: close\r\n\r\n").getBytes(StandardCharsets.UTF_8));
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }
}
