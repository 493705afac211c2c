package pairwright.lab;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import pairwright.advice.Offer;
import pairwright.advice.StoodAt;
import pairwright.session.Line;

/**
 * A spot as somebody marks it on a plan, judged.
 *
 * @param xM from the left wall
 * @param yM from the lower wall
 * @param lookDegrees where it looks: 0 up the plan, 90 to the right
 * @param at the same as seen from the source
 * @param stood what it is worth as it looks
 */
record Spotted(double xM, double yM, double lookDegrees, OnFloor.At at, StoodAt stood) {
    /** So many of what the planner tries are looked at as marks: one of them is the best, or as good. */
    private static final int TRIED = 3;

    /** Empty where it cannot be judged. */
    static Optional<Spotted> of(OnFloor floor, double xM, double yM, double lookDegrees) {
        return floor.at(xM, yM).map(at -> new Spotted(xM, yM, lookDegrees, at, floor.judged(at, List.of(floor.turnedDegrees(at, lookDegrees))).get(0)));
    }

    /** A turn at a spot that is chosen out of all, to whole degrees and centimetres as one can mark it; empty where nothing may stand there. */
    static Optional<Spotted> turned(OnFloor floor, Line.Spot spot, Function<List<StoodAt>, Optional<StoodAt>> choice) {
        double xM = Math.round(spot.xM() * 100) / 100.0;
        double yM = Math.round(spot.yM() * 100) / 100.0;
        return floor.at(xM, yM).flatMap(at -> choice.apply(floor.judged(at, OnFloor.turns(at)))
                .map(best -> new Spotted(xM, yM, OnFloor.marked(at, OneMic.mic(best.offer()).aimDegrees()), at, best)));
    }

    /** The best of some that were tried. */
    static Optional<Spotted> best(OnFloor floor, List<Offer> tried) {
        return tried.stream().limit(TRIED).flatMap(offer -> turned(floor, floor.spot(offer), OnFloor::best).stream())
                .max(Comparator.comparingLong((Spotted spot) -> spot.stood().offer().centipoints()).thenComparingDouble(spot -> OnFloor.separationDb(spot.stood().offer())));
    }

    double points() {
        return OneMic.points(stood.offer());
    }
}
