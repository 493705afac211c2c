package pairwright.lab;

import java.util.regex.Pattern;

/** Signs as they are printed. */
final class Signs {
    /** A hyphen before a number, and not one within a name such as figure-8 or between two numbers. */
    private static final Pattern HYPHEN = Pattern.compile("(?<![\\p{L}\\p{N}-])-(?=\\d)");

    private Signs() {
    }

    /** A text with a minus before each number below 0; null stays null. */
    static String minus(String text) {
        return text == null ? null : HYPHEN.matcher(text).replaceAll("\u2212");
    }
}
