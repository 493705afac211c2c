package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Line-ups that mean no good: none is a mistake of the program's, none shows its inside, and what is taken is as it is described. */
class SessionFuzzTest {
    private static final long SEED = 20_270_402;
    private static final int REQUESTS = 600;
    private static final Pattern INSIDE = Pattern.compile("Exception|\\bat [a-z]+\\.[a-z.]+\\(|\\.java\\b|java\\.|jakarta|fasterxml|jackson|jetty|javalin|ortools|pairwright\\.[a-z]+\\.|/root/|/home/|/tmp/");
    private static final List<String> ODD = List.of("null", "true", "0", "-1", "1.5", "1e999", "1e308", "-0", "9".repeat(300), "\"\"", "\" \"", "\"two\"", "[]", "[[]]", "[null]", "[{}]", "{}", "{\"\": 1}",
            "\"\\u0000\"", "\"\\ud800\"", "\"2027-13-01T00:00:00Z\"", "\"2027-03-01T10:00:00+01:00\"", "\"../../..\"", "\"'; --\"", "\"<script>1</script>\"", "\"${user.dir}\"", "\"%s%n%x\"", "\"bass-lead\"", "\"any\"", "[\"a\", \"b\"]",
            "\"" + "x".repeat(2_000) + "\"");
    /** A line box has few places, so that what is taken by chance is planned soon. */
    private static final String SOUND = """
            {"name": "Lead", "room": {"room": "small-room", "widthM": 4, "depthM": 4, "heightM": 2.5, "reverbTimeS": 0.3},
             "lineUp": [{"id": "a", "player": "Bram", "source": "bass-lead", "xM": 1, "yM": 1, "facingDegrees": 0, "ways": [], "dynamics": [], "character": [], "circumstances": [], "maxMics": 1,
               "limits": {"phantom": true, "preampGainDb": 60, "onlyFamilies": []}, "must": true, "fixed": true,
               "heard": {"typicalDbSpl": 80, "peakDbSpl": 100, "toneDb": [0, 0, 0, 0, 0, 0, 0, 0, 0], "lowestHz": 40, "highestHz": 400, "habits": ["x"]}},
              {"id": "b", "source": "bass-lead", "xM": 3, "yM": 3}],
             "gobos": [{"id": "g", "x1M": 1, "y1M": 2, "x2M": 2, "y2M": 2, "heightM": 1}], "contrast": [["a", "b"]], "keep": [], "plans": 1, "from": "2027-03-01T10:00:00+01:00",
             "until": "2027-03-01T12:00:00+01:00", "locker": {"units": [{"id": "u", "micType": "passive-di", "pairMate": "v", "label": "U"}, {"id": "v", "micType": "active-di"}, {"id": "w", "micType": "passive-di"}],
               "channels": [{"id": "c", "bank": "C", "phantom": "bank", "maxGainDb": 60, "noiseDbu": -127, "inputOhm": 2000, "supplyMa": 20, "label": "C"}, {"id": "d"}],
               "stands": [{"id": "s", "kind": "boom", "massKg": 3, "reachM": 0.8, "footRadiusM": 0.3, "legs": 3, "heightM": 1.6}], "boosters": [{"id": "x", "gainDb": 20, "phantomMa": 3, "passesPhantom": true}],
               "pads": [{"id": "p", "lossDb": 10}]}, "bookings": []}""";
    private static final String STANDS = """
            {"lines": [{"seat": "a", "source": "bass-lead", "technique": "single", "mic": 1, "micType": "passive-di", "pattern": "electrical", "position": "output", "distanceM": 0, "aimDegrees": 0, "unit": "u",
              "channel": "c", "stand": null, "booster": null}]}""";

    private final Random random = new Random(SEED);

    @Test
    void nothingHostileIsAMistakeOfTheProgramsOrShowsItsInside() throws IOException {
        Map<String, Integer> tally = new TreeMap<>();
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < REQUESTS; i++) {
            boolean again = random.nextInt(3) == 0;
            ObjectNode body = (ObjectNode) OpenApi.JSON.readTree(SOUND);
            if (again) {
                body.set("plan", OpenApi.JSON.readTree(STANDS));
                body.set("lost", OpenApi.JSON.readTree("{\"units\": [\"u\"], \"channels\": [], \"seats\": []}"));
                body.put("pricePoints", 5);
            }
            String text = body.toString();
            for (int times = 1 + random.nextInt(3); times > 0; times--) {
                text = altered(text);
            }
            String path = "/api/sessions/" + (again ? "replan" : "plan");
            Reply reply = Serving.post(Serving.port(), path, "application/json", text.getBytes(StandardCharsets.UTF_8));
            tally.merge(path + " " + (reply == null ? 0 : reply.status()), 1, Integer::sum);
            String fault = reply == null ? "closed without a word" : fault(path, again ? "SessionAgain" : "SessionRequest", text, reply);
            if (fault != null) {
                wrong.add("request " + i + ": " + fault + "\n  " + text + "\n  " + (reply == null ? "" : reply.status() + " " + reply.body().substring(0, Math.min(600, reply.body().length()))));
            }
        }
        System.out.println("SessionFuzzTest: seed " + SEED + ", " + tally);
        assertEquals(List.of(), wrong, "seed " + SEED);
        assertTrue(tally.getOrDefault("/api/sessions/plan 200", 0) > 5 && tally.getOrDefault("/api/sessions/replan 200", 0) > 0, "some of it was sound: " + tally);
    }

    /** The same with a value somewhere in it replaced, taken out, doubled or added, or a byte broken. */
    private String altered(String text) throws IOException {
        if (random.nextInt(25) == 0) {
            return text.substring(0, random.nextInt(text.length()));
        }
        JsonNode root = read(text);
        if (root == null || !root.isContainerNode()) {
            return text;
        }
        List<JsonNode> containers = new ArrayList<>();
        gather(root, containers);
        JsonNode one = containers.get(random.nextInt(containers.size()));
        String odd = ODD.get(random.nextInt(ODD.size()));
        String mark = "\"@@\"";
        if (one instanceof ArrayNode list) {
            if (list.isEmpty() || random.nextInt(4) == 0) {
                list.add("@@");
            } else if (random.nextInt(4) == 0) {
                list.add(list.get(random.nextInt(list.size())).deepCopy());
            } else {
                list.set(random.nextInt(list.size()), "@@");
            }
        } else {
            ObjectNode object = (ObjectNode) one;
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            if (names.isEmpty() || random.nextInt(10) == 0) {
                object.put("colour", "@@");
            } else if (random.nextInt(4) == 0) {
                object.remove(names.get(random.nextInt(names.size())));
            } else {
                object.put(names.get(random.nextInt(names.size())), "@@");
            }
        }
        return root.toString().replace(mark, odd);
    }

    private static void gather(JsonNode node, List<JsonNode> containers) {
        if (node.isContainerNode()) {
            containers.add(node);
            node.forEach(inner -> gather(inner, containers));
        }
    }

    private static JsonNode read(String text) {
        try {
            return OpenApi.JSON.readTree(text);
        } catch (IOException broken) {
            return null;
        }
    }

    private static String fault(String path, String schema, String text, Reply reply) {
        if (INSIDE.matcher(reply.body()).find() && reply.status() != 200) {
            return "shows the inside";
        }
        if (reply.status() == 500 || reply.status() > 400 && reply.status() != 422) {
            return "a mistake of the program's";
        }
        List<String> faults = Serving.OPEN_API.faults("POST", path, reply);
        if (!faults.isEmpty()) {
            return "not as it is described: " + faults;
        }
        if (reply.status() == 400) {
            boolean without = reply.json().path("errors").isEmpty() && !reply.json().path("detail").asText().startsWith("The body is");
            return without ? "refused without saying where" : null;
        }
        List<String> against = Serving.OPEN_API.faultsAs(schema, read(text));
        return against.isEmpty() ? null : "taken against the description: " + against;
    }
}
