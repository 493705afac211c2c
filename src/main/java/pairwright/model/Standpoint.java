package pairwright.model;

/**
 * Where a microphone at a position is: the point of the source its distance is measured from, and the place itself, both with their
 * height above the floor. The distance is always kept, and so is a height the position gives; the angle off the axis of the source
 * is kept where both leave it free, and comes as near as they allow where they do not.
 *
 * @param surface the point the distance is measured from
 * @param place where the microphone is
 * @param axis the direction in which the source sounds there
 * @param offAxisDegrees between that direction and the line to the microphone, as it came out
 */
public record Standpoint(Point surface, Point place, Point axis, double offAxisDegrees) {
    /** Steeper than this there is no heading to speak of. */
    private static final double LEVEL_M = 0.02;
    private static final double PARALLEL_M = 0.3;
    private static final double STEEP_AXIS_DEGREES = 50;
    /** What is over the source at its height; a microphone farther round its axis than this would no longer be on its side. */
    private static final double MOST_ROUND_DEGREES = 120;
    /** A line closer to the vertical than this leaves no room for another height. */
    private static final double MOST_RISE = 0.99;
    private static final double LEAST_HEIGHT_M = 0.02;

    public static Standpoint of(Body body, Position position, double distanceM) {
        return of(body, position, distanceM, false);
    }

    /** Of a pair, where its middle stands: on the centre line of the source unless the position says on which side. */
    public static Standpoint ofPair(Body body, Position position, double distanceM) {
        return of(body, position, distanceM, saysNoSide(position) && Math.abs(main(body).leftM()) < LEVEL_M);
    }

    private static Standpoint of(Body body, Position position, double distanceM, boolean centred) {
        Point axis = axis(body, position);
        Point surface = surface(body, position, axis);
        Point across = across(body, position, axis, centred);
        Point natural = rotated(axis, across, position.offAxisDegrees().typical());
        Double heightM = position.heightM();
        if (heightM == null) {
            double reachedM = surface.upM() + distanceM * natural.upM();
            heightM = reachedM < LEAST_HEIGHT_M ? Double.valueOf(LEAST_HEIGHT_M) : null;
        }
        Point line = natural;
        if (heightM != null) {
            double rise = (heightM - surface.upM()) / distanceM;
            line = Math.abs(rise) > MOST_RISE ? null : centred ? headed(natural, rise) : atRise(axis, across, position.offAxisDegrees().typical(), natural, rise);
            if (line == null) {
                // too near for that height: it is another part of the source that it is near to
                line = natural;
                surface = surface.withUp(heightM - distanceM * natural.upM());
            }
        }
        return new Standpoint(surface, surface.plus(line.times(distanceM)), axis, axis.apartDegrees(line));
    }

    /** The direction the source sounds in, at a position: its main axis, but for what sounds at both ends, and over the strings of a piano. */
    private static Point axis(Body body, Position position) {
        double leftM = position.spot() == null ? 0 : position.spot().leftM();
        boolean twoEnds = body.shape() == BodyShape.SQUEEZE_BOX || body.shape() == BodyShape.BARREL_DRUM;
        if (twoEnds && Math.abs(leftM) > 0) {
            return Point.LEFT.times(Math.signum(leftM));
        }
        if (body.shape() == BodyShape.GRAND_PIANO) {
            return switch (position.side()) {
                case INSIDE, ON, ABOVE, BELOW -> Point.UP;
                default -> main(body);
            };
        }
        return main(body);
    }

    public static Point main(Body body) {
        return Point.toward(body.axisUpDegrees(), body.axisTurnDegrees() == null ? 0 : body.axisTurnDegrees());
    }

    private static Point surface(Body body, Position position, Point axis) {
        Point middle = new Point(0, 0, body.heightM());
        if (position.spot() != null) {
            return middle.plus(new Point(position.spot().forwardM(), position.spot().leftM(), position.spot().upM()));
        }
        if (position.pathM() != null) {
            boolean before = position.offAxisDegrees().typical() <= 90;
            return middle.plus(axis.times(before ? position.pathM() : -position.pathM()));
        }
        return middle;
    }

    /** At right angles to the axis, toward the side of the position. */
    private static Point across(Body body, Position position, Point axis, boolean centred) {
        boolean steep = Math.abs(axis.upDegrees()) >= STEEP_AXIS_DEGREES;
        boolean fromAbove = position.mount() == Mount.BOOM || position.mount() == Mount.OVERHEAD;
        Point side = side(position.side(), body.shape());
        if (!steep && (centred || position.side() == Side.FRONT && fromAbove)) {
            side = Point.UP;
        }
        Point across = side.minus(axis.times(side.dot(axis)));
        if (across.lengthM() < PARALLEL_M) {
            boolean acrossThePlayer = Math.abs(axis.leftM()) > 0.7;
            // the player's right, but from a spot to the left of the middle outward, not across what is in the middle
            double outward = position.spot() != null && position.spot().leftM() > LEVEL_M ? 1 : -1;
            Point instead = steep ? Point.FORWARD : fromAbove ? Point.UP : acrossThePlayer ? Point.FORWARD : Point.LEFT.times(outward);
            across = instead.minus(axis.times(instead.dot(axis)));
        }
        return across.unit();
    }

    private static Point side(Side side, BodyShape shape) {
        return switch (side) {
            case FRONT, AROUND, INSIDE -> Point.FORWARD;
            case BEHIND -> Point.FORWARD.times(-1);
            case ABOVE -> Point.UP;
            case BELOW -> Point.UP.times(-1);
            case LEFT -> Point.LEFT;
            case RIGHT, BESIDE -> Point.LEFT.times(-1);
            // a clip on a person sits below the mouth, one on an instrument above its rim
            case ON -> shape == BodyShape.HEAD ? Point.UP.times(-1) : Point.UP;
        };
    }

    private static Point rotated(Point axis, Point across, double degrees) {
        double radians = Math.toRadians(degrees);
        return axis.times(Math.cos(radians)).plus(across.times(Math.sin(radians)));
    }

    /** As far off the axis, but round it until the line rises by so much a metre; where it cannot, the same heading at that rise. */
    private static Point atRise(Point axis, Point across, double offAxisDegrees, Point natural, double rise) {
        double radians = Math.toRadians(offAxisDegrees);
        Point other = axis.cross(across);
        double swing = Math.sin(radians) * Math.hypot(across.upM(), other.upM());
        double wanted = rise - Math.cos(radians) * axis.upM();
        if (swing > 1e-9 && Math.abs(wanted) <= swing) {
            double middle = Math.toDegrees(Math.atan2(other.upM(), across.upM()));
            double half = Math.toDegrees(Math.acos(wanted / swing));
            double one = folded(middle - half);
            double two = folded(middle + half);
            double round = Math.abs(one) <= Math.abs(two) ? one : two;
            if (Math.abs(round) <= MOST_ROUND_DEGREES) {
                double turn = Math.toRadians(round);
                Point to = across.times(Math.cos(turn)).plus(other.times(Math.sin(turn)));
                return rotated(axis, to, offAxisDegrees);
            }
        }
        return headed(natural, rise);
    }

    private static Point headed(Point natural, double rise) {
        Point heading = natural.alongFloorM() < LEVEL_M ? Point.FORWARD : natural.withUp(0).unit();
        return heading.times(Math.sqrt(1 - rise * rise)).plus(Point.UP.times(rise));
    }

    private static double folded(double degrees) {
        double turned = degrees % 360;
        return turned > 180 ? turned - 360 : turned < -180 ? turned + 360 : turned;
    }

    /** Whether neither the side of a position nor its spot says that it is to the left or to the right. */
    private static boolean saysNoSide(Position position) {
        boolean middle = position.spot() == null || Math.abs(position.spot().leftM()) <= LEVEL_M;
        return middle && position.side() != Side.LEFT && position.side() != Side.RIGHT && position.side() != Side.BESIDE;
    }

    /** Off the middle only because an angle has to go somewhere. */
    public boolean mayBeMirrored(Position position) {
        boolean open = saysNoSide(position) || position.side() == Side.BESIDE && position.spot() == null;
        return open && Math.abs(axis.leftM()) < LEVEL_M && Math.abs(leansLeftM()) > LEVEL_M;
    }

    /** How far it stands to the left of the point it is measured from; below 0 to the right. */
    public double leansLeftM() {
        return place.leftM() - surface.leftM();
    }

    /** The same on the other side of the point it is measured from. */
    public Standpoint mirrored() {
        Point line = place.minus(surface);
        return new Standpoint(surface, surface.plus(new Point(line.forwardM(), -line.leftM(), line.upM())), axis, offAxisDegrees);
    }

    /** The same at the matching point on the other side of the source. */
    public Standpoint acrossTheMiddle() {
        return new Standpoint(opposite(surface), opposite(place), opposite(axis), offAxisDegrees);
    }

    private static Point opposite(Point point) {
        return new Point(point.forwardM(), -point.leftM(), point.upM());
    }

    public Standpoint moved(Point by) {
        return new Standpoint(surface.plus(by), place.plus(by), axis, offAxisDegrees);
    }
}
