package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What every command has in common: help, version, exit codes, and plain words for what cannot be used. */
class CommandsTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"", "ask", "plan", "replan", "locker", "lab", "listen", "number", "serve", "token", "backup", "restore", "check"})
    void everyCommandExplainsItselfAndSaysItsVersion(String command) {
        for (String option : List.of("--help", "-h")) {
            Run help = Run.of(Stream.of(command, option).filter(word -> !word.isEmpty()).toArray(String[]::new));
            assertEquals(0, help.exit());
            assertTrue(help.out().startsWith(("Usage: pairwright " + command).strip()), help.out());
            assertEquals("", help.err());
            assertTrue(help.out().lines().allMatch(line -> line.length() <= 80), help.out());
        }
        for (String option : List.of("--version", "-V")) {
            Run version = Run.of(Stream.of(command, option).filter(word -> !word.isEmpty()).toArray(String[]::new));
            assertEquals(0, version.exit());
            assertTrue(version.out().matches("pairwright \\S+\\R"), version.out());
        }
    }

    @Test
    void theHelpOfTheProgramNamesEveryCommand() {
        String help = Run.of("--help").out();
        assertEquals(List.of("ask", "plan", "replan", "locker", "lab", "listen", "number", "serve", "token", "backup", "restore", "demo", "buy", "check"), List.copyOf(Main.commandLine().getSubcommands().keySet()));
        Main.commandLine().getSubcommands().keySet().forEach(command -> assertTrue(help.contains("\n  " + command + " "), help));
    }

    static Stream<Arguments> unusable() {
        return Stream.of(
                Arguments.of("Say what to do: ask, plan, replan, locker, lab, listen, number, serve, token, backup, restore, demo, buy or check", new String[] {}),
                Arguments.of("play", new String[] {"play", "a tune"}),
                Arguments.of("WORDS", new String[] {"ask"}),
                Arguments.of("words are empty", new String[] {"ask", "  "}),
                Arguments.of("--loud", new String[] {"ask", "--loud", "snare"}),
                Arguments.of("'two' is not an int", new String[] {"ask", "--options", "two", "snare"}),
                Arguments.of("options must be 1 to 6, but was 0", new String[] {"ask", "--options", "0", "snare"}),
                Arguments.of("words are 2400 characters long", new String[] {"ask", "snare ".repeat(400)}),
                Arguments.of("there is no folder nowhere", new String[] {"ask", "--house", "nowhere", "snare"}),
                Arguments.of("there is no catalogue/ and no rules/ in ", new String[] {"check", "nowhere"}),
                Arguments.of("--port must be 0 to 65535, but was 70000", new String[] {"serve", "--port", "70000"}),
                Arguments.of("'http' is not an int", new String[] {"serve", "--port", "http"}));
    }

    @ParameterizedTest
    @MethodSource("unusable")
    void argumentsThatCannotBeUsedEndWith2AndSayWhich(String says, String[] arguments) {
        Run run = Run.of(arguments);
        assertEquals(2, run.exit(), run.err());
        assertEquals("", run.out());
        assertTrue(run.err().contains(says), run.err());
        assertPlain(run.err());
    }

    @Test
    @Tag("slow") // compiles every rule
    void checkFindsNoFaultInWhatTheProgramIsBuiltFrom() {
        Run run = Run.of("check", ".");
        assertEquals("No fault found." + System.lineSeparator(), run.out());
        assertEquals(0, run.exit());
    }

    @Test
    void checkListsEveryFaultOfACatalogueWithFileLineAndColumn() throws Exception {
        Path room = folder.resolve("catalogue/rooms/tool-shed.yaml");
        Path mic = folder.resolve("catalogue/mics/tin-can.yaml");
        Files.createDirectories(room.getParent());
        Files.createDirectories(mic.getParent());
        Files.writeString(room, "id: tool-shed\nname: Tool shed\nwidthM: wide\nheightM: -1\n");
        Files.writeString(mic, "id: tin-can\n  name: [\n");
        Run run = Run.of("check", folder.toString());
        assertEquals(1, run.exit());
        assertEquals("", run.err());
        List<String> lines = run.out().lines().toList();
        assertTrue(lines.size() > 4, run.out());
        assertEquals(lines.size() - 1 + " faults found.", lines.get(lines.size() - 1));
        lines.subList(0, lines.size() - 1).forEach(line -> assertTrue(line.matches(".+\\.yaml:\\d+:\\d+: .+"), line));
        assertTrue(run.out().contains("tool-shed.yaml:3:9: widthM is \"wide\""), run.out());
        assertTrue(run.out().contains("tool-shed.yaml:4:10: heightM is -1"), run.out());
        assertTrue(run.out().contains("tin-can.yaml:2:"), run.out());
        assertPlain(run.out());
    }

    @Test
    void checkListsEveryFaultOfRulesWithFileAndLine() throws Exception {
        Path rules = folder.resolve("rules/ours.drl");
        Files.createDirectories(rules.getParent());
        Files.writeString(rules, """
                package house;

                import pairwright.rules.Placed;

                rule "HOUSE-001"
                    @title(Half a rule)
                when
                    $p : Placed(distanceM < "near")
                then
                end
                """);
        Run run = Run.of("check", folder.toString());
        assertEquals(1, run.exit(), run.out());
        assertTrue(run.out().lines().anyMatch(line -> line.matches(".*ours\\.drl:\\d+:\\d+: rule \"HOUSE-001\": .+")), run.out());
        assertPlain(run.out());
    }

    @Test
    void aFaultyHouseFolderIsSaidAndTheBuiltInCatalogueAnswers() throws Exception {
        Path room = folder.resolve("catalogue/rooms/tool-shed.yaml");
        Files.createDirectories(room.getParent());
        Files.writeString(room, "id: tool-shed\n");
        Run run = Run.of("ask", "--house", folder.toString(), "snare");
        assertEquals(1, run.exit());
        assertTrue(run.err().contains("tool-shed.yaml:1:1: name is missing"), run.err());
        assertTrue(run.err().contains("answered without what is faulty in the house folder"), run.err());
        assertTrue(run.out().startsWith("Understood: "), run.out());
    }

    private static void assertPlain(String text) {
        assertFalse(text.contains("Exception") || text.contains("\tat ") || text.contains("pairwright.cli") || text.contains("java.lang"), text);
    }
}
