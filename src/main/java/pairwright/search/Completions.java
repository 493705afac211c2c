package pairwright.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.model.Catalogue;
import pairwright.model.Naming;
import pairwright.model.Vocabulary;

/**
 * The phrases of a catalogue in the order of their letters, to be found by how they begin. A sorted list serves as well as a search index
 * here: some thousands of phrases, made in a few milliseconds and searched in one.
 */
final class Completions {
    /** Fewer letters are one letter from too many words. */
    private static final int SHORTEST_MISSPELT = 4;

    /** A phrase by how it begins, or how a later word of its name does. */
    record Found(Phrase phrase, boolean inside) {
    }

    private record Entry(String letters, Found found) {
    }

    private final List<Entry> entries = new ArrayList<>();
    private final Map<String, Phrase> names = new HashMap<>();
    private final Map<Kind, List<Phrase>> namesByKind = new HashMap<>();
    private final String[] letters;
    private int order;

    Completions(Catalogue catalogue) {
        catalogue.sources().values().forEach(source -> named(Kind.SOURCE, source.id(), source.name(), source.words()));
        catalogue.rooms().values().forEach(room -> named(Kind.ROOM, room.id(), room.name(), room.words()));
        catalogue.characters().values().forEach(wanted -> named(Kind.CHARACTER, wanted.id(), wanted.name(), wanted.words()));
        catalogue.techniques().values().forEach(technique -> named(Kind.TECHNIQUE, technique.id(), technique.name(), technique.words()));
        Vocabulary words = catalogue.words();
        words.ways().forEach(way -> named(Kind.WAY, way.id(), way.name(), way.words()));
        words.names().stream().filter(more -> catalogue.sources().containsKey(more.source()))
                .forEach(more -> words(Kind.SOURCE, more.source(), null, more.words()));
        words.ambiguities().forEach(ambiguity -> ambiguity.readings().stream().filter(catalogue.sources()::containsKey)
                .forEach(reading -> words(Kind.SOURCE, reading, null, ambiguity.words())));
        words.dynamics().forEach(dynamic -> words(Kind.DYNAMIC, dynamic.id(), dynamic.name(), dynamic.words()));
        words.limits().forEach(limit -> words(Kind.LIMIT, limit.id(), limit.name(), limit.words()));
        words.circumstances().forEach(one -> words(Kind.CIRCUMSTANCE, one.id(), one.name(), one.words()));
        words.families().forEach(family -> words(Kind.FAMILY, family.id(), plural(family.words()), family.words()));
        words.neighbours().stream().filter(beside -> !beside.follows())
                .forEach(beside -> words(Kind.BEFORE_NEIGHBOUR, beside.id(), beside.name(), beside.words()));
        words.quantities().forEach(quantity -> words(Kind.QUANTITY, quantity.id(), null, quantity.words().stream()
                .filter(word -> !quantity.words().contains(word + "s")).toList())); // "two channels", not "two channel"
        entries.sort(Comparator.comparing(Entry::letters).thenComparing(entry -> entry.found().phrase().order()));
        letters = entries.stream().map(Entry::letters).toArray(String[]::new);
    }

    /** What is said of a family: "condensers". */
    static String plural(List<String> words) {
        return words.isEmpty() ? null : words.contains(words.get(0) + "s") ? words.get(0) + "s" : words.get(0);
    }

    private void named(Kind kind, String id, String name, List<String> words) {
        Phrase phrase = add(kind, id, Naming.small(name), true);
        names.put(kind + " " + id, phrase);
        namesByKind.computeIfAbsent(kind, any -> new ArrayList<>()).add(phrase);
        words(kind, id, name, words);
    }

    private void words(Kind kind, String id, String name, List<String> words) {
        words.forEach(word -> add(kind, id, word, word.equalsIgnoreCase(name)));
    }

    private Phrase add(Kind kind, String id, String text, boolean isName) {
        Phrase phrase = new Phrase(kind, id, text, isName, order++);
        for (String begins : new LinkedHashSet<>(List.of(text, Phrases.spelledWithoutUmlauts(text)))) {
            String plain = Unfinished.plain(begins);
            for (int at = 0; !plain.isEmpty() && at >= 0; at = isName ? nextWord(plain, at) : -1) {
                entries.add(new Entry(plain.substring(at), new Found(phrase, at > 0)));
            }
            if (plain.indexOf(' ') > 0 && plain.indexOf(' ') == plain.lastIndexOf(' ')) {
                entries.add(new Entry(plain.replace(" ", ""), new Found(phrase, false))); // "kickdrum" for kick drum
            }
        }
        return phrase;
    }

    private static int nextWord(String plain, int at) {
        int blank = plain.indexOf(' ', at);
        return blank < 0 ? -1 : blank + 1;
    }

    /** The name of an entry; null where it has none that is said in a sentence. */
    Phrase name(Kind kind, String id) {
        return names.get(kind + " " + id);
    }

    /** The names of all entries of a kind, in the order of the catalogue. */
    List<Phrase> names(Kind kind) {
        return namesByKind.getOrDefault(kind, List.of());
    }

    /** Phrases that begin so. */
    List<Found> starting(String plain) {
        int at = Arrays.binarySearch(letters, plain);
        at = at < 0 ? -at - 1 : at;
        while (at > 0 && letters[at - 1].equals(plain)) {
            at--;
        }
        Set<Found> found = new LinkedHashSet<>();
        for (; at < letters.length && letters[at].startsWith(plain); at++) {
            found.add(entries.get(at).found());
        }
        return List.copyOf(found);
    }

    /** Phrases that begin so but for one letter that is wrong, missing, too much, or changed places with the next; the first one is taken to be right. */
    List<Found> near(String plain) {
        if (plain.length() < SHORTEST_MISSPELT) {
            return List.of();
        }
        Set<Found> found = new LinkedHashSet<>();
        int at = Arrays.binarySearch(letters, plain.substring(0, 1));
        for (at = at < 0 ? -at - 1 : at; at < letters.length && letters[at].charAt(0) == plain.charAt(0); at++) {
            if (isOneAway(plain, letters[at])) {
                found.add(entries.get(at).found());
            }
        }
        return List.copyOf(found);
    }

    /** Whether one change makes {@code typed} the beginning of {@code known}; it may as well be made where they first differ. */
    static boolean isOneAway(String typed, String known) {
        int at = 0;
        while (at < typed.length() && at < known.length() && typed.charAt(at) == known.charAt(at)) {
            at++;
        }
        if (at == typed.length()) {
            return true;
        }
        String rest = typed.substring(at + 1);
        return known.startsWith(rest, at) || known.startsWith(rest, at + 1) || known.startsWith(typed.substring(at), at + 1)
                || at + 1 < typed.length() && known.startsWith("" + typed.charAt(at + 1) + typed.charAt(at), at)
                        && known.startsWith(typed.substring(at + 2), at + 2);
    }
}
