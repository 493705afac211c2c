package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.listen.Sounds;

/** What recordings show, on a terminal. */
class ListenCommandTest {
    private static final int FRAMES = 1 << 18;

    @TempDir
    Path folder;
    private String near;
    private String far;
    private String stereo;

    @BeforeEach
    void record() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        double[] later = Sounds.filtered(sound, 96, hz -> -0.5);
        near = Sounds.wav(folder.resolve("near.wav"), 24, Sounds.RATE_HZ, sound).toString();
        far = Sounds.wav(folder.resolve("far.wav"), 24, Sounds.RATE_HZ, later).toString();
        stereo = Sounds.wav(folder.resolve("stereo.wav"), 24, Sounds.RATE_HZ, sound, later).toString();
    }

    private static void refused(String says, String... arguments) {
        Run run = Run.of(arguments);
        assertEquals(2, run.exit(), run.err());
        assertTrue(run.err().contains(says), run.err());
        assertEquals("", run.out());
    }

    @Test
    void oneRecordingIsMeasuredAndHeldAgainstItsKind() {
        Run run = Run.of("listen", near, "--source", "violin", "--level", "90", "--at", "2", "--weighting", "z");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().startsWith("near.wav: 5.5 s, mono, 24 bits, 48 kHz\n"), run.out());
        assertTrue(run.out().contains("    typicalDbSpl: 96\n"), run.out());
        assertTrue(run.out().contains("    toneDb: ["), run.out());
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    }

    @Test
    void whatIsPrintedForProgramsIsTakenByAQuestion() throws IOException {
        Path heard = Files.writeString(folder.resolve("heard.json"), Run.of("listen", near, "--source", "violin", "--level", "90", "--at", "2", "--weighting", "z", "--json").out());
        Run asked = Run.of("ask", "violin", "warm", "--draws", "0", "--played", heard.toString());
        assertEquals(0, asked.exit(), asked.err());
        assertTrue(asked.out().contains("Heard: It plays at "), asked.out());
        assertTrue(asked.out().contains("Changed: "), asked.out());
        assertFalse(Run.of("ask", "violin", "warm", "--draws", "0").out().contains("Heard: "));
        for (String text : List.of("no JSON", "[1, 2]", "{\"traits\": null}", "{\"traits\": {\"source\": \"violin\", \"toneDb\": [1, 2]}}", "{\"traits\": {\"source\": \"violin\", \"lowestHz\": 0}}")) {
            Files.writeString(heard, text);
            Run refused = Run.of("ask", "violin", "--played", heard.toString());
            assertEquals(2, refused.exit(), text + refused.out());
            assertTrue(refused.err().startsWith("pairwright: "), refused.err());
        }
        assertEquals(2, Run.of("ask", "violin", "--played", folder.resolve("none.json").toString()).exit());
    }

    @Test
    void bleedIsHeldAgainstWhatAPlanReckonsWith() {
        Run run = Run.of("listen", "--bleed", near, far, "--expected", "20, 20, 20, 20, 20, 20, 20, 20, 20");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().replaceAll("\\s+", " ").contains("The neighbour is louder than reckoned at 63 Hz to 16 kHz"), run.out());
        assertTrue(Run.of("listen", "--bleed", near, far, "--expected", "6 6 6 6 6 6 6 6 6").out().contains("That is as reckoned"));
        refused("--expected must be nine numbers", "listen", "--bleed", near, far, "--expected", "20, 20");
        refused("--expected must be nine numbers", "listen", "--bleed", near, far, "--expected", "a b c d e f g h i");
        refused("--expected goes with --bleed", "listen", near, far, "--expected", "1 2 3 4 5 6 7 8 9");
    }

    @Test
    void twoTracksAreHeldAgainstEachOther() {
        Run run = Run.of("listen", near, far);
        assertTrue(run.out().contains("far.wav is the other way up"), run.out());
        assertTrue(run.out().contains("far.wav hears it 2 ms later than near.wav: 96 samples, 69 cm of air"), run.out());
        assertTrue(Run.of("listen", "--pair", stereo).out().contains("stereo.wav, right is the other way up"));
    }

    @Test
    void ofAnOctaveInWhichNothingSoundsNoFigureIsTold() throws IOException {
        double[] low = Sounds.filtered(Sounds.noise(1 << 17, 1), 0, hz -> hz < 900 ? 1 : 0);
        double[] other = Sounds.plus(Sounds.times(low, 0.5), Sounds.filtered(Sounds.noise(1 << 17, 2), 0, hz -> hz < 900 ? 0.1 : 0));
        String out = Run.of("listen", Sounds.wav(folder.resolve("low.wav"), 24, Sounds.RATE_HZ, low).toString(), Sounds.wav(folder.resolve("lower.wav"), 24, Sounds.RATE_HZ, other).toString()).out();
        assertTrue(out.lines().anyMatch(line -> line.strip().matches("8 kHz( +\u2013){6}")), out);
        assertTrue(out.lines().anyMatch(line -> line.strip().matches("500 Hz +.*[0-9] %.*")), out);
    }

    @Test
    void programsGetTheSameAsTheInterfaceGives() throws IOException {
        JsonNode pair = new ObjectMapper().readTree(Run.of("listen", near, far, "--json").out()).at("/pairs/0");
        assertEquals(96, pair.at("/pair/laterFrames").asDouble(), 0.01);
        assertTrue(pair.at("/pair/inverted").asBoolean());
        assertTrue(pair.at("/says").size() > 2);
    }

    @Test
    void aChangeAndBleedAreToldOfTwoRecordings() {
        assertTrue(Run.of("listen", "--change", near, far).out().contains("far.wav was 6 dB softer"));
        assertTrue(Run.of("listen", "--bleed", near, far).out().startsWith("The neighbour is 6 dB under its own source"));
    }

    @Test
    void whatCannotBeMeasuredIsSaidWithItsNameAndWhatToDo() throws IOException {
        String letter = Files.writeString(folder.resolve("letter.wav"), "dear aunt, the barn is cold this year").toString();
        refused("letter.wav: It is no WAV or AIFF file", "listen", letter);
        refused("nowhere.wav: It cannot be read", "listen", "nowhere.wav");
        refused("there is no source voilin. Did you mean violin?", "listen", near, "--source", "voilin");
        refused("--level is 300.0", "listen", near, "--level", "300", "--at", "1");
        refused("--at is -1.0", "listen", near, "--level", "80", "--at", "-1");
        refused("--change takes two recordings, but there is 1", "listen", "--change", near);
        refused("--pair takes one stereo recording, but there are 2", "listen", "--pair", near, far);
        refused("--pair takes a stereo recording, but near.wav has one channel", "listen", "--pair", near);
        refused("stereo.wav is stereo", "listen", near, stereo);
        refused("--at is of a meter, but there is no --level", "listen", near, "--at", "2");
        refused("--weighting is of a meter", "listen", near, "--weighting", "Z");
        refused("--source is for one recording", "listen", near, far, "--source", "violin");
        refused("--level is for one recording", "listen", "--pair", stereo, "--level", "80");
        refused("At most 6 tracks", "listen", near, far, near, far, near, far, near);
    }
}
