package pairwright.session;

import pairwright.model.Point;

/**
 * Places in a room as points, looked at up the plan: forward is y, to the left is against x, up is up, from the lower left corner of the
 * floor. So what turns a player turns a point the same way.
 */
final class InRoom {
    private InRoom() {
    }

    static Point at(double xM, double yM, double zM) {
        return new Point(yM, -xM, zM);
    }

    static double xM(Point point) {
        return -point.leftM();
    }

    static double yM(Point point) {
        return point.forwardM();
    }

    /** A place in a player's own frame, which starts between the feet. */
    static Point place(Seat seat, Point own) {
        return at(seat.xM(), seat.yM(), 0).plus(direction(seat, own));
    }

    /** A direction in a player's own frame. */
    static Point direction(Seat seat, Point own) {
        double facing = Math.toRadians(seat.facingDegrees());
        return new Point(own.forwardM() * Math.cos(facing) + own.leftM() * Math.sin(facing),
                own.leftM() * Math.cos(facing) - own.forwardM() * Math.sin(facing), own.upM());
    }

    /** Where a direction points on the plan, 0 up to 360, clockwise from up the plan; of one that is plumb the one given. */
    static double headingDegrees(Point direction, double ofPlumbDegrees) {
        if (direction.alongFloorM() < 1e-9 * direction.lengthM()) {
            return turned(ofPlumbDegrees);
        }
        return turned(-direction.leftDegrees());
    }

    /** The same heading from 0 up to 360. */
    static double turned(double degrees) {
        double folded = degrees % 360;
        double up = folded < 0 ? folded + 360 : folded;
        return up >= 360 ? 0 : up + 0.0; // next to nothing below 0 is 360 by rounding; and never -0
    }
}
