package pairwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.catalogue.CatalogueStore;

/** Words that are no words of this trade are not bent until they are. */
class OrdinaryWordsTest {

    private static final SentenceReader READER = new SentenceReader(new CatalogueStore().builtIn());

    @Test
    void ordinary_words_and_sentences_are_read_as_nothing_and_asked_back_as_nothing() throws IOException {
        var lines = Files.readAllLines(Path.of("src/test/resources/search/ordinary.txt"));
        assertTrue(lines.size() > 200, () -> lines.size() + " lines");
        var wrong = new ArrayList<String>();
        for (var line : lines) {
            var meaning = READER.read(line);
            if (!meaning.understood().isEmpty() || !meaning.otherReadings().isEmpty() || !meaning.ask().isEmpty()) {
                wrong.add(line + ": " + meaning.understood() + meaning.otherReadings() + meaning.ask());
            }
        }
        assertEquals(List.of(), wrong);
    }

    /** Invented names, made the way names of products are made. */
    @Test
    void a_name_that_starts_like_an_instrument_is_told_as_not_understood_and_not_corrected() {
        for (var name : List.of("Belkantor", "Sonolux", "Trombex", "Harpsonic", "Celloton", "Vibrax", "Drumatix", "Voxaline", "Marimbex",
                "Guitarion", "Fluteon", "Pianova", "Bassmark", "Cymbalon", "Audimar", "Violonix", "Trumpetech", "Clarinova", "Saxomat",
                "Percutron")) {
            var meaning = READER.read("a " + name + " 47 on the snare");
            assertEquals("snare-drum", meaning.question().source(), name);
            assertEquals(List.of(name, "47"), meaning.notUnderstood());
            assertEquals(List.of(), meaning.ask(), name);
        }
    }

    @Test
    void real_misspellings_are_still_read() {
        for (var pair : List.of("accordian accordion", "xylaphone xylophone", "saxaphone alto-saxophone", "harpsicord harpsichord",
                "glockenspeil glockenspiel", "tamborine tambourine", "dijeridoo didgeridoo", "vibraphon vibraphone", "bandonian concertina",
                "ukelele ukulele", "trumpit trumpet", "violn violin", "flugalhorn flugelhorn", "basoon bassoon", "clarinett clarinet",
                "mandolyn mandolin", "euphonuim euphonium", "timpanni timpani", "harmonicka harmonica", "piccollo piccolo")) {
            var words = pair.split(" ");
            assertEquals(words[1], READER.read(words[0]).question().source(), words[0]);
        }
    }
}
