package pairwright.model;

import java.util.List;

/**
 * How sure an answer is, found by drawing what is not known for certain within its range and judging the best set-ups again each time.
 *
 * @param draws how often
 * @param setUps how many set-ups were judged each time
 * @param exactlyFirstShare how often the very types and places of the first option came first, 0 to 1
 * @param otherFirstShare how often an idea that is not shown came first, 0 to 1
 * @param turns what would put another idea first if it alone were known better; nearest to the usual first, at most three
 * @param says all of it in a sentence
 */
public record Sureness(int draws, int setUps, double exactlyFirstShare, double otherFirstShare, List<Turn> turns, String says) {
    /**
     * One unknown that decides.
     *
     * @param unknown what is not known: level, source-tone, reverberation, neighbour-level, type-tone, type-limit, type-noise,
     *     type-sensitivity, place-tone
     * @param of the neighbour, type or position it belongs to; null for the source and the room
     * @param above whether the lead changes above the threshold; else below
     * @param threshold where it changes
     * @param usual what was reckoned with
     * @param unit of both
     * @param leads the rank of the option whose idea leads then; null for one that is not shown
     * @param leader what leads then, in a few words
     * @param says the same in a sentence
     */
    public record Turn(String unknown, String of, boolean above, double threshold, double usual, String unit, Integer leads, String leader, String says) {
    }
}
