package pairwright.model;

import java.util.List;

/**
 * A question back, where words may mean more than one thing or are not known.
 *
 * @param words as they stand in the sentence
 * @param says what is unclear and what was made of it, in sentences
 * @param choices what may be meant, best first; never empty
 */
public record Ask(String words, String says, List<Choice> choices) {

    public Ask {
        choices = List.copyOf(choices);
    }

    /**
     * One thing that may be meant.
     *
     * @param say the words that mean it and nothing else
     * @param as source, way, room, character, circumstance, neighbour, technique, limit
     * @param id the entry
     * @param name its name
     */
    public record Choice(String say, String as, String id, String name) {
    }
}
