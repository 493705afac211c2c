package pairwright.http;

/** What came in, short enough to be said back. */
final class Shown {
    private static final int LONGEST = 60;

    private Shown() {
    }

    static String of(String text) {
        return text.codePointCount(0, text.length()) <= LONGEST ? text : text.substring(0, text.offsetByCodePoints(0, LONGEST)) + "...";
    }
}
