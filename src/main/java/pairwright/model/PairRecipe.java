package pairwright.model;

import java.util.List;

/**
 * A pair the trade uses at a source.
 *
 * @param technique id of the technique
 * @param first where the first microphone goes and what is used there
 * @param second the same for the second
 * @param seldom whether it works but is not what the trade reaches for, so that custom speaks neither for nor against it
 * @param why what the two add to each other
 */
public record PairRecipe(String technique, Part first, Part second, boolean seldom, String why) {
    /**
     * One half of a pair.
     *
     * @param position id of a position of the source
     * @param micTypes types in the order they are reached for; empty for any
     */
    public record Part(String position, List<String> micTypes) {
    }
}
