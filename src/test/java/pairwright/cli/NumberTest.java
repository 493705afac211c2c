package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairwright.numbers.CalculationInfo;
import pairwright.numbers.Numbers;

class NumberTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    static Stream<String> ids() {
        return new Numbers().all().stream().map(CalculationInfo::id);
    }

    @Test
    void aloneItListsWhatThereIs() {
        Run run = Run.of("number");
        assertEquals(0, run.exit());
        ids().forEach(id -> assertTrue(run.out().contains("\n" + id + " ") || run.out().startsWith(id + " "), id));
        assertNarrow(run.out());
    }

    @ParameterizedTest
    @MethodSource("ids")
    void whatOneTriesAsTheHelpSaysIsWorked(String id) {
        Run asks = Run.of("number", id);
        assertEquals(0, asks.exit());
        assertNarrow(asks.out());
        String all = asks.out().replaceAll("\\s+", " ").strip();
        String[] tried = all.substring(all.indexOf("Try: pairwright ") + "Try: pairwright ".length()).split(" ");
        Run run = Run.of(tried);
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("  1   ") && run.out().contains("  holds "), run.out());
        assertNarrow(run.out());
    }

    @Test
    void theAnswerIsWorkedStepByStep() {
        Run run = Run.of("number", "proximity", "pattern=cardioid", "distanceM=0.1");
        assertTrue(run.out().startsWith("A cardioid at 0.1 m gives 9.27 dB more at 100 Hz than from far away.\n"), run.out());
        assertTrue(run.out().contains("    1   Corner, where the rise on the axis is 3 dB: (1 - 0.5) × 343 / (2 pi ×\n        0.1) = 272.95 Hz\n"), run.out());
        assertTrue(run.out().contains("    3   Rise at 100 Hz: 10 lg(1 + 2.73^2) = 9.269 dB\n"), run.out());
    }

    @Test
    void aDecimalCommaIsOneAndListsMayHaveThem() throws Exception {
        assertEquals(json("delay", "distanceM=0.343"), json("delay", "distanceM=0,343"));
        JsonNode two = json("phantom-budget", "currentsMa=3,4.5", "supplyRatingMa=20");
        assertEquals("[3,4.5]", two.at("/inputs/currentsMa").toString());
        assertEquals(two, json("phantom-budget", "currentsMa=3;4,5", "supplyRatingMa=20"));
        assertEquals(two, json("phantom-budget", "currentsMa=3 4,5", "supplyRatingMa=20"));
        assertEquals("[4]", json("phantom-budget", "currentsMa=4", "supplyRatingMa=20").at("/inputs/currentsMa").toString());
    }

    @Test
    void jsonIsWhatTheOtherWayInGives() throws Exception {
        JsonNode worked = json("level-at-distance", "levelDbSpl=94", "distanceM=2");
        assertEquals(List.of("id", "inputs", "result", "says", "formula", "steps", "validity", "cautions"),
                worked.properties().stream().map(java.util.Map.Entry::getKey).toList());
        assertEquals(87.9794, worked.at("/result/0/value").asDouble());
        assertEquals(16, JSON.readTree(Run.of("number", "--json").out()).path("entries").size());
    }

    @Test
    void everyFaultIsSaidAndEndsWith2() {
        Run run = Run.of("number", "proximity", "pattern=cardoid", "distance=1", "far", "angleDegrees=x", "angleDegrees=3");
        assertEquals(2, run.exit());
        assertEquals("", run.out());
        List<String> lines = run.err().lines().toList();
        assertEquals(5, lines.size(), run.err());
        assertEquals("pairwright: \"far\" is not NAME=VALUE. Write it like distanceM=0.3", lines.get(0));
        assertEquals("pairwright: angleDegrees is given twice. Give it once; several numbers go in one list, such as 3,4.5", lines.get(1));
        assertEquals("pairwright: there is no input \"distance\" here. Did you mean distanceM?", lines.get(2));
        assertTrue(lines.get(3).endsWith("but was the text \"cardoid\". Did you mean cardioid?"), lines.get(3));
        assertEquals("pairwright: distanceM is missing. Give a number from 0.01 to 20 m", lines.get(4));
    }

    @Test
    void aGoodAnswerIsNotGivenBesideAFault() {
        Run run = Run.of("number", "delay", "distanceM=1", "distanceM=2");
        assertEquals(2, run.exit());
        assertEquals("", run.out());
    }

    @Test
    void anIdThereIsNotEndsWith2AndNamesTheNearest() {
        Run run = Run.of("number", "proximty", "distanceM=1");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("Did you mean proximity?"), run.err());
        assertFalse(Run.of("number", "\u001b[31mred").err().contains("\u001b"));
    }

    private static JsonNode json(String... arguments) throws Exception {
        Run run = Run.of(Stream.concat(Stream.of("number", "--json"), Stream.of(arguments)).toArray(String[]::new));
        assertEquals(0, run.exit(), run.err());
        return JSON.readTree(run.out());
    }

    private static void assertNarrow(String text) {
        text.lines().forEach(line -> assertTrue(line.length() <= 80, line));
    }
}
