package pairwright.search;

import java.util.List;
import java.util.Map;

/** Cuts phrases into words while a reader is built: many are wanted twice, and cutting is what takes the time. */
final class Cutter {

    private final Map<String, List<Token>> cut;

    /** @param known phrases that were cut before; those that are cut now are added */
    Cutter(Map<String, List<Token>> known) {
        cut = known;
    }

    List<Token> tokens(String phrase) {
        return cut.computeIfAbsent(phrase, Text::tokens);
    }
}
