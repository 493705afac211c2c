package pairwright.sheet;

import java.util.List;
import java.util.Map;

/**
 * What a form sent.
 *
 * @param values by the names of its fields, in the order they were sent; of control characters only line breaks and tabs are left
 */
public record Sent(Map<String, List<String>> values) {
    /** Nothing at all, as on a page that was only opened. */
    public static final Sent NOTHING = new Sent(Map.of());

    /** What stands in a field of one line, without blanks around it; null for nothing. */
    public String first(String name) {
        return all(name).stream().findFirst().orElse(null);
    }

    /** Every value of a name that is not blank, each on one line. */
    public List<String> all(String name) {
        return values.getOrDefault(name, List.of()).stream().map(value -> value.replaceAll("[\n\t]", " ").strip()).filter(value -> !value.isEmpty()).toList();
    }

    /** What stands in a field of several lines, as it is; empty for nothing. */
    public String lines(String name) {
        return values.getOrDefault(name, List.of()).stream().findFirst().orElse("");
    }

    /** Whether there was such a field, be it empty. */
    public boolean has(String name) {
        return values.containsKey(name);
    }
}
