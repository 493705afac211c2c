package pairwright.rules;

/**
 * A bank of channels as a plan uses it.
 *
 * @param bank its name
 * @param phantom whether phantom power is on
 * @param drawnMa by what needs it
 * @param supplyMa what there is; null for unknown
 * @param usedShare of it that is drawn, and more than 1 where it is too little; null for unknown
 */
public record PlannedBank(String bank, boolean phantom, double drawnMa, Double supplyMa, Double usedShare) implements PlanFact {
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
