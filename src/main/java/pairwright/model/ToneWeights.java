package pairwright.model;

import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;

/** How much each octave counts when the tone of two sounds is compared. A judgement, not physics. */
public final class ToneWeights {
    /** The outermost octaves count less: the ear hears less of them. */
    private static final OctaveCurve EAR = OctaveCurve.of(0.4, 0.8, 1, 1, 1, 1, 1, 0.8, 0.4);
    private static final double SILENT_DB = 40;

    private ToneWeights() {
    }

    /**
     * From 0 to 1: in full where the sound is strongest, not at all where it is 40 dB down, straight in decibels between.
     *
     * @param spectrumDb of the sound, strongest octave 0
     */
    public static OctaveCurve of(OctaveCurve spectrumDb) {
        double[] weights = new double[Octaves.COUNT];
        for (int band = 0; band < weights.length; band++) {
            double heard = Math.max(0, Math.min(1, (spectrumDb.at(band) + SILENT_DB) / SILENT_DB));
            weights[band] = heard * EAR.at(band);
        }
        return OctaveCurve.of(weights);
    }
}
