package pairwright.advice;

import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Heard;
import pairwright.model.PatternData;

/**
 * What a microphone that stands already hears of others, turned as it may be. The same arithmetic as that by which a placement is judged, so
 * the same numbers to the last digit.
 */
public final class Overheard {
    private final Bleed bleed;
    private final PatternData pattern;
    private final double atCapsuleDbSpl;

    private Overheard(Bleed bleed, PatternData pattern, double atCapsuleDbSpl) {
        this.bleed = bleed;
        this.pattern = pattern;
        this.atCapsuleDbSpl = atCapsuleDbSpl;
    }

    /**
     * At one place.
     *
     * @param spectrumDb of its own source as it is played
     * @param atCapsuleDbSpl running level of its own source there
     * @param pattern the figures of the pattern that is set
     * @param others who reach the place, one at least
     */
    public static Overheard of(OctaveCurve spectrumDb, double atCapsuleDbSpl, PatternData pattern, List<Reaching> others) {
        return new Overheard(new Bleed(spectrumDb, true, others), pattern, atCapsuleDbSpl);
    }

    /** Own level over all others together, both as picked up, A-weighted, dB. */
    public double separationDb(double aimDegrees) {
        return bleed.separationDb(pattern, aimDegrees, atCapsuleDbSpl);
    }

    /** The same for each of the others, octave by octave, in their order. */
    public List<Heard> each(double aimDegrees) {
        return bleed.heard(pattern, aimDegrees, atCapsuleDbSpl);
    }

    /** The turn that keeps the others together lowest, within limits either way; 0 where none is worth it, or the pattern hears all round alike. */
    public double bestAimDegrees(double mostDegrees) {
        Double best = Placements.turns(pattern) ? bleed.bestTurnDegrees(pattern, mostDegrees) : null;
        return best == null ? 0 : best;
    }

    /** How far a microphone may be turned to be rid of others, where its position does not allow more, degrees. */
    public static double mostTurnDegrees() {
        return Placements.MOST_TURN_DEGREES;
    }
}
