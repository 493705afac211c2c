package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.model.Answer;
import pairwright.model.Request;
import pairwright.model.Suggestion;

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
    void theWordsOfTheHouseAreSuggestedOnceTheyAreRead() throws Exception {
        assertEquals(List.of("tool-shed"), store.current().suggester().suggest("cello, tool sh").stream().map(Suggestion::id).toList());
        write("catalogue/rooms/tool-shed.yaml", ROOM.replace("Tool shed", "Boat house"));
        assertTrue(store.current().suggester().suggest("cello, boat h").stream().noneMatch(one -> one.id().equals("tool-shed")));
        assertTrue(store.reload());
        assertEquals("tool-shed", store.current().suggester().suggest("cello, boat h").get(0).id());
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
        assertSame(before, store.current(), "it may still be written to");
        write("rules/studio.drl", RULE.replace("@points(-4)", "@points(-4.25)"));
        store.reloadIfChanged();
        assertSame(before, store.current(), "it was written to again");
        store.reloadIfChanged();
        assertEquals(-4.25, points());
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

    @Test
    void theBuiltInSetAnswersUntilTheHouseFolderIsRead() {
        KnowledgeStore later = KnowledgeStore.beforeHouse(house);
        assertEquals(HouseState.State.LOADING, later.status().house().state());
        assertNull(later.current().catalogue().rooms().get("tool-shed"));
        later.reloadIfChanged();
        assertEquals(new HouseState(HouseState.State.IN_USE, 1, 1, List.of()), later.status().house());
        assertNotNull(later.current().catalogue().rooms().get("tool-shed"));
    }

    @Test
    void aFolderThatIsNotThereIsNoFaultAndComesIntoUseWhenItIsMade() throws Exception {
        Path made = house.resolve("../" + house.getFileName() + "-later").normalize();
        KnowledgeStore later = KnowledgeStore.beforeHouse(made);
        assertEquals(HouseState.State.NONE, later.status().house().state());
        later.reloadIfChanged();
        assertEquals(HouseState.State.NONE, later.status().house().state());
        Files.move(house, made);
        try {
            later.reloadIfChanged();
            later.reloadIfChanged();
            assertEquals(new HouseState(HouseState.State.IN_USE, 1, 1, List.of()), later.status().house());
        } finally {
            Files.move(made, house);
        }
        later.reloadIfChanged();
        later.reloadIfChanged();
        assertEquals(HouseState.State.FAULTS, later.status().house().state(), "gone while serving");
        assertTrue(later.faults().get(0).contains("cannot be read. Check that it is there"), later.faults().toString());
        assertNotNull(later.current().rules().rule("HOUSE-001"), "the last good set keeps answering");
    }

    @Test
    void anEmptyFolderIsInUseAndAddsNothing(@TempDir Path empty) {
        KnowledgeStore nothing = KnowledgeStore.withHouse(empty);
        assertEquals(new HouseState(HouseState.State.IN_USE, 0, 0, List.of()), nothing.status().house());
        assertEquals(KnowledgeStore.builtIn().current().catalogue().version(), nothing.current().catalogue().version());
    }

    @Test
    void aRuleThatTripsOnlyOnSomeQuestionIsPutAsideThereAndTheQuestionIsAnswered() throws Exception {
        String second = RULE.substring(RULE.indexOf("rule \"")).replace("HOUSE-001", "HOUSE-002")
                .replace("$p : Placed(distanceM > 0.1)", "Setting(room.id == \"stairwell\")\n  $p : Placed(distanceM > 0.1)")
                .replace("$p.distanceM()", "$p.mic().needsLoadOhm()");
        write("rules/studio.drl", RULE + second);
        assertTrue(store.reload(), store.faults().toString());
        Advisor advisor = new Advisor(store::current);
        Answer elsewhere = advisor.ask(Request.of("snare"));
        assertEquals(store.current().rules().version(), elsewhere.rulesVersion());
        Answer there = advisor.ask(Request.of("snare in a stairwell"));
        assertEquals(3, there.options().size());
        assertNotEquals(elsewhere.rulesVersion(), there.rulesVersion(), "the answer says that another set gave it");
        assertEquals(there, advisor.ask(Request.of("snare in a stairwell")));
        assertNull(store.current().rules().rule("HOUSE-002"));
        assertEquals(-4, points(), "the other rule goes on");
        assertEquals(HouseState.State.FAULTS, store.status().house().state());
        assertEquals(1, store.status().house().rules());
        assertTrue(store.faults().toString().contains("studio.drl:31:3: rule \"HOUSE-002\": the rule gives nothing for distanceM"), store.faults().toString());
        store.reloadIfChanged();
        assertNull(store.current().rules().rule("HOUSE-002"), "nothing changed in the folder");
        write("rules/studio.drl", RULE + second.replace("$p.mic().needsLoadOhm()", "$p.distanceM()"));
        assertTrue(store.reload());
        assertEquals(List.of(), store.faults());
        assertNotNull(store.current().rules().rule("HOUSE-002"), "the corrected rule is in use");
        assertEquals(store.current().rules().version(), advisor.ask(Request.of("snare in a stairwell")).rulesVersion());
    }

    @Test
    void whatMustNotBeReadIsAFaultWithItsPlaceAndNothingElseComesIntoUse() throws Exception {
        Knowledge good = store.current();
        Path outside = Files.writeString(house.resolveSibling(house.getFileName() + "-outside.yaml"), ROOM);
        Path rooms = house.resolve("catalogue/rooms");
        Files.createSymbolicLink(rooms.resolve("linked.yaml"), outside);
        Files.createSymbolicLink(house.resolve("catalogue/mics"), house.resolve("rules"));
        Files.createSymbolicLink(rooms.resolve("nowhere.yaml"), rooms.resolve("not-there"));
        Files.write(rooms.resolve("large.yaml"), new byte[1_000_001]);
        Files.write(rooms.resolve("junk.yaml"), new byte[] {'i', 'd', '\n', 'a', 0, 1, 2});
        Files.write(rooms.resolve("latin.yaml"), "id: x\nname: Caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
        Files.write(rooms.resolve("wide.yaml"), "id: x".getBytes(StandardCharsets.UTF_16));
        write("rule/studio.drl", RULE);
        write("studio.drl", RULE);
        write("rules/studio.drl.txt", RULE);
        write("rules/notes.md", "not a rule");
        write("rules/studio.drl~", "left by an editor");
        assertFalse(store.reload());
        assertSame(good, store.current());
        List<String> faults = store.faults().stream().map(fault -> fault.replace(house + "/", "")).toList();
        assertEquals(List.of(
                "catalogue/mics: is a link to a folder, and is not followed. Copy what it points to",
                "catalogue/rooms/junk.yaml:2:2: the file is not text: it holds a zero byte. Take it out, or save it as plain text",
                "catalogue/rooms/large.yaml:1:1: the file has 1000001 bytes, and more than 1000000 are not read. Make it smaller",
                "catalogue/rooms/latin.yaml:2:10: the file is not UTF-8. Save it as plain text in UTF-8",
                "catalogue/rooms/linked.yaml: is a link that leads out of the house folder, and is not followed. Copy what it points to",
                "catalogue/rooms/nowhere.yaml: is a link that leads nowhere. Take it out",
                "catalogue/rooms/wide.yaml:1:1: the file is in UTF-16. Save it as UTF-8",
                "rule: is not read. A house folder holds catalogue/ and rules/: rename it, or move it away",
                "rules/studio.drl.txt: is not read. Rename it to end in .drl or move it away",
                "studio.drl: is not read here. Move it into rules/"), faults);
    }

    @Test
    void theRegularFileAPipeIsNotIsNeverWaitedFor() throws Exception {
        Process made = new ProcessBuilder("mkfifo", house.resolve("catalogue/rooms/pipe.yaml").toString()).start();
        assumeTrue(made.waitFor() == 0);
        assertFalse(store.reload());
        assertTrue(store.faults().get(0).contains("pipe.yaml: is no file that can be read to its end"), store.faults().toString());
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
