package pairwright.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pairwright.catalogue.Shown;
import pairwright.drawing.Reader;

/**
 * A number somebody typed, with or without its unit, with a decimal point or comma: {@code 0.8}, {@code 80 cm}, {@code 5 ft 3 in},
 * {@code 1 1/4 in}, {@code 2,5 kHz}.
 *
 * @param number in the unit of docs/units.md, so lengths in metres; empty where there is a fault
 * @param fault what is wrong with it and what to do, to stand behind the name of the field; null where nothing is
 */
record Typed(OptionalDouble number, String fault) {
    private static final int LONGEST = 60;
    private static final MathContext SURE = new MathContext(15);
    private static final double FOOT_M = 0.3048;
    private static final double INCH_M = 0.0254;
    /** Whole number and fraction, fraction alone, or a decimal number with groups of three; then a unit, which another amount may follow. */
    private static final Pattern AMOUNT = Pattern.compile("\\s*(?:(?:(\\d{1,6})[ -])?(\\d{1,3})/(\\d{1,3})|(\\d[\\d.,\\u00a0\\u202f\\u2009 ]*|[.,]\\d+)((?:[eE][-+]?\\d{1,3})?))"
            + "\\s*([^\\d\\s.,+-][^\\d+-]*?)?\\s*(?=[\\d.,]|$)");
    private static final Pattern GROUPS = Pattern.compile("\\d{1,3}(?:[ .,]\\d{3})+");
    private static final Pattern DECIMAL = Pattern.compile("\\d*(?:[.,]\\d*)?");
    private static final String[] FRACTIONS = {"\u00bc", " 1/4", "\u00bd", " 1/2", "\u00be", " 3/4", "\u215b", " 1/8", "\u215c", " 3/8", "\u215d", " 5/8",
        "\u215e", " 7/8", "\u2032", "'", "\u2019", "'", "\u2033", "\"", "\u201d", "\"", "''", "\"", "\u2212", "-", "\u00a0", " ", "\u202f", " ", "\u2009", " ",
        "m2", "m\u00b2", "m3", "m\u00b3", "ft2", "ft\u00b2", "ft3", "ft\u00b3"};

    /**
     * Reads what was typed.
     *
     * @param text as it was typed
     * @param unit what a bare number is in: a unit of docs/units.md, or ft, in, lb, cu ft; the answer is in SI all the same
     * @param reader decides how {@code 1,200} is meant, which is refused where it may be either
     */
    static Typed parse(String text, String unit, Reader reader) {
        Units units = Units.of(unit);
        String line = plain(text.length() > LONGEST ? "" : text.strip());
        boolean negative = line.startsWith("-");
        line = negative || line.startsWith("+") ? line.substring(1) : line;
        if (line.isEmpty() || line.isBlank()) {
            return none(text, units);
        }
        Matcher amount = AMOUNT.matcher(line);
        double sum = 0;
        double last = Double.POSITIVE_INFINITY;
        int at = 0;
        while (at < line.length()) {
            if (!amount.find() || amount.start() != at || amount.end() == at) {
                return none(text, units);
            }
            String written = amount.group(6);
            boolean alone = at == 0 && amount.end() == line.length();
            double factor = written != null ? units.factor(written) : alone ? units.factor(unit) : last == FOOT_M ? INCH_M : Double.NaN;
            if (Double.isNaN(factor)) {
                return written == null ? none(text, units) : new Typed(OptionalDouble.empty(), "\"" + Shown.of(text) + "\" is in \"" + Shown.of(written)
                        + "\", which is no unit here. Give " + units.wanted());
            }
            if (factor >= last) {
                return none(text, units); // "3 in 5 ft" is a slip, and so is "5 m 3 m"
            }
            if (amount.group(4) != null && isEither(amount.group(4).strip(), reader)) {
                String digits = amount.group(4).strip();
                return new Typed(OptionalDouble.empty(), "\"" + Shown.of(text) + "\" may mean " + digits.replace(',', '.') + " or " + digits.replace(",", "")
                        + ". Write it without the comma, with a point where decimals begin");
            }
            double value = value(amount);
            if (!Double.isFinite(value)) {
                return none(text, units);
            }
            sum += value * factor;
            last = factor;
            at = amount.end();
        }
        return Double.isFinite(sum) ? new Typed(OptionalDouble.of(rounded(negative ? -sum : sum)), null) : none(text, units);
    }

    private static Typed none(String text, Units units) {
        return new Typed(OptionalDouble.empty(), "\"" + Shown.of(text.strip()) + "\" is no number. Give " + units.wanted());
    }

    private static String plain(String text) {
        String line = text;
        for (int i = 0; i < FRACTIONS.length; i += 2) {
            line = line.replace(FRACTIONS[i], FRACTIONS[i + 1]);
        }
        return line.strip();
    }

    /** A comma before three digits is a decimal comma to some and parts thousands for others. */
    private static boolean isEither(String digits, Reader reader) {
        int comma = digits.indexOf(',');
        return reader.decimalSign() == '.' && comma > 0 && comma <= 3 && digits.charAt(0) != '0' && digits.indexOf(',', comma + 1) < 0
                && digits.indexOf('.') < 0 && digits.length() == comma + 4;
    }

    /** NaN for what is no number. */
    private static double value(Matcher amount) {
        if (amount.group(2) != null) {
            double below = Double.parseDouble(amount.group(3));
            return below == 0 ? Double.NaN : (amount.group(1) == null ? 0 : Double.parseDouble(amount.group(1))) + Double.parseDouble(amount.group(2)) / below;
        }
        String digits = amount.group(4).strip();
        int sign = Math.max(digits.lastIndexOf('.'), digits.lastIndexOf(','));
        boolean bothSigns = digits.indexOf('.') >= 0 && digits.indexOf(',') >= 0;
        boolean manyOfOne = sign >= 0 && digits.indexOf(digits.charAt(sign)) != sign;
        boolean grouped = digits.indexOf(' ') >= 0 || bothSigns || manyOfOne;
        String whole = sign < 0 || manyOfOne ? digits : digits.substring(0, sign);
        if (grouped && !GROUPS.matcher(whole).matches() || !grouped && !DECIMAL.matcher(digits).matches()) {
            return Double.NaN;
        }
        String decimals = sign < 0 || manyOfOne ? "" : digits.substring(sign + 1);
        String plain = whole.replace(" ", "").replace(".", "").replace(",", "") + "." + decimals;
        return decimals.indexOf(' ') >= 0 || plain.equals(".") ? Double.NaN : Double.parseDouble(plain + amount.group(5));
    }

    /** Without the last digits that only a change of unit brought in: 80 cm are 0.8 m, not 0.8000000000000000444. */
    private static double rounded(double value) {
        return value == 0 || Math.abs(value) > 1e15 ? value + 0.0
                : new BigDecimal(value).round(SURE).doubleValue();
    }
}
