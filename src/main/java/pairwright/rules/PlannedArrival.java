package pairwright.rules;

/**
 * A source that two lines of a plan hear, one later than the other.
 *
 * @param seat whose sound it is
 * @param near the line it reaches first
 * @param far the line it reaches later
 * @param own whether both are microphones of that seat
 * @param stereo whether the two are a stereo pair, or are meant to hear different things
 * @param depth whether the later one stands well back for the sake of the room
 * @param delayMs how much later
 * @param firstNullHz first cancellation of their sum at one polarity; null where they are equally far
 * @param rippleDb peak to dip of that sum
 * @param distanceRatio farther over nearer
 * @param inverted whether the two see opposite sides of what moves
 * @param wired whether one of the two is a lead or a pickup, which has no place that a hand could move
 */
public record PlannedArrival(String seat, String near, String far, boolean own, boolean stereo, boolean depth, double delayMs, Double firstNullHz,
        double rippleDb, double distanceRatio, boolean inverted, boolean wired) implements PlanFact {
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
