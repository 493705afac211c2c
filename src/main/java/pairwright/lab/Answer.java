package pairwright.lab;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a bench answered, as it was written down.
 *
 * @param given by item: the id of an option, several, all in their order; a number; x, y and aim of a spot
 */
public record Answer(Map<String, List<String>> given) {
    public static final Answer NOTHING = new Answer(Map.of());
    private static final Pattern NUMBER = Pattern.compile("([-+\u2212]?\\d{1,9}(?:[.,]\\d{1,18})?)\\s*([\\p{L}%\u00b0/]*)");

    public Answer {
        Map<String, List<String>> copy = new LinkedHashMap<>();
        given.forEach((item, values) -> copy.put(item, values.stream().map(String::strip).filter(value -> !value.isEmpty()).toList()));
        given = java.util.Collections.unmodifiableMap(copy);
    }

    /** The same with one item answered. */
    public Answer with(String item, List<String> values) {
        Map<String, List<String>> more = new LinkedHashMap<>(given);
        more.put(item, values);
        return new Answer(more);
    }

    /** The same with one item answered. */
    public Answer with(String item, String value) {
        return with(item, List.of(value));
    }

    /** The same with a number. */
    public Answer with(String item, double number) {
        return with(item, java.math.BigDecimal.valueOf(number).toPlainString());
    }

    public List<String> all(String item) {
        return given.getOrDefault(item, List.of());
    }

    /** The one thing that was answered; null for nothing, and for more than one. */
    public String one(String item) {
        return all(item).size() == 1 ? all(item).get(0) : null;
    }

    /** The number that was answered, in whatever unit; a comma is a point here. Empty where it is none. */
    public OptionalDouble number(String item, int which) {
        Matcher number = which < all(item).size() ? NUMBER.matcher(all(item).get(which)) : null;
        return number == null || !number.matches() ? OptionalDouble.empty()
                : OptionalDouble.of(Double.parseDouble(number.group(1).replace(',', '.').replace('\u2212', '-')));
    }

    /** The unit that was written behind a number; empty for none. */
    public String unit(String item) {
        Matcher number = all(item).isEmpty() ? null : NUMBER.matcher(all(item).get(0));
        return number == null || !number.matches() ? "" : number.group(2);
    }
}
