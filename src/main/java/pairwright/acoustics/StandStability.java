package pairwright.acoustics;

/**
 * Whether a boom stand tips. Statics of a rigid stand at rest on a level floor: moments about each line between neighbouring
 * feet, which lies {@code R cos(pi/n)} from the column for n legs of radius R (half the radius for a tripod). A knock, a cable
 * pulled or a slope ask for the margin. Derived here.
 */
public final class StandStability {
    /** The ratio to keep above. Trade practice. */
    public static final double SAFE_RATIO = 2;

    private static final double GRAVITY_M_PER_S2 = 9.81;

    /** Where the boom points. */
    public enum Boom { OVER_LEG, BETWEEN_LEGS }

    /**
     * A stand without its load: mass in kg, radius of its feet in metres, and 3 to 12 legs, or 0 for a round base. The mass acts
     * at the column; add a sandbag at the column to it.
     */
    public record Stand(double massKg, double footRadiusM, int legs) {
        /** What {@code legs} is for a round base. */
        public static final int ROUND_BASE = 0;

        public Stand {
            Check.positive("massKg", massKg, 1000);
            Check.positive("footRadiusM", footRadiusM, 10);
            if (legs != ROUND_BASE) {
                Check.within("legs (if not 0 for a round base)", legs, 3, 12);
            }
        }

        /** How far the nearest line between two feet lies from the column, metres: where it tips. */
        public double edgeM() {
            return legs == ROUND_BASE ? footRadiusM : footRadiusM * Math.cos(Math.PI / legs);
        }
    }

    /** A mass in kg at a signed distance along the boom from the column, metres; behind the column is negative. */
    public record Load(double massKg, double reachM) {
        public Load {
            Check.within("massKg", massKg, 0, 1000);
            checkReach(reachM);
        }
    }

    private StandStability() {
    }

    /**
     * Moments that hold over moments that tip, about the worst edge: over 2 safe, below 1 it falls. About an edge whose outward
     * normal makes an angle u with the boom, a load tips by {@code m (x cos u - e)}; where that is negative it holds, as the
     * stand does by {@code M e}. Count the arm as a load at half its length. Positive infinity if nothing lies beyond an edge.
     */
    public static double ratio(Stand stand, Boom boom, Load... loads) {
        double worst = Double.POSITIVE_INFINITY;
        for (int edge = 0; edge < edges(stand); edge++) {
            worst = Math.min(worst, ratioAbout(stand, normalDegrees(stand, boom, edge), loads));
        }
        return worst;
    }

    /**
     * The edge {@link #ratio} is about, as the angle of its outward normal from the boom, 0 to 180 degrees: 0 is tipping along
     * the boom, 180 over backward. The least angle if several are equal.
     */
    public static double worstEdgeDegrees(Stand stand, Boom boom, Load... loads) {
        double worst = Double.POSITIVE_INFINITY;
        double worstDegrees = 180;
        for (int edge = 0; edge < edges(stand); edge++) {
            double degrees = Math.abs(Math.IEEEremainder(normalDegrees(stand, boom, edge), 360));
            double ratio = ratioAbout(stand, degrees, loads);
            if (ratio < worst || ratio == worst && degrees < worstDegrees) {
                worst = ratio;
                worstDegrees = degrees;
            }
        }
        return worstDegrees;
    }

    /** What tips the stand about the edge whose outward normal makes an angle with the boom, newton metres. */
    public static double tippingNm(Stand stand, double edgeDegrees, Load... loads) {
        return GRAVITY_M_PER_S2 * tipping(stand, Check.angleDegrees("edgeDegrees", edgeDegrees), loads);
    }

    /** What holds it about that edge, newton metres: the stand itself, and loads behind the edge. */
    public static double holdingNm(Stand stand, double edgeDegrees, Load... loads) {
        return GRAVITY_M_PER_S2 * holding(stand, Check.angleDegrees("edgeDegrees", edgeDegrees), loads);
    }

    /**
     * The greatest mass in kg, with what is on the boom already, that keeps {@link #ratio} at a wanted value (1 just stands) about
     * the edges it tips toward; 0 if they are past it already, positive infinity within the feet. With nothing else on a
     * tripod's boom and ratio 1:
     * {@code M R / (x - R)} over a leg, {@code M (R/2) / (x - R/2)} between two.
     */
    public static double largestLoadKg(Stand stand, Boom boom, double reachM, double wantedRatio, Load... others) {
        checkReach(reachM);
        Check.positive("wantedRatio", wantedRatio, 100);
        double largestKg = Double.POSITIVE_INFINITY;
        for (int edge = 0; edge < edges(stand); edge++) {
            double degrees = normalDegrees(stand, boom, edge);
            double leverM = leverM(stand, degrees, reachM);
            if (leverM > 0) {
                double spare = holding(stand, degrees, others) / wantedRatio - tipping(stand, degrees, others);
                largestKg = Math.min(largestKg, Math.max(0, spare / leverM));
            }
        }
        return largestKg;
    }

    /**
     * Moment the clutch of the boom must hold, {@code g (m x + arm x / 2)} newton metres: microphone mass at its reach, the arm's
     * at half of it; kg and metres, boom level.
     */
    public static double clutchMomentNm(double microphoneMassKg, double boomLengthM, double armMassKg) {
        Check.within("microphoneMassKg", microphoneMassKg, 0, 1000);
        Check.within("boomLengthM", boomLengthM, 0, 20);
        Check.within("armMassKg", armMassKg, 0, 1000);
        return GRAVITY_M_PER_S2 * boomLengthM * (microphoneMassKg + armMassKg / 2);
    }

    private static int edges(Stand stand) {
        // a round base is worst straight ahead or straight behind
        return stand.legs == Stand.ROUND_BASE ? 2 : stand.legs;
    }

    private static double normalDegrees(Stand stand, Boom boom, int edge) {
        int edges = edges(stand);
        boolean legAhead = stand.legs != Stand.ROUND_BASE && boom == Boom.OVER_LEG;
        return 360.0 / edges * (edge + (legAhead ? 0.5 : 0));
    }

    private static double ratioAbout(Stand stand, double normalDegrees, Load... loads) {
        double tipping = tipping(stand, normalDegrees, loads);
        return tipping > 0 ? holding(stand, normalDegrees, loads) / tipping : Double.POSITIVE_INFINITY;
    }

    private static double tipping(Stand stand, double normalDegrees, Load... loads) {
        double moment = 0;
        for (Load load : loads) {
            moment += load.massKg * Math.max(0, leverM(stand, normalDegrees, load.reachM));
        }
        return moment;
    }

    private static double holding(Stand stand, double normalDegrees, Load... loads) {
        double moment = stand.massKg * stand.edgeM();
        for (Load load : loads) {
            moment += load.massKg * Math.max(0, -leverM(stand, normalDegrees, load.reachM));
        }
        return moment;
    }

    private static double leverM(Stand stand, double normalDegrees, double reachM) {
        return reachM * Degrees.cos(normalDegrees) - stand.edgeM();
    }

    private static double checkReach(double reachM) {
        return Check.within("reachM", reachM, -20, 20);
    }
}
