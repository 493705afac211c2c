package pairwright.session.allocation;

import java.util.List;
import java.util.Set;

/**
 * A plan that was checked.
 *
 * @param choices for each seat the index of its choice
 * @param centipoints what it is worth, hundredths of a point: choices and pairs, and what is kept
 * @param keptCentipoints how much of that is for what is kept
 * @param proven whether it is proven that none is worth more
 * @param boundCentipoints none is worth more than this; the same as {@code centipoints} where that is proven
 * @param outOfTime whether the search ended by the clock and not by its work, so that a faster machine may find another plan
 * @param channels for each seat the channel of each of its feeds, in their order
 * @param served for each seat the cap that each entry of {@link Choice#anyOf()} comes from, in their order
 * @param liveBanks indexes of the banks with one switch for all that must have phantom power on; the others with one switch must have it off
 */
public record Solution(List<Integer> choices, long centipoints, long keptCentipoints, boolean proven, long boundCentipoints, boolean outOfTime,
        List<List<Channel>> channels, List<List<String>> served, Set<Integer> liveBanks) {
    public Solution {
        choices = List.copyOf(choices);
        channels = channels.stream().map(List::copyOf).toList();
        served = served.stream().map(List::copyOf).toList();
        liveBanks = Set.copyOf(liveBanks);
    }

    /** The same plan where it is not proven to be the best, and none is worth more than a bound. */
    public Solution within(double boundCentipoints) {
        long bound = Math.max(centipoints, (long) Math.floor(boundCentipoints));
        return new Solution(choices, centipoints, keptCentipoints, bound == centipoints, bound, outOfTime, channels, served, liveBanks);
    }

    /** How many seats have another choice than in another plan of the same problem. */
    public int differsIn(Solution other) {
        int differing = 0;
        for (int seat = 0; seat < choices.size(); seat++) {
            differing += choices.get(seat).equals(other.choices.get(seat)) ? 0 : 1;
        }
        return differing;
    }
}
