package pairwright.catalogue;

/** What came in, short enough to be said back. */
public final class Shown {
    private static final int LONGEST = 60;

    private Shown() {
    }

    /** A text of at most 60 characters, whole ones; dots where something was cut. */
    public static String of(String text) {
        return text.codePointCount(0, text.length()) <= LONGEST ? text : text.substring(0, text.offsetByCodePoints(0, LONGEST)) + "...";
    }
}
