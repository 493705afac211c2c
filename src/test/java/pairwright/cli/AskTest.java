package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.advice.KnowledgeStore;
import pairwright.http.Server;

/** An answer as text and as JSON. */
class AskTest {
    private static final Pattern OPTION = Pattern.compile("(?m)^(\\d)  .*score (-?\\d+\\.\\d\\d)$");
    private static final Pattern POINTS = Pattern.compile("(?m)^   ( *[+-]\\d+\\.\\d\\d)  ");
    private static final ObjectMapper JSON = new ObjectMapper();

    @ParameterizedTest
    @ValueSource(strings = {"brushed snare, quiet jazz trio, small room", "contrabass next to the drums, warm", "grand piano, stereo, church", "trumpet, dark, only ribbons",
            "fingerpicked nylon guitar in a small untreated room, no phantom", "kick drum", "drum kit with two mics", "choir in a concert hall", "screamed vocals",
            "bass guitar DI", "driven guitar amp, gritty", "accordion, stereo", "hurdy gurdy", "harmonica", "didgeridoo outside", "bagpipes on stage", "pipe organ", "string quartet, natural",
            "tenor sax, intimate", "flute, airy, 45 dB preamp", "djembe, punchy", "tubular bells", "timpani, large live room", "rotary speaker", "voice and guitar, one performer",
            "theatre audience", "violn", "qwzx blorp", "bass", "tambourine in a stairwell, roomy, only condensers", "snare, only boundary mics, no phantom", "steel string guitar, mono, kids nearby"})
    void everyLineOfAnAnswerFitsEightyColumnsAndHasNoControlCharacters(String words) {
        Run run = Run.of("ask", words);
        assertEquals(0, run.exit(), run.err());
        assertEquals("", run.err());
        run.out().lines().forEach(line -> assertTrue(line.length() <= 80, line.length() + " columns: " + line));
        assertFalse(run.out().replace("\n", "").chars().anyMatch(java.lang.Character::isISOControl), run.out());
        assertFalse(Pattern.compile("\\bnull (dB|Hz|ms|degrees|cm)|NaN|Infinity").matcher(run.out()).find(), run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"brushed snare, quiet jazz trio, small room", "grand piano, stereo, church", "contrabass next to the drums, warm", "bass guitar DI"})
    void thePointsUnderAnOptionAddUpToItsScore(String words) {
        String[] blocks = Run.of("ask", words).out().split("(?m)^(?=\\d  )|^Ruled out$");
        int options = 0;
        for (String block : blocks) {
            Matcher head = OPTION.matcher(block);
            if (head.find()) {
                options++;
                double sum = 0;
                for (Matcher points = POINTS.matcher(block); points.find();) {
                    sum += Double.parseDouble(points.group(1).strip());
                }
                assertEquals(Double.parseDouble(head.group(2)), sum, 0.0001, block);
            }
        }
        assertTrue(options > 1, options + " options");
    }

    @Test
    void wordsThatWouldCommandATerminalOrRunOverALineAreTamed() {
        Run run = Run.of("ask", "\u001b[31mqwzx\u0007\u009b2J\u202e " + "blorp".repeat(50) + " \ud83e\udd41\ud83e\udd41");
        assertEquals(0, run.exit());
        run.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
        assertFalse(run.out().replace("\n", "").chars().anyMatch(c -> java.lang.Character.isISOControl(c) || c == 0x202e), run.out());
    }

    @Test
    void dangerComesBeforeAnythingElseAndSaysSoInAWord() {
        String out = Run.of("ask", "orchestra, concert hall").out() + Run.of("ask", "brushed snare").out();
        assertTrue(out.contains("!! DANGER: "), out);
        for (String block : out.split("(?m)^(?=\\d  )")) {
            if (block.contains("DANGER")) {
                assertTrue(block.lines().skip(1).dropWhile(line -> line.startsWith("   ") && !line.startsWith("   !")).findFirst().orElse("").startsWith("   !! DANGER"), block);
            }
        }
    }

    @Test
    void asJsonItIsWhatHttpAnswersToTheSameWords() throws Exception {
        try (Server server = Server.start(KnowledgeStore.builtIn(), "127.0.0.1", 0)) {
            for (String words : List.of("contrabass next to the drums, warm", "only ribbons", "snare, only boundary mics, no phantom")) {
                Run run = Run.of("ask", "--json", words);
                assertEquals(0, run.exit());
                String http = HttpClient.newHttpClient().send(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + "/api/ask"))
                        .header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(JSON.writeValueAsString(JSON.createObjectNode().put("words", words))))
                        .build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8)).body();
                assertEquals(JSON.readTree(http), JSON.readTree(run.out()));
            }
        }
    }

    @Test
    void theSideOfAMidSidePairIsNeverSaidToBeAimedAtTheSource() {
        String option = option("voice and guitar, one performer, stereo", "Mid and side");
        assertTrue(option.contains("across it: marked face to the left, null to the source"), option);
        assertTrue(option.contains("Capsules in one point. Expect"), option);
        assertEquals(1, Pattern.compile("aimed at it|marked side forward").matcher(option).results().count(), option);
    }

    @Test
    void aStereoPairSaysHowFarApartAndHowItIsTurned() {
        String option = option("drum kit, stereo", "Near-coincident pair");
        assertTrue(option.contains("Capsules 17 cm apart, turned 110 degrees apart. Expect"), option);
        assertEquals(2, Pattern.compile(", cardioid,").matcher(option).results().count(), "the pattern once for each: " + option);
    }

    @Test
    void aSourceThatIsQuieterThanItsNeighboursIsSaidToBeUnderThem() {
        String out = oneLine(Run.of("ask", "quiet accordion near the brass section").out());
        assertTrue(Pattern.compile("Hears the horn section \\d+ dB louder than its own source").matcher(out).find(), out);
        assertFalse(Pattern.compile("-\\d+ dB (under|louder)").matcher(out).find(), out);
    }

    @Test
    void anAbbreviationKeepsItsCapitals() {
        assertTrue(Run.of("ask", "theremin").out().contains("and passive DI"));
    }

    private static String option(String words, String title) {
        for (String block : Run.of("ask", "--options", "6", words).out().split("(?m)^(?=\\d  )|^Ruled out$")) {
            if (block.contains("  " + title + ":")) {
                return oneLine(block);
            }
        }
        throw new AssertionError("no " + title + " for " + words);
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void asManyOptionsAreGivenAsWereAskedFor() {
        for (int wanted : new int[] {1, 5}) {
            assertEquals(wanted, OPTION.matcher(Run.of("ask", "--options", Integer.toString(wanted), "grand piano").out()).results().count());
        }
    }

    @Test
    void wordsNeedNoQuotes() {
        assertEquals(Run.of("ask", "brushed snare, small room").out(), Run.of("ask", "brushed", "snare,", "small", "room").out());
    }

    @Test
    void whereItIsNoTerminalThereIsNoColour(@TempDir Path folder) throws Exception {
        try (Program program = Program.start(folder, "ask", "brushed", "snare")) {
            String out = program.rest();
            assertEquals(0, program.exit());
            assertEquals(Run.of("ask", "brushed snare").out(), out, "nothing but the text");
            assertEquals("", program.err());
        }
    }
}
