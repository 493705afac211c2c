package pairwright.sheet;

import java.util.List;
import java.util.Set;
import pairwright.drawing.FloorPlan;
import pairwright.session.Line;
import pairwright.session.Plan;

/** The floor of a plan, to be drawn: who is there, the gobos, and every microphone that stands in the room. */
final class PlanFloor {
    /** Steeper than this an axis points up or down more than anywhere on the plan. */
    private static final double STEEP_DEGREES = 60;

    private PlanFloor() {
    }

    static FloorPlan of(AtPlan at, Plan plan) {
        List<FloorPlan.MicAt> mics = plan.lines().stream().filter(line -> line.spot() != null && !SetUpWords.wired(line.placement())).map(line -> mic(at, line)).toList();
        return FloorOf.plan(at.lineUp(), at.catalogue(), mics, Set.of());
    }

    private static FloorPlan.MicAt mic(AtPlan at, Line line) {
        boolean steep = Math.abs(line.spot().upDegrees()) > STEEP_DEGREES;
        return new FloorPlan.MicAt(line.number(), line.spot().xM(), line.spot().yM(), steep ? null : line.spot().headingDegrees(), line.placement().family(), line.placement().pattern(),
                steep ? null : line.placement().nullDegrees(), at.inSentence(line.seat()));
    }
}
