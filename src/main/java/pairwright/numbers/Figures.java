package pairwright.numbers;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as a person writes them down. */
final class Figures {
    private static final int LEADING_DIGITS = 4;
    private static final int LEAST_DECIMALS = 2;
    private static final Pattern GAP = Pattern.compile("([-+×/^] *)?\\{}");

    private Figures() {
    }

    /** Four digits, or two decimals if those are more; no zeros at the end. */
    static String of(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        int whole = exact.precision() - exact.scale();
        int decimals = Math.max(LEAST_DECIMALS, LEADING_DIGITS - whole);
        BigDecimal rounded = exact.setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    /** Fills each {} of a line with the next number or word; a number below zero is put in brackets behind an operator. */
    static String in(String line, Object... shown) {
        Matcher gap = GAP.matcher(line);
        StringBuilder text = new StringBuilder();
        for (int i = 0; gap.find(); i++) {
            String operator = gap.group(1) == null ? "" : gap.group(1);
            String figure = shown[i] instanceof Number number ? of(number.doubleValue()) : shown[i].toString();
            boolean bracketed = !operator.isEmpty() && shown[i] instanceof Number && figure.startsWith("-");
            gap.appendReplacement(text, Matcher.quoteReplacement(operator + (bracketed ? "(" + figure + ")" : figure)));
        }
        return gap.appendTail(text).toString();
    }
}
