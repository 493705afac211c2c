package pairwright.drawing;

/** A microphone on a floor plan: a dot where it is, an arrow along its axis, dashed rays where it hears least, and its number close by. */
final class FloorMic {
    private static final double AXIS = 20;
    private static final double NULL_TO = 19;
    private static final double NUMBER = 8;
    private static final double[] AROUND_DEGREES = {180, 140, 220, 100, 260, 60, 300};

    private final FloorPlan.MicAt mic;
    private final double x;
    private final double y;
    private double numberX;
    private double numberY;

    FloorMic(FloorPlan.MicAt mic, FloorScale scale) {
        this.mic = mic;
        this.x = scale.x(mic.xM());
        this.y = scale.y(mic.yM());
    }

    void keepFree(Labels labels) {
        labels.keepFree(Labels.Box.round(x, y, 4));
        if (mic.headingDegrees() != null) {
            labels.passing(x, y, x + AXIS * right(mic.headingDegrees()), y - AXIS * up(mic.headingDegrees()));
        }
    }

    /** Behind it or round it, as near as there is room; behind it where there is none. */
    void findNumber(Labels labels) {
        double heading = mic.headingDegrees() == null ? 0 : mic.headingDegrees();
        numberX = x + 15 * right(heading + 180);
        numberY = y - 15 * up(heading + 180);
        for (double reach = 15; reach <= 63; reach += 8) {
            for (double around : AROUND_DEGREES) {
                double toX = x + reach * right(heading + around);
                double toY = y - reach * up(heading + around);
                Labels.Box box = Labels.Box.round(toX, toY, NUMBER + 1);
                if (labels.isFree(box)) {
                    labels.keepFree(box);
                    numberX = toX;
                    numberY = toY;
                    return;
                }
            }
        }
        labels.keepFree(Labels.Box.round(numberX, numberY, NUMBER + 1));
    }

    void write(Svg svg) {
        String colour = Look.ONE.colour();
        svg.open("g", "class", "one floor-mic", "data-mic", mic.number(), "stroke", colour, "fill", colour);
        svg.leaf("line", "class", "one", "x1", x, "y1", y, "x2", numberX, "y2", numberY, "stroke", colour, "stroke-width", 1);
        for (double degrees : FloorWords.nullsDegrees(mic)) {
            svg.leaf("line", "class", "null", "x1", x + 5 * right(degrees), "y1", y - 5 * up(degrees), "x2", x + NULL_TO * right(degrees), "y2", y - NULL_TO * up(degrees),
                    "stroke", "#4a4a46", "stroke-width", 1.25, "stroke-dasharray", "3 2.5");
        }
        if (mic.headingDegrees() != null) {
            svg.leaf("path", "class", "one aim", "transform", FloorDrawing.at(x, y) + " rotate(" + Svg.number(mic.headingDegrees() - 90) + ")", "d", "M0 0H" + Svg.number(AXIS) + "m-6 -4l6 4l-6 4",
                    "fill", "none", "stroke", colour, "stroke-width", 1.75);
        }
        svg.leaf("circle", "class", "one", "cx", x, "cy", y, "r", 3, "fill", colour, "stroke", colour);
        svg.leaf("circle", "class", "one", "cx", numberX, "cy", numberY, "r", NUMBER, "fill", colour, "stroke", colour);
        svg.leafText("text", String.valueOf(mic.number()), "class", "on-mark", "x", numberX, "y", numberY + 4, "text-anchor", "middle", "font-family", "sans-serif",
                "font-size", Type.SMALL, "font-weight", "bold", "stroke", "none", "fill", "#fcfaf5");
        svg.close();
    }

    private static double right(double headingDegrees) {
        return Math.sin(Math.toRadians(headingDegrees));
    }

    private static double up(double headingDegrees) {
        return Math.cos(Math.toRadians(headingDegrees));
    }
}
