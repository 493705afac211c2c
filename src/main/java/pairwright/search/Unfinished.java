package pairwright.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;

/**
 * The end of a sentence that is being typed.
 *
 * @param start of it in the sentence
 * @param plain its letters, in small letters and without accents; it ends in a blank where its last word is done
 * @param words how many it has
 * @param isNewPart whether it begins the sentence or follows a stop
 */
record Unfinished(int start, String plain, int words, boolean isNewPart) {
    private static final int MOST_WORDS = 8;
    private static final String STOPS = ",;:.!?()[]|\r\n\u2013\u2014";

    /** Every end of a sentence that may be a phrase begun, the longest first; a stop is never inside one. */
    static List<Unfinished> endsOf(String text) {
        List<Unfinished> ends = new ArrayList<>();
        int words = 0;
        for (int at = text.length() - 1; at >= 0 && words < MOST_WORDS && STOPS.indexOf(text.charAt(at)) < 0; at--) {
            if (isOfWord(text.charAt(at)) && (at == 0 || !isOfWord(text.charAt(at - 1)))) {
                words++;
                String blank = isOfWord(text.charAt(text.length() - 1)) ? "" : " ";
                ends.add(0, new Unfinished(at, plain(text.substring(at)) + blank, words, isNewPart(text, at)));
            }
        }
        return ends;
    }

    /** Whether nothing but blanks and stops follows the last thing said, and at least one stop does. */
    static boolean endsInStop(String text) {
        String said = text.stripTrailing();
        return !said.isEmpty() && STOPS.indexOf(said.charAt(said.length() - 1)) >= 0;
    }

    /** The sentence without the blanks and stops at its end. */
    static String said(String text) {
        int end = text.length();
        while (end > 0 && (Character.isWhitespace(text.charAt(end - 1)) || STOPS.indexOf(text.charAt(end - 1)) >= 0)) {
            end--;
        }
        return text.substring(0, end);
    }

    /** Letters and figures alone, a blank between words. */
    static String plain(String text) {
        char[] given = text.toLowerCase(Locale.ROOT).toCharArray();
        char[] folded = new char[given.length * 4];
        int length = ASCIIFoldingFilter.foldToASCII(given, 0, folded, 0, given.length);
        StringBuilder plain = new StringBuilder(length);
        for (int at = 0; at < length; at++) {
            if (isOfWord(folded[at])) {
                plain.append(Character.toLowerCase(folded[at]));
            } else if (Character.getType(folded[at]) != Character.NON_SPACING_MARK && !plain.isEmpty() && plain.charAt(plain.length() - 1) != ' ') {
                plain.append(' ');
            }
        }
        return plain.toString().stripTrailing();
    }

    private static boolean isNewPart(String text, int start) {
        String before = text.substring(0, start);
        return before.isBlank() || endsInStop(before);
    }

    private static boolean isOfWord(char one) {
        return Character.isLetterOrDigit(one) || Character.getType(one) == Character.NON_SPACING_MARK;
    }
}
