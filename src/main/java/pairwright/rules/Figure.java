package pairwright.rules;

import java.util.Locale;

/** Numbers as people read them. */
public final class Figure {
    private Figure() {
    }

    /**
     * A number with its unit, rounded as far as anybody would trust it.
     *
     * @param unit as {@link UnitNames} has it: m, Hz, dB SPL ...
     */
    public static String forPeople(double value, String unit) {
        double size = Math.abs(value);
        return switch (unit) {
            case "m" -> size < 0.995 ? whole(value * 100) + " cm" : (size < 10 ? tenths(value) : whole(value)) + " m";
            case "Hz" -> size < 995 ? whole(value) + " Hz" : (size < 9950 ? tenths(value / 1000) : whole(value / 1000)) + " kHz";
            case "dB", "dB SPL", "dB(A)", "dBu", "dBFS" -> (size < 0.95 ? tenths(value) : size < 3 ? halves(value) : whole(value)) + " " + unit;
            case "degrees" -> whole(value) + " degrees";
            case "ohm" -> size < 1000 ? whole(value) + " ohm"
                    : size < 1e6 ? tenths(value / 1000) + " kohm" : tenths(value / 1e6) + " Mohm";
            case "h" -> hours(value);
            case "1" -> size < 0.995 ? hundredths(value) : tenths(value);
            default -> (size < 10 ? tenths(value) : whole(value)) + " " + unit;
        };
    }

    /** Rounded down: nobody is told to stay longer than they may. */
    private static String hours(double value) {
        if (value >= 1) {
            String shown = value < 5 ? short1(Math.floor(value * 10) / 10) : whole(Math.floor(value));
            return shown + (shown.equals("1") ? " hour" : " hours");
        }
        long minutes = (long) Math.floor(value * 60);
        return minutes < 1 ? "less than a minute" : minutes == 1 ? "1 minute" : minutes + " minutes";
    }

    private static String whole(double value) {
        return Long.toString(Math.round(value));
    }

    private static String halves(double value) {
        return short1(Math.round(value * 2) / 2.0);
    }

    private static String tenths(double value) {
        return short1(Math.round(value * 10) / 10.0);
    }

    private static String hundredths(double value) {
        double rounded = Math.round(value * 100) / 100.0;
        return rounded == Math.rint(rounded) ? whole(rounded) : String.format(Locale.ROOT, "%.2f", rounded);
    }

    private static String short1(double value) {
        return value == Math.rint(value) ? whole(value) : String.format(Locale.ROOT, "%.1f", value);
    }
}
