package pairwright.session;

import java.util.stream.DoubleStream;

/** How far it is along the walls of a room, as a lead lies. */
final class LeadWay {
    /** What is nearer than this is as near. */
    private static final double AS_NEAR_M = 1e-6;

    private final Floor floor;

    LeadWay(Floor floor) {
        this.floor = floor;
    }

    /**
     * From one place to another in metres: straight to the nearest wall, along the walls the shorter way round, and from the nearest wall to the other
     * place. To what is no farther than the nearest wall it goes straight.
     */
    double lengthM(double fromXM, double fromYM, double toXM, double toYM) {
        double straightM = Math.hypot(toXM - fromXM, toYM - fromYM);
        double[] fromWallsM = toWallsM(fromXM, fromYM);
        double fromM = DoubleStream.of(fromWallsM).min().orElseThrow();
        if (straightM <= fromM) {
            return straightM;
        }
        double[] toWallsM = toWallsM(toXM, toYM);
        double toM = DoubleStream.of(toWallsM).min().orElseThrow();
        double shortestM = Double.POSITIVE_INFINITY;
        for (int from = 0; from < fromWallsM.length; from++) {
            for (int to = 0; to < toWallsM.length; to++) {
                if (fromWallsM[from] - fromM < AS_NEAR_M && toWallsM[to] - toM < AS_NEAR_M) {
                    shortestM = Math.min(shortestM, fromM + roundM(from, fromXM, fromYM, to, toXM, toYM) + toM);
                }
            }
        }
        return shortestM;
    }

    /** To the lower, right, upper and left wall of the plan. */
    private double[] toWallsM(double xM, double yM) {
        return new double[] {yM, floor.widthM() - xM, floor.depthM() - yM, xM};
    }

    private double roundM(int from, double fromXM, double fromYM, int to, double toXM, double toYM) {
        double allM = 2 * (floor.widthM() + floor.depthM());
        double apartM = Math.abs(alongM(from, fromXM, fromYM) - alongM(to, toXM, toYM));
        return Math.min(apartM, allM - apartM);
    }

    /** Where the foot on a wall is, along the walls from the lower left corner, first to the right. */
    private double alongM(int wall, double xM, double yM) {
        return switch (wall) {
            case 0 -> xM;
            case 1 -> floor.widthM() + yM;
            case 2 -> 2 * floor.widthM() + floor.depthM() - xM;
            default -> 2 * (floor.widthM() + floor.depthM()) - yM;
        };
    }
}
