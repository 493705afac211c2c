package pairwright.model;

import pairwright.acoustics.OctaveCurve;

/**
 * One pattern a type offers, per octave.
 *
 * @param pattern the pattern
 * @param coefficient the omni part A of A + (1-A) cos(angle), 1 omni to 0 figure-8, per octave; null for
 *     a lobe, flat 1 for a contact or a lead
 * @param directivityIndexDb for a lobe: directivity index per octave, else null
 */
public record PatternData(Pattern pattern, OctaveCurve coefficient, OctaveCurve directivityIndexDb) {
}
