package pairwright.lab;

import java.util.Map;
import java.util.OptionalDouble;

/** A number as somebody wrote it, brought to the unit it was asked in. */
public final class Reckoned {
    /** By the unit asked for, what others of its kind are worth in it. */
    private static final Map<String, Map<String, Double>> WORTH = Map.of(
            "m", Map.of("m", 1.0, "cm", 0.01, "mm", 0.001),
            "cm", Map.of("cm", 1.0, "m", 100.0, "mm", 0.1),
            "ms", Map.of("ms", 1.0, "s", 1000.0, "\u00b5s", 0.001),
            "Hz", Map.of("hz", 1.0, "khz", 1000.0),
            "ohm", Map.of("ohm", 1.0, "kohm", 1000.0, "\u03c9", 1.0, "k\u03c9", 1000.0),
            "mA", Map.of("ma", 1.0, "a", 1000.0),
            "degrees", Map.of("degrees", 1.0, "degree", 1.0, "\u00b0", 1.0),
            "samples", Map.of("samples", 1.0, "sample", 1.0));

    private Reckoned() {
    }

    /** Empty where it is no number, or carries a unit that is none of its kind. */
    public static OptionalDouble in(String unit, Answer answer, String item) {
        OptionalDouble number = answer.number(item, 0);
        String written = answer.unit(item).toLowerCase(java.util.Locale.ROOT);
        if (number.isEmpty() || written.isEmpty()) {
            return number;
        }
        Double worth = unit.startsWith("dB") && written.startsWith("db") ? Double.valueOf(1) : WORTH.getOrDefault(unit, Map.of()).get(written);
        return worth == null ? OptionalDouble.empty() : OptionalDouble.of(number.getAsDouble() * worth);
    }
}
