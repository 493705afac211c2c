package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * How much room a text takes. Widths are those of an ordinary sans serif and a little more, since the font of whoever reads is not known.
 */
final class Type {
    /** Names and values. */
    static final double SIZE = 12.5;
    /** Numbers along an axis. */
    static final double SMALL = 11.5;
    /** From line to line, for a size of one. */
    static final double LINE = 1.12;

    private Type() {
    }

    static double width(String text, double size) {
        double ems = 0;
        for (int i = 0; i < text.length(); i++) {
            ems += ems(text.charAt(i));
        }
        return ems * size;
    }

    /** Broken at spaces so that no line is wider, unless it is one long word; as few lines as that takes, and those about even. */
    static List<String> lines(String text, double size, double widest) {
        String[] words = text.strip().split(" ");
        List<String> lines = broken(words, size, widest);
        for (double narrower = widest - 4; lines.size() > 1; narrower -= 4) {
            List<String> even = broken(words, size, narrower);
            if (even.size() > lines.size() || even.stream().anyMatch(line -> width(line, size) > widest)) {
                break;
            }
            lines = even;
            if (narrower < widest / 2) {
                break;
            }
        }
        return lines;
    }

    private static List<String> broken(String[] words, double size, double widest) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size) > widest) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(line);
        return lines;
    }

    private static double ems(char letter) {
        if ("iljtfI.,:;'|!()[] -/\u00b0".indexOf(letter) >= 0) {
            return 0.36;
        }
        if ("mwMW%@\u2014".indexOf(letter) >= 0) {
            return 0.9;
        }
        return letter >= 'A' && letter <= 'Z' ? 0.71 : letter >= 0x2e80 ? 1.05 : 0.58;
    }
}
