package pairwright.session;

import java.util.Objects;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.ToneWeights;

/**
 * How a seat would sound with one of its options, as far as that matters beside another seat. Of two microphones the first counts.
 *
 * @param micType id
 * @param technique single, or the id of a technique
 * @param toneDb what is recorded
 * @param colourDb what microphone and place add to the source
 * @param weights how much each octave counts
 */
record Voice(String micType, String technique, OctaveCurve toneDb, OctaveCurve colourDb, OctaveCurve weights) {
    static Voice of(Option option) {
        Placement first = option.mics().get(0);
        return of(first.micType(), option.technique(), first.predicted().toneDb(), first.predicted().colourDb());
    }

    static Voice of(String micType, String technique, OctaveCurve toneDb, OctaveCurve colourDb) {
        OctaveCurve source = toneDb.minus(colourDb);
        double loudest = source.at(0);
        for (int octave = 1; octave < Octaves.COUNT; octave++) {
            loudest = Math.max(loudest, source.at(octave));
        }
        return new Voice(micType, technique, toneDb, colourDb, ToneWeights.of(source.plus(-loudest)));
    }

    boolean sameType(Voice other) {
        return micType.equals(other.micType);
    }

    boolean sameTechnique(Voice other) {
        return Objects.equals(technique, other.technique);
    }

    /** How much the two differ as they are recorded, level apart; an octave counts as much as it does for both on average. */
    double toneContrastDb(Voice other) {
        return contrastDb(toneDb.minus(other.toneDb), other);
    }

    /** How much their microphones and places set them apart, whatever the instruments do. */
    double colourContrastDb(Voice other) {
        return contrastDb(colourDb.minus(other.colourDb), other);
    }

    private double contrastDb(OctaveCurve difference, Voice other) {
        OctaveCurve both = weights.plus(other.weights);
        return difference.plus(-difference.weightedMean(both)).weightedRms(both);
    }
}
