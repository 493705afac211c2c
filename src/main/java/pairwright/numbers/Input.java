package pairwright.numbers;

import java.util.List;

/**
 * One thing a calculation asks for. An input that is neither required nor has a usual value may be left out.
 *
 * @param name ends in its unit
 * @param unit as printed; "1" for a number without one, null for a word
 * @param says what is meant
 * @param kind what may be given
 * @param least the least number, itself allowed; null for a word
 * @param most the greatest number, itself allowed; null for a word
 * @param choices the words that may be given; empty where a number is
 * @param required whether there is no answer without it
 * @param usual what is taken when it is left out: a number, a word or a list; null for nothing
 */
public record Input(String name, String unit, String says, InputKind kind, Double least, Double most, List<String> choices,
        boolean required, Object usual) {

    static Input number(String name, String unit, double least, double most, String says) {
        return new Input(name, unit, says, InputKind.NUMBER, least, most, List.of(), true, null);
    }

    static Input whole(String name, int least, int most, String says) {
        return new Input(name, "1", says, InputKind.WHOLE_NUMBER, (double) least, (double) most, List.of(), true, null);
    }

    static Input numbers(String name, String unit, double least, double most, String says) {
        return new Input(name, unit, says, InputKind.NUMBERS, least, most, List.of(), true, null);
    }

    static Input word(String name, String says, String... choices) {
        return new Input(name, null, says, InputKind.WORD, null, null, List.of(choices), true, null);
    }

    static Input pattern(String says) {
        return new Input("pattern", "1", says + " Or the omni part A of A + (1 - A) cos(angle).", InputKind.PATTERN, 0.0, 1.0,
                Pickup.words(), true, null);
    }

    /** The same, not required, with what is taken when it is left out. */
    Input usually(Object value) {
        return new Input(name, unit, says, kind, least, most, choices, false, value instanceof Integer whole ? whole.doubleValue() : value);
    }

    /** The same, not required. */
    Input optional() {
        return new Input(name, unit, says, kind, least, most, choices, false, null);
    }

    /** What may be given, in words. */
    String allowed() {
        String range = least == null ? "" : "from " + Figures.of(least) + " to " + Figures.of(most) + (unit.equals("1") ? "" : " " + unit);
        return switch (kind) {
            case NUMBER -> "a number " + range;
            case WHOLE_NUMBER -> "a whole number " + range;
            case NUMBERS -> "a list of at most " + Inputs.MOST_ENTRIES + " numbers " + range;
            case WORD -> "one of " + String.join(", ", choices);
            case PATTERN -> "one of " + String.join(", ", choices) + ", or a number " + range;
        };
    }
}
