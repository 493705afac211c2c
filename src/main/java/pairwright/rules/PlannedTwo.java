package pairwright.rules;

/**
 * What two seats get of whom the line-up says how they shall sound beside each other. Of two microphones at one seat the first counts.
 *
 * @param firstSeat what people call the one
 * @param secondSeat what people call the other
 * @param apart whether the two shall be told apart; else they are one section, which shall sound alike
 * @param sameType whether both get a microphone of one type
 * @param sameTechnique whether both are taken in the same way: one microphone, or two by one technique
 * @param contrastDb how much they differ in tone, level apart: of two that shall be told apart what is recorded, of a section what the
 *     microphones and their places add
 * @param contrastShare of a clear difference: 0 for none, 1 from the catalogue's clear-contrast on
 * @param alikeShare of sounding alike: 1 with no difference, 0 from its no-contrast on
 */
public record PlannedTwo(String firstSeat, String secondSeat, boolean apart, boolean sameType, boolean sameTechnique, double contrastDb,
        double contrastShare, double alikeShare) implements PlanFact {
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
