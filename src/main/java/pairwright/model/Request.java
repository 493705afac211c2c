package pairwright.model;

import java.time.OffsetDateTime;
import java.util.List;

/**
 * A question as it comes in: any field may be null; explicit fields win over words. At least words or a source is needed.
 *
 * @param options how many options are wanted, 1 to 6; null for three
 * @param wishes families that would be welcome, in order; null for those of the words
 * @param lifted limits of the words that no longer hold, by the names of their fields in {@link Limits}; empty for none
 * @param locker what of the locker may be used; null for what is free then. Without a locker it changes nothing
 * @param player who plays, as the house calls them; null for nobody in particular
 * @param draws how often levels, rooms and types are drawn anew to see how sure the answer is, 0 to 1000; null for not at all
 * @param heard what was heard of the player before; null for nothing
 */
public record Request(
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
        Integer options,
        OffsetDateTime from,
        OffsetDateTime until,
        FromLocker locker,
        List<MicFamily> wishes,
        List<String> lifted,
        String player,
        Integer draws,
        HeardBefore heard) {
    /** The longest name of a player. */
    public static final int LONGEST_PLAYER = 80;
    /** How often is enough to tell one in two from two in three, and soon done. */
    public static final int USUAL_DRAWS = 200;

    public Request {
        lifted = lifted == null ? List.of() : List.copyOf(lifted);
    }

    /** With what is free of a locker. */
    public Request(String words, String source, List<String> ways, List<String> dynamics, String room, List<String> character, Limits limits,
            List<Neighbour> neighbours, List<String> circumstances, List<String> techniques, Integer options, OffsetDateTime from,
            OffsetDateTime until, List<MicFamily> wishes, List<String> lifted, Integer draws) {
        this(words, source, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, from, until, null, wishes, lifted, null, draws, null);
    }

    /** With the limits of the words. */
    public Request(String words, String source, List<String> ways, List<String> dynamics, String room, List<String> character, Limits limits,
            List<Neighbour> neighbours, List<String> circumstances, List<String> techniques, Integer options, OffsetDateTime from,
            OffsetDateTime until, List<MicFamily> wishes, Integer draws) {
        this(words, source, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, from, until, wishes, null, draws);
    }

    /** With the wishes of the words. */
    public Request(String words, String source, List<String> ways, List<String> dynamics, String room, List<String> character, Limits limits,
            List<Neighbour> neighbours, List<String> circumstances, List<String> techniques, Integer options, OffsetDateTime from,
            OffsetDateTime until, Integer draws) {
        this(words, source, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, from, until, null, draws);
    }

    /** The same, with how often to draw. */
    public Request withDraws(int times) {
        return new Request(words, source, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, from, until, locker,
                wishes, lifted, player, times, heard);
    }

    /** The same for a time and what of a locker. */
    public Request at(OffsetDateTime start, OffsetDateTime end, FromLocker use) {
        return new Request(words, source, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, start, end, use, wishes,
                lifted, player, draws, heard);
    }

    /** The same, played by somebody. */
    public Request by(String who) {
        return new Request(words, source, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, from, until, locker, wishes,
                lifted, who, draws, heard);
    }

    /** The same of a source by its id. */
    public Request of(String id, HeardBefore before) {
        return new Request(words, id, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, from, until, locker, wishes,
                lifted, player, draws, before);
    }

    /** The same of a player who was heard before. */
    public Request heard(HeardBefore before) {
        return new Request(words, source, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, from, until, locker, wishes,
                lifted, player, draws, before);
    }

    /** With all but what was heard before. */
    public Request(String words, String source, List<String> ways, List<String> dynamics, String room, List<String> character, Limits limits,
            List<Neighbour> neighbours, List<String> circumstances, List<String> techniques, Integer options, OffsetDateTime from,
            OffsetDateTime until, FromLocker locker, List<MicFamily> wishes, List<String> lifted, String player, Integer draws) {
        this(words, source, ways, dynamics, room, character, limits, neighbours, circumstances, techniques, options, from, until, locker, wishes, lifted, player, draws, null);
    }

    /** Only a sentence. */
    public static Request of(String words) {
        return new Request(words, null, null, null, null, null, null, null, null, null, null, null, null, null, null);
    }
}
