package pairwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CutsTest {
    @Test
    void whatWasCutWhenTheProgramWasBuiltIsCutAsASentenceIs() {
        Map<String, List<Token>> shipped = Cuts.shipped();
        assertTrue(shipped.containsKey("double bass"), "there are " + shipped.size());
        shipped.forEach((phrase, tokens) -> assertEquals(Text.tokens(phrase), tokens, phrase));
    }

    @Test
    void whatIsWrittenIsReadAgain() throws IOException {
        Map<String, List<Token>> cuts = Map.of("Bögen, 3m", Text.tokens("Bögen, 3m"), "", List.of(), "snare", Text.tokens("snare"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Cuts.write(cuts, out);
        assertEquals(cuts, Cuts.read(out.toByteArray()));
    }
}
