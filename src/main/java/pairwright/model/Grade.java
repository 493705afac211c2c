package pairwright.model;

import java.util.List;

/**
 * What it takes to say that a locker serves a source well, or at least poorly.
 *
 * @param id well or poorly
 * @param name as a table says it
 * @param says what is meant
 * @param leastPoints the least score of what is at hand
 * @param mostBehindPoints how far that may be behind the best with the whole catalogue; null for any distance
 * @param decidingPoints a single reason against it of so many points is too much; null where none is
 * @param why why the figures are what they are
 * @param confidence how sure
 * @param basis what the figures rest on
 */
public record Grade(
        String id,
        String name,
        String says,
        double leastPoints,
        Double mostBehindPoints,
        Double decidingPoints,
        String why,
        Confidence confidence,
        List<Rests> basis) {
}
