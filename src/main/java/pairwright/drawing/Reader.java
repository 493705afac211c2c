package pairwright.drawing;

import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;

/** Who reads: in which measures, and with which decimal sign. Values stay SI; only what is shown changes. */
public final class Reader {
    /** Metres, with a decimal point. */
    public static final Reader METRIC = new Reader(false, Locale.UK);

    private static final int MOST_DECIMALS = 9;
    private static final double[] TENS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};
    private static final double CENTIMETRES = 0.995;

    private final boolean imperial;
    private final Locale locale;
    private final char decimalSign;

    /**
     * @param imperial feet, inches and pounds rather than metres and kilograms
     * @param locale decides the decimal sign, a point or a comma, and how a date is written
     */
    public Reader(boolean imperial, Locale locale) {
        this.imperial = imperial;
        this.locale = locale;
        this.decimalSign = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator() == ',' ? ',' : '.';
    }

    /** Whether in feet, inches and pounds. */
    public boolean imperial() {
        return imperial;
    }

    /** Whose decimal sign and dates. */
    public Locale locale() {
        return locale;
    }

    /** Between the whole number and the rest: a point or a comma. */
    public char decimalSign() {
        return decimalSign;
    }

    /** A distance as one reads it off a tape: "3.5 cm", "45 cm", "1.2 m", "12 m", or "1 1/4 in", "18 in", "5 ft 3 in". */
    public String distance(double metres) {
        if (imperial) {
            return Tape.of(metres, this).words();
        }
        double size = Math.abs(metres);
        if (size > 0 && size < 0.01) {
            return number(metres * 1000, size < 0.001 ? 2 : 1) + " mm";
        }
        return size < CENTIMETRES ? number(metres * 100, size < 0.0995 ? 1 : 0) + " cm" : number(metres, size < 9.95 ? 1 : 0) + " m";
    }

    /** A mass: "250 g", "2.5 kg", or "9 oz", "5.5 lb". */
    public String mass(double kilograms) {
        double size = Math.abs(kilograms);
        if (imperial) {
            double pounds = kilograms / Tape.POUND_KG;
            return size > 0 && size < Tape.POUND_KG ? number(pounds * Tape.OUNCES, size < Tape.POUND_KG / 2 ? 1 : 0) + " oz"
                    : number(pounds, Math.abs(pounds) < 20 ? 1 : 0) + " lb";
        }
        return size > 0 && size < 0.9995 ? number(kilograms * 1000, 0) + " g" : number(kilograms, size < 19.95 ? 1 : 0) + " kg";
    }

    /** An area: "12 m2", or "130 sq ft". */
    public String area(double squareMetres) {
        return imperial ? figure(squareMetres / (Tape.FOOT_M * Tape.FOOT_M), 3) + " sq ft" : figure(squareMetres, 3) + " m2";
    }

    /** A volume: "80 m3", or "2830 cu ft". */
    public String volume(double cubicMetres) {
        return imperial ? figure(cubicMetres / (Tape.FOOT_M * Tape.FOOT_M * Tape.FOOT_M), 3) + " cu ft" : figure(cubicMetres, 3) + " m3";
    }

    /** A frequency: "250 Hz", "2.5 kHz", "12 kHz". */
    public String frequency(double hertz) {
        double size = Math.abs(hertz);
        return size < 995 ? number(hertz, 0) + " Hz" : number(hertz / 1000, size < 9950 ? 1 : 0) + " kHz";
    }

    /** A number with at most so many decimals, 0 to 9, none of them a trailing nought; never in powers of ten. */
    public String number(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return value > 0 ? "without end" : value < 0 ? "-without end" : "?";
        }
        return signed(Plain.number(value, Math.min(decimals, MOST_DECIMALS)));
    }

    /** A number with so many digits that say something, 1 to 9: 48000, 343.2, 0.0123. */
    public String figure(double value, int digits) {
        if (value == 0 || !Double.isFinite(value)) {
            return number(value, 0);
        }
        int whole = (int) Math.floor(Math.log10(Math.abs(value))) + 1;
        if (whole > digits) {
            double step = TENS[Math.min(MOST_DECIMALS, whole - digits)];
            return number(Math.rint(value / step) * step, 0);
        }
        return number(value, digits - whole);
    }

    /**
     * A number with its unit, rounded as far as anybody would trust it.
     *
     * @param unit as in docs/units.md and {@code Value}: m, Hz, dB SPL ..., 1 for none
     */
    public String value(double value, String unit) {
        double size = Math.abs(value);
        return switch (unit) {
            case "m" -> distance(value);
            case "kg" -> mass(value);
            case "m2" -> area(value);
            case "m3" -> volume(value);
            case "Hz" -> frequency(value);
            case "dB", "dB SPL", "dB(A)", "dBu", "dBV", "dBFS" -> (size < 0.95 ? number(value, 1) : size < 3 ? number(Math.round(value * 2) / 2.0, 1)
                    : number(value, 0)) + " " + unit;
            case "degrees", "samples", "%" -> number(value, 0) + " " + unit;
            case "ohm" -> size < 1000 ? number(value, 0) + " ohm" : size < 1e6 ? number(value / 1000, 1) + " kohm" : number(value / 1e6, 1) + " Mohm";
            case "h" -> hours(value);
            case "min" -> number(value, 0) + " min";
            case "1" -> number(value, size < 0.995 ? 2 : 1);
            default -> number(value, size < 10 ? 1 : 0) + " " + unit;
        };
    }

    /** A day: "25 Nov 2026", "25.11.2026". */
    public String date(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale).format(day);
    }

    /** The day of a moment, where that moment is told. */
    public String date(OffsetDateTime moment) {
        return date(moment.toLocalDate());
    }

    /**
     * An English sentence of this program with the lengths, masses and temperatures in it in this reader's measures, and with this reader's
     * decimal sign. Everything else stays as it is, and for metres and a decimal point the sentence itself comes back.
     */
    public String sentence(String says) {
        if (says == null || !imperial && decimalSign == '.') {
            return says;
        }
        return signed(imperial ? Tape.inside(says, this) : says);
    }

    /** A formula or a step, which is worked in SI and so changes nothing but its decimal signs. */
    public String figures(String line) {
        return decimalSign == '.' ? line : signed(line);
    }

    /** Rounded down: nobody is told to stay longer than they may. */
    private String hours(double value) {
        if (value >= 1) {
            String shown = value < 5 ? number(Math.floor(value * 10) / 10, 1) : number(Math.floor(value), 0);
            return shown + (shown.equals("1") ? " hour" : " hours");
        }
        long minutes = (long) Math.floor(value * 60);
        return minutes < 1 ? "less than a minute" : minutes == 1 ? "1 minute" : minutes + " minutes";
    }

    private String signed(String text) {
        return decimalSign == '.' ? text : Plain.withSign(text, decimalSign);
    }
}
