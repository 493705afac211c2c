package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pairwright.locker.Place;
import pairwright.model.HeardBefore;

/** Sessions are planned over HTTP as the description promises, and every answer and field it promises is really seen. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SessionConformanceTest {
    private static final String PLAN = "/api/sessions/plan";
    private static final String AGAIN = "/api/sessions/replan";
    private static final String EXAMPLE = "/api/sessions/example.json";
    private static final String ROOM = "'room': {'widthM': 6, 'depthM': 5, 'heightM': 3, 'reverbTimeS': 0.4}";
    private static final String TRIO = ROOM + ", 'lineUp': [{'id': 'horn', 'player': 'Wren', 'source': 'trumpet', 'xM': 1.5, 'yM': 2, 'facingDegrees': 60, 'maxMics': 1},"
            + " {'id': 'piano', 'source': 'upright-piano', 'xM': 4.8, 'yM': 3.5, 'facingDegrees': 225, 'maxMics': 2}], 'gobos': [{'x1M': 2.5, 'y1M': 3.5, 'x2M': 3.5, 'y2M': 2.5}]";
    private static final String GEAR = "'locker': {'units': [{'id': 'r-1', 'micType': 'long-ribbon', 'pairMate': 'r-2'}, {'id': 'r-2', 'micType': 'long-ribbon'}, {'id': 'p-1', 'micType': 'small-condenser-cardioid',"
            + " 'pairMate': 'p-2'}, {'id': 'p-2', 'micType': 'small-condenser-cardioid'}, {'id': 'h-1', 'micType': 'handheld-moving-coil'}],"
            + " 'channels': [{'id': 'a-1', 'bank': 'A', 'phantom': 'bank', 'maxGainDb': 60, 'supplyMa': 20}, {'id': 'a-2', 'bank': 'A', 'phantom': 'bank', 'maxGainDb': 60, 'supplyMa': 20},"
            + " {'id': 'b-1', 'phantom': 'none', 'maxGainDb': 50}, {'id': 'b-2', 'phantom': 'channel'}],"
            + " 'stands': [{'id': 's-1', 'kind': 'boom', 'massKg': 3.2, 'reachM': 0.8, 'footRadiusM': 0.34, 'legs': 3, 'heightM': 1.6}, {'id': 's-2', 'kind': 'boom', 'massKg': 3.2, 'reachM': 0.8,"
            + " 'footRadiusM': 0.34, 'legs': 3, 'heightM': 1.6}, {'id': 's-3', 'kind': 'overhead'}], 'boosters': [{'id': 'x-1', 'gainDb': 25, 'phantomMa': 3, 'passesPhantom': false}]}";
    /** Three sources for one microphone. */
    private static final String TOO_FEW = "{'lineUp': ['flute', 'oboe', 'trumpet'], 'plans': 1, 'locker': {'units': [{'id': 'h-1', 'micType': 'handheld-moving-coil'}]}}";

    /** A keyboard with its box, and a microphone that is too strong for any channel without a pad. */
    private static final String BOXED = "{'plans': 1, 'lineUp': ['keyboard-lead', {'source': 'trumpet', 'maxMics': 1}], 'locker': {'units': [{'id': 'd-1', 'micType': 'passive-di', 'label': 'Box'},"
            + " {'id': 'r-1', 'micType': 'active-ribbon'}], 'channels': [{'id': 'c-1', 'minGainDb': 55, 'maxGainDb': 65}, {'id': 'c-2', 'minGainDb': 55, 'maxGainDb': 65}],"
            + " 'pads': [{'id': 'x-1', 'lossDb': 60, 'passesPhantom': true}]}}";

    private final Set<String> seen = new TreeSet<>();
    private final Set<String> fields = new TreeSet<>();
    private final List<String> wrong = new ArrayList<>();

    @BeforeAll
    void askEverything(@TempDir Path folder) {
        try (LockerServing open = LockerServing.demo(folder.resolve("open"), LocalDate.now())) {
            JsonNode example = ask(open, "GET", EXAMPLE, EXAMPLE, null).json();
            assertEquals(6, example.path("lineUp").size());
            planned(open);
            stored(open);
            moved(open);
            assertEquals(200, ask(open, "POST", PLAN, PLAN, quoted(BOXED)).status());
            hurried(open);
            held(open);
            assertEquals(422, ask(open, "POST", PLAN, PLAN, quoted(TOO_FEW)).status());
            for (String path : List.of(PLAN, AGAIN)) {
                assertEquals(400, ask(open, "POST", path, path, "{}").status());
                assertEquals(400, ask(open, "POST", path, path + "?nonsense=1", quoted("{'lineUp': ['flute']}")).status());
                assertEquals(413, ask(open, "POST", path, path, " ".repeat(513 * 1024)).status());
                assertEquals(415, ask(open, "POST", path, path, "{}", "Content-Type: text/plain").status());
            }
            assertEquals(400, ask(open, "GET", EXAMPLE, EXAMPLE + "?nonsense=1", null).status());
        }
        try (LockerServing guarded = LockerServing.guarded(Place.in(folder.resolve("guarded")))) {
            for (String path : List.of(PLAN, AGAIN)) {
                assertEquals(401, ask(guarded, "POST", path, path, "{}").status());
                assertEquals(403, ask(guarded, "POST", path, path, "{}", "Authorization: Bearer " + guarded.reader).status());
                slowed(guarded, "POST", path, "{}");
            }
            assertEquals(401, ask(guarded, "GET", EXAMPLE, EXAMPLE, null).status());
            slowed(guarded, "GET", EXAMPLE, null);
        }
        try (LockerServing away = LockerServing.open(Place.in(folder.resolve("away")))) {
            away.locker.close();
            for (String body : List.of(PLAN, AGAIN)) {
                Reply reply = ask(away, "POST", body, body, quoted("{'lineUp': ['flute']" + (body.equals(AGAIN) ? ", 'plan': {'lines': []}" : "") + "}"));
                assertEquals(503, reply.status(), reply.body());
                assertTrue(Integer.parseInt(reply.headers().get("retry-after")) > 0);
            }
        }
    }

    private void planned(LockerServing open) {
        Reply reply = ask(open, "POST", PLAN, PLAN, quoted("{'name': 'Trio', " + TRIO + ", " + GEAR + ", 'contrast': [['horn', 'piano']], 'plans': 2}"));
        assertEquals(200, reply.status(), reply.body());
        JsonNode plan = reply.json().at("/plans/0");
        assertTrue(reply.json().path("short").isArray() && reply.json().path("short").isEmpty(), reply.body());
        Set<String> units = new TreeSet<>();
        plan.path("lines").forEach(line -> {
            assertTrue(units.add(line.path("unit").asText()), "used twice: " + line);
            assertTrue(!line.path("micType").asText().equals("long-ribbon") || !line.path("phantom").asBoolean(), "a ribbon on a live channel: " + line);
        });
        assertTrue(plan.path("lines").size() >= 2 && plan.path("lines").size() <= 3, plan.path("lines").toString());
        Reply same = ask(open, "POST", PLAN, PLAN, ((ObjectNode) reply.json().path("lineUp").deepCopy()).set("locker", tree(quoted("{" + GEAR + "}")).path("locker")).toString());
        assertEquals(reply.json().path("plans"), same.json().path("plans"), "the line-up of the answer asks the same");

        String lost = plan.at("/lines/0/unit").asText();
        String body = quoted("{" + TRIO + ", " + GEAR + ", 'plan': ") + plan + quoted(", 'lost': {'units': ['" + lost + "']}, 'pricePoints': 3}");
        Reply again = ask(open, "POST", AGAIN, AGAIN, body);
        assertEquals(200, again.status(), again.body());
        assertTrue(again.json().at("/plan/lines").findValuesAsText("unit").stream().noneMatch(lost::equals), again.body());
        assertTrue(!again.json().path("steps").isEmpty() && again.json().path("timeS").asDouble() > 0, again.body());

        Reply without = ask(open, "POST", AGAIN, AGAIN, quoted("{" + TRIO + ", " + GEAR + ", 'plan': ") + plan + quoted(", 'lost': {'channels': ['a-1', 'a-2', 'b-1']}}"));
        assertEquals(422, without.status(), without.body());
        JsonNode channels = without.json().at("/short/0");
        assertTrue(channels.path("resource").asText().contains("channel") && channels.path("needed").asInt() == 2 && channels.path("there").asInt() == 1, without.body());
        assertFalse(without.json().path("waysOut").isEmpty(), without.body());
        assertTrue(without.json().path("detail").asText().contains("2 needed, 1 there"), without.body());

        Reply unknown = ask(open, "POST", AGAIN, AGAIN, quoted("{" + TRIO + ", " + GEAR + ", 'plan': ") + plan + quoted(", 'lost': {'units': ['r-11'], 'channels': ['c'], 'seats': ['hron']}}"));
        assertEquals(400, unknown.status());
        assertEquals(List.of("/lost/units/0", "/lost/channels/0", "/lost/seats/0"), unknown.json().path("errors").findValuesAsText("at"));

        String oneMic = quoted("{'lineUp': [{'id': 'fl', 'source': 'flute'}], 'locker': {'units': [{'id': 'h-1', 'micType': 'handheld-moving-coil'}]},"
                + " 'plan': {'lines': [{'seat': 'fl', 'micType': 'handheld-moving-coil', 'position': 'embouchure', 'unit': 'h-1'}]}, 'lost': {'units': ['h-1']}}");
        Reply none = ask(open, "POST", AGAIN, AGAIN, oneMic);
        assertEquals(422, none.status(), none.body());
    }

    /** A trumpet that blows into the microphone of a guitar, so that another seat would help. */
    private void moved(LockerServing open) {
        Reply reply = ask(open, "POST", PLAN, PLAN, quoted("{'room': {'room': 'open-air', 'widthM': 8, 'depthM': 10, 'heightM': 4, 'reverbTimeS': 0.05}, 'plans': 2, 'lineUp': [{'source': 'nylon-guitar', 'xM': 3, 'yM': 3, 'facingDegrees': 0, 'maxMics': 1},"
                + " {'source': 'trumpet', 'xM': 3, 'yM': 4.2, 'facingDegrees': 180, 'maxMics': 1}, {'source': 'flute', 'xM': 2, 'yM': 3, 'facingDegrees': 0, 'maxMics': 1}], 'locker': {'units': [{'id': 'r', 'micType': 'small-condenser-omni'},"
                + " {'id': 'p', 'micType': 'small-condenser-omni'}, {'id': 'q', 'micType': 'small-condenser-omni'}], 'channels': [{'id': 'one'}, {'id': 'two'}, {'id': 'three'}]}}"));
        assertEquals(200, reply.status(), reply.body());
        assertEquals(1, reply.json().path("plans").size(), "of one type there is no other plan");
        assertTrue(reply.json().path("noMorePlans").asText().startsWith("2 plans were asked for, and 1 is there"), reply.body());
        assertTrue(!reply.json().path("moves").isEmpty() && reply.json().path("noMoves").isMissingNode(), reply.body());
    }

    /** Time for one line, where there are two to be had. */
    private void hurried(LockerServing open) {
        String two = "{" + ROOM + ", 'plans': 1, 'setUp': {'minutes': 5}, 'lineUp': [{'id': 'horn', 'source': 'trumpet', 'maxMics': 1}, {'id': 'flute', 'source': 'flute', 'maxMics': 1, 'must': false}], " + GEAR;
        Reply reply = ask(open, "POST", PLAN, PLAN, quoted(two + "}"));
        assertEquals(200, reply.status(), reply.body());
        assertEquals(1, reply.json().at("/plans/0/lines").size());
        assertEquals(List.of(5, 1, 300), List.of(reply.json().at("/plans/0/setUp/minutes").asInt(), reply.json().at("/plans/0/setUp/hands").asInt(), reply.json().at("/plans/0/setUp/workS").asInt()));
        assertEquals(10, reply.json().at("/timeShort/neededMinutes").asInt());
        assertEquals("Nothing stands for the flute.", reply.json().at("/timeShort/without/0").asText());
        Reply again = ask(open, "POST", AGAIN, AGAIN, quoted(two + ", 'lost': {'minutes': 5}, 'plan': ") + reply.json().at("/plans/0") + "}");
        assertEquals(200, again.status(), again.body());
        assertEquals(0, again.json().path("steps").size());
        assertEquals(0, again.json().at("/setUp/minutes").asInt(-1));
        Reply none = ask(open, "POST", PLAN, PLAN, quoted(two.replace("'minutes': 5", "'minutes': 4") + "}"));
        assertEquals(422, none.status());
        assertTrue(none.body().contains("minutes of set-up work for one pair of hands: 5 needed, 4 there"), none.body());
    }

    /** A pair on one stand, and a quiet ribbon that no channel has the gain for. */
    private void held(LockerServing open) {
        Reply reply = ask(open, "POST", PLAN, PLAN, quoted("{" + ROOM + ", 'plans': 1, 'lineUp': [{'source': 'drum-kit', 'maxMics': 2, 'limits': {'onlyMicTypes': ['small-condenser-cardioid']}},"
                + " {'source': 'nylon-guitar', 'maxMics': 1, 'limits': {'onlyMicTypes': ['long-ribbon']}}], 'locker': {'channels': [{'id': 'a', 'maxGainDb': 50}, {'id': 'b', 'maxGainDb': 50}, {'id': 'c', 'maxGainDb': 50}],"
                + " 'stands': [{'id': 'tall', 'kind': 'overhead', 'massKg': 14, 'reachM': 1.5, 'footRadiusM': 0.5, 'legs': 3, 'heightM': 2.5}, {'id': 'low', 'kind': 'boom'}],"
                + " 'boosters': [{'id': 'x', 'gainDb': 25, 'phantomMa': 3, 'passesPhantom': false}]}}"));
        assertEquals(200, reply.status(), reply.body());
        List<JsonNode> lines = new ArrayList<>();
        reply.json().at("/plans/0/lines").forEach(lines::add);
        List<JsonNode> kit = lines.stream().filter(line -> line.path("seat").asText().equals("drum-kit")).toList();
        assertEquals(List.of("tall", "tall"), kit.stream().map(line -> line.path("stand").asText()).toList(), "both hang on one bar");
        assertEquals(kit.get(0).path("number").asInt(), kit.get(1).path("sharesStandWith").asInt());
        JsonNode guitar = lines.stream().filter(line -> line.path("seat").asText().equals("nylon-guitar")).findFirst().orElseThrow();
        assertEquals("x", guitar.path("booster").asText(), guitar.toString());
        assertTrue(guitar.path("gainDb").asDouble() <= 50 && guitar.path("phantom").asBoolean(), guitar.toString());
    }

    /** With what the barn of the demo has just now. */
    private void stored(LockerServing open) {
        Reply reply = ask(open, "POST", PLAN, PLAN, quoted("{'room': 'barn', 'lineUp': ['singing-voice', 'double-bass'], 'plans': 1}"));
        assertEquals(200, reply.status(), reply.body());
        assertTrue(reply.json().path("assumed").size() >= 2, reply.body());
        reply.json().at("/plans/0/lines").forEach(line -> assertTrue(open.locker.unit(line.path("unit").asText()).isPresent() && open.locker.unit(line.path("channel").asText()).isPresent(), line.toString()));
        assertEquals(400, ask(open, "POST", PLAN, PLAN, quoted("{'lineUp': ['flute'], 'bookings': ['999']}")).status());
    }

    private void slowed(LockerServing guarded, String method, String path, String body) {
        String from = "X-Forwarded-For: 198.51.100." + (1 + path.length());
        for (int i = 0; i < Tries.FREE; i++) {
            ask(guarded, method, path, path, body, "Authorization: Bearer guess" + i, from);
        }
        Reply reply = ask(guarded, method, path, path, body, "Authorization: Bearer " + guarded.engineer, from);
        assertEquals(429, reply.status());
        assertTrue(reply.headers().containsKey("retry-after"));
    }

    @Test
    void everyAnswerIsAsItIsDescribed() {
        assertEquals(List.of(), wrong);
    }

    @Test
    void everyAnswerThatIsDescribedIsSeen() {
        Set<String> described = new TreeSet<>();
        for (String operation : List.of("POST " + PLAN, "POST " + AGAIN, "GET " + EXAMPLE)) {
            responses(operation.split(" ")[0], operation.split(" ")[1]).fieldNames().forEachRemaining(status -> described.add(operation + " " + status));
        }
        described.removeIf(answer -> answer.endsWith(" default"));
        described.removeAll(seen);
        assertEquals(Set.of(), described, "described, and never seen: ask for it");
    }

    @Test
    void everyFieldThatIsDescribedIsSeenInSomeAnswer() {
        Set<String> described = new TreeSet<>(DescribedFields.of("SessionPlans"));
        described.addAll(DescribedFields.of("SessionChanged"));
        // what an option, a unit and a line-up hold is seen elsewhere
        described.removeIf(field -> field.matches("(Option|Placement|Predicted|Heard|Together|Reason|Caution|Value|Sure|Given|Session(Request|Floor|Gear)|Seat|HeardBefore|GoboGiven|AskLimits|Gear[A-Z][a-z]+|Short|PlanWayOut)\\..*"));
        described.removeAll(fields);
        assertEquals(Set.of(), described, "no answer has it: ask for something that does");
        assertTrue(fields.containsAll(Set.of("Problem.short", "Problem.waysOut", "Short.resource", "Short.needed", "Short.there", "PlanWayOut.says")), fields.toString());
    }

    private Reply ask(LockerServing serving, String method, String path, String target, String body, String... headers) {
        Reply reply = serving.send(method, target, body, headers);
        String what = method + " " + path + " " + reply.status();
        seen.add(what);
        Serving.OPEN_API.faults(method, path, reply).forEach(fault -> wrong.add(what + ": " + fault));
        if (reply.mediaType().endsWith("json")) {
            DescribedFields.see(reply.mediaType().equals(Problem.MEDIA_TYPE) ? "Problem" : path.equals(PLAN) ? "SessionPlans" : path.equals(AGAIN) ? "SessionChanged" : "SessionRequest", reply.json(), fields);
        }
        return reply;
    }

    private static JsonNode responses(String method, String path) {
        return Serving.OPEN_API.tree().path("paths").path(path).path(method.toLowerCase(Locale.ROOT)).path("responses");
    }

    private static JsonNode tree(String json) {
        try {
            return OpenApi.JSON.readTree(json);
        } catch (com.fasterxml.jackson.core.JsonProcessingException broken) {
            throw new AssertionError(json, broken);
        }
    }

    private static String quoted(String text) {
        return text.replace('\'', '"');
    }
}
