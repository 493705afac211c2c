package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import pairwright.catalogue.Json;

/** Sessions planned from the terminal. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlanCommandTest {
    private static final String DUO = """
            name: Duo
            room: {widthM: 5, depthM: 5, heightM: 3, reverbTimeS: 0.4}
            plans: 1
            lineUp:
              - {id: horn, player: Wren, source: trumpet, xM: 1, yM: 2, facingDegrees: 60, maxMics: 1}
              - {id: bass, player: "=Bram", source: double-bass, xM: 4, yM: 3, facingDegrees: 225, maxMics: 1}
            locker:
              units:
                - {id: ribbon-1, micType: long-ribbon}
                - {id: pencil-1, micType: small-condenser-cardioid}
                - {id: hand-1, micType: handheld-moving-coil}
              channels: [{id: one, phantom: channel}, {id: two, phantom: none}]
            """;

    private Path folder;
    private Path duo;

    @BeforeAll
    void write(@TempDir Path temporary) throws Exception {
        folder = temporary;
        duo = folder.resolve("duo.yaml");
        Files.writeString(duo, DUO);
    }

    private Path file(String name, String text) throws Exception {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void aPlanIsPrintedForPeopleWithinTheWidth() {
        Run run = Run.of("plan", duo.toString());
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().startsWith("Duo: plan 1 of 1, score "), run.out());
        for (String part : List.of("Input list", "Why", "What is used", "Wren", "no  channel")) {
            assertTrue(run.out().contains(part), part + " is missing in\n" + run.out());
        }
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
        assertFalse(run.out().replace("first null", "").contains("null"), run.out());
    }

    @Test
    void programsGetWhatHttpGives() throws Exception {
        JsonNode plans = Json.mapper().readTree(Run.of("plan", duo.toString(), "--json").out());
        assertEquals(1, plans.path("plans").size());
        assertEquals(2, plans.at("/plans/0/lines").size());
        assertEquals("Duo", plans.at("/lineUp/name").asText());
    }

    @Test
    void theInputListIsATableInWhichNothingIsRun() {
        Run run = Run.of("plan", duo.toString(), "--csv");
        assertEquals(0, run.exit(), run.err());
        List<String> rows = run.out().lines().toList();
        assertEquals(3, rows.size(), run.out());
        assertTrue(rows.get(0).startsWith("number,channel,"), run.out());
        assertTrue(run.out().contains(",'=Bram,"), run.out());
        assertEquals(2, Run.of("plan", duo.toString(), "--csv", "--json").exit());
    }

    @Test
    void aLostUnitIsReplacedAndWhatCanStayStays() throws Exception {
        Run planned = Run.of("plan", duo.toString(), "--json");
        JsonNode first = Json.mapper().readTree(planned.out()).at("/plans/0");
        Path plan = file("plan.json", planned.out());
        String lost = first.at("/lines/0/unit").asText();
        Run text = Run.of("replan", duo.toString(), "--plan", plan.toString(), "--lost-unit", lost);
        assertEquals(0, text.exit(), text.err());
        assertTrue(text.out().contains("To do, about ") && text.out().lines().allMatch(line -> line.length() <= 80), text.out());
        JsonNode changed = Json.mapper().readTree(Run.of("replan", duo.toString(), "--plan", plan.toString(), "--lost-unit", lost, "--json").out());
        assertFalse(changed.at("/plan/lines").findValuesAsText("unit").contains(lost), changed.toString());
        assertTrue(changed.path("steps").size() > 0, changed.toString());
        Path afterwards = file("changed.json", changed.toString());
        assertEquals(0, Run.of("replan", duo.toString(), "--plan", afterwards.toString(), "--lost-seat", "bass").exit(), "what replan printed is a plan as well");
    }

    @Test
    void whatIsShortIsSaidWithTheWaysOut() throws Exception {
        Path few = file("few.yaml", "lineUp: [flute, oboe, trumpet]\nplans: 1\nlocker: {units: [{id: hand-1, micType: handheld-moving-coil}]}\n");
        Run run = Run.of("plan", few.toString());
        assertEquals(1, run.exit(), run.out());
        assertEquals("", run.out());
        assertTrue(run.err().contains("there is no plan that serves everybody who must be served.") && run.err().contains("needed") && run.err().contains("Ways out, the easiest first:"), run.err());
    }

    @Test
    void everyFaultOfAFileIsSaidWithLineAndColumn() throws Exception {
        Path band = file("band.yaml", "room: barn\ncolour: red\nlineUp:\n  - trumpt\n  - {source: double-bass, xM: 99, yM: 1}\nplans: 9\n");
        Run run = Run.of("plan", band.toString());
        assertEquals(2, run.exit());
        assertEquals("", run.out());
        List<String> lines = run.err().lines().toList();
        assertTrue(lines.get(0).startsWith(band + ":2:1: there is no field \"colour\" here."), run.err());
        assertTrue(run.err().contains(band + ":4:5: there is no source \"trumpt\". Maybe trumpet"), run.err());
        assertTrue(run.err().contains(band + ":5:31: xM must be 0 to 10, as the room is that wide, but was 99"), run.err());
        assertTrue(run.err().contains(band + ":6:8: plans must be 1 to 5, but was 9"), run.err());
        assertEquals("pairwright: 4 faults were found. Mend them and try again", lines.get(4));
    }

    @Test
    void aFileIsCheckedWithoutPlanning() throws Exception {
        Run sound = Run.of("plan", duo.toString(), "--check");
        assertEquals(0, sound.exit(), sound.err());
        assertEquals("No fault found." + System.lineSeparator(), sound.out());
        assertEquals(2, Run.of("plan", file("none.yaml", "- trumpet\n").toString(), "--check").exit());
        assertEquals(2, Run.of("plan", folder.resolve("nowhere.yaml").toString(), "--check").exit());
        assertEquals(2, Run.of("plan", file("broken.yaml", "lineUp: [\n").toString(), "--check").exit());
        assertEquals(2, Run.of("plan", duo.toString(), "--check", "--plans", "7").exit());
        Run late = Run.of("plan", duo.toString(), "--check", "--from", "2027-03-01T10:00", "--until", "2027-03-01T09:00");
        assertEquals(2, late.exit());
        assertTrue(late.err().contains("must be after --from"), late.err());
    }

    @Test
    void whatIsWrongWithThePlanThatStandsIsSaidOfItsFile() throws Exception {
        Path plan = file("bad-plan.json", "{\"lines\": [{\"seat\": \"horn\"}]}");
        Run run = Run.of("replan", duo.toString(), "--plan", plan.toString());
        assertEquals(2, run.exit());
        assertTrue(run.err().contains(plan + ": /plan/lines/0/micType: a line of the plan has no micType."), run.err());
        Run unknown = Run.of("replan", duo.toString(), "--plan", file("empty-plan.json", "{\"lines\": []}").toString(), "--lost-unit", "ribbon-11");
        assertEquals(2, unknown.exit());
        assertTrue(unknown.err().contains("there is no unit \"ribbon-11\"") && unknown.err().contains("Did you mean ribbon-1?"), unknown.err());
    }

    @Test
    void theLineUpOfTheDemoHasNoFaults() {
        Path data = folder.resolve("demo");
        Run demo = Run.of("demo", "--data", data.toString());
        assertEquals(0, demo.exit(), demo.err());
        assertTrue(demo.out().contains("pairwright plan " + data.resolve("barn-sextet.yaml")), demo.out());
        Run check = Run.of("plan", data.resolve("barn-sextet.yaml").toString(), "--data", data.toString(), "--check");
        assertEquals(0, check.exit(), check.err());
        assertEquals(2, Run.of("plan", data.resolve("barn-sextet.yaml").toString(), "--data", data.toString(), "--no-locker").exit());
    }
}
