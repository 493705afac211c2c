package pairwright.session;

import java.util.List;
import pairwright.model.Catalogue;

/** Where on a floor somebody could sit: within the walls, not on top of anybody and not in a gobo. */
final class FloorSpace {
    private static final double FROM_GOBOS_M = 0.4;
    private static final double MICROPHONE_FROM_WALLS_M = 0.1;

    private final LineUp lineUp;
    private final double fromWallsM;
    private final double betweenSeatsM;

    /** @param catalogue says how near a wall and each other players may sit */
    FloorSpace(LineUp lineUp, Catalogue catalogue) {
        this.lineUp = lineUp;
        this.fromWallsM = catalogue.custom("player-from-wall");
        this.betweenSeatsM = catalogue.custom("least-between-players");
    }

    /** How far from a wall a player sits at the least. */
    double fromWallsM() {
        return fromWallsM;
    }

    /** Whether a seat fits where it is put, and its microphones with it; one that only turns has room where it is. */
    boolean fits(Seat moved, List<Line.Spot> microphones) {
        Seat before = lineUp.seat(moved.id()).orElseThrow();
        boolean stays = before.xM() == moved.xM() && before.yM() == moved.yM();
        return (stays || free(moved)) && microphones.stream().allMatch(spot -> within(spot.xM(), spot.yM(), MICROPHONE_FROM_WALLS_M)
                && lineUp.gobos().stream().noneMatch(gobo -> crosses(gobo, moved.xM(), moved.yM(), spot.xM(), spot.yM())));
    }

    /** Whether somebody else sits so close that the two are one, as the drums of a kit are. */
    boolean together(Seat seat) {
        return lineUp.seats().stream().anyMatch(other -> !other.id().equals(seat.id()) && Math.hypot(other.xM() - seat.xM(), other.yM() - seat.yM()) < betweenSeatsM);
    }

    private boolean free(Seat moved) {
        return within(moved.xM(), moved.yM(), fromWallsM)
                && lineUp.seats().stream().filter(other -> !other.id().equals(moved.id()))
                        .allMatch(other -> Math.hypot(other.xM() - moved.xM(), other.yM() - moved.yM()) >= betweenSeatsM)
                && lineUp.gobos().stream().allMatch(gobo -> apartM(gobo, moved.xM(), moved.yM()) >= FROM_GOBOS_M);
    }

    private boolean within(double xM, double yM, double apartM) {
        Floor floor = lineUp.floor();
        return xM >= apartM && xM <= floor.widthM() - apartM && yM >= apartM && yM <= floor.depthM() - apartM;
    }

    static double apartM(Gobo gobo, double xM, double yM) {
        double alongXM = gobo.x2M() - gobo.x1M();
        double alongYM = gobo.y2M() - gobo.y1M();
        double squared = alongXM * alongXM + alongYM * alongYM;
        double share = squared == 0 ? 0 : ((xM - gobo.x1M()) * alongXM + (yM - gobo.y1M()) * alongYM) / squared;
        double nearest = Math.max(0, Math.min(1, share));
        return Math.hypot(xM - gobo.x1M() - nearest * alongXM, yM - gobo.y1M() - nearest * alongYM);
    }

    /** Whether a gobo stands between two places. */
    static boolean crosses(Gobo gobo, double x1M, double y1M, double x2M, double y2M) {
        return turn(gobo.x1M(), gobo.y1M(), gobo.x2M(), gobo.y2M(), x1M, y1M) * turn(gobo.x1M(), gobo.y1M(), gobo.x2M(), gobo.y2M(), x2M, y2M) < 0
                && turn(x1M, y1M, x2M, y2M, gobo.x1M(), gobo.y1M()) * turn(x1M, y1M, x2M, y2M, gobo.x2M(), gobo.y2M()) < 0;
    }

    /** Above 0 where the third place lies to the left of the way from the first to the second. */
    private static double turn(double x1M, double y1M, double x2M, double y2M, double xM, double yM) {
        return (x2M - x1M) * (yM - y1M) - (y2M - y1M) * (xM - x1M);
    }
}
