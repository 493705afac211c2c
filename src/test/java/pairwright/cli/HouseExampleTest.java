package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The house folder people are told to copy. */
class HouseExampleTest {
    private static final String EXAMPLE = "docs/house-example";

    private static JsonNode ask(String words) throws Exception {
        Run run = Run.of("ask", "--json", "--house", EXAMPLE, words);
        assertEquals(0, run.exit(), run.err());
        assertEquals("", run.err());
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void itHasNoFault() {
        Run run = Run.of("check", EXAMPLE);
        assertEquals("No fault found." + System.lineSeparator(), run.out());
        assertEquals(0, run.exit());
    }

    @Test
    void itsSourceCharacterMicTypeWordsAndRulesAllSpeak() throws Exception {
        JsonNode answer = ask("feed bucket in the barn, dusty");
        assertEquals("feed-bucket", answer.at("/question/meant/source").asText(), answer.path("question").toString());
        assertTrue(answer.at("/question/meant/character").toString().contains("dusty"), answer.path("question").toString());
        assertEquals(0, answer.at("/question/notUnderstood").size(), answer.path("question").toString());
        assertTrue(answer.path("options").toString().contains("\"micType\":\"barn-ribbon\""), answer.path("options").toString());
        JsonNode ribbon = null;
        for (JsonNode option : answer.path("options")) {
            ribbon = ribbon == null && option.path("mics").toString().contains("barn-ribbon") ? option : ribbon;
        }
        assertTrue(ribbon.path("cautions").toString().contains("HOUSE-002"), ribbon.path("cautions").toString());
        assertEquals("upright-piano", ask("the old lady").at("/question/meant/source").asText());
        assertEquals("drum-kit", ask("drummer in the corner kit").at("/question/meant/source").asText());
    }

    @Test
    void itsFirstRuleMovesAScore() throws Exception {
        JsonNode answer = ask("audience in the barn");
        assertTrue(answer.path("options").toString().contains("\"rule\":\"HOUSE-001\""), answer.path("options").toString());
    }

    @Test
    void thePageAndTheReadmeNameIt() throws Exception {
        for (String page : new String[] {"docs/house.md", "README.md", "DEVELOPERS.md"}) {
            assertTrue(Files.readString(Path.of(page)).contains(EXAMPLE), page);
        }
    }
}
