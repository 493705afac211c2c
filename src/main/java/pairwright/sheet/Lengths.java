package pairwright.sheet;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths as people type them: "3", "2,5 m", "80 cm", "10 in", "3 ft", "5'6\"". */
final class Lengths {
    private static final double INCH_M = 0.0254;
    private static final double FOOT_M = 12 * INCH_M;
    private static final Map<String, Double> UNITS_M = Map.ofEntries(
            Map.entry("m", 1.0), Map.entry("metre", 1.0), Map.entry("metres", 1.0), Map.entry("meter", 1.0), Map.entry("meters", 1.0),
            Map.entry("cm", 0.01), Map.entry("mm", 0.001),
            Map.entry("in", INCH_M), Map.entry("inch", INCH_M), Map.entry("inches", INCH_M), Map.entry("\"", INCH_M), Map.entry("\u2033", INCH_M),
            Map.entry("ft", FOOT_M), Map.entry("foot", FOOT_M), Map.entry("feet", FOOT_M), Map.entry("'", FOOT_M), Map.entry("\u2032", FOOT_M));
    private static final Pattern FEET_AND_INCHES =
            Pattern.compile("(\\d{1,4})\\s*(?:ft|feet|foot|'|\u2032)\\s*(\\d{1,2}(?:[.,]\\d{1,3})?)\\s*(?:in|inch|inches|\"|\u2033)?");

    private Lengths() {
    }

    /**
     * A length in metres; null for what is none.
     *
     * @param imperial whether a bare number is in feet rather than in metres
     */
    static Double metres(String text, boolean imperial) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        Matcher both = FEET_AND_INCHES.matcher(plain);
        if (both.matches()) {
            return Double.parseDouble(both.group(1)) * FOOT_M + Double.parseDouble(both.group(2).replace(',', '.')) * INCH_M;
        }
        Typed.Amount amount = Typed.amount(plain);
        if (amount == null) {
            return null;
        }
        Double unitM = amount.unit().isEmpty() ? Double.valueOf(imperial ? FOOT_M : 1) : UNITS_M.get(amount.unit());
        return unitM == null ? null : Double.valueOf(unitM == 0.01 ? amount.value() / 100 : unitM == 0.001 ? amount.value() / 1000 : amount.value() * unitM);
    }

    /** As an address says it: in metres and with the unit, so that it means the same to every reader. */
    static String written(double metres) {
        return Typed.plain(metres) + "m";
    }
}
