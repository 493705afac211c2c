package pairwright.model;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** The known word somebody most likely meant. */
public final class Nearest {
    private Nearest() {
    }

    /** The known word with the fewest letters different, if they are few. */
    public static Optional<String> to(String written, Collection<String> known) {
        return within(written, known, Math.max(2, written.length() / 4));
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
        int[] row = new int[other.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int change = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[other.length()];
    }
}
