package pairwright.lab;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What was drawn for an exercise: all that is kept of it, so that it can be made again.
 *
 * @param said by name, in the order they were drawn
 */
public record Case(Map<String, List<String>> said) {
    /** How cases are written down; one that is read with another number is refused. */
    public static final int FORMAT = 1;

    public Case {
        Map<String, List<String>> copy = new LinkedHashMap<>();
        said.forEach((name, values) -> copy.put(name, List.copyOf(values)));
        said = java.util.Collections.unmodifiableMap(copy);
    }

    /** A case in which nothing is said yet. */
    public static Case empty() {
        return new Case(Map.of());
    }

    /** The same with one thing more. */
    public Case with(String name, List<String> values) {
        Map<String, List<String>> more = new LinkedHashMap<>(said);
        more.put(name, values);
        return new Case(more);
    }

    /** The same with one thing more. */
    public Case with(String name, String value) {
        return with(name, List.of(value));
    }

    /** The same with a number more. */
    public Case with(String name, double number) {
        return with(name, Double.toString(number));
    }

    /** What was said under a name; none where nothing was. */
    public List<String> all(String name) {
        return said.getOrDefault(name, List.of());
    }

    /** @throws IllegalArgumentException where not just one thing was said under that name */
    public String one(String name) {
        List<String> all = all(name);
        if (all.size() != 1) {
            throw new IllegalArgumentException("The case of an exercise says " + all + " of \"" + name + "\", where one thing is needed");
        }
        return all.get(0);
    }

    /** @throws IllegalArgumentException where no number was said under that name */
    public double number(String name) {
        try {
            return Double.parseDouble(one(name));
        } catch (NumberFormatException word) {
            throw new IllegalArgumentException("The case of an exercise says \"" + one(name) + "\" of \"" + name + "\", where a number is needed", word);
        }
    }
}
