package pairwright.locker;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pairwright.model.Word;

/**
 * How a value stands in a cell.
 *
 * <p>A spreadsheet runs a cell that begins like a formula. A text that does (with {@code = + - @}, also after blanks or in full width, or with a tab or a
 * line end) is written with one apostrophe before it, and so is one that begins with apostrophes and then like that. Reading takes one apostrophe off
 * whatever begins with apostrophes and then like a formula, and leaves all else alone. So every text comes back as it was, and a name such as
 * {@code '60s ribbon} is never touched.
 */
final class CellText {
    private static final String FORMULA = "(?:[ \\u00A0]*[=+\\-@\\uFF1D\\uFF0B\\uFF0D\\uFF20]|[\\t\\r\\n])";
    private static final Pattern MUST_BE_GUARDED = Pattern.compile("'*" + FORMULA);
    private static final Pattern IS_GUARDED = Pattern.compile("'+" + FORMULA);
    private static final int LONGEST = 60;

    private CellText() {
    }

    /**
     * A value as it is written.
     *
     * @param value text, a word, a number, a truth, or points of a response; null for nothing
     */
    static String of(Object value, boolean decimalComma) {
        if (value == null) {
            return "";
        }
        if (value instanceof Word word) {
            return word.id();
        }
        if (value instanceof Double number) {
            return number(number, decimalComma);
        }
        if (value instanceof Boolean truth) {
            return truth ? "yes" : "no";
        }
        if (value instanceof List<?> points) {
            return points.stream().map(point -> (ResponsePoint) point)
                    .map(point -> number(point.frequencyHz(), decimalComma) + ":" + number(point.levelDb(), decimalComma)).collect(Collectors.joining(" "));
        }
        return value instanceof String text ? guarded(text) : value.toString();
    }

    static String guarded(String text) {
        return MUST_BE_GUARDED.matcher(text).lookingAt() ? "'" + text : text;
    }

    static String unguarded(String cell) {
        return IS_GUARDED.matcher(cell).lookingAt() ? cell.substring(1) : cell;
    }

    /** What came in, short enough to be said back. */
    static String shown(String cell) {
        return cell.codePointCount(0, cell.length()) <= LONGEST ? cell : cell.substring(0, cell.offsetByCodePoints(0, LONGEST)) + "...";
    }

    private static String number(double number, boolean decimalComma) {
        String plain = number == 0 ? "0" : BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
        return decimalComma ? plain.replace('.', ',') : plain;
    }
}
