package pairwright.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;
import pairwright.model.Limits;
import pairwright.model.Meaning;
import pairwright.model.MicFamily;
import pairwright.model.Neighbour;
import pairwright.model.Question;
import pairwright.model.Vocabulary;

/** The tables of sentences beside this test, read with the catalogue that ships. */
class SentencesTest {

    /**
     * Held-out sentences were written before they were first read: 25 of 32 were right in every column then, and that
     * is the figure to tell of sentences nobody has seen. What ten of them should say follows the catalogue's entries and
     * words, which came later. This floor only keeps what has been reached since.
     */
    private static final int HELD_OUT_FLOOR = 32;

    /**
     * The sentences of unseen.csv were written before words and reader were mended for questions back, and first read then: 52 of
     * 60 were right. Three of them are counted after what the catalogue says since: jazz is a medium level, and who stands "on her left"
     * stands as far off as who
     * stands "away", and hands round the mic cup it. This floor keeps what has been reached.
     */
    private static final int UNSEEN_FLOOR = 58;

    private static final Catalogue CATALOGUE = new CatalogueStore().builtIn();
    private static final SentenceReader READER = new SentenceReader(CATALOGUE);
    private static final List<Vocabulary.FamilyWords> FAMILIES = CATALOGUE.words().families();

    @TestFactory
    List<DynamicTest> every_sentence_of_the_table_is_read_as_it_says() {
        return rows("sentences.csv").stream()
                .map(row -> DynamicTest.dynamicTest('"' + sentence(row) + '"', () -> assertEquals(expected(row), found(row))))
                .toList();
    }

    @Test
    void most_held_out_sentences_are_read_right_in_every_column() {
        var rows = rows("held-out.csv");
        var wrong = new ArrayList<String>();
        int sources = 0;
        for (var row : rows) {
            var found = found(row);
            if (!found.equals(expected(row))) {
                wrong.add(sentence(row) + "\n   wanted " + expected(row) + "\n   found  " + found);
            }
            sources += found.split("; ", -1)[0].equals("source " + row.get(1)) ? 1 : 0;
        }
        int right = rows.size() - wrong.size();
        System.out.printf("Held-out sentences: %d of %d right in every column, %d with the right source.%n%s%n",
                right, rows.size(), sources, String.join("\n", wrong));
        assertTrue(right >= HELD_OUT_FLOOR, () -> String.join("\n", wrong));
    }

    @Test
    void most_unseen_sentences_are_read_right_in_every_column() {
        var rows = rows("unseen.csv");
        var wrong = rows.stream().filter(row -> !unseen(row).equals(row.subList(1, row.size()))).map(row -> row + "\n   found " + unseen(row))
                .toList();
        int right = rows.size() - wrong.size();
        System.out.printf("Unseen sentences: %d of %d right in every column.%n%s%n", right, rows.size(), String.join("\n", wrong));
        assertTrue(right >= UNSEEN_FLOOR, () -> String.join("\n", wrong));
    }

    /** Sources, ways, dynamics, room, characters, limits, neighbours, circumstances and techniques, as the columns have them. */
    private static List<String> unseen(List<String> row) {
        var question = READER.read(row.get(0)).question();
        return List.of(question.source() == null ? "" : question.source(), String.join("|", question.ways()),
                String.join("|", question.dynamics()), question.room() == null ? "" : question.room(),
                String.join("|", question.character()), sorted(limits(question)).equals(sorted(row.get(6))) ? row.get(6)
                        : limits(question),
                question.neighbours().stream().map(SentencesTest::neighbour).collect(Collectors.joining("|")),
                String.join("|", question.circumstances()), String.join("|", question.techniques()));
    }

    /** The rows of a table, without its heading. */
    private static List<List<String>> rows(String file) {
        try {
            return Files.readAllLines(Path.of("src/test/resources/search", file)).stream().skip(1)
                    .map(line -> Arrays.asList(line.split(";", -1))).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String sentence(List<String> row) {
        return row.get(0).replace("\"", "");
    }

    private static String expected(List<String> row) {
        return line(row.get(1), row.get(2), row.get(3), row.get(4), row.get(5), row.get(6), row.get(7), row.get(8), row.get(9));
    }

    private static String found(List<String> row) {
        Meaning meaning = READER.read(sentence(row));
        var question = meaning.question();
        return line(question.source() == null ? ""
                : question.source(), String.join("|", question.ways()), String.join("|", question.dynamics()),
                question.room() == null ? "" : question.room(), String.join("|", question.character()), limits(question),
                question.neighbours().stream().map(SentencesTest::neighbour).collect(Collectors.joining("|")),
                String.join("|", question.circumstances()), String.join("|", meaning.notUnderstood()));
    }

    private static String line(String source, String ways, String dynamics, String room, String character, String limits,
            String neighbours,
            String circumstances, String notUnderstood) {
        return ("source %s; ways %s; dynamics %s; room %s; character %s; limits %s; neighbours %s; circumstances %s; "
                + "not understood %s")
                .formatted(source, ways, dynamics, room, character, sorted(limits), neighbours, circumstances, notUnderstood);
    }

    static String sorted(String limits) {
        return List.of(limits.split(" ")).stream().sorted().collect(Collectors.joining(" "));
    }

    static String neighbour(Neighbour neighbour) {
        return neighbour.source() + "@" + number(neighbour.distanceM()) + "/" + number(neighbour.angleDegrees());
    }

    /** The limits, and after them what is only wished for. */
    static String limits(Question question) {
        var limits = limits(question.limits());
        return question.wishes().isEmpty() ? limits : (limits + " wish=" + families(question.wishes())).strip();
    }

    static String limits(Limits limits) {
        var said = new ArrayList<String>();
        if (limits.phantom() != null) {
            said.add("phantom=" + limits.phantom());
        }
        if (limits.mics() != null) {
            said.add("mics=" + limits.mics());
        }
        if (limits.preampGainDb() != null) {
            said.add("gain=" + number(limits.preampGainDb()));
        }
        if (limits.preampNoiseDbu() != null) {
            said.add("noise=" + number(limits.preampNoiseDbu()));
        }
        if (!limits.onlyFamilies().isEmpty()) {
            said.add("only=" + families(limits.onlyFamilies()));
        }
        if (!limits.withoutFamilies().isEmpty()) {
            said.add("without=" + families(limits.withoutFamilies()));
        }
        return String.join(" ", said);
    }

    /** Families as the table says them: by the words' ids, in the order they came. */
    static String families(List<MicFamily> families) {
        var left = new ArrayList<>(families);
        var ids = new ArrayList<String>();
        while (!left.isEmpty()) {
            var words = FAMILIES.stream().filter(entry -> left.subList(0, Math.min(left.size(), entry.families().size()))
                    .equals(entry.families())).findFirst().orElseThrow();
            ids.add(words.id());
            left.subList(0, words.families().size()).clear();
        }
        return String.join(",", ids);
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString(Math.round(value))
                : String.format(Locale.ROOT, "%.4f", value).replaceAll("0+$", "");
    }
}
