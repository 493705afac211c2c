package pairwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Ask;
import pairwright.model.Catalogue;

/** Questions back. */
class AskBackTest {

    private static final Catalogue CATALOGUE = new CatalogueStore().builtIn();
    private static final SentenceReader READER = new SentenceReader(CATALOGUE);

    @Test
    void an_ambiguous_word_is_answered_in_its_usual_reading_and_asked_back_with_what_to_say() {
        var meaning = READER.read("bass");
        assertEquals("bass-amplifier", meaning.question().source());
        assertEquals(List.of("\"bass\": it may be an electric bass by its amplifier or by its lead, or a double bass. Answered for bass "
                + "amplifier; for another say \"bass by its lead\" or \"double bass\"."), says(meaning.ask()));
        assertEquals(List.of("bass-amplifier", "bass-lead", "double-bass"), ids(meaning.ask().get(0)));
    }

    @Test
    void a_way_of_playing_decides_and_nothing_is_asked() {
        var meaning = READER.read("bowed bass");
        assertEquals("double-bass", meaning.question().source());
        assertEquals(List.of(), meaning.ask());
    }

    @Test
    void a_clue_decides_what_is_answered_and_is_told_in_the_question() {
        var meaning = READER.read("bass, rockabilly");
        assertEquals("double-bass", meaning.question().source());
        assertTrue(says(meaning.ask()).get(0).contains("Answered for double bass because of \"rockabilly\""), () -> meaning.toString());
        assertEquals(List.of(), meaning.notUnderstood());
    }

    @Test
    void a_clue_that_is_denied_decides_nothing() {
        assertEquals("bass-amplifier", READER.read("bass, no DI").question().source());
    }

    @Test
    void where_readings_are_far_apart_and_nothing_decides_none_is_answered() {
        for (var word : List.of("pipes", "organ", "upright", "percussion", "bells")) {
            var meaning = READER.read(word + " in a small room");
            assertNull(meaning.question().source(), word);
            assertEquals(1, meaning.ask().size(), word);
            assertTrue(says(meaning.ask()).get(0).contains("not answered yet"), word);
            assertEquals(List.of(), meaning.notUnderstood(), word);
        }
        assertEquals("pipe-organ", READER.read("organ in a church").question().source());
        assertEquals("bagpipes", READER.read("highland pipes").question().source());
    }

    @Test
    void the_very_name_of_a_source_is_not_asked_back_but_a_foreign_word_like_it_is() {
        assertEquals(List.of(), READER.read("flute").ask());
        assertEquals(List.of("flute", "recorder"), ids(READER.read("fl\u00fbte").ask().get(0)));
    }

    @Test
    void every_ambiguous_word_is_answered_and_asked_back_or_only_asked_back() {
        var silent = new ArrayList<String>();
        for (var ambiguity : CATALOGUE.words().ambiguities()) {
            for (var word : ambiguity.words()) {
                var meaning = READER.read(word);
                var ask = meaning.ask().stream().filter(one -> one.choices().size() > 1).findFirst();
                if (ask.isEmpty() || meaning.question().source() != null && !ids(ask.get()).contains(meaning.question().source())) {
                    silent.add(word);
                }
            }
        }
        // the very name of a source is meant as it is
        silent.removeAll(List.of("timbales", "viola"));
        assertEquals(List.of(), silent);
    }

    @Test
    void what_to_say_for_a_choice_means_that_choice_and_nothing_else() {
        var wrong = new ArrayList<String>();
        for (var source : CATALOGUE.sources().values()) {
            var meaning = READER.read(source.name());
            if (!source.id().equals(meaning.question().source()) || !meaning.ask().isEmpty()) {
                wrong.add(source.name() + " " + meaning.question().source() + " " + says(meaning.ask()));
            }
        }
        for (var room : CATALOGUE.rooms().values()) {
            if (!room.id().equals(READER.read(room.name()).question().room())) {
                wrong.add(room.name());
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void of_several_sources_the_first_is_answered_and_how_to_ask_for_the_others_is_said() {
        var meaning = READER.read("drums and bass and piano");
        assertEquals("drum-kit", meaning.question().source());
        assertEquals(List.of("Answered for drum kit. \"bass\" and \"piano\" were understood as sources too: ask for each on its own, "
                + "\"bass amplifier\" or \"grand piano\", or say \"next to\" before those that play in the same room."), says(meaning.ask()));
        assertEquals(List.of(), meaning.notUnderstood());
    }

    @Test
    void a_source_that_plays_meanwhile_is_a_neighbour_and_nothing_is_asked() {
        var meaning = READER.read("trumpet while the drums play");
        assertEquals("drum-kit", meaning.question().neighbours().get(0).source());
        assertEquals(List.of(), meaning.ask());
    }

    @Test
    void an_ambiguous_neighbour_is_asked_back_too() {
        var meaning = READER.read("cello next to a guitar");
        assertEquals(List.of("neighbour", "neighbour", "neighbour", "neighbour"),
                meaning.ask().get(0).choices().stream().map(Ask.Choice::as).toList());
    }

    @Test
    void of_two_rooms_the_first_is_answered_and_the_other_asked_back() {
        assertEquals(List.of("Answered for one room, church. For \"barn\" ask again with that room alone."),
                says(READER.read("cello in a church or a barn").ask()));
    }

    @Test
    void an_unknown_word_that_is_nearly_known_is_asked_back() {
        assertEquals(List.of("\"untreeted\" is not known here. Do you mean \"untreated room\"?"), says(READER.read("cello, untreeted").ask()));
        assertEquals("small-room", READER.read("cello, untreated room").question().room());
    }

    @Test
    void what_is_clear_is_not_asked() {
        for (var clear : List.of("", "cello", "brushed snare in a small room, no condensers", "xyzzyq", "double bass, jazz, warm")) {
            assertEquals(List.of(), READER.read(clear).ask(), clear);
        }
    }

    private static List<String> says(List<Ask> asks) {
        return asks.stream().map(Ask::says).toList();
    }

    private static List<String> ids(Ask ask) {
        return ask.choices().stream().map(Ask.Choice::id).toList();
    }
}
