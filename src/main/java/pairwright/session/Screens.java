package pairwright.session;

import java.util.List;
import pairwright.acoustics.Barrier;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.model.Point;

/**
 * What the gobos of a session take from sound that would come straight: round the upper edge and both ends of each, by the way that is
 * longer. Where several stand between, the one that takes most in an octave counts there, alone: two do take more, but by how much hangs on
 * what is between them, and a plan must not promise it.
 */
final class Screens {
    /** What is as near as that to the plane of a screen looks along it: it is on neither side. */
    private static final double IN_PLANE_M = 0.001;

    private final List<Upright> all;

    Screens(List<Gobo> gobos) {
        this.all = gobos.stream().map(Upright::of).toList();
    }

    /** What is taken between two places, octave by octave, dB, 0 or more. */
    OctaveCurve takenDb(Point from, Point to) {
        OctaveCurve taken = OctaveCurve.ZERO;
        for (Upright one : all) {
            double[] detoursM = one.detoursM(from, to);
            if (detoursM != null) {
                double[] octaves = new double[Octaves.COUNT];
                for (int band = 0; band < octaves.length; band++) {
                    octaves[band] = Math.max(taken.at(band), Barrier.screenDb(detoursM, Octaves.centreHz(band)));
                }
                taken = OctaveCurve.of(octaves);
            }
        }
        return taken;
    }

    /**
     * One screen as a rectangle that stands on the floor.
     *
     * @param end where it begins, on the floor
     * @param along from there, one metre long
     * @param lengthM how far it goes
     * @param heightM of its upper edge
     */
    private record Upright(Point end, Point along, double lengthM, double heightM) {
        static Upright of(Gobo gobo) {
            Point end = InRoom.at(gobo.x1M(), gobo.y1M(), 0);
            Point way = InRoom.at(gobo.x2M(), gobo.y2M(), 0).minus(end);
            return new Upright(end, way.lengthM() == 0 ? Point.FORWARD : way.unit(), way.lengthM(), gobo.heightM());
        }

        /** How much longer the way round each edge is than the straight one, below 0 where that passes clear of it; null where both are on one side of it. */
        double[] detoursM(Point from, Point to) {
            Seen one = seen(from);
            Seen two = seen(to);
            boolean inItsPlane = Math.min(Math.abs(one.beforeM), Math.abs(two.beforeM)) < IN_PLANE_M;
            if (lengthM == 0 || inItsPlane || one.beforeM * two.beforeM >= 0) {
                return null;
            }
            double straightM = to.minus(from).lengthM();
            double share = one.beforeM / (one.beforeM - two.beforeM);
            double crossesM = one.alongM + share * (two.alongM - one.alongM);
            double crossesUpM = one.upM + share * (two.upM - one.upM);
            double overM = round(Math.hypot(one.beforeM, heightM - one.upM), one.alongM, Math.hypot(two.beforeM, heightM - two.upM), two.alongM, lengthM);
            return new double[] {
                signed(overM - straightM, crossesUpM > heightM),
                signed(pastM(one, two, 0) - straightM, crossesM < 0),
                signed(pastM(one, two, lengthM) - straightM, crossesM > lengthM)};
        }

        private double pastM(Seen one, Seen two, double endM) {
            return round(Math.hypot(one.beforeM, endM - one.alongM), one.upM, Math.hypot(two.beforeM, endM - two.alongM), two.upM, heightM);
        }

        /** The shortest way by an edge: so far off it on either side, and so far along it, which it can be met at from 0 to its length. */
        private static double round(double oneOffM, double oneAlongM, double twoOffM, double twoAlongM, double edgeM) {
            double free = oneAlongM + (twoAlongM - oneAlongM) * oneOffM / (oneOffM + twoOffM);
            double met = Math.max(0, Math.min(edgeM, free));
            return Math.hypot(oneOffM, met - oneAlongM) + Math.hypot(twoOffM, met - twoAlongM);
        }

        private static double signed(double detourM, boolean clear) {
            return clear ? -detourM : detourM;
        }

        private Seen seen(Point point) {
            Point from = point.minus(end);
            return new Seen(from.dot(along), from.dot(along.cross(Point.UP)), point.upM());
        }

        /** A place as the screen sees it: along it, before it (below 0 behind) and above the floor. */
        private record Seen(double alongM, double beforeM, double upM) {
        }
    }
}
