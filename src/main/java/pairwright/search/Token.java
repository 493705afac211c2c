package pairwright.search;

import java.util.regex.Pattern;

/**
 * One word of a sentence.
 *
 * @param start of it in the sentence
 * @param end of it in the sentence
 * @param spelling in lower case, without accents
 * @param stem the spelling without its ending
 * @param opens whether a comma or another stop stands before it
 */
record Token(int start, int end, String spelling, String stem, boolean opens) {
    private static final Pattern FIGURE = Pattern.compile("\\d{1,6}([.,]\\d{1,6})?");

    /** Whether it is a number in figures. */
    boolean isFigure() {
        return FIGURE.matcher(spelling).matches();
    }

    /** The same place in the sentence, read as another word. */
    Token readAs(Speller.Known known) {
        return new Token(start, end, known.spelling(), known.stem(), opens);
    }
}
