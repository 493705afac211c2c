package pairwright.model;

import java.util.List;

/**
 * Something heard that is not wanted, and what is tried against it.
 *
 * @param id kebab case, the word people use
 * @param name as an engineer would say it
 * @param says what is heard, and where it usually comes from
 * @param words other words for it
 * @param gauge the number that shows whether it gets better
 * @param fromHz lowest octave it is heard in, for a complaint of tone; else null
 * @param toHz highest octave it is heard in, for a complaint of tone; else null
 * @param more whether more of what the gauge measures is wanted, or less
 * @param leastDb the least change worth a move
 * @param moves what is tried, cheapest first
 * @param confidence how sure
 * @param basis what it rests on
 */
public record Complaint(
        String id,
        String name,
        String says,
        List<String> words,
        Gauge gauge,
        Double fromHz,
        Double toHz,
        boolean more,
        double leastDb,
        List<Remedy> moves,
        Confidence confidence,
        List<Rests> basis) {
}
