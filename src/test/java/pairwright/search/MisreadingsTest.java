package pairwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Meaning;
import pairwright.model.Reading;

/** Words that look like something else: what is not meant is not answered, and what is not used is told. */
class MisreadingsTest {
    private static final SentenceReader READER = new SentenceReader(new CatalogueStore().builtIn());

    @ParameterizedTest
    @CsvSource({"snair drum, snare-drum", "snear drum, snare-drum", "brushed snair drum in a small room, snare-drum", "bass drumm, kick-drum",
            "xyzzy drum, drum-kit", "kittens drum, drum-kit"})
    void aMisspeltWordIsTriedTogetherWithTheBareOneBesideItFirst(String words, String source) {
        assertEquals(source, READER.read(words).question().source());
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 ft", "5ft", "5-ft", "3 feet", "1,5 m", "1.5 m", "50 cm", "50cm", "200 mm", "10 inches", "10 inch", "10 in", "5'", "10\"", "five feet"})
    void aLengthIsNeverReadAsAnythingElseAndToldWhole(String length) {
        for (String words : List.of("trumpet " + length, "trumpet at " + length + ", dark", length + ", trumpet")) {
            Meaning meaning = READER.read(words);
            assertEquals("trumpet", meaning.question().source(), words);
            assertEquals(List.of(length), meaning.notUnderstood(), words);
            assertEquals(List.of(), meaning.otherReadings(), words);
            assertEquals(List.of(), meaning.ask(), words);
        }
    }

    @ParameterizedTest
    @CsvSource({"tenor sax next to drums 5 ft, 1.524", "'tenor sax, drums 2 m away', 2", "tenor sax next to the drums 500 mm, 0.5", "'tenor sax, drums 5 ft away', 1.524",
            "tenor sax next to the drums 10', 3.048", "tenor sax 6' from the drums, 1.8288", "tenor sax next to drums 40 in, 1.016"})
    void besideANeighbourALengthIsHowFarItIs(String words, double distanceM) {
        Meaning meaning = READER.read(words);
        assertEquals(1, meaning.question().neighbours().size(), words);
        assertEquals(distanceM, meaning.question().neighbours().get(0).distanceM(), 1e-9, words);
        assertEquals(List.of(), meaning.notUnderstood(), words);
        assertEquals(List.of(), meaning.ask(), words);
    }

    @Test
    void aSmallWordAfterANumberIsALengthOnlyWhereNothingFollowsIt() {
        assertEquals(List.of("2"), READER.read("trumpet take 2 in a church").notUnderstood().stream().filter(said -> said.contains("2")).toList());
        assertEquals(2, READER.read("trumpet, 2 mics in a church").question().limits().mics());
        assertEquals("floor-tom", READER.read("FT").question().source());
    }

    @Test
    void quotedWordsAreNoInches() {
        assertEquals(List.of("5"), READER.read("\"trumpet take 5\"").notUnderstood());
    }

    @ParameterizedTest
    @ValueSource(strings = {"dog", "baby crying", "gun", "<script>alert(1)</script>", "1", "cat", "car", "5 ft", "horse racing"})
    void whereNothingComesNearNothingIsOffered(String words) {
        Meaning meaning = READER.read(words);
        assertEquals(null, meaning.question().source());
        assertEquals(List.of(), meaning.otherReadings());
        assertEquals(List.of(), meaning.ask());
    }

    @ParameterizedTest
    @CsvSource({"violn, violin", "vibraslaphone, vibraphone", "bagpype, bagpipes", "acordeon, accordion"})
    void aCloseMatchIsReadOrOffered(String words, String source) {
        Meaning meaning = READER.read(words);
        assertTrue(source.equals(meaning.question().source()) || meaning.otherReadings().stream().map(Reading::id).anyMatch(source::equals), meaning.toString());
    }

    @ParameterizedTest
    @CsvSource({"kick drum inside only, inside only", "'kick drum, only inside', only inside", "kick drum inside, inside", "kick drum in, in", "kick drum out, out", "kick in, in", "kick out, out",
            "'kick out, one mic', out", "'kik out, one mic only, funk', out"})
    void aPlaceThatCannotBeAskedForIsTold(String words, String told) {
        Meaning meaning = READER.read(words);
        assertEquals("kick-drum", meaning.question().source());
        assertEquals(List.of(told), meaning.notUnderstood());
    }

    @ParameterizedTest
    @ValueSource(strings = {"kick in and out", "kick in & out", "kick in a small room", "kick drum, only dynamics", "kick drum only"})
    void whatIsUnderstoodIsNotTold(String words) {
        assertEquals(List.of(), READER.read(words).notUnderstood());
    }
}
