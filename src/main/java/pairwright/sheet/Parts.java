package pairwright.sheet;

import java.util.List;

/**
 * A question as controls that can be changed.
 *
 * @param words the sentence, sent along as it is; empty for none
 * @param heard what was heard of the player before, sent along as it is
 * @param sources by family
 * @param sourceKnown whether one is chosen
 * @param characters one list for each sound that is wanted, and one to add another
 * @param rooms with the one that is meant chosen; the first is empty where none was said
 * @param ways those the source knows; empty for none
 * @param dynamics how loud
 * @param neighbours one row each, and one to add another
 * @param mics how many channels
 * @param phantom whether there is phantom power
 * @param gainDb as shown; empty for the usual
 * @param usualGainDb what is taken when it is empty
 * @param noiseDbu as shown; empty for the usual
 * @param only families
 * @param without families
 * @param wishes families
 * @param types single types that are asked for or shut out
 * @param circumstances what else is said
 * @param player who plays, as the house calls them; empty for nobody named
 * @param techniques with an empty one first
 * @param options how many are shown
 */
public record Parts(
        String words,
        List<Param> heard,
        List<Choice.Group> sources,
        boolean sourceKnown,
        List<List<Choice>> characters,
        List<Choice> rooms,
        List<Choice> ways,
        List<Choice> dynamics,
        List<Row> neighbours,
        List<Choice> mics,
        List<Choice> phantom,
        String gainDb,
        String usualGainDb,
        String noiseDbu,
        List<Choice> only,
        List<Choice> without,
        List<Choice> wishes,
        List<Kept> types,
        List<Choice> circumstances,
        String player,
        List<List<Choice>> techniques,
        List<Choice> options) {

    /** Whether any of them is chosen. */
    public boolean anyChosen(List<Choice> choices) {
        return choices.stream().anyMatch(Choice::chosen);
    }

    /**
     * A type that is asked for or shut out.
     *
     * @param name of the field
     * @param value id of the type
     * @param label what it says
     */
    public record Kept(String name, String value, String label) {
    }

    /**
     * A neighbour.
     *
     * @param number from 1
     * @param name of the source; empty where one can be added
     * @param distance as the reader types it
     * @param degrees as the reader types it
     */
    public record Row(int number, String name, List<Choice.Group> sources, String distance, String degrees) {
    }
}
