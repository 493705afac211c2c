package pairwright.numbers;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as a person writes them down. */
final class Figures {
    private static final int WORKED_DIGITS = 4;
    private static final int TOLD_DIGITS = 3;
    private static final Pattern GAP = Pattern.compile("([-+×/^] *)?\\{}");

    private Figures() {
    }

    /** As it is worked with: four digits, or two decimals if those are more; no zeros at the end. */
    static String of(double value) {
        return of(value, WORKED_DIGITS);
    }

    private static String of(double value, int digits) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        int whole = exact.precision() - exact.scale();
        int decimals = Math.max(digits - 2, digits - whole);
        BigDecimal rounded = exact.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** Fills each {} of a line with the next number or word; a number below zero is put in brackets behind an operator. */
    static String in(String line, Object... shown) {
        return filled(line, WORKED_DIGITS, shown);
    }

    /** The same in a sentence, where three digits, or one decimal, say enough. */
    static String told(String sentence, Object... shown) {
        return filled(sentence, TOLD_DIGITS, shown);
    }

    private static String filled(String line, int digits, Object... shown) {
        Matcher gap = GAP.matcher(line);
        StringBuilder text = new StringBuilder();
        for (int i = 0; gap.find(); i++) {
            String operator = gap.group(1) == null ? "" : gap.group(1);
            String figure = shown[i] instanceof Number number ? of(number.doubleValue(), digits) : shown[i].toString();
            boolean bracketed = !operator.isEmpty() && shown[i] instanceof Number && figure.startsWith("-");
            gap.appendReplacement(text, Matcher.quoteReplacement(operator + (bracketed ? "(" + figure + ")" : figure)));
        }
        return gap.appendTail(text).toString();
    }
}
