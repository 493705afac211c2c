package pairwright.search;

import java.util.Set;

/**
 * Tells endings that only bend a word ("trumpets", "strummed") from those that make another word of it ("organ" and
 * "organisation"): stemming cuts off both.
 */
final class Inflection {

    private static final int SHORTEST_BENT = 3;
    private static final Set<String> BENDING = Set.of("", "s", "es", "e", "ed", "d", "ing", "y", "ies", "ied", "n", "en");

    private Inflection() {
    }

    /** Whether both are the same phrase, word by word, but for endings that bend. */
    static boolean isSame(String known, String typed) {
        if (known.equals(typed)) {
            return true;
        }
        var knownWords = known.split(" ");
        var typedWords = typed.split(" ");
        if (knownWords.length != typedWords.length) {
            return false;
        }
        for (int i = 0; i < knownWords.length; i++) {
            if (!isSameWord(knownWords[i], typedWords[i])) {
                return false;
            }
        }
        return true;
    }

    private static boolean isSameWord(String one, String other) {
        if (one.equals(other)) {
            return true;
        }
        int common = 0;
        while (common < Math.min(one.length(), other.length()) && one.charAt(common) == other.charAt(common)) {
            common++;
        }
        // of a short word only the plural: "ages" is not "AG"
        if (common < SHORTEST_BENT) {
            return common == 2 && Math.min(one.length(), other.length()) == 2 && isPlural(one, other);
        }
        return isBending(one, common) && isBending(other, common);
    }

    private static boolean isPlural(String one, String other) {
        return (one + "s").equals(other) || (other + "s").equals(one);
    }

    /** A doubled last letter belongs to the ending: "strum" and "strum-med". */
    private static boolean isBending(String word, int from) {
        var ending = word.substring(from);
        return BENDING.contains(ending)
                || ending.length() > 1 && ending.charAt(0) == word.charAt(from - 1) && BENDING.contains(ending.substring(1));
    }
}
