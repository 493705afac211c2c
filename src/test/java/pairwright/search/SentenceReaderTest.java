package pairwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;
import pairwright.model.Meaning;
import pairwright.model.Reading;
import pairwright.model.Vocabulary;

class SentenceReaderTest {

    private static final Catalogue CATALOGUE = new CatalogueStore().builtIn();
    private static final SentenceReader READER = new SentenceReader(CATALOGUE);

    @Test
    void every_reading_of_an_ambiguous_word_is_offered_with_the_one_used_first() {
        assertEquals(List.of("french-horn", "horn-section"), ids(READER.read("horn").otherReadings()));
        assertEquals(List.of("double-bass", "bass-amplifier", "bass-lead"), ids(READER.read("bowed bass").otherReadings()));
    }

    @Test
    void of_two_sources_the_first_is_used_and_both_are_offered() {
        var meaning = READER.read("oboe and clarinet");
        assertEquals("oboe", meaning.question().source());
        assertEquals(List.of("oboe", "clarinet"), ids(meaning.otherReadings()));
    }

    @Test
    void a_source_that_is_said_twice_is_no_other_reading() {
        assertEquals(List.of(), READER.read("oboe, a nice oboe").otherReadings());
        assertEquals("clean-guitar-amplifier", READER.read("a guitar through an amp").question().source());
    }

    @Test
    void what_is_understood_is_told_in_the_words_and_the_order_of_the_sentence() {
        assertEquals(List.of(
                new Reading("Too BRIGHT", "character", "dark", "Dark"),
                new Reading("trumpit", "source", "trumpet", "Trumpet"),
                new Reading("2m from the Drums", "neighbour", "drum-kit", "Drum kit"),
                new Reading("two channels", "limit", "channels", "Channels at most: 2")),
                READER.read("Too BRIGHT trumpit 2m from the Drums, two channels").understood());
    }

    @Test
    void where_no_source_is_understood_the_nearest_ones_are_offered() {
        var meaning = READER.read("vibraslaphone");
        assertEquals(null, meaning.question().source());
        assertTrue(ids(meaning.otherReadings()).contains("vibraphone"), () -> meaning.toString());
    }

    @Test
    void a_room_that_differs_is_offered_but_not_used() {
        var meaning = READER.read("cello in a church or a barn");
        assertEquals("church", meaning.question().room());
        assertEquals(List.of("barn"), ids(meaning.otherReadings()));
    }

    @Test
    void nearest_entries_are_found_from_unfinished_and_misspelt_words_of_any_kind() {
        assertEquals("snare-drum", READER.nearest("sna", 3).get(0).id());
        assertEquals("whispered-voice", READER.nearest("whispred voice", 3).get(0).id());
        assertEquals(new Reading("stairw", "room", "stairwell", "Stairwell"), READER.nearest("stairw", 1).get(0));
        assertEquals("intimate", READER.nearest("intim", 3).get(0).id());
        assertEquals(List.of(), READER.nearest("", 5));
        assertEquals(List.of(), READER.nearest("qqqqqqq", 5));
        assertEquals(List.of(), READER.nearest("snare", 0));
    }

    @Property(tries = 150)
    void no_text_is_too_odd(@ForAll @StringLength(max = 400) String text) {
        assertIsWhole(text, READER.read(text));
        READER.nearest(text, 5);
    }

    @Property(tries = 150)
    void no_order_of_known_words_is_too_odd(@ForAll List<Integer> choices) {
        var words = List.of("drums", "next to", "behind", "no", "only", "two", "mics", "3", "m", "away", "guitar", "and", ",",
                "too", "bright", "ribbons",
                "condensers", "very", "soft", "loud", "sings and plays", "bowed", "bass", "church", "barn", "phantom",
                        "without", "dB of gain", "from the", "xyz");
        var text = String.join(" ", choices.stream().limit(40).map(choice -> words.get(Math.floorMod(choice, words.size())))
                .toList());
        assertIsWhole(text, READER.read(text));
    }

    @Property(tries = 100)
    void a_word_nobody_knows_is_listed_wherever_it_stands(@ForAll @IntRange(max = 12) int place,
            @ForAll @Chars({'q', 'x', 'z', 'w'}) @StringLength(min = 4, max = 9) String unknown) {
        var words = new ArrayList<>(List.of("brushed snare next to a loud bass amp , no condensers , 3 m from the piano in a church".split(" ")));
        words.add(place, unknown);
        var text = String.join(" ", words);
        assertTrue(READER.read(text).notUnderstood().stream().anyMatch(said -> said.contains(unknown)), text);
    }

    @Test
    void ten_thousand_characters_are_read_too() {
        for (var part : List.of("guitr ", "untreeted xyzzyk ", "x", "next to the drums and ", "\uD83C\uDFB8", "\uD800", "no ", "1 ", "no phantom ")) {
            var text = part.repeat(10_000 / part.length());
            assertIsWhole(text, READER.read(text));
        }
    }

    @Test
    void many_threads_read_the_same() {
        var sentence = "nylon guitr fingerpicked very soft next to the drums, cheap preamp, xyzzy";
        var once = READER.read(sentence);
        assertTrue(IntStream.range(0, 500).parallel().mapToObj(any -> READER.read(sentence)).allMatch(once::equals));
    }

    @Test
    void a_catalogue_without_any_words_understands_nothing_and_says_so() {
        var empty = new SentenceReader(new Catalogue(Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), Map.of(),
                new Vocabulary(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of()), ""));
        assertEquals(List.of("brushed", "snare"), empty.read("brushed snare").notUnderstood());
    }

    /** Ids lead into the catalogue, ways are known to the source, and every word is quoted as it stands. */
    private static void assertIsWhole(String text, Meaning meaning) {
        var question = meaning.question();
        assertEquals(text, question.words());
        assertTrue(question.source() == null || CATALOGUE.sources().containsKey(question.source()));
        assertTrue(question.ways().stream().allMatch(way -> CATALOGUE.sources().get(question.source()).ways().stream()
                .anyMatch(known -> known.id().equals(way))));
        assertTrue(question.neighbours().stream().allMatch(neighbour -> CATALOGUE.sources().containsKey(neighbour.source())
                && neighbour.distanceM() >= 0));
        assertTrue(meaning.notUnderstood().stream().allMatch(text::contains));
        assertTrue(meaning.understood().stream().allMatch(reading -> text.contains(reading.words())));
        for (var ask : meaning.ask()) {
            assertTrue(text.contains(ask.words()), ask::toString);
            assertFalse(ask.choices().isEmpty(), ask::toString);
            ask.choices().forEach(choice -> assertTrue(ask.says().contains('"' + choice.say() + '"')
                    || choice.id().equals(question.source()) || choice.as().equals("neighbour") || choice.as().equals("room"), ask::toString));
        }
    }

    private static List<String> ids(List<Reading> readings) {
        return readings.stream().map(Reading::id).toList();
    }
}
