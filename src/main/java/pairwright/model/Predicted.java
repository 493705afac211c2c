package pairwright.model;

import pairwright.acoustics.OctaveCurve;

/**
 * What a placement is predicted to give. Level, noise and balance are of the capsule at its place, not of the mix. A number that
 * does not apply is null: a lead has no sound pressure, the open air no reverberation.
 *
 * @param peakDbSpl loudest true peak at the capsule
 * @param typicalDbSpl running level at the capsule
 * @param headroomDb what is left to its limit, pad included, over that peak as a sine equivalent
 * @param noiseDba noise of microphone and preamplifier as a level at the capsule
 * @param signalToNoiseDb running level, A-weighted, over that noise
 * @param gainDb gain that puts the running level at -18 dBFS or the peak at -6 dBFS, whichever is less, with 0 dBFS at +22 dBu
 * @param outputPeakDbu level on the cable at the loudest peak
 * @param proximityDb lift at 100 Hz from being close
 * @param directToReverbDb direct sound over the room's
 * @param separationDb own level over all neighbours together, both as picked up, octave by octave, A-weighted; null with no neighbour
 * @param loadingLossDb what the usual 1.5 kohm input takes from a passive type, 0 or less
 * @param spreadDb how much louder the nearest part of a wide source is than its edge
 * @param offAxisDb what turning the microphone costs at 8 kHz, 0 or less
 * @param lowDb mean colour 63 to 250 Hz, against the source as it is, from 500 Hz to 2 kHz
 * @param boxDb colour at 500 Hz, the same way
 * @param presenceDb mean colour 2 to 4 kHz, the same way
 * @param airDb mean colour 8 to 16 kHz, the same way
 * @param toneMissDb how far the colour is from what is wanted, weighted by where the source sounds
 * @param toneFit 1 when it is what is wanted, 0 at 3 dB off, -1 at 6 dB or more
 * @param toneDb what is recorded, octaves 63 Hz to 16 kHz, re 1 kHz
 * @param colourDb how that differs from the source as it is, about 500 Hz to 2 kHz
 */
public record Predicted(
        Double peakDbSpl,
        Double typicalDbSpl,
        Double headroomDb,
        Double noiseDba,
        Double signalToNoiseDb,
        Double gainDb,
        Double outputPeakDbu,
        double proximityDb,
        Double directToReverbDb,
        Double separationDb,
        double loadingLossDb,
        double spreadDb,
        double offAxisDb,
        double lowDb,
        double boxDb,
        double presenceDb,
        double airDb,
        double toneMissDb,
        double toneFit,
        OctaveCurve toneDb,
        OctaveCurve colourDb) {

    private static final double HEARD_AT_DB = 10;
    private static final double ALIKE_AT_DB = 2;
    private static final double BURIED_AT_DB = 12;

    /** How much the tone misses what is wanted beyond 3 dB: 0 up to there, 1 at 6 dB. */
    public double toneUnfitShare() {
        return Math.max(0, -toneFit);
    }

    /** How much the neighbours share the track: 0 where they are 10 dB under the source or there are none, 1 from 2 dB under. */
    public double sharedTrackShare() {
        return separationDb == null ? 0 : Math.max(0, Math.min(1, (HEARD_AT_DB - separationDb) / (HEARD_AT_DB - ALIKE_AT_DB)));
    }

    /** How far the source lies under the neighbours: 0 where they are as loud or there are none, 1 from 12 dB under. */
    public double buriedShare() {
        return separationDb == null ? 0 : Math.max(0, Math.min(1, -separationDb / BURIED_AT_DB));
    }
}
