package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.advice.KnowledgeStore;
import pairwright.catalogue.Json;
import pairwright.locker.Act;
import pairwright.locker.DocumentDraft;
import pairwright.locker.Locker;
import pairwright.locker.Place;
import pairwright.locker.UnitDraft;

/** What to buy next, asked from the terminal. */
class BuyTest {
    private static final String DUO = """
            {"name": "Yard duo", "room": {"widthM": 5, "depthM": 5, "heightM": 3, "reverbTimeS": 0.4}, "plans": 1,
             "lineUp": [{"id": "horn", "source": "trumpet", "xM": 1, "yM": 2, "facingDegrees": 60, "maxMics": 1},
                        {"id": "bass", "source": "double-bass", "xM": 4, "yM": 3, "facingDegrees": 225, "maxMics": 1}]}""";

    private static void owns(Path data, boolean session, String... micTypes) {
        KnowledgeStore known = KnowledgeStore.builtIn();
        try (Locker locker = Locker.open(Place.in(data), () -> known.current().catalogue(), Clock.systemDefaultZone())) {
            locker.change(Act.by("Ada"), changes -> {
                for (String micType : micTypes) {
                    changes.add(UnitDraft.mic("own-" + micType, micType, "Own " + micType));
                }
                if (session) {
                    changes.put(DocumentDraft.lineUp("yard-duo", "Yard duo", null, null, DUO), null);
                }
                return "";
            });
        }
    }

    @Test
    void whatServesASessionIsBoughtFirstAndTheBudgetIsKept(@TempDir Path data) throws Exception {
        owns(data, true, "handheld-moving-coil");
        Run json = Run.of("buy", "--data", data.toString(), "--budget", "2", "--tier", "1", "--json");
        assertEquals(0, json.exit(), json.err());
        JsonNode found = Json.mapper().readTree(json.out()).path("purchases");
        assertTrue(found.at("/before/0/points").isMissingNode() || found.at("/before/0/points").isNull(), "two players and one microphone: " + found);
        assertEquals("serve", found.at("/steps/0/phase").asText(), found.toString());
        assertTrue(found.at("/after/0/points").isNumber(), found.toString());
        int spent = 0;
        for (JsonNode step : found.path("steps")) {
            spent += step.path("price").asInt();
            assertEquals(step.path("units").asInt(), step.path("price").asInt(), "nothing dearer than the cheapest class");
        }
        assertTrue(spent <= 2, found.toString());
        Run text = Run.of("buy", "--data", data.toString(), "--budget", "2", "--tier", "1");
        assertEquals(0, text.exit(), text.err());
        assertTrue(text.out().contains("so that all are") && text.out().contains("Yard duo: no plan with what is owned, "), text.out());
    }

    @Test
    void withNothingToSpendItSaysHowItStandsAndWhatIsNeverNeeded(@TempDir Path data) {
        owns(data, true, "handheld-moving-coil", "long-ribbon", "small-condenser-cardioid");
        Run run = Run.of("buy", "--data", data.toString(), "--budget", "0");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("With nothing to spend nothing is bought."), run.out());
        assertTrue(run.out().contains("Never needed by the best plans: "), "three microphones for two: " + run.out());
        assertFalse(run.out().contains("no plan"), run.out());
    }

    @Test
    void withoutASessionOrWithAnImpossibleBudgetItSaysWhatToDo(@TempDir Path data) {
        owns(data, false, "long-ribbon");
        Run none = Run.of("buy", "--data", data.toString());
        assertEquals(1, none.exit(), none.out());
        assertTrue(none.err().contains("There is no session yet to buy for."), none.err());
        Run much = Run.of("buy", "--data", data.toString(), "--budget", "-1");
        assertEquals(2, much.exit());
        assertTrue(much.err().contains("--budget takes 0 to ") && much.err().contains("but was -1"), much.err());
        assertEquals(2, Run.of("buy", "--data", data.toString(), "--tier", "9").exit());
    }
}
