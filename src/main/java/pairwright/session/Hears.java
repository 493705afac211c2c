package pairwright.session;

import pairwright.acoustics.OctaveCurve;

/**
 * What one line hears of one other seat.
 *
 * @param line number
 * @param seat id of the other
 * @param source id of the other
 * @param distanceM from the microphone
 * @param angleDegrees off the axis of the microphone as it is turned, 0 to 180
 * @param screenDb what a gobo between takes from its loudest octave; 0 without
 * @param separationDb own level over this one, both as picked up, A-weighted
 * @param octavesDb the same octave by octave
 * @param loudestHz the octave in which most of it is heard, A-weighted
 * @param roomAllowsDb what would be left if nothing came straight; null in the open air
 * @param straightDb the separation with the microphone straight at its own source; equal to separationDb where it is not turned
 * @param betterAimDegrees the turn, of those its place allows, that keeps this one lowest; aimDegrees of the line where that is not 1 dB better, or lets in 1 dB more
 *     of all together
 * @param betterDb the separation then; equal to separationDb where there is none
 */
public record Hears(int line, String seat, String source, double distanceM, double angleDegrees, double screenDb, double separationDb,
        OctaveCurve octavesDb, double loudestHz, Double roomAllowsDb, double straightDb, double betterAimDegrees, double betterDb) {
}
