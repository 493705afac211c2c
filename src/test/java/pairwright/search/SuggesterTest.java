package pairwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;
import pairwright.model.Source;
import pairwright.model.Suggestion;

class SuggesterTest {
    private static final Catalogue CATALOGUE = new CatalogueStore().builtIn();
    private static final SentenceReader READER = new SentenceReader(CATALOGUE);
    private static final Suggester SUGGESTER = new Suggester(CATALOGUE, READER);

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "brushed sn | brushed snare drum | source | snare-drum",
            "tenor sax, da | tenor sax, dark | character | dark",
            "cello in a small un | cello in a small untreated room | room | small-room",
            "no ph | no phantom power | limit | no-phantom",
            "cello, no ph | cello, no phantom power | limit | no-phantom",
            "cello, no cond | cello, no condensers | limit | without-condensers",
            "trumpet, only rib | trumpet, only ribbons | limit | only-ribbons",
            "cello, two ch | cello, two channels | limit | channels",
            "cello next to the dr | cello next to the drum kit | neighbour | drum-kit",
            "trumpet, dru | trumpet, next to the drum kit | neighbour | drum-kit",
            "trumpet, nex | trumpet, next to the drum kit | neighbour | drum-kit",
            "trumpet too br | trumpet too bright | character | dark",
            "drum kit, in st | drum kit, in stereo | circumstance | stereo",
            "grand piano, mid a | grand piano, mid and side | technique | mid-side",
            "trumpet, very lou | trumpet, very loud | dynamic | very-loud",
            "snare drum, bru | snare drum, brushed | way | brushed",
            "brus | brushed drum kit | source | drum-kit",
            "Querfl | Querflöte | source | flute",
            "QUERFLO | Querflöte | source | flute",
            "caisse cl | caisse claire | source | snare-drum",
            "kickdr | kick drum | source | kick-drum"})
    void theEndOfASentenceIsCompleted(String words, String sentence, String as, String id) {
        List<Suggestion> found = SUGGESTER.suggest(words);
        assertTrue(found.stream().anyMatch(one -> one.sentence().equals(sentence) && one.as().equals(as) && one.id().equals(id)), words + ": " + found);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"brushed sn | snare-drum", "tenor sax, da | dark", "no ph | no-phantom", "cello next to the dr | drum-kit", "caisse cl | snare-drum",
            "doub | double-bass", "tenor s | tenor-saxophone"})
    void whatFitsThePlaceComesFirst(String words, String id) {
        assertEquals(id, SUGGESTER.suggest(words).get(0).id(), SUGGESTER.suggest(words)::toString);
    }

    @Test
    void oneLetterIsForgivenWhereNothingBeginsSo() {
        assertEquals("tenor-saxophone", SUGGESTER.suggest("tenr sax").get(0).id());
        assertEquals("dark", SUGGESTER.suggest("tenor sax, dakr").get(0).id());
        assertEquals("trombone", SUGGESTER.suggest("tromvo").get(0).id());
        assertEquals("clarinet", SUGGESTER.suggest("clarrin").get(0).id());
        assertEquals(List.of(), SUGGESTER.suggest("clzzzz"), "two letters are not");
    }

    @Test
    void anotherWordIsShownWithWhatItStandsFor() {
        Suggestion bass = SUGGESTER.suggest("contrab").get(0);
        assertEquals(new Suggestion("contrabass", "contrabass", "source", "double-bass", "Double bass", "contrabass \u2192 double bass"), bass);
        assertEquals(null, SUGGESTER.suggest("double b").get(0).names(), "a name needs no other");
    }

    @Test
    void aWordForSeveralSourcesOffersEachByItsName() {
        List<String> sentences = SUGGESTER.suggest("sax").stream().map(Suggestion::sentence).toList();
        assertTrue(sentences.containsAll(List.of("alto saxophone", "tenor saxophone", "soprano saxophone", "baritone saxophone")), sentences::toString);
        assertFalse(sentences.contains("sax"), "nobody would know which");
    }

    @Test
    void aSecondSourceIsOnlyOfferedAsANeighbour() {
        for (String words : List.of("cello next to the ", "cello beside the g", "cello, dr", "trumpet, b")) {
            SUGGESTER.suggest(words).forEach(one -> assertFalse(one.as().equals("source"), one.toString()));
        }
        assertTrue(SUGGESTER.suggest("cello next to the ").stream().allMatch(one -> one.as().equals("neighbour")));
    }

    @Test
    void afterACompleteSourceItOffersSomeOfEachKind() {
        for (String words : List.of("snare drum", "snare drum ", "snare drum,", "snare drum, ")) {
            List<Suggestion> found = SUGGESTER.suggest(words);
            assertEquals(List.of("character", "way", "room", "neighbour", "limit"), found.stream().map(Suggestion::as).distinct().toList(), found::toString);
            assertTrue(found.stream().allMatch(one -> one.sentence().startsWith("snare drum, ") || one.sentence().startsWith("snare drum next to the ")), found::toString);
        }
    }

    @Test
    void waysAreThoseOfTheSource() {
        Source snare = CATALOGUE.sources().get("snare-drum");
        SUGGESTER.suggest("snare drum").stream().filter(one -> one.as().equals("way"))
                .forEach(one -> assertTrue(snare.ways().stream().anyMatch(way -> way.id().equals(one.id())), one.toString()));
        assertTrue(SUGGESTER.suggest("trumpet, brush").stream().noneMatch(one -> one.as().equals("way")), "nobody brushes a trumpet");
    }

    @Test
    void whatIsSaidIsNotOfferedAgain() {
        assertTrue(SUGGESTER.suggest("cello in a church, dry").stream().noneMatch(one -> one.as().equals("room") || one.id().equals("dry")));
    }

    @ParameterizedTest
    @ValueSource(strings = {" ", "xyzzy", "?!", "cello xq"})
    void whereNothingFitsNothingIsOffered(String words) {
        assertEquals(List.of(), SUGGESTER.suggest(words));
    }

    @Test
    void everySuggestionForManyWordsOfTheCatalogueIsUnderstoodAsItSays() {
        List<String> typed = wordsBegun();
        assertEquals(List.of(), IntStream.range(0, typed.size()).filter(at -> at % 8 == 0).parallel().mapToObj(at -> misunderstood(typed.get(at))).flatMap(List::stream).toList());
    }

    @Tag("slow")
    @Test
    void everySuggestionForEveryWordOfTheCatalogueIsUnderstoodAsItSays() {
        List<String> typed = wordsBegun();
        assertEquals(List.of(), typed.parallelStream().flatMap(words -> misunderstood(words).stream()).toList());
        assertTrue(typed.size() > 2500, () -> "only " + typed.size());
    }

    /** Every name and word of the catalogue, typed but for its last letters where it belongs. */
    private static List<String> wordsBegun() {
        Set<String> typed = new LinkedHashSet<>();
        CATALOGUE.sources().values().forEach(source -> begun("", source.name(), source.words(), typed));
        CATALOGUE.words().names().forEach(more -> begun("", null, more.words(), typed));
        CATALOGUE.words().ambiguities().forEach(more -> begun("", null, more.words(), typed));
        CATALOGUE.sources().values().forEach(source -> begun("oboe next to the ", source.name(), source.words().subList(0, Math.min(2, source.words().size())), typed));
        CATALOGUE.rooms().values().forEach(room -> begun("cello, ", room.name(), room.words(), typed));
        CATALOGUE.characters().values().forEach(wanted -> begun("cello, ", wanted.name(), wanted.words(), typed));
        CATALOGUE.techniques().values().forEach(technique -> begun("cello, ", technique.name(), technique.words(), typed));
        CATALOGUE.words().dynamics().forEach(dynamic -> begun("cello, ", null, dynamic.words(), typed));
        CATALOGUE.words().limits().forEach(limit -> begun("cello, ", null, limit.words(), typed));
        CATALOGUE.words().circumstances().forEach(one -> begun("cello, ", null, one.words(), typed));
        CATALOGUE.words().families().forEach(family -> begun("cello, no ", null, family.words(), typed));
        CATALOGUE.words().neighbours().forEach(beside -> begun("cello ", null, beside.words(), typed));
        CATALOGUE.words().ways().forEach(way -> begun(withWay(way.id()).name() + ", ", way.name(), way.words(), typed));
        return List.copyOf(typed);
    }

    @Test
    void everyNameIsOfferedWhenItIsTypedButForItsLastLetter() {
        List<String> missed = new ArrayList<>();
        CATALOGUE.sources().values().forEach(source -> missed("", source.name(), source.id(), missed));
        CATALOGUE.rooms().values().forEach(room -> missed("cello, ", room.name(), room.id(), missed));
        CATALOGUE.characters().values().forEach(wanted -> missed("cello, ", wanted.name(), wanted.id(), missed));
        CATALOGUE.techniques().values().forEach(technique -> missed("cello, ", technique.name(), technique.id(), missed));
        CATALOGUE.words().ways().forEach(way -> missed(withWay(way.id()).name() + ", ", way.name(), way.id(), missed));
        assertEquals(List.of(), missed);
    }

    @Property(tries = 100)
    void noTextIsTooOdd(@ForAll @StringLength(max = 320) String text) {
        assertEquals(List.of(), misunderstood(text));
    }

    @Property(tries = 150)
    void noOrderOfKnownWordsIsTooOdd(@ForAll List<@IntRange(max = 30) Integer> choices, @ForAll @IntRange(max = 3) int cut) {
        List<String> words = List.of("drums", "next to", "behind", "no", "only", "two", "mics", "3", "m", "away", "guitar", "and", ",", "too", "bright", "ribbons", "condensers",
                "very", "soft", "loud", "sings and plays", "bowed", "bass", "church", "barn", "phantom", "without", "in a", "sn", "dr", "xyz");
        String text = String.join(" ", choices.stream().limit(12).map(words::get).toList());
        assertEquals(List.of(), misunderstood(text.substring(0, Math.max(0, text.length() - cut))));
    }

    @Test
    void manyThreadsAreTheSameAndSoIsASecondSuggester() {
        List<Suggestion> once = SUGGESTER.suggest("cello in a sm");
        Suggester other = new Suggester(CATALOGUE, READER);
        assertTrue(IntStream.range(0, 64).parallel().mapToObj(any -> other.suggest("cello in a sm")).allMatch(once::equals));
    }

    private static void begun(String before, String name, List<String> words, Set<String> typed) {
        words.forEach(word -> typed.add(before + word.substring(0, word.offsetByCodePoints(word.length(), -1))));
        if (name != null) {
            typed.addAll(List.of(before + name, before + name.substring(0, name.length() - 1), before + name.substring(0, (name.length() + 1) / 2)));
        }
    }

    private static Source withWay(String way) {
        return CATALOGUE.sources().values().stream().filter(source -> source.ways() != null && source.ways().stream().anyMatch(one -> one.id().equals(way))).findFirst().orElseThrow();
    }

    private static void missed(String before, String name, String id, List<String> missed) {
        String words = before + name.substring(0, name.length() - 1);
        if (SUGGESTER.suggest(words).stream().noneMatch(one -> one.id().equals(id))) {
            missed.add(words + " " + SUGGESTER.suggest(words));
        }
    }

    /** What is wrong with the suggestions for a text: each is read as it says, no meaning comes twice, and there are not too many. */
    private static List<String> misunderstood(String words) {
        List<Suggestion> found = SUGGESTER.suggest(words);
        List<String> wrong = new ArrayList<>();
        Set<String> meanings = new HashSet<>();
        for (Suggestion one : found) {
            boolean isUnderstood = READER.read(one.sentence()).understood().stream()
                    .anyMatch(reading -> reading.as().equals(one.as()) && reading.id().equals(one.id()) && one.sentence().endsWith(reading.words()));
            if (!isUnderstood || !one.sentence().endsWith(one.text()) || !meanings.add(one.as() + one.id())) {
                wrong.add(words + ": " + one);
            }
        }
        if (found.size() > Suggester.MOST) {
            wrong.add(words + ": " + found.size());
        }
        return wrong;
    }
}
