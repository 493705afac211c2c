package pairwright.rules;

/**
 * A line whose loudest peak is over what its channel takes at its lowest gain, all pads that are in taken off.
 *
 * @param line its number in words
 * @param seat whose it is
 * @param mic the type
 * @param channel what is written on the channel
 * @param overDb by how much, with 6 dB in hand, above 0
 */
public record PlannedInput(String line, String seat, String mic, String channel, double overDb) implements PlanFact {
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
