package pairwright.rules;

/**
 * A plan as a whole. Lists are names in one text, empty for none.
 *
 * @param ribbons lines with a passive ribbon
 * @param powered lines with phantom power on
 * @param valves types whose microphone has a supply of its own, and for whom
 * @param lastOnes must-haves with a unit of which no other of its type is left
 * @param loudestPlace the seat at which the others together are loudest; empty where that is not known
 * @param exposureDba how loud they are there
 * @param allowedHours how long a day that may last by the 85 dBA, 3 dB rule; 24 at the most
 * @param spareChannels channels that are left; null where they are not counted
 * @param openLines how many there are
 * @param openRiseDb how much more of room and noise they bring together than one of them
 */
public record PlannedWhole(String ribbons, String powered, String valves, String lastOnes, String loudestPlace, double exposureDba,
        double allowedHours, Integer spareChannels, int openLines, double openRiseDb) implements PlanFact {
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
