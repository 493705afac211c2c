package pairwright.drawing;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length as one reads it off a tape in inches, and the sentences such lengths stand in.
 *
 * @param figure its number or numbers, without the unit a range can share
 * @param unit that unit: in or ft
 */
record Tape(String figure, String unit) {
    static final double INCH_M = 0.0254;
    static final double FOOT_M = 0.3048;
    static final double POUND_KG = 0.45359237;
    static final int OUNCES = 16;

    private static final int INCHES = 12;
    private static final int SIXTEENTHS = 16;
    private static final int WHOLE_FEET = 12;

    private static final String NUMBER = "\\d+(?:\\.\\d+)?";
    /** A number or a range of two, and a unit that ends there; nothing that goes on as a word, a power or a quotient. */
    private static final Pattern AMOUNT = Pattern.compile("(?<![\\w.,:/])(" + NUMBER + ")(?:( ?(?:to|or|and|by|-|\\u2013|x|\\u00d7) ?)(" + NUMBER + "))?([ -])"
            + "(mm|cm|metres?|m2|m3|m|kg|g|degrees Celsius)(?![\\w/\\u00b2\\u00b3])");

    /** A length: sixteenths of an inch, quarters, halves, inches, feet and inches, feet, as it grows. */
    static Tape of(double metres, Reader reader) {
        double size = Math.abs(metres) / INCH_M;
        String sign = metres < 0 ? "-" : "";
        if (size == 0) {
            return new Tape("0", "in");
        }
        if (size < 1.0 / 32) {
            return new Tape(sign + reader.figure(size, 1), "in");
        }
        if (size < 23.5) {
            int parts = size < 31.0 / 32 ? SIXTEENTHS : size < 5.875 ? 4 : size < 11.75 ? 2 : 1;
            return new Tape(sign + fraction(Math.round(size * parts), parts), "in");
        }
        long inches = Math.round(size);
        if (inches >= WHOLE_FEET * INCHES || inches % INCHES == 0) {
            return new Tape(sign + Math.round(size / INCHES), "ft");
        }
        return new Tape(sign + inches / INCHES + " ft " + inches % INCHES, "in");
    }

    String words() {
        return figure + " " + unit;
    }

    /** A sentence with its metric amounts in feet, inches, pounds and degrees Fahrenheit, decimal signs not yet seen to. */
    static String inside(String says, Reader reader) {
        Matcher amount = AMOUNT.matcher(says);
        StringBuilder out = null;
        while (amount.find()) {
            out = out == null ? new StringBuilder(says.length() + 32) : out;
            amount.appendReplacement(out, Matcher.quoteReplacement(told(amount, reader)));
        }
        return out == null ? says : amount.appendTail(out).toString();
    }

    private static String told(Matcher amount, Reader reader) {
        String unit = amount.group(5);
        String first = told(Double.parseDouble(amount.group(1)), unit, reader);
        if (amount.group(2) == null) {
            return first;
        }
        String second = told(Double.parseDouble(amount.group(3)), unit, reader);
        String between = amount.group(2).equals("-") || amount.group(2).equals("\u2013") ? " to " : amount.group(2);
        if (first.equals(second)) {
            return first;
        }
        int ending = unit(second);
        boolean shared = first.endsWith(second.substring(ending)) && first.indexOf(" ft ") < 0 && second.indexOf(" ft ") < 0;
        return (shared ? first.substring(0, first.length() - (second.length() - ending)) : first) + between + second;
    }

    /** Where the unit begins, with the space before it. */
    private static int unit(String amount) {
        int at = 0;
        for (int i = 0; i < amount.length(); i++) {
            at = Character.isDigit(amount.charAt(i)) ? i + 1 : at;
        }
        return at;
    }

    private static String told(double value, String unit, Reader reader) {
        return switch (unit) {
            case "mm" -> reader.distance(value / 1000);
            case "cm" -> reader.distance(value / 100);
            case "kg" -> reader.mass(value);
            case "g" -> reader.mass(value / 1000);
            case "m2" -> reader.area(value);
            case "m3" -> reader.volume(value);
            case "degrees Celsius" -> reader.number(value * 9 / 5 + 32, 0) + " degrees Fahrenheit";
            default -> reader.distance(value);
        };
    }

    /** "1 1/4", "3/16", "7". */
    private static String fraction(long count, int parts) {
        long whole = count / parts;
        long rest = count % parts;
        long below = parts;
        while (rest > 0 && rest % 2 == 0) {
            rest /= 2;
            below /= 2;
        }
        return rest == 0 ? Long.toString(whole) : (whole == 0 ? "" : whole + " ") + rest + "/" + below;
    }
}
