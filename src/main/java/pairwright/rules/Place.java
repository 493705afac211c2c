package pairwright.rules;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where something stands in a file.
 *
 * @param line from 1
 * @param column from 1
 */
record Place(int line, int column) {
    /** The first place of a text between two lines, both included; null where it is not there. */
    static Place of(String near, String text, int fromLine, int untilLine) {
        return of(Pattern.compile(Pattern.quote(near)), text, fromLine, untilLine);
    }

    /** The first place within a line that a pattern matches, between two lines, both included; null where there is none. */
    static Place of(Pattern near, String text, int fromLine, int untilLine) {
        String[] lines = text.split("\n", -1);
        for (int line = Math.max(1, fromLine); line <= Math.min(lines.length, untilLine); line++) {
            Matcher found = near.matcher(lines[line - 1]);
            if (found.find()) {
                return new Place(line, found.start() + 1);
            }
        }
        return null;
    }
}
