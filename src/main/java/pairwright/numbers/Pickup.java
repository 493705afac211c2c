package pairwright.numbers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.acoustics.FirstOrder;
import pairwright.model.Pattern;

/**
 * A pickup pattern somebody named.
 *
 * @param name its word, or "pattern with omni part 0.37"
 * @param coefficient its omni part, 0 to 1
 */
record Pickup(String name, double coefficient) {
    private static final Map<String, Double> COEFFICIENTS = coefficients();

    private static Map<String, Double> coefficients() {
        Map<String, Double> known = new LinkedHashMap<>();
        known.put(Pattern.OMNI.id(), FirstOrder.OMNI);
        known.put(Pattern.WIDE_CARDIOID.id(), FirstOrder.WIDE_CARDIOID);
        known.put(Pattern.CARDIOID.id(), FirstOrder.CARDIOID);
        known.put(Pattern.SUPERCARDIOID.id(), FirstOrder.SUPERCARDIOID);
        known.put(Pattern.HYPERCARDIOID.id(), FirstOrder.HYPERCARDIOID);
        known.put(Pattern.FIGURE_8.id(), FirstOrder.FIGURE_EIGHT);
        return known;
    }

    static List<String> words() {
        return List.copyOf(COEFFICIENTS.keySet());
    }

    static Pickup of(String word) {
        return new Pickup(word, COEFFICIENTS.get(word));
    }

    static Pickup of(double coefficient) {
        return new Pickup("pattern with omni part " + Figures.of(coefficient), coefficient);
    }
}
