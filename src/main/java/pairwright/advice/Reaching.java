package pairwright.advice;

import pairwright.acoustics.Level;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Source;

/**
 * Another source as it arrives at one microphone, before any pattern.
 *
 * @param seat which of the line-up; the id of the source where nobody is seated
 * @param source who
 * @param distanceM from the microphone
 * @param angleDegrees at the microphone, between the line to its own source and the line to this one, 0 to 180
 * @param acrossShare how much of that direction lies across, -1 to 1, above 0 on the side toward which a microphone is turned by an aim above 0
 * @param directOctavesDbSpl running level that comes straight, octave by octave, turned away and screened as it is
 * @param reverberantOctavesDbSpl what the room adds; null in the open air
 * @param screenDb what a screen between takes from its loudest octave, 0 or more
 */
public record Reaching(String seat, Source source, double distanceM, double angleDegrees, double acrossShare,
        OctaveCurve directOctavesDbSpl, OctaveCurve reverberantOctavesDbSpl, double screenDb) {

    /** So fine that a level given in whole decibels comes back whole from its octaves. */
    private static final double FINE = 1e9;

    /** The angle off the axis of a microphone that is turned by so much off the line to its own source, 0 to 180. */
    public double offAxisDegrees(double aimDegrees) {
        if (inPlane()) {
            return Scene.foldedDegrees(angleDegrees + aimDegrees);
        }
        double aim = Math.toRadians(aimDegrees);
        double along = Math.cos(Math.toRadians(angleDegrees)) * Math.cos(aim) + acrossShare * Math.sin(aim);
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, along))));
    }

    /** Whether it lies where a turn moves it round: then the turn adds to the angle, and nothing is lost by way of cosines. */
    boolean inPlane() {
        return acrossShare == acrossShare(angleDegrees);
    }

    /** What lies across of a direction in the plane of the turn, on the side from which an aim above 0 turns away. */
    static double acrossShare(double angleDegrees) {
        return -Math.sin(Math.toRadians(angleDegrees));
    }

    /** Running level that comes straight, all octaves together, unweighted. */
    public double directDbSpl() {
        return Math.rint(Level.sumIncoherentDb(directOctavesDbSpl.toArray()) * FINE) / FINE;
    }

    /** The same neighbour, louder, in a room that rings so many times as long and holds so many times as much of it. */
    Reaching louder(double db, double ringing) {
        return new Reaching(seat, source, distanceM, angleDegrees, acrossShare, directOctavesDbSpl.plus(db),
                reverberantOctavesDbSpl == null ? null : reverberantOctavesDbSpl.plus(db + 10 * Math.log10(ringing)), screenDb);
    }
}
