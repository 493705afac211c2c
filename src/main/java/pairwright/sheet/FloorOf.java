package pairwright.sheet;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import pairwright.drawing.FloorPlan;
import pairwright.model.Catalogue;
import pairwright.model.Naming;
import pairwright.session.Floor;
import pairwright.session.Gobo;
import pairwright.session.LineUp;
import pairwright.session.Seat;

/** The floor of a line-up, to be drawn. Who is nowhere, or plays what is not known, is left out. */
final class FloorOf {
    private FloorOf() {
    }

    /** With the ids of seats and gobos. */
    static FloorPlan plan(LineUp lineUp, Catalogue catalogue, List<FloorPlan.MicAt> mics, Set<String> marked) {
        return plan(lineUp, catalogue, mics, marked, Seat::id, Gobo::id);
    }

    /** With other ids. */
    static FloorPlan plan(LineUp lineUp, Catalogue catalogue, List<FloorPlan.MicAt> mics, Set<String> marked, Function<Seat, String> seatId, Function<Gobo, String> goboId) {
        Floor floor = lineUp.floor();
        double widthM = sound(floor.widthM());
        double depthM = sound(floor.depthM());
        List<FloorPlan.Who> players = lineUp.seats().stream().filter(seat -> seat.source() != null && catalogue.sources().containsKey(seat.source()))
                .filter(seat -> within(seat.xM(), widthM) && within(seat.yM(), depthM)).map(seat -> new FloorPlan.Who(seatId.apply(seat), name(seat, catalogue), label(seat, catalogue),
                        catalogue.sources().get(seat.source()), seat.xM(), seat.yM(), (seat.facingDegrees() % 360 + 360) % 360, seat.must())).toList();
        List<FloorPlan.Screen> screens = lineUp.gobos().stream()
                .filter(gobo -> within(gobo.x1M(), widthM) && within(gobo.x2M(), widthM) && within(gobo.y1M(), depthM) && within(gobo.y2M(), depthM))
                .map(gobo -> new FloorPlan.Screen(goboId.apply(gobo), goboName(gobo), gobo.x1M(), gobo.y1M(), gobo.x2M(), gobo.y2M(), gobo.heightM())).toList();
        Floor.Patch patch = floor.patch();
        return new FloorPlan(widthM, depthM, players, screens, mics, marked, patch == null || !within(patch.xM(), widthM) || !within(patch.yM(), depthM) ? null
                : new FloorPlan.Box(patch.xM(), patch.yM()), List.of());
    }

    private static double sound(double sizeM) {
        return Math.max(Floor.LEAST_M, Math.min(Floor.MOST_M, sizeM));
    }

    private static boolean within(double placeM, double sizeM) {
        return placeM >= 0 && placeM <= sizeM;
    }

    /** What people call it: "gobo-1" is "Gobo 1". */
    static String goboName(Gobo gobo) {
        return Choices.named(gobo.id());
    }

    /** The player and what is played: "Mara, violin". */
    static String name(Seat seat, Catalogue catalogue) {
        String source = catalogue.sources().containsKey(seat.source()) ? catalogue.sources().get(seat.source()).name() : seat.source();
        return seat.player() == null ? source : seat.player() + ", " + Naming.small(source);
    }

    /** As short as it can be told. */
    static String label(Seat seat, Catalogue catalogue) {
        return seat.player() != null ? seat.player() : name(seat, catalogue);
    }
}
