package pairwright.acoustics;

/**
 * Bass rise of a directional microphone close to a source: the pressure-gradient part of the pattern grows by
 * {@code 1 + 1/(j k r)} in a spherical wave. Distances are from the acoustic centre of the source to the capsule, which sits one
 * to five centimetres behind the grille. This is the change, not the response: many close microphones have a built-in bass cut.
 * Sources larger than the distance and dual diaphragms rise less. Source: Eargle, The Microphone Book; Beranek, Acoustics.
 */
public final class Proximity {
    /** What a planner should count on at most. Trade practice, 16 to 18 dB. */
    public static final double PLANNING_CAP_DB = 16;

    private Proximity() {
    }

    /**
     * Rise against the same angle far away, {@code 10 lg(1 + (B cos angle / (k r (A + B cos angle)))^2)} dB with
     * {@code B = 1 - A} and {@code k = 2 pi f / c}; metres, hertz, degrees. None for an omni, none at 90 degrees for any
     * pattern; positive infinity exactly at any other null, where there is nothing far away to compare with.
     */
    public static double boostDb(double coefficient, double distanceM, double frequencyHz, double angleDegrees) {
        double ratio = nearFieldRatio(coefficient, distanceM, frequencyHz, angleDegrees);
        return Decibels.ofPowerRatio(1 + ratio * ratio);
    }

    /**
     * What the curve of the wave adds, a quarter turn late, against what is heard far away at that angle:
     * {@code B cos angle / (k r (A + B cos angle))}. On the axis the corner frequency over the frequency. 0 where the gradient hears
     * nothing; infinite at a null.
     */
    public static double nearFieldRatio(double coefficient, double distanceM, double frequencyHz, double angleDegrees) {
        double response = FirstOrder.response(coefficient, angleDegrees);
        double gradient = response - coefficient;
        double waveNumberDistance = waveNumber(frequencyHz) * Check.distanceM("distanceM", distanceM);
        // first: a figure-8 at 90 degrees has no response either
        return gradient == 0 ? 0 : gradient / (waveNumberDistance * response);
    }

    /** {@link #boostDb} and no more than {@link #PLANNING_CAP_DB}; dB, metres, hertz, degrees. */
    public static double cappedBoostDb(double coefficient, double distanceM, double frequencyHz, double angleDegrees) {
        return Math.min(boostDb(coefficient, distanceM, frequencyHz, angleDegrees), PLANNING_CAP_DB);
    }

    /** The frequency below which the rise on the axis exceeds 3 dB, {@code (1 - A) c / (2 pi r)} Hz; 0 for an omni. */
    public static double cornerHz(double coefficient, double distanceM) {
        Check.fraction("coefficient", coefficient);
        Check.distanceM("distanceM", distanceM);
        return (1 - coefficient) * Delay.SPEED_OF_SOUND_M_PER_S / (2 * Math.PI * distanceM);
    }

    private static double waveNumber(double frequencyHz) {
        return 2 * Math.PI * Check.frequencyHz("frequencyHz", frequencyHz) / Delay.SPEED_OF_SOUND_M_PER_S;
    }
}
