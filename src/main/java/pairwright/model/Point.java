package pairwright.model;

/**
 * A place or a direction in space, from the middle of the sounding surface of a source.
 *
 * @param forwardM where the player faces
 * @param leftM to the left of the player
 * @param upM upward
 */
public record Point(double forwardM, double leftM, double upM) {
    public static final Point HERE = new Point(0, 0, 0);
    public static final Point FORWARD = new Point(1, 0, 0);
    public static final Point LEFT = new Point(0, 1, 0);
    public static final Point UP = new Point(0, 0, 1);

    /** A direction by how far it points up and how far it is turned to the left. */
    public static Point toward(double upDegrees, double leftDegrees) {
        double up = Math.toRadians(upDegrees);
        double left = Math.toRadians(leftDegrees);
        return new Point(Math.cos(up) * Math.cos(left), Math.cos(up) * Math.sin(left), Math.sin(up));
    }

    public Point plus(Point other) {
        return new Point(forwardM + other.forwardM, leftM + other.leftM, upM + other.upM);
    }

    public Point minus(Point other) {
        return plus(other.times(-1));
    }

    public Point times(double factor) {
        return new Point(forwardM * factor, leftM * factor, upM * factor);
    }

    public double dot(Point other) {
        return forwardM * other.forwardM + leftM * other.leftM + upM * other.upM;
    }

    public Point cross(Point other) {
        return new Point(leftM * other.upM - upM * other.leftM, upM * other.forwardM - forwardM * other.upM, forwardM * other.leftM - leftM * other.forwardM);
    }

    public double lengthM() {
        return Math.sqrt(dot(this));
    }

    /** Along the floor only. */
    public double alongFloorM() {
        return Math.hypot(forwardM, leftM);
    }

    /** One metre long in the same direction. */
    public Point unit() {
        return times(1 / lengthM());
    }

    /** How far it points up, -90 to 90 degrees. */
    public double upDegrees() {
        return Math.toDegrees(Math.atan2(upM, alongFloorM()));
    }

    /** How far it is turned to the left of forward, -180 to 180 degrees. */
    public double leftDegrees() {
        return Math.toDegrees(Math.atan2(leftM, forwardM));
    }

    /** The angle between two directions, 0 to 180 degrees. */
    public double apartDegrees(Point other) {
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, dot(other) / lengthM() / other.lengthM()))));
    }

    public Point withUp(double otherM) {
        return new Point(forwardM, leftM, otherM);
    }
}
