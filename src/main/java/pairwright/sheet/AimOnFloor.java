package pairwright.sheet;

import java.util.Comparator;
import pairwright.model.Catalogue;
import pairwright.model.Naming;
import pairwright.session.Hears;
import pairwright.session.Line;
import pairwright.session.LineUp;
import pairwright.session.Plan;
import pairwright.session.Seat;

/** To which side and from or toward whom a microphone of a plan is turned: on a floor the neighbours have names. */
public final class AimOnFloor {
    /** A null this near somebody is on them, as far as anybody can aim by eye. */
    private static final double ON_IT_DEGREES = 15;
    /** A turn that brings somebody less nearer to the axis or farther off it is about somebody else. */
    private static final double TELLS_DEGREES = 2;

    private final LineUp lineUp;
    private final Plan plan;
    private final Catalogue catalogue;

    public AimOnFloor(LineUp lineUp, Plan plan, Catalogue catalogue) {
        this.lineUp = lineUp;
        this.plan = plan;
        this.catalogue = catalogue;
    }

    /** "20 degrees to its right, away from Wren on alto": right and left as the microphone looks, and whoever it hears most of; it must be turned. */
    String turned(Line line) {
        double aimDegrees = line.placement().aimDegrees();
        String side = Math.round(Math.abs(aimDegrees)) + " degrees to its " + (aimDegrees > 0 ? "left" : "right");
        Seat most = plan.bleed().stream().filter(hears -> hears.line() == line.number()).min(Comparator.comparingDouble(Hears::separationDb))
                .flatMap(hears -> lineUp.seat(hears.seat())).orElse(null);
        if (most == null || line.spot() == null || most.id().equals(nullTo(line))) {
            return side;
        }
        double towardDegrees = Math.toDegrees(Math.atan2(most.xM() - line.spot().xM(), most.yM() - line.spot().yM()));
        double more = apart(towardDegrees, line.spot().headingDegrees()) - apart(towardDegrees, line.spot().headingDegrees() + aimDegrees);
        return Math.abs(more) < TELLS_DEGREES ? side : side + (more > 0 ? ", away from " : ", toward ") + named(most.id());
    }

    /** "null to Wren on alto"; empty where it is on nobody. */
    String nulled(Line line) {
        String seat = nullTo(line);
        return seat == null ? "" : "null to " + named(seat);
    }

    /** Who is nearest to the null, as near as the plan says its null comes to the loudest; null for nobody. */
    private String nullTo(Line line) {
        Double nullDegrees = line.placement().nullDegrees();
        Double missDegrees = line.placement().nullMissDegrees();
        if (nullDegrees == null || missDegrees == null || missDegrees > ON_IT_DEGREES) {
            return null;
        }
        return plan.bleed().stream().filter(hears -> hears.line() == line.number())
                .min(Comparator.comparingDouble(hears -> Math.abs(Math.abs(hears.angleDegrees() - nullDegrees) - missDegrees))).map(Hears::seat).orElse(null);
    }

    private String named(String id) {
        return lineUp.seat(id).map(seat -> seat.player() != null ? seat.player() : "the " + Naming.small(catalogue.sources().get(seat.source()).name())).orElse(id);
    }

    /** From 0 to 180. */
    private static double apart(double oneDegrees, double otherDegrees) {
        double turn = Math.abs(oneDegrees - otherDegrees) % 360;
        return Math.min(turn, 360 - turn);
    }
}
