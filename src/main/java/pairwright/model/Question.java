package pairwright.model;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * What is asked, after the words were understood. Ids refer to the catalogue.
 *
 * @param words the sentence as it was given; empty if none
 * @param source id; null if none was understood
 * @param ways ways of playing, those the source knows
 * @param dynamics ids of catalogue/words/dynamics.yaml
 * @param room id; null for the usual one
 * @param character ids, in the order they were said
 * @param limits what must be kept
 * @param neighbours who plays next to it
 * @param circumstances ids of catalogue/words/circumstances.yaml
 * @param techniques ids of techniques that were named
 * @param options how many are wanted
 * @param from start of the time it is needed; null for now
 * @param until end of that time; null for unknown
 * @param locker what of the locker may be used; null for what is free then
 * @param wishes families that would be welcome, in the order they were said; any other may still be answered
 * @param lifted limits of the words that no longer hold, by the names of their fields in {@link Limits}
 * @param player who plays, as the house calls them; null unless said
 * @param heard what was heard of this player before, which stands above the figures of the catalogue; null for nothing
 */
public record Question(
        String words,
        String source,
        List<String> ways,
        List<String> dynamics,
        String room,
        List<String> character,
        Limits limits,
        List<Neighbour> neighbours,
        List<String> circumstances,
        List<String> techniques,
        int options,
        OffsetDateTime from,
        OffsetDateTime until,
        FromLocker locker,
        List<MicFamily> wishes,
        List<String> lifted,
        String player,
        HeardBefore heard) {

    public Question {
        wishes = wishes == null ? List.of() : List.copyOf(wishes);
        lifted = lifted == null ? List.of() : List.copyOf(lifted);
    }

    /** With the limits of the words and what is free of a locker. */
    public Question(String words, String source, List<String> ways, List<String> dynamics, String room, List<String> character, Limits limits,
            List<Neighbour> neighbours, List<String> circumstances, List<String> techniques, int options, OffsetDateTime from, OffsetDateTime until,
            List<MicFamily> wishes) {
        this(words, source, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, from, until, null, wishes, List.of(), null, null);
    }

    /** Without a wish for a family. */
    public Question(String words, String source, List<String> ways, List<String> dynamics, String room, List<String> character, Limits limits,
            List<Neighbour> neighbours, List<String> circumstances, List<String> techniques, int options, OffsetDateTime from, OffsetDateTime until) {
        this(words, source, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, from, until, List.of());
    }

    /** The same, played by somebody. */
    public Question by(String who) {
        return new Question(words, source, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, from, until, locker, wishes,
                lifted, who, heard);
    }

    /** The same but for what is asked of the source and its surroundings. */
    public Question altered(List<String> otherWays, String otherRoom, List<String> otherCharacter, Limits otherLimits, List<Neighbour> otherNeighbours,
            List<String> otherCircumstances) {
        return new Question(words, source, otherWays, dynamics, otherRoom, otherCharacter, otherLimits, otherNeighbours, otherCircumstances, techniques,
                options, from, until, locker, wishes, lifted, player, heard);
    }

    /** The same of a player nobody heard before. */
    public Question unheard() {
        return new Question(words, source, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, from, until, locker, wishes,
                lifted, player, null);
    }
}
