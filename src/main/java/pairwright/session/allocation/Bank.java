package pairwright.session.allocation;

import java.util.List;
import pairwright.locker.PhantomSwitch;

/**
 * Channels that share a supply of phantom power.
 *
 * @param name unlike that of any other
 * @param phantom what one switch reaches
 * @param channels the group of each channel, in their order
 * @param supplyTenthMa what it supplies in all, tenths of a milliampere; null where that is enough for whatever is plugged in
 * @param channelTenthMa what it supplies to one channel; null where that is enough
 */
public record Bank(String name, PhantomSwitch phantom, List<String> channels, Integer supplyTenthMa, Integer channelTenthMa) {
    /** @throws IllegalArgumentException for a current below 0 */
    public Bank {
        channels = List.copyOf(channels);
        if (supplyTenthMa != null && supplyTenthMa < 0 || channelTenthMa != null && channelTenthMa < 0) {
            throw new IllegalArgumentException("Bank " + name + " supplies less than nothing. Give 0 or more, or leave it out");
        }
    }
}
