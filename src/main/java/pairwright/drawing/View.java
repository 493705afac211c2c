package pairwright.drawing;

import pairwright.model.Arrangement;
import pairwright.model.BodyShape;
import pairwright.model.Point;
import pairwright.model.Standpoint;

/**
 * Which way one looks. From above, forward is to the right and the left of the player is up, and angles along the floor are true. From the
 * side, each microphone is swung round the point it is measured from into the plane of the picture, as one swings a ruler, so that
 * distances and heights are true.
 *
 * @param above from above, otherwise from the side
 * @param fromBehind from the side, but with the right of the player to the right
 */
record View(boolean above, boolean fromBehind) {
    /** A place in the picture, in metres to the right and up. */
    record Flat(double xM, double yM) {
        double apartM(Flat other) {
            return Math.hypot(other.xM - xM, other.yM - yM);
        }

        /** The direction to another place, in degrees from the right, up being 90. */
        double towardDegrees(Flat other) {
            return Math.toDegrees(Math.atan2(other.yM - yM, other.xM - xM));
        }
    }

    /**
     * A microphone in the picture.
     *
     * @param mic which
     * @param surface the point it is measured from
     * @param place where it stands; for a stereo pair the middle of the pair
     * @param capsule its own capsule
     * @param sightDegrees from the place to the point it is measured from, up being 90
     * @param aimDegrees where it faces; null where it faces out of the picture or into it
     * @param turnSign 1 where a turn to the left goes against the clock in the picture, -1 where it goes with it
     * @param flat whether its turn, its nulls and its neighbours lie in the plane of the picture
     */
    record Seen(Stood mic, Flat surface, Flat place, Flat capsule, double sightDegrees, Double aimDegrees, int turnSign, boolean flat) {
        /** Whether where it hears least lies in the plane of the picture. */
        boolean showsNulls() {
            return flat && aimDegrees != null && mic.placement().nullDegrees() != null;
        }

        /** Where a neighbour is heard from, in the picture. */
        double neighbourDegrees(double angleDegrees) {
            return sightDegrees - turnSign * angleDegrees;
        }
    }

    /** Turned farther than this out of the picture, a direction is no longer shown. */
    private static final double SHOWN_DEGREES = 60;
    private static final double HARDLY_DEGREES = 10;
    /** Less than this of the way goes sideways: then it is no matter on which side it is drawn. */
    private static final double SIDEWAYS_SHARE = 0.12;

    /** A neighbour farther out of the plane of the picture is not drawn. */
    private static final double OUT_OF_PLANE_DEGREES = 30;

    /** What sounds to its sides is seen from behind its player where the first microphone stands at a side of it. */
    static View of(SetUp setUp, boolean above) {
        if (above || !BodyFromSide.soundsSideways(setUp.body().shape())) {
            return new View(above, false);
        }
        Point line = setUp.mics().stream().filter(Stood::air).findFirst().map(mic -> mic.standpoint().place().minus(mic.standpoint().surface())).orElse(Point.LEFT);
        return new View(false, setUp.body().shape() == BodyShape.GRAND_PIANO || Math.abs(line.leftM()) >= Math.abs(line.forwardM()));
    }

    /** Whether a neighbour is drawn: from above always; from the side where it lies in the plane of the picture, on the side it is drawn on. */
    boolean showsNeighbour(Seen mic, double angleDegrees) {
        if (above) {
            return true;
        }
        if (!mic.flat() || !mic.mic().steep()) {
            return false;
        }
        Point sight = mic.mic().sight();
        double fromAboveDegrees = (sight.alongFloorM() < 1e-3 ? 180 : sight.leftDegrees()) - angleDegrees;
        Point toward = Point.toward(0, fromAboveDegrees);
        double along = x(toward);
        double drawn = Math.cos(Math.toRadians(mic.neighbourDegrees(angleDegrees)));
        return Math.abs(along) >= Math.cos(Math.toRadians(OUT_OF_PLANE_DEGREES)) && along * drawn > 0;
    }

    double x(Point point) {
        return above || !fromBehind ? point.forwardM() : -point.leftM();
    }

    Flat flat(Point point) {
        return new Flat(x(point), above ? point.leftM() : point.upM());
    }

    Seen seen(SetUp setUp, Stood mic) {
        return above ? fromAbove(setUp, mic) : fromSide(setUp, mic);
    }

    private Seen fromAbove(SetUp setUp, Stood mic) {
        Point sight = mic.sight();
        double sightDegrees = sight.alongFloorM() < 1e-3 ? 180 : sight.leftDegrees();
        Double aim = sightDegrees + mic.turnDegrees();
        if (mic.steep()) {
            double turn = Math.toRadians(mic.turnDegrees());
            Point left = sight.alongFloorM() < 1e-3 ? Point.LEFT : Point.UP.cross(sight.withUp(0).unit());
            Point aimed = sight.times(Math.cos(turn)).plus(left.times(Math.sin(turn)));
            aim = setUp.stereo() && aimed.alongFloorM() > Math.cos(Math.toRadians(SHOWN_DEGREES)) ? Double.valueOf(aimed.leftDegrees()) : null;
        }
        return new Seen(mic, flat(mic.standpoint().surface()), flat(mic.standpoint().place()), flat(mic.capsule()), sightDegrees, aim, 1, !mic.steep());
    }

    private Seen fromSide(SetUp setUp, Stood mic) {
        Standpoint at = mic.standpoint();
        Flat surface = flat(at.surface());
        double along = at.place().minus(at.surface()).alongFloorM();
        double across = x(at.place()) - x(at.surface());
        double side = across < -SIDEWAYS_SHARE * along ? -1 : 1;
        Flat place = new Flat(surface.xM() + side * along, at.place().upM());
        double sightDegrees = place.towardDegrees(surface);
        // a turn in the plane of the picture leaves the neighbours on the far side from the source
        int sign = Math.cos(Math.toRadians(sightDegrees - 100)) * side >= Math.cos(Math.toRadians(sightDegrees + 100)) * side ? 1 : -1;
        boolean flat = mic.steep() && !setUp.stereo();
        Double aim = flat ? Double.valueOf(sightDegrees + sign * mic.turnDegrees()) : Math.abs(mic.turnDegrees()) > SHOWN_DEGREES ? null : Double.valueOf(sightDegrees);
        boolean nulls = flat || Math.abs(mic.turnDegrees()) < HARDLY_DEGREES && !(setUp.technique() != null && setUp.technique().arrangement() == Arrangement.SPACED);
        return new Seen(mic, surface, place, place, sightDegrees, aim, sign, nulls);
    }
}
