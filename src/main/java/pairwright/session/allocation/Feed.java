package pairwright.session.allocation;

import java.util.Set;

/**
 * One signal that takes one channel.
 *
 * @param groups the groups of channels that can serve it, by gain for instance; at least one
 * @param phantom what phantom power on its channel is to it
 * @param drawTenthMa what it draws from the supply of phantom power, tenths of a milliampere, 0 or more; 0 unless it needs it
 */
public record Feed(Set<String> groups, PhantomNeed phantom, int drawTenthMa) {
    /** @throws IllegalArgumentException for no group, a current below 0 or one that is drawn without need */
    public Feed {
        groups = Set.copyOf(groups);
        if (groups.isEmpty()) {
            throw new IllegalArgumentException("A feed names no group of channels. Name at least one");
        }
        if (drawTenthMa < 0 || drawTenthMa > 0 && phantom != PhantomNeed.NEEDED) {
            throw new IllegalArgumentException("A feed with phantom power " + phantom + " draws " + drawTenthMa + " tenths of a mA. Give 0 or more, and 0 where it is not needed");
        }
    }
}
