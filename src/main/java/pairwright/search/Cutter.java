package pairwright.search;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Cuts phrases into words while a reader is built: many are wanted twice, and cutting is what takes the time. */
final class Cutter {

    private final Map<String, List<Token>> cut = new HashMap<>();

    List<Token> tokens(String phrase) {
        return cut.computeIfAbsent(phrase, Text::tokens);
    }
}
