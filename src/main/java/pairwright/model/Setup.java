package pairwright.model;

import java.util.List;

/**
 * Microphones as they stand, before anything is predicted of them.
 *
 * @param technique single, or the id of a technique; null for single
 * @param mics one or two
 */
public record Setup(String technique, List<Put> mics) {
    /**
     * One microphone as it stands.
     *
     * @param micType id
     * @param pattern that is set; null for the first the type offers
     * @param position id at the source
     * @param distanceM from the sounding surface
     * @param aimDegrees turned off the line to the source; null for straight at it
     */
    public record Put(String micType, Pattern pattern, String position, Double distanceM, Double aimDegrees) {
    }

    /** The set-up of an option. */
    public static Setup of(Option option) {
        return new Setup(option.technique(), option.mics().stream()
                .map(mic -> new Put(mic.micType(), mic.pattern(), mic.position(), mic.distanceM(), mic.aimDegrees())).toList());
    }
}
