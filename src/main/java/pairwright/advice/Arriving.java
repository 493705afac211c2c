package pairwright.advice;

import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Octaves;

/** A neighbour as powers, A-weighted: what comes straight and what the room adds, 0 in the open air. */
record Arriving(Reaching who, boolean inPlane, double alongShare, double[] straight, double[] viaRoom) {
    static Arriving of(Reaching who) {
        return new Arriving(who, who.inPlane(), Math.cos(Math.toRadians(who.angleDegrees())), Bleed.powers(who.directOctavesDbSpl()),
                who.reverberantOctavesDbSpl() == null ? new double[Octaves.COUNT] : Bleed.powers(who.reverberantOctavesDbSpl()));
    }

    /** The cosine of the angle off the axis of a turned microphone. */
    double cosine(double aimDegrees, double aimCosine, double aimSine) {
        return inPlane ? FirstOrder.response(FirstOrder.FIGURE_EIGHT, Scene.foldedDegrees(who.angleDegrees() + aimDegrees))
                : Math.max(-1, Math.min(1, alongShare * aimCosine + who.acrossShare() * aimSine));
    }
}
