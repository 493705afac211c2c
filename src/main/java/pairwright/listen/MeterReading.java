package pairwright.listen;

import java.util.ArrayList;
import java.util.List;
import pairwright.model.Fault;

/**
 * What a sound level meter showed on average while the recording was made.
 *
 * @param averageDb in dB SPL with its weighting
 * @param distanceM of the meter from the sounding surface
 * @param weighting A or none
 */
public record MeterReading(double averageDb, double distanceM, Weighting weighting) {
    private static final double LEAST_DB = 30;
    private static final double MOST_DB = 140;
    private static final double LEAST_M = 0.05;
    private static final double MOST_M = 30;

    /** How a meter weighs frequencies. */
    public enum Weighting {
        /** As most meters do unless told otherwise. */
        A,
        /** Not at all. */
        Z
    }

    /** Every fault of it. */
    public List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        if (!(averageDb >= LEAST_DB && averageDb <= MOST_DB)) {
            faults.add(new Fault("/averageDb", "is " + averageDb + ". Give the average that the meter showed while they played, 30 to 140 dB"));
        }
        if (!(distanceM >= LEAST_M && distanceM <= MOST_M)) {
            faults.add(new Fault("/distanceM", "is " + distanceM + ". Give how far the meter was from what sounds, 0.05 to 30 m"));
        }
        return faults;
    }
}
