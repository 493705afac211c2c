package pairwright.listen;

import java.util.List;
import pairwright.acoustics.OctaveCurve;

/**
 * What two tracks of one performance show of each other.
 *
 * @param first what the one is called
 * @param second what the other is called
 * @param stereo whether they are the two channels of one recording
 * @param durationS of what both have
 * @param rateHz samples a second
 * @param laterFrames by how many samples the second hears the same later; earlier where below 0
 * @param laterMs the same in milliseconds
 * @param wayM the same as a way through the air
 * @param rivalFrames another delay that fits about as well, so that neither is a fact; null for none
 * @param inverted whether the second is the other way up; null for not sure
 * @param marginDb by how much that fits better than the contrary
 * @param commonShare how much of the two belongs together, all frequencies by their power
 * @param coherence the same octave by octave, 0 to 1
 * @param differenceDb level of the second over the first
 * @param differenceOctavesDb the same octave by octave
 * @param sumDb both together as they are, octave by octave, over what two strangers of these levels would give: up to 3 dB where they add, below 0 where they cancel
 * @param flippedDb the same with the second the other way up
 * @param alignedDb the same moved over one another, and the right way up
 * @param alignedGainDb how much louder, A-weighted, both together are once moved over one another and the right way up
 * @param combs where both together have a hole, the lowest first
 * @param correlationShare of the two as they are, -1 to 1: what a correlation meter shows
 * @param correlationOctavesShare the same octave by octave
 * @param curve both and their sum, by frequency, for a picture
 */
public record PairHeard(String first, String second, boolean stereo, double durationS, double rateHz, double laterFrames, double laterMs, double wayM, Double rivalFrames, Boolean inverted, double marginDb,
        double commonShare, OctaveCurve coherence, double differenceDb, OctaveCurve differenceOctavesDb, OctaveCurve sumDb, OctaveCurve flippedDb, OctaveCurve alignedDb,
        double alignedGainDb, List<Comb> combs, double correlationShare, OctaveCurve correlationOctavesShare, List<Point> curve) {
    /** Below this the two are strangers: no delay between them means anything. */
    private static final double STRANGERS_SHARE = 0.1;

    /** What is softer than the loudest of both by more is no part of the music. */
    private static final double HEARD_DB = -50;

    public PairHeard {
        combs = List.copyOf(combs);
        curve = List.copyOf(curve);
    }

    /** Whether the two hear the same at all. */
    public boolean related() {
        return commonShare >= STRANGERS_SHARE;
    }

    /** Whether an octave has so much of either that anything can be told of it. */
    public boolean heard(int band) {
        return curve.stream().filter(point -> point.frequencyHz() >= Bands.lowestHz(band) && point.frequencyHz() <= Bands.highestHz(band))
                .anyMatch(point -> Math.max(point.firstDb(), point.secondDb()) > HEARD_DB);
    }

    /** What differs between the two over what they share, in decibels of power: the side of a stereo recording over its middle. */
    public double sideDb() {
        double louder = Math.pow(10, differenceDb / 10);
        double shared = 2 * correlationShare * Math.sqrt(louder);
        return Bands.db((1 + louder - shared) / Math.max(1e-9, 1 + louder + shared));
    }

    /**
     * A hole in the sum.
     *
     * @param depthDb below what two strangers of these levels would give
     */
    public record Comb(double frequencyHz, double depthDb) {
    }

    /**
     * A point of the picture, levels against the loudest of both.
     *
     * @param firstDb one alone
     * @param secondDb the other alone
     * @param sumDb both together
     * @param flippedDb both together, the second the other way up
     */
    public record Point(double frequencyHz, double firstDb, double secondDb, double sumDb, double flippedDb) {
    }
}
