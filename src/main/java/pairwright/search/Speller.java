package pairwright.search;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.lucene.search.spell.LuceneLevenshteinDistance;

/** Knows which words of the catalogue a misspelt word may stand for. */
final class Speller {

    /** Words tried for one misspelling. */
    private static final int CANDIDATES = 4;
    /** From so many letters on, two may be wrong. */
    private static final int LONG_WORD = 9;
    private static final int SHORTEST_WORD = 4;
    private static final int SHORTEST_ALIKE = 5;
    private static final int MOST_EDITS_ALIKE = 2;
    private static final int LONGEST_WORD = 40;
    /**
     * Vowels are confused, and consonants that sound alike; any other letter mostly makes another word ("distance",
     * "distant").
     */
    private static final List<String> ALIKE = List.of("aeiouy", "ckqg", "cszx", "fvwph", "dt", "mn", "bpv", "gj");
    private static final String HARD_C = "ckq";
    /** Endings of plurals and comparatives that the stemming leaves; it was made for English. */
    private static final Set<String> ENDINGS = Set.of("n", "en", "nen", "er", "e", "i", "es");

    /** Endings of verbs; a plural may be one of another word, so it has to be listed. */
    private static final List<String> BENT = List.of("ed", "ing");

    /** A word of the catalogue. */
    record Known(String spelling, String stem) {
    }

    private record Candidate(Known known, int edits, int shared) {
    }

    private final LuceneLevenshteinDistance distance = new LuceneLevenshteinDistance();
    private final Map<String, String> stems;
    private final Map<Integer, List<String>> spellingsByFirstLetter;

    private final Set<String> ordinary;

    /**
     * @param stems by spelling
     * @param ordinary words that are never taken for another
     */
    Speller(Map<String, String> stems, Set<String> ordinary) {
        this.stems = stems;
        this.ordinary = ordinary;
        spellingsByFirstLetter = stems.keySet().stream().filter(word -> word.length() > 1)
                .collect(Collectors.groupingBy(word -> (int) word.charAt(0)));
    }

    /** The nearest words, best first; empty if none is near. */
    List<Known> near(String typed) {
        if (!isCorrectable(typed)) {
            return List.of();
        }
        for (int end = typed.length() - 1; end >= Math.max(4, typed.length() - 3); end--) {
            var singular = typed.substring(0, end);
            if (ENDINGS.contains(typed.substring(end)) && stems.containsKey(singular)) {
                return List.of(new Known(singular, stems.get(singular)));
            }
        }
        var singular = typed.length() > 5 && typed.endsWith("s") ? typed.substring(0, typed.length() - 1) : typed;
        return firstLetters(typed)
                .flatMap(letter -> spellingsByFirstLetter.getOrDefault(letter, List.of()).stream())
                .flatMap(known -> Stream.of(typed, singular).distinct().flatMap(word -> candidate(word, known).stream()))
                // a letter left out or swapped is likelier than a wrong one, so the word that uses more of the letters goes first
                .sorted(Comparator.comparingInt(Candidate::edits).thenComparing(Comparator.comparingInt(Candidate::shared)
                        .reversed()))
                .map(Candidate::known)
                .collect(Collectors.toMap(Known::stem, known -> known, (first, second) -> first, LinkedHashMap::new))
                .values().stream()
                .limit(CANDIDATES)
                .toList();
    }

    /**
     * Words of the same letters but one, nearest first: too far off to be taken for a word alone, near enough where with the word beside them they name
     * something ("snair drum").
     */
    List<Known> alike(String typed) {
        if (!isCorrectable(typed) || typed.length() < SHORTEST_ALIKE) {
            return List.of();
        }
        return firstLetters(typed)
                .flatMap(letter -> spellingsByFirstLetter.getOrDefault(letter, List.of()).stream())
                .filter(known -> Math.max(known.length(), typed.length()) - shared(known, typed) <= 1)
                .map(known -> new Candidate(new Known(known, stems.get(known)), editsBetween(known, typed), shared(known, typed)))
                .filter(candidate -> candidate.edits() <= MOST_EDITS_ALIKE)
                .sorted(Comparator.comparingInt(Candidate::edits))
                .map(Candidate::known)
                .limit(CANDIDATES)
                .toList();
    }

    /** An ordinary word bent in the usual way is ordinary too: "heated" as "heat". */
    boolean isOrdinary(String typed) {
        return ordinary.contains(typed) || BENT.stream().anyMatch(ending -> typed.endsWith(ending)
                && typed.length() - ending.length() >= SHORTEST_WORD && ordinary.contains(typed.substring(0, typed.length() - ending.length())));
    }

    /** Whether a word may be a misspelling: letters alone, neither short nor endless, and no ordinary word. */
    boolean isCorrectable(String typed) {
        return typed.length() >= SHORTEST_WORD && typed.length() <= LONGEST_WORD && typed.chars().allMatch(Character::isLetter)
                && !isOrdinary(typed);
    }

    /** How alike two words are, 0 to 1. */
    double likeness(String one, String other) {
        return Math.max(0, distance.getDistance(one, other));
    }

    private Optional<Candidate> candidate(String typed, String known) {
        if (Math.abs(known.length() - typed.length()) > editsAllowed(typed)) {
            return Optional.empty();
        }
        boolean isSameStart = known.charAt(0) == typed.charAt(0) || HARD_C.indexOf(known.charAt(0)) >= 0
                && HARD_C.indexOf(typed.charAt(0)) >= 0;
        if (!isSameStart && (known.charAt(0) != typed.charAt(1) || known.charAt(1) != typed.charAt(0))) {
            return Optional.empty();
        }
        int edits = editsBetween(known, typed);
        int shared = shared(known, typed);
        boolean isSwapped = shared == typed.length() && shared == known.length();
        boolean isReplaced = known.length() == typed.length() && !isSwapped;
        boolean isLikely = isSwapped || known.length() > 4 && typed.length() > 3
                && (!isReplaced || typed.length() > 4 && isLikelyReplaced(typed, known))
                // what differs at its end as well is another word, or a name
                && (edits < 2 || typed.charAt(typed.length() - 1) == known.charAt(known.length() - 1));
        return edits <= editsAllowed(typed) && isLikely ? Optional.of(new Candidate(new Known(known, stems.get(known)), edits, shared))
                : Optional.empty();
    }

    private static boolean isLikelyReplaced(String typed, String known) {
        return IntStream.range(0, typed.length()).allMatch(at -> isAlike(typed.charAt(at), known.charAt(at)));
    }

    private static boolean isAlike(char one, char other) {
        return one == other || ALIKE.stream().anyMatch(group -> group.indexOf(one) >= 0 && group.indexOf(other) >= 0);
    }

    private static int editsAllowed(String typed) {
        return typed.length() < LONG_WORD ? 1 : 2;
    }

    /** A word is rarely misspelt in its first letter, but for c, k and q, or where the first two are swapped. */
    private static Stream<Integer> firstLetters(String typed) {
        var firsts = HARD_C.indexOf(typed.charAt(0)) >= 0 ? HARD_C : typed.substring(0, 1);
        return (firsts + typed.charAt(1)).chars().distinct().boxed();
    }

    /** Lucene says 1 - edits / length of the shorter; a swap of two letters is one edit. */
    int editsBetween(String known, String typed) {
        return Math.round((1 - distance.getDistance(known, typed)) * Math.min(known.length(), typed.length()));
    }

    /** How many letters both have, whatever their order. */
    private static int shared(String one, String other) {
        var left = one.chars().sorted().toArray();
        var right = other.chars().sorted().toArray();
        int shared = 0;
        for (int i = 0, k = 0; i < left.length && k < right.length;) {
            if (left[i] == right[k]) {
                shared++;
                i++;
                k++;
            } else if (left[i] < right[k]) {
                i++;
            } else {
                k++;
            }
        }
        return shared;
    }
}
