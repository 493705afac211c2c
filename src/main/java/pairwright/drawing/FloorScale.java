package pairwright.drawing;

/**
 * Where a place of the floor stands in the picture.
 *
 * @param leftPx where the left wall is
 * @param bottomPx where the lower wall is
 * @param pxPerM units of the picture for a metre
 * @param heightPx of the picture
 */
record FloorScale(double leftPx, double bottomPx, double pxPerM, double heightPx) {
    static final double WIDTH = Svg.PLOT_WIDTH;
    private static final double LEFT = 26;
    private static final double RIGHT = 14;
    private static final double TOP = 24;
    private static final double BELOW = 46;
    private static final double MOST_DEPTH = 460;
    private static final double[] METRES = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50};
    private static final double LONGEST_BAR = 90;
    private static final double CLOSEST_GRID = 16;

    /** As large as the picture is wide, unless it would be too long then. */
    static FloorScale of(double widthM, double depthM) {
        double room = WIDTH - LEFT - RIGHT;
        double pxPerM = Math.min(room / widthM, MOST_DEPTH / depthM);
        double left = LEFT + (room - widthM * pxPerM) / 2;
        double depthPx = depthM * pxPerM;
        return new FloorScale(left, TOP + depthPx, pxPerM, TOP + depthPx + BELOW);
    }

    double x(double xM) {
        return leftPx + xM * pxPerM;
    }

    double y(double yM) {
        return bottomPx - yM * pxPerM;
    }

    /** The longest round length that is still short in the picture, in metres. */
    double barM(Reader reader) {
        double lengthM = METRES[0];
        for (double each : METRES) {
            double metres = unitM(reader) * each;
            lengthM = metres * pxPerM <= LONGEST_BAR ? metres : lengthM;
        }
        return lengthM;
    }

    /** From line to line of the grid, in metres. */
    double gridM(Reader reader) {
        for (double each : METRES) {
            if (each >= 1 && unitM(reader) * each * pxPerM >= CLOSEST_GRID) {
                return unitM(reader) * each;
            }
        }
        return unitM(reader) * METRES[METRES.length - 1];
    }

    private static double unitM(Reader reader) {
        return reader.imperial() ? Tape.FOOT_M : 1;
    }
}
