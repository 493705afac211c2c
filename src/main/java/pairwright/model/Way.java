package pairwright.model;

import pairwright.acoustics.OctaveCurve;

/**
 * A way of playing that changes what a source gives.
 *
 * @param id one of the ids in catalogue/words/ways.yaml
 * @param says what changes, in a sentence
 * @param levelDb change of the running level
 * @param peakDb change of the loudest peak
 * @param toneDb change of the spectrum
 * @param attack the attack played that way; null if unchanged
 */
public record Way(String id, String says, double levelDb, double peakDb, OctaveCurve toneDb, Attack attack) {
}
