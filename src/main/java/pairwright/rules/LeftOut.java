package pairwright.rules;

/**
 * A seat of a line-up that gets no microphone.
 *
 * @param seat what people call it
 * @param must whether there is no session without it
 */
public record LeftOut(String seat, boolean must) implements PlanFact {
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
