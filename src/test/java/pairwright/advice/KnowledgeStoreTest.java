package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A house folder comes into use as a whole or not at all. */
class KnowledgeStoreTest {
    private static final String ROOM = """
            id: tool-shed
            name: Tool shed
            says: A shed with tools in it.
            words: [garden shed]
            widthM: 3
            depthM: 4
            heightM: 2.2
            reverbTimeS: 0.3
            noiseDba: 35
            kind: neutral
            confidence: low
            basis:
              - of: [widthM, depthM, heightM, reverbTimeS, noiseDba]
                on: estimate
                note: Guessed.
            """;
    private static final String RULE = """
            package house;
            import pairwright.model.*;
            import pairwright.rules.*;
            global pairwright.rules.Out out;

            rule "HOUSE-001"
              @title("Keep clear of the door")
              @effect("against")
              @points(-4)
              @says("{mic} would stand in the way of the door at {distanceM}.")
              @why("The door opens inward.")
              @on("house")
              @basis("Our live room")
            when
              $p : Placed(distanceM > 0.1)
            then
              out.note(drools.getRule(), $p, "distanceM", $p.distanceM());
            end
            """;

    @TempDir
    private Path house;
    private KnowledgeStore store;

    @BeforeEach
    void aSoundHouseFolderIsInUse() throws Exception {
        write("catalogue/rooms/tool-shed.yaml", ROOM);
        write("rules/studio.drl", RULE);
        store = KnowledgeStore.withHouse(house);
        assertEquals(List.of(), store.faults());
        assertEquals(3, roomWidthM());
        assertEquals(-4, points());
    }

    @Test
    void soundRulesBesideABrokenEntryDoNotComeIntoUse() throws Exception {
        Knowledge good = store.current();
        write("catalogue/rooms/tool-shed.yaml", ROOM.replace("widthM: 3", "widthM: wide"));
        write("rules/studio.drl", RULE.replace("@points(-4)", "@points(-5)"));
        assertFalse(store.reload());
        assertSame(good, store.current());
    }

    @Test
    void whatIsSoundBesideAFaultComesIntoUseNeitherNowNorWithTheNextFault() throws Exception {
        Knowledge good = store.current();
        write("catalogue/rooms/tool-shed.yaml", ROOM.replace("widthM: 3", "widthM: 5"));
        write("rules/studio.drl", RULE.replace("distanceM > 0.1", "distnceM > 0.1"));
        assertFalse(store.reload());
        assertSame(good, store.current());
        assertEquals(1, store.faults().size(), store.faults().toString());
        write("catalogue/rooms/tool-shed.yaml", ROOM.replace("widthM: 3", "widthM: wide"));
        write("rules/studio.drl", RULE.replace("@points(-4)", "@points(-5)"));
        assertFalse(store.reload());
        assertSame(good, store.current());
        write("catalogue/rooms/tool-shed.yaml", ROOM.replace("widthM: 3", "widthM: 6"));
        assertTrue(store.reload());
        assertEquals(6, roomWidthM());
        assertEquals(-5, points());
    }

    @Test
    void aFolderThatIsTakenAwayLeavesWhatShipsWithTheProgram() throws Exception {
        Files.delete(house.resolve("catalogue/rooms/tool-shed.yaml"));
        Files.delete(house.resolve("catalogue/rooms"));
        Files.delete(house.resolve("catalogue"));
        assertTrue(store.reload());
        assertNull(store.current().catalogue().rooms().get("tool-shed"));
        assertEquals(-4, points(), "the rules are still there");
        Files.delete(house.resolve("rules/studio.drl"));
        assertTrue(store.reload());
        assertNull(store.current().rules().rule("HOUSE-001"));
    }

    @Test
    void nothingIsReadAgainUntilSomethingChanges() throws Exception {
        Knowledge before = store.current();
        store.reloadIfChanged();
        assertSame(before, store.current());
        write("rules/studio.drl", RULE.replace("@points(-4)", "@points(-4.5)"));
        store.reloadIfChanged();
        assertNotEquals(before.rules().version(), store.current().rules().version());
    }

    @Test
    void aRuleThatTripsOverANumberThatIsNotAlwaysThereIsNamedAndKeptOut() throws Exception {
        Knowledge good = store.current();
        for (String condition : List.of("predicted.headroomDb + 1 < 3", "mic.maxDbSpl.typical < 130")) {
            write("rules/studio.drl", RULE.replace("distanceM > 0.1", condition));
            assertFalse(store.reload(), condition);
            assertSame(good, store.current());
            assertTrue(store.faults().get(0).contains(condition) && store.faults().get(0).contains("HOUSE-001"), store.faults().toString());
        }
        write("rules/studio.drl", RULE.replace("distanceM > 0.1", "predicted.headroomDb != null, predicted.headroomDb + 1 < 3"));
        assertTrue(store.reload(), store.faults().toString());
    }

    private double roomWidthM() {
        return store.current().catalogue().rooms().get("tool-shed").widthM();
    }

    private double points() {
        return store.current().rules().rule("HOUSE-001").points();
    }

    private void write(String file, String text) throws IOException {
        Files.createDirectories(house.resolve(file).getParent());
        Files.writeString(house.resolve(file), text);
    }
}
