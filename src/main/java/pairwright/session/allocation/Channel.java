package pairwright.session.allocation;

/**
 * A channel.
 *
 * @param bank index of the bank in the problem
 * @param channel index of the channel in the bank
 */
public record Channel(int bank, int channel) {
}
