package pairwright.rules;

import pairwright.model.Technique;
import pairwright.model.Together;

/**
 * Two placements and how they relate, for rules to read.
 *
 * @param first the first placement
 * @param second the second
 * @param technique how they relate
 * @param known whether the trade uses this pair at this source with these types
 * @param knownShare 1 for the types named first in that pair, less for later ones; 0 where it is not known
 * @param asked whether the question named this technique
 * @param why what the two add to each other here, from the catalogue; empty where it says nothing
 * @param secondInverted whether the second channel is inverted
 * @param unitsKnown whether it is a stereo pair of two units of one type that are at hand
 * @param matchedPair whether those two were matched
 * @param together what they do together
 */
public record Paired(
        Placed first,
        Placed second,
        Technique technique,
        boolean known,
        double knownShare,
        boolean asked,
        String why,
        boolean secondInverted,
        boolean unitsKnown,
        boolean matchedPair,
        Together together) {

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return first.index() * 31 + second.index();
    }
}
