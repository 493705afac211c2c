package pairwright.session;

import pairwright.model.Body;
import pairwright.model.Point;
import pairwright.model.Position;
import pairwright.model.Standpoint;

/**
 * A microphone at a seat, in the room.
 *
 * @param surface the point of its source that its distance is measured from
 * @param place where it is
 * @param line toward its source, one metre long
 * @param across level, at right angles to that, to the side toward which it is turned by an aim above 0: to the left, as whoever stands
 *     behind it sees it, and as the drawings of a set-up have it
 */
record MicAt(Point surface, Point place, Point line, Point across) {
    /** How high something is taken to be of which nobody said how it stands: a table, a lap. */
    static final double USUAL_HEIGHT_M = 1;
    private static final double NO_LENGTH_M = 1e-9;

    /**
     * At a place of a seat's source. Where a place may be on either side of a source, it is the side that the drawings of a set-up show.
     *
     * @param body how the source stands; null for a lead and for what is not known: then the microphone is before it, at the usual height
     */
    static MicAt of(Seat seat, Body body, Position position, double distanceM) {
        Point surface = new Point(0, 0, USUAL_HEIGHT_M);
        Point place = surface.plus(Point.FORWARD.times(distanceM));
        if (body != null) {
            Standpoint stands = Standpoint.of(body, position, distanceM);
            surface = stands.surface();
            place = stands.place();
        }
        return between(seat, InRoom.place(seat, surface), InRoom.place(seat, place));
    }

    static MicAt between(Seat seat, Point surface, Point place) {
        Point way = surface.minus(place);
        Point line = way.lengthM() < NO_LENGTH_M ? InRoom.direction(seat, Point.FORWARD.times(-1)) : way.unit();
        // of a line that is plumb every side is level: then it is the left hand of the player
        Point level = line.alongFloorM() < NO_LENGTH_M ? InRoom.direction(seat, Point.FORWARD) : line;
        return new MicAt(surface, place, line, Point.UP.cross(level).unit());
    }

    /** Where it looks when it is turned. */
    Point axis(double aimDegrees) {
        double aim = Math.toRadians(aimDegrees);
        return line.times(Math.cos(aim)).plus(across.times(Math.sin(aim)));
    }

    /** The same so far to its left, to its right below 0. */
    MicAt aside(double leftM) {
        return new MicAt(surface, place.plus(across.times(leftM)), line, across);
    }

    /** The same for a plan. */
    Line.Spot spot(Seat seat, double aimDegrees) {
        Point axis = axis(aimDegrees);
        return new Line.Spot(InRoom.xM(place), InRoom.yM(place), place.upM(), InRoom.headingDegrees(axis, seat.facingDegrees()), axis.upDegrees());
    }
}
