package pairwright.model;

import java.util.List;

/**
 * A pair the trade uses at a source.
 *
 * @param technique id of the technique
 * @param first where the first microphone goes and what is used there
 * @param second the same for the second
 * @param why what the two add to each other
 */
public record PairRecipe(String technique, Part first, Part second, String why) {
    /**
     * One half of a pair.
     *
     * @param position id of a position of the source
     * @param micTypes types in the order they are reached for; empty for any
     */
    public record Part(String position, List<String> micTypes) {
    }
}
