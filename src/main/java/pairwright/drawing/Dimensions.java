package pairwright.drawing;

import pairwright.model.Mount;
import pairwright.model.Standpoint;

/** What is measured in a picture: distances, heights, angles, and the bar that gives the scale. */
final class Dimensions {
    private static final double[] METRIC_M = {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20};
    private static final double[] IMPERIAL_IN = {0.5, 1, 2, 3, 6, 12, 24, 60, 120, 240, 600};
    private static final double INCH_M = 0.0254;
    private static final double LONGEST_BAR = 90;
    private static final double MARGIN = 12;
    /** Of a distance, so much goes along the floor where it is said as it is, seen from above. */
    private static final double LEVEL_SHARE = 0.985;
    /** Nobody measures less than this along the floor. */
    private static final double SHORT_M = 0.3;
    private static final double SEEN = 16;
    private static final double LEAST_ANGLE_DEGREES = 9;
    private static final double AGREES_DEGREES = 2;

    private final Svg svg;
    private final Frame frame;
    private final Labels labels;
    private final Reader reader;

    Dimensions(Svg svg, Frame frame, Labels labels, Reader reader) {
        this.svg = svg;
        this.frame = frame;
        this.labels = labels;
        this.reader = reader;
    }

    void scaleBar(boolean side) {
        double lengthM = 0;
        for (double each : reader.imperial() ? IMPERIAL_IN : METRIC_M) {
            double metres = reader.imperial() ? each * INCH_M : each;
            lengthM = lengthM == 0 || metres * frame.scalePxPerM() <= LONGEST_BAR ? metres : lengthM;
        }
        double y = frame.heightPx() - MARGIN;
        double floorY = frame.y(0);
        // not across the floor
        y = side && Math.abs(floorY + 2 - y) < 13 ? floorY - 13 : y;
        double right = MARGIN + lengthM * frame.scalePxPerM();
        svg.leaf("line", "class", "axis scale", "stroke", "#1d1d1b", "stroke-width", 2.5, "x1", MARGIN, "y1", y, "x2", right, "y2", y);
        svg.leaf("path", "class", "axis", "d", "M" + Svg.number(MARGIN) + " " + Svg.number(y - 4) + "v8M" + Svg.number(right) + " " + Svg.number(y - 4) + "v8", "stroke", "#1d1d1b", "stroke-width", 1, "fill", "none");
        String text = reader.distance(lengthM);
        double textX = right + 7;
        text(text, textX, y + 4.4);
        labels.keepFree(new Labels.Box(MARGIN - 2, y - 9, textX + Type.width(text, Type.SIZE) + 2, y + 9));
    }

    private void text(String text, double x, double y) {
        svg.leafText("text", text, "class", "label", "x", x, "y", y, "font-family", "sans-serif", "font-size", Type.SIZE, "fill", "#1d1d1b", "stroke", "#fcfaf5", "stroke-width", 3,
                "stroke-linejoin", "round", "paint-order", "stroke");
    }

    /** What a distance is called in a view: as it is, or what of it goes along the floor; null where too little of it does. */
    static String called(View.Seen mic, boolean above, Reader reader) {
        double distanceM = mic.mic().placement().distanceM();
        double shownM = mic.surface().apartM(mic.place());
        if (!above || shownM >= distanceM * LEVEL_SHARE) {
            return reader.distance(distanceM);
        }
        return mic.mic().steep() ? null : reader.distance(shownM) + (shownM < SHORT_M ? " to the side" : " along the floor");
    }

    void distance(View.Seen mic, boolean above, String prefix) {
        double fromX = frame.x(mic.surface());
        double fromY = frame.y(mic.surface());
        double toX = frame.x(mic.place());
        double toY = frame.y(mic.place());
        double length = Math.hypot(toX - fromX, toY - fromY);
        String called = called(mic, above, reader);
        if (length < 3 || called == null) {
            return;
        }
        double acrossX = (toY - fromY) / length * 5;
        double acrossY = -(toX - fromX) / length * 5;
        svg.leaf("line", "class", "axis distance d" + mic.mic().number(), "stroke", "#1d1d1b", "stroke-width", 1, "x1", fromX, "y1", fromY, "x2", toX, "y2", toY);
        svg.leaf("path", "class", "axis", "stroke", "#1d1d1b", "stroke-width", 1, "fill", "none", "d", "M" + Svg.number(fromX - acrossX) + " " + Svg.number(fromY - acrossY) + "L"
                + Svg.number(fromX + acrossX) + " " + Svg.number(fromY + acrossY) + "M" + Svg.number(toX - acrossX) + " " + Svg.number(toY - acrossY) + "L"
                + Svg.number(toX + acrossX) + " " + Svg.number(toY + acrossY));
        labels.passing(fromX, fromY, toX, toY);
        double wanted = Math.toDegrees(Math.atan2(-(toY - fromY), toX - fromX)) + 90;
        labels.must(Type.lines(prefix + called, Type.SIZE, 92), "Distance", (fromX + toX) / 2, (fromY + toY) / 2, Math.sin(Math.toRadians(wanted)) < 0 ? wanted + 180 : wanted);
    }

    /** Whether the angle off the axis of the source is true in this view and worth drawing. */
    static boolean showsOffAxis(View.Seen mic, View view) {
        Standpoint at = mic.mic().standpoint();
        View.Flat tip = view.flat(at.surface().plus(at.axis()));
        double seen = away(mic.surface().towardDegrees(tip), mic.surface().towardDegrees(mic.place()));
        return mic.surface().apartM(tip) > 0.97 && at.offAxisDegrees() >= LEAST_ANGLE_DEGREES && at.offAxisDegrees() <= 171
                && Math.abs(seen - at.offAxisDegrees()) <= AGREES_DEGREES && mic.surface().apartM(mic.place()) > 0.5 * mic.mic().placement().distanceM();
    }

    private static double away(double one, double other) {
        double apart = Math.abs(one - other) % 360;
        return apart > 180 ? 360 - apart : apart;
    }

    /** The main axis of the source and the angle between it and the line to the microphone. */
    void offAxis(View.Seen mic, View view) {
        if (!showsOffAxis(mic, view)) {
            return;
        }
        Standpoint at = mic.mic().standpoint();
        double axis = mic.surface().towardDegrees(view.flat(at.surface().plus(at.axis())));
        double line = mic.surface().towardDegrees(mic.place());
        double x = frame.x(mic.surface());
        double y = frame.y(mic.surface());
        double length = Math.hypot(frame.x(mic.place()) - x, frame.y(mic.place()) - y);
        if (length < SEEN) {
            return;
        }
        double round = Math.min(34, length * 0.62);
        double a = Math.toRadians(axis);
        double b = Math.toRadians(line);
        double reach = Math.min(frame.toEdge(x, y, a, 3), Math.max(round + 12, Math.min(length * 0.8, 90)));
        svg.leaf("line", "class", "axis", "stroke", "#6a675f", "stroke-width", 1, "stroke-dasharray", "9 3 2 3", "x1", x, "y1", y, "x2", x + reach * Math.cos(a), "y2", y - reach * Math.sin(a));
        double turn = ((line - axis) % 360 + 540) % 360 - 180;
        svg.leaf("path", "class", "axis", "stroke", "#6a675f", "stroke-width", 1, "fill", "none", "d", "M" + Svg.number(x + round * Math.cos(a)) + " " + Svg.number(y - round * Math.sin(a)) + "A"
                + Svg.number(round) + " " + Svg.number(round) + " 0 0 " + (turn > 0 ? 0 : 1) + " " + Svg.number(x + round * Math.cos(b)) + " " + Svg.number(y - round * Math.sin(b)));
        double middle = Math.toRadians(axis + turn / 2);
        labels.passing(x, y, x + reach * Math.cos(a), y - reach * Math.sin(a));
        labels.put(reader.number(at.offAxisDegrees(), 0) + "\u00b0", "label", x + round * Math.cos(middle), y - round * Math.sin(middle), axis + turn / 2);
    }

    /** From the floor, or from the lower edge where the floor is farther down, up to a microphone. */
    void height(View.Seen mic, String prefix) {
        double heightM = mic.mic().heightM();
        double micX = frame.x(mic.place());
        double micY = frame.y(mic.place());
        double floorY = frame.y(0);
        double side = frame.x(mic.surface()) <= micX ? 1 : -1;
        // between a microphone on a boom and its pole, beyond a straight stand
        boolean onBoom = mic.mic().placement().mount() == Mount.BOOM || mic.mic().placement().mount() == Mount.OVERHEAD;
        double x = Math.max(16, Math.min(Frame.WIDTH - 16, micX + side * (onBoom ? 30 : 48)));
        boolean floorSeen = floorY <= frame.heightPx() - 4;
        double lowY = floorSeen ? floorY : frame.heightPx() - 4;
        if (lowY - micY > 8) {
            svg.leaf("line", "class", "axis height", "stroke", "#6a675f", "stroke-width", 1, "x1", x, "y1", micY, "x2", x, "y2", lowY);
            svg.leaf("path", "class", "axis", "stroke", "#6a675f", "stroke-width", 1, "fill", "none", "d", "M" + Svg.number(x - 4) + " " + Svg.number(micY) + "h8"
                    + (floorSeen ? "M" + Svg.number(x - 4) + " " + Svg.number(lowY) + "h8" : "M" + Svg.number(x - 4) + " " + Svg.number(lowY - 7) + "l4 7l4 -7"));
            labels.passing(x, micY, x, lowY);
            labels.must(Type.lines(prefix + reader.distance(rounded(heightM)) + (floorSeen ? "" : " above floor"), Type.SIZE, 64), "Height", x, (micY + lowY) / 2, side > 0 ? 0 : 180);
        }
    }

    /** Heights are told to five centimetres: a stand is set by eye. */
    static double rounded(double heightM) {
        return heightM < 0.3 ? Math.rint(heightM * 100) / 100 : Math.rint(heightM * 20) / 20;
    }
}
