package pairwright.locker;

/**
 * One channel of a preamplifier.
 *
 * @param bank the box or group of channels it shares its supply with; null for one that stands alone
 * @param leastGainDb its least gain; null for unknown
 * @param mostGainDb its most gain; null for unknown
 * @param inputOhm input impedance; null for unknown
 * @param noiseDbu equivalent input noise, unweighted, 150 ohm; null for unknown
 * @param phantom what its switch for phantom power reaches
 * @param phantomMa current its supply gives, for the channel or for the whole bank as the switch reaches; null for unknown
 */
public record ChannelData(String bank, Double leastGainDb, Double mostGainDb, Double inputOhm, Double noiseDbu, PhantomSwitch phantom, Double phantomMa) {
}
