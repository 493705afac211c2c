package pairwright.model;

import pairwright.acoustics.OctaveCurve;

/**
 * What a placement hears of one neighbour.
 *
 * @param seat which of a line-up; null where a question names no more than the source
 * @param source id of the neighbour
 * @param name of the neighbour
 * @param separationDb own level over this neighbour, both as picked up, A-weighted
 * @param octavesDb the same octave by octave
 * @param loudestHz the octave in which most of it is heard, A-weighted
 * @param roomAllowsDb what would be left of it if nothing came straight: no turn and no screen gets more; null in the open air
 */
public record Heard(String seat, String source, String name, double separationDb, OctaveCurve octavesDb, double loudestHz, Double roomAllowsDb) {
}
