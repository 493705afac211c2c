package pairwright.model;

/**
 * Another source that plays at the same time.
 *
 * @param source its id
 * @param distanceM from the microphone
 * @param angleDegrees at the microphone, between the source that is recorded and the neighbour: 180 is behind the microphone
 */
public record Neighbour(String source, double distanceM, double angleDegrees) {
    /** Nearer than this two sources are one. */
    public static final double LEAST_DISTANCE_M = 0.05;
    /** Farther than this nothing is a neighbour. */
    public static final double MOST_DISTANCE_M = 200;
}
