package pairwright.rules;

/**
 * What a line of a plan hears of one other seat.
 *
 * @param line its number in words
 * @param seat whose line it is
 * @param other who else is heard in it
 * @param distant whether it stands where the room is as loud as its source, so that it is there to hear more than that
 * @param most whether the line hears nobody else more
 * @param distanceM from the microphone to the other
 * @param aimDegrees turned off the line to its own source
 * @param screenDb what a gobo between takes from the octave of the other that is strongest there
 * @param separationDb own over other, both as picked up
 * @param loudestHz the octave in which most of the other is heard
 * @param roomLeftDb how much better it could be if nothing came straight; null in the open air
 * @param turnGainDb how much better it is than with the microphone straight at its own source
 * @param betterAimDegrees the turn of those its place allows that keeps this one lowest
 * @param betterGainDb how much better it would be then; 0 where it is turned so
 * @param highPassHz a high-pass that its own source does not miss; null for none
 * @param underHighPass whether that high-pass takes the octave in which most of the other is heard
 */
public record PlannedHearing(String line, String seat, String other, boolean distant, boolean most, double distanceM, double aimDegrees, double screenDb,
        double separationDb, double loudestHz, Double roomLeftDb, double turnGainDb,
        double betterAimDegrees, double betterGainDb, Double highPassHz, boolean underHighPass) implements PlanFact {
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
