package pairwright.search;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.apache.lucene.search.spell.LuceneLevenshteinDistance;

/** Knows which words of the catalogue a misspelt word may stand for. */
final class Speller {

    /** Words tried for one misspelling. */
    private static final int CANDIDATES = 4;
    /** Endings of plurals that the stemming, made for English, leaves. */
    private static final Set<String> PLURALS = Set.of("n", "en", "nen", "er", "e", "i", "es");
    private static final List<String> ALIKE = List.of("aeiouy", "ckqg", "cszx", "fvwph", "dt", "mn", "bpv", "gj", "lr");

    private record Candidate(String stem, int edits, int shared) {
    }

    private final LuceneLevenshteinDistance distance = new LuceneLevenshteinDistance();
    private final List<String> stems;

    Speller(Set<String> stems) {
        this.stems = stems.stream().filter(stem -> stem.length() >= 3).toList();
    }

    /** The nearest stems, best first; empty if none is near. */
    List<String> near(String stem) {
        if (stem.length() < 4 || stem.length() > 40 || !stem.chars().allMatch(Character::isLetter)) {
            return List.of();
        }
        var plural = stems.stream().filter(known -> known.length() >= 4 && stem.startsWith(known)
                && PLURALS.contains(stem.substring(known.length()))).toList();
        if (!plural.isEmpty()) {
            return plural;
        }
        return stems.stream()
                .filter(known -> Math.abs(known.length() - stem.length()) <= editsAllowed(stem) && startAlike(known, stem))
                .map(known -> new Candidate(known, edits(known, stem), shared(known, stem)))
                .filter(candidate -> isNear(stem, candidate))
                // a letter left out or swapped is likelier than a wrong one, so the word that uses more of the letters goes first
                .sorted(Comparator.comparingInt(Candidate::edits).thenComparing(Comparator.comparingInt(Candidate::shared).reversed()))
                .limit(CANDIDATES)
                .map(Candidate::stem)
                .toList();
    }

    /** How alike two words are, 0 to 1. */
    double likeness(String one, String other) {
        return Math.max(0, distance.getDistance(one, other));
    }

    private boolean isNear(String stem, Candidate candidate) {
        boolean isReplaced = candidate.stem().length() == stem.length() && candidate.shared() < stem.length();
        return candidate.edits() <= editsAllowed(stem) && (!isReplaced || candidate.edits() > 1
                || stem.length() > 4 && isLikelyReplaced(stem, candidate.stem()));
    }

    /** Vowels are confused, and consonants that sound alike; any other letter mostly makes another word ("distance", "distant"). */
    private static boolean isLikelyReplaced(String typed, String known) {
        int at = 0;
        while (typed.charAt(at) == known.charAt(at)) {
            at++;
        }
        var letters = new char[] {typed.charAt(at), known.charAt(at)};
        return ALIKE.stream().anyMatch(group -> group.indexOf(letters[0]) >= 0 && group.indexOf(letters[1]) >= 0);
    }

    private static int editsAllowed(String stem) {
        return stem.length() < 8 ? 1 : 2;
    }

    private static boolean startAlike(String known, String stem) {
        char first = known.charAt(0);
        return first == stem.charAt(0) || first == stem.charAt(1) && known.charAt(1) == stem.charAt(0)
                || "ckq".indexOf(first) >= 0 && "ckq".indexOf(stem.charAt(0)) >= 0;
    }

    /** Lucene says 1 - edits / length of the shorter; a swap of two letters is one edit. */
    private int edits(String known, String stem) {
        return Math.round((1 - distance.getDistance(known, stem)) * Math.min(known.length(), stem.length()));
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
