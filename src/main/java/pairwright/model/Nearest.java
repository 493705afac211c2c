package pairwright.model;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The known word somebody most likely meant. */
public final class Nearest {
    private Nearest() {
    }

    /** Of so short a word two letters are most: one that shares none of them is no likeness. */
    private static final int SHORT = 3;

    /** The known word with the fewest letters different, if they are few: left out, put in, taken for another, or two of them swapped. */
    public static Optional<String> to(String written, Collection<String> known) {
        return within(written, known, written.length() <= SHORT ? 1 : Math.max(2, written.length() / 4));
    }

    /**
     * The known word with the fewest letters different.
     *
     * @param most so many may be
     */
    public static Optional<String> within(String written, Collection<String> known, int most) {
        String best = null;
        int fewest = most + 1;
        for (String word : known) {
            int different = distance(written.toLowerCase(Locale.ROOT), word.toLowerCase(Locale.ROOT));
            if (different < fewest) {
                fewest = different;
                best = word;
            }
        }
        return Optional.ofNullable(best);
    }

    /** What to do about an unknown word: the nearest one, or the whole list. */
    public static String remedy(String written, Collection<String> known) {
        return to(written, known).map(word -> "Did you mean " + word + "?").orElseGet(() ->
                known.isEmpty() ? "Take it out; none is known" : "Use one of " + String.join(", ", known));
    }

    private static int distance(String one, String other) {
        int[] beforeLast = new int[other.length() + 1];
        int[] last = new int[other.length() + 1];
        int[] row = new int[other.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] free = beforeLast;
            beforeLast = last;
            last = row;
            row = free;
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                boolean same = one.charAt(i - 1) == other.charAt(j - 1);
                row[j] = Math.min(last[j - 1] + (same ? 0 : 1), Math.min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1)) {
                    row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
                }
            }
        }
        return row[other.length()];
    }
}
