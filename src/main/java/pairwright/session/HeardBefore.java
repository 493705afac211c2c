package pairwright.session;

import java.util.List;
import pairwright.acoustics.OctaveCurve;

/**
 * What was noted of a player before the session; it stands above the figures of the catalogue. Null for what was not noted.
 *
 * @param typicalDbSpl running level at one metre
 * @param peakDbSpl true peak at one metre, loud
 * @param toneDb against the average of the source, octave by octave
 * @param lowestHz lowest fundamental this player goes to, as by another tuning
 * @param highestHz highest fundamental
 * @param habits what to mind of how this player plays, in sentences
 */
public record HeardBefore(Double typicalDbSpl, Double peakDbSpl, OctaveCurve toneDb, Double lowestHz, Double highestHz, List<String> habits) {
    public HeardBefore {
        habits = habits == null ? List.of() : List.copyOf(habits);
    }
}
