package pairwright.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Decimal numbers in text. */
final class Plain {
    private Plain() {
    }

    /** With a point, at most so many decimals, no trailing noughts, halves rounded up as people do. */
    static String number(double value, int decimals) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /**
     * The same text with another decimal sign. A point is a decimal one between digits that nothing joins to a word or to a further point:
     * versions, addresses and numbered paragraphs stay.
     */
    static String withSign(String text, char sign) {
        int point = text.indexOf('.');
        if (point < 0) {
            return text;
        }
        StringBuilder out = new StringBuilder(text);
        for (; point >= 0; point = text.indexOf('.', point + 1)) {
            if (isDecimal(text, point)) {
                out.setCharAt(point, sign);
            }
        }
        return out.toString();
    }

    private static boolean isDecimal(String text, int point) {
        int first = point;
        while (first > 0 && isDigit(text.charAt(first - 1))) {
            first--;
        }
        int end = point + 1;
        while (end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        if (first == point || end == point + 1) {
            return false;
        }
        boolean joinedBefore = first > 0 && (Character.isLetter(text.charAt(first - 1)) || "._:/#".indexOf(text.charAt(first - 1)) >= 0);
        boolean joinedAfter = end + 1 < text.length() && text.charAt(end) == '.' && isDigit(text.charAt(end + 1));
        return !joinedBefore && !joinedAfter && !text.startsWith("CFR ", first - 4) && !text.startsWith("ersion ", first - 7);
    }

    private static boolean isDigit(char one) {
        return one >= '0' && one <= '9';
    }
}
