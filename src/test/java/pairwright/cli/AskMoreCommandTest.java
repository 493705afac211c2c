package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class AskMoreCommandTest {
    @Test
    void whyNotIsToldInATableThatAddsUp() {
        Run run = Run.of("ask", "trumpet", "--why-not", "handheld-moving-coil");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().startsWith("Why not the handheld moving coil, cardioid?"), run.out());
        assertTrue(run.out().contains("in all; the first answer is"), run.out());
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    }

    @Test
    void whatIsHeardIsAnsweredWithMoves() {
        Run run = Run.of("ask", "singing voice in a small room", "--heard", "boomy");
        assertEquals(0, run.exit(), run.err());
        assertTrue(run.out().contains("less at 100 Hz"), run.out());
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
        assertEquals(0, Run.of("ask", "kick drum", "--heard", "hollow", "--option", "2").exit());
    }

    @Test
    void jsonIsThatOfTheHttpInterface() throws Exception {
        assertEquals("ruled-out", new ObjectMapper().readTree(Run.of("ask", "snare", "--why-not", "long-ribbon", "--position", "over-rim",
                "--pattern", "figure-8", "--json").out()).path("standing").asText());
        assertEquals("boomy", new ObjectMapper().readTree(Run.of("ask", "cello", "--heard", "muddy", "--json").out()).path("heard").asText());
    }

    @Test
    void whatCannotBeAskedIsSaidAndEndsWith2() {
        assertRefused("there is no mic type", "ask", "snare", "--why-not", "long-ribon");
        assertRefused("There is no pattern", "ask", "snare", "--why-not", "long-ribbon", "--pattern", "round");
        assertRefused("nothing is known of", "ask", "snare", "--heard", "fantastic");
        assertRefused("There is no option 9", "ask", "snare", "--heard", "thin", "--option", "9");
        assertRefused("two questions", "ask", "snare", "--heard", "thin", "--why-not", "long-ribbon");
        assertRefused("go with --why-not", "ask", "snare", "--pattern", "omni");
        assertRefused("no source was understood", "ask", "qwzx", "--heard", "thin");
    }

    private static void assertRefused(String says, String... arguments) {
        Run run = Run.of(arguments);
        assertEquals(2, run.exit(), run.out());
        assertTrue(run.err().contains(says), run.err());
    }
}
