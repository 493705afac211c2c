package pairwright.sheet;

import java.util.List;
import java.util.Set;
import pairwright.drawing.FloorPlan;
import pairwright.model.Naming;
import pairwright.session.Line;
import pairwright.session.Plan;
import pairwright.session.Seat;

/** The floor of a plan, to be drawn: who is there, the gobos, and every microphone that stands in the room. */
final class PlanFloor {
    /** Steeper than this an axis points up or down more than anywhere on the plan. */
    private static final double STEEP_DEGREES = 60;

    private PlanFloor() {
    }

    static FloorPlan of(AtPlan at, Plan plan) {
        var floor = at.lineUp().floor();
        List<FloorPlan.Who> players = at.lineUp().seats().stream().filter(seat -> at.catalogue().sources().containsKey(seat.source())).map(seat -> who(at, seat)).toList();
        List<FloorPlan.Screen> screens = at.lineUp().gobos().stream().map(gobo -> new FloorPlan.Screen(gobo.id(), Choices.named(gobo.id()), gobo.x1M(), gobo.y1M(), gobo.x2M(), gobo.y2M(),
                gobo.heightM())).toList();
        List<FloorPlan.MicAt> mics = plan.lines().stream().filter(line -> line.spot() != null && !SetUpWords.wired(line.placement())).map(line -> mic(at, line)).toList();
        return new FloorPlan(floor.widthM(), floor.depthM(), players, screens, mics, Set.of());
    }

    private static FloorPlan.Who who(AtPlan at, Seat seat) {
        String source = at.sourceName(seat.source());
        return new FloorPlan.Who(seat.id(), seat.player() == null ? source : seat.player() + ", " + Naming.small(source), at.seatName(seat), at.catalogue().sources().get(seat.source()),
                seat.xM(), seat.yM(), (seat.facingDegrees() % 360 + 360) % 360, seat.must());
    }

    private static FloorPlan.MicAt mic(AtPlan at, Line line) {
        boolean steep = Math.abs(line.spot().upDegrees()) > STEEP_DEGREES;
        return new FloorPlan.MicAt(line.number(), line.spot().xM(), line.spot().yM(), steep ? null : line.spot().headingDegrees(), line.placement().family(), line.placement().pattern(),
                steep ? null : line.placement().nullDegrees(), at.inSentence(line.seat()));
    }
}
