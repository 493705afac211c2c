package pairwright.model;

import java.util.List;

/**
 * How the placements of an option relate.
 *
 * @param id kebab case
 * @param name as it stands on a set-up sheet
 * @param says how to set it up and what it gives
 * @param words other names
 * @param arrangement the geometry
 * @param stereo whether it makes a stereo picture
 * @param sameType whether both must be of one type
 * @param firstPatterns patterns the first may have; empty for any
 * @param secondPatterns patterns the second may have; empty for any
 * @param spacingM between the capsules; null where the positions say
 * @param includedDegrees between the two axes; null where it does not apply
 * @param invertSecond whether the second channel is inverted
 * @param care what goes wrong if done carelessly
 * @param confidence how sure
 * @param basis what the figures rest on
 */
public record Technique(
        String id,
        String name,
        String says,
        List<String> words,
        Arrangement arrangement,
        boolean stereo,
        boolean sameType,
        List<Pattern> firstPatterns,
        List<Pattern> secondPatterns,
        Double spacingM,
        Double includedDegrees,
        boolean invertSecond,
        List<String> care,
        Confidence confidence,
        List<Rests> basis) {
}
