package pairwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A frame with two axes, and what is drawn in it. Nothing leaves the frame: a curve is cut where it does. */
final class Plot {
    private static final double MARKER = 3.6;
    private static final double LEADER = 20;
    private static final double LINE = Type.SIZE * Type.LINE;
    private static final double BETWEEN_NAMES = 4;
    /** Where it is written what the axis from bottom to top measures. */
    private static final double NAME = 14;

    private final Svg svg;
    private final Scale x;
    private final Scale y;
    private final double left;
    private final double top;
    private final double right;
    private final double bottom;

    /**
     * A name at the end of a curve.
     *
     * @param look of the curve
     * @param lines the name, broken
     * @param y where the curve ends
     */
    record End(Look look, List<String> lines, double y) {
        private double height() {
            return lines.size() * LINE + BETWEEN_NAMES;
        }
    }

    Plot(Svg svg, Scale x, Scale y, double left, double top, double right, double bottom) {
        this.svg = svg;
        this.x = x;
        this.y = y;
        this.left = left;
        this.top = top;
        this.right = right;
        this.bottom = bottom;
    }

    /** How wide a margin the names at the ends of curves need, of which each line may be so wide. */
    static double margin(List<List<String>> names) {
        return LEADER + names.stream().flatMap(List::stream).mapToDouble(line -> Type.width(line, Type.SIZE)).max().orElse(-LEADER);
    }

    /** Frame, hairlines at the ticks with their numbers, what the axes measure; the line of nought is stronger. */
    void frame(List<Scale.Tick> across, List<Scale.Tick> up, String acrossName, String upName) {
        StringBuilder hairlines = new StringBuilder();
        double free = Double.NEGATIVE_INFINITY;
        svg.open("g", "class", "label faint", "fill", "#4a4a46", "font-size", Type.SMALL);
        for (Scale.Tick tick : across) {
            double at = x.at(tick.value());
            line(hairlines, at, top, at, bottom);
            double half = Type.width(tick.text(), Type.SMALL) / 2;
            if (at - half > free && at + half <= Svg.PLOT_WIDTH) {
                svg.leafText("text", tick.text(), "x", at, "y", bottom + 14, "text-anchor", "middle");
                free = at + half + 1;
            }
        }
        for (Scale.Tick tick : up) {
            double at = y.at(tick.value());
            line(hairlines, left, at, right, at);
            svg.leafText("text", tick.text(), "x", left - 5, "y", at + 4, "text-anchor", "end");
        }
        svg.leafText("text", acrossName, "x", right, "y", bottom + 30, "text-anchor", "end");
        svg.leafText("text", upName, "x", 2, "y", NAME);
        svg.close();
        svg.leaf("path", "class", "grid", "d", hairlines, "fill", "none", "stroke", "#c9c5ba", "stroke-width", 0.7);
        svg.leaf("rect", "class", "axis", "x", left, "y", top, "width", right - left, "height", bottom - top, "fill", "none", "stroke", "#4a4a46");
        if (y.least() < 0 && y.most() > 0) {
            StringBuilder nought = new StringBuilder();
            line(nought, left, y.at(0), right, y.at(0));
            svg.leaf("path", "class", "axis", "d", nought, "fill", "none", "stroke", "#4a4a46");
        }
    }

    /** A curve through its points, in the look's own stroke; markers where it has a value, unless there are too many. */
    void curve(Look look, double[] xs, double[] ys, boolean marked) {
        StringBuilder path = new StringBuilder(xs.length * 12);
        boolean down = false;
        for (int i = 1; i < xs.length; i++) {
            down = piece(path, xs[i - 1], ys[i - 1], xs[i], ys[i], down);
        }
        if (!path.isEmpty()) {
            svg.leaf("path", "class", look.style(), "d", path, "fill", "none", "stroke", look.colour(), "stroke-width", look.stroke(), "stroke-dasharray", look.dash(),
                    "stroke-linejoin", "round");
        }
        for (int i = 0; marked && i < xs.length; i++) {
            if (x.holds(xs[i]) && y.holds(ys[i])) {
                marker(svg, look, x.at(xs[i]), y.at(ys[i]));
            }
        }
    }

    /** Where the points of a curve stand in the picture, across and up in turn; those outside the frame at its edge. */
    double[] places(double[] xs, double[] ys) {
        double[] places = new double[2 * xs.length];
        for (int i = 0; i < xs.length; i++) {
            places[2 * i] = x.at(xs[i]);
            places[2 * i + 1] = y.at(inside(ys[i]));
        }
        return places;
    }

    /** How high in the picture a curve ends that may leave the frame before. */
    double lastHeight(double[] xs, double[] ys) {
        for (int i = xs.length - 1; i >= 0; i--) {
            if (x.holds(xs[i]) && !Double.isNaN(ys[i])) {
                return y.at(inside(ys[i]));
            }
        }
        return bottom;
    }

    /** What lies between two curves, shaded. */
    void between(double[] xs, double[] lower, double[] upper, String style, String colour) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < xs.length; i++) {
            point(path, i == 0 ? 'M' : 'L', x.at(xs[i]), y.at(inside(upper[i])));
        }
        for (int i = xs.length - 1; i >= 0; i--) {
            point(path, 'L', x.at(xs[i]), y.at(inside(lower[i])));
        }
        svg.leaf("path", "class", style, "d", path.append('Z'), "fill", colour, "fill-opacity", 0.16, "stroke", "none");
    }

    /** A place across, from top to bottom. */
    void upright(double value, String style) {
        StringBuilder path = new StringBuilder();
        line(path, x.at(value), top, x.at(value), bottom);
        svg.leaf("path", "class", style, "d", path, "fill", "none", "stroke", "#4a4a46", "stroke-dasharray", "3 3");
    }

    /** Names at the ends of curves, moved apart where they would meet, each joined to its end. */
    void ends(List<End> ends) {
        List<End> ordered = new ArrayList<>(ends);
        ordered.sort(Comparator.comparingDouble(End::y));
        double[] middles = apart(ordered, top - BETWEEN_NAMES, bottom + LINE);
        for (int i = 0; i < middles.length; i++) {
            End end = ordered.get(i);
            StringBuilder leader = new StringBuilder();
            line(leader, right + 1, end.y(), right + LEADER - 8, middles[i]);
            svg.leaf("path", "class", end.look().style(), "d", leader, "fill", "none", "stroke", end.look().colour());
            marker(svg, end.look(), right + LEADER - 8, middles[i]);
            lines(svg, end.lines(), right + LEADER - 1, middles[i], "start", "label");
        }
    }

    /** Lines of a text about a height. */
    static void lines(Svg svg, List<String> lines, double atX, double middle, String anchor, String style) {
        double baseline = middle - (lines.size() - 1) * LINE / 2 + Type.SIZE * 0.35;
        for (String line : lines) {
            svg.leafText("text", line, "class", style, "x", atX, "y", baseline, "text-anchor", anchor.equals("start") ? null : anchor, "font-size", Type.SIZE,
                    "fill", "#1d1d1b");
            baseline += LINE;
        }
    }

    /** What tells a curve from the others without its colour. */
    static void marker(Svg svg, Look look, double atX, double atY) {
        String style = look.style();
        String colour = look.colour();
        switch (look.marker()) {
            case ROUND -> svg.leaf("circle", "class", style, "cx", atX, "cy", atY, "r", MARKER, "fill", colour);
            case SQUARE -> svg.leaf("rect", "class", style, "x", atX - MARKER, "y", atY - MARKER, "width", 2 * MARKER, "height", 2 * MARKER, "fill", colour);
            case DIAMOND -> svg.leaf("path", "class", style, "d", polygon(atX, atY, 0, -1.4, 1.4, 0, 0, 1.4, -1.4, 0), "fill", colour);
            case TRIANGLE -> svg.leaf("path", "class", style, "d", polygon(atX, atY, 0, -1.3, 1.3, 1, -1.3, 1), "fill", colour);
            case CROSS -> svg.leaf("path", "class", style, "d", polygon(atX, atY, -1, -1, 1, 1).append(polygon(atX, atY, -1, 1, 1, -1)), "fill", "none",
                    "stroke", colour, "stroke-width", 2);
            case NONE -> {
            }
        }
    }

    static void line(StringBuilder path, double fromX, double fromY, double toX, double toY) {
        point(path, 'M', fromX, fromY);
        point(path, 'L', toX, toY);
    }

    static void point(StringBuilder path, char command, double atX, double atY) {
        path.append(command);
        Svg.append(path, atX);
        path.append(' ');
        Svg.append(path, atY);
    }

    private static StringBuilder polygon(double atX, double atY, double... steps) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < steps.length; i += 2) {
            point(path, i == 0 ? 'M' : 'L', atX + MARKER * steps[i], atY + MARKER * steps[i + 1]);
        }
        return path.append('Z');
    }

    private double inside(double value) {
        return Math.max(y.least(), Math.min(y.most(), value));
    }

    /** One piece of a curve, cut at the top and bottom of the frame; says whether the pen is still down at its end. */
    private boolean piece(StringBuilder path, double fromX, double fromY, double toX, double toY, boolean down) {
        if (!Double.isFinite(fromY) || !Double.isFinite(toY) || !x.holds(fromX) || !x.holds(toX)
                || Math.max(fromY, toY) < y.least() || Math.min(fromY, toY) > y.most()) {
            return false;
        }
        double fromAt = x.at(fromX);
        double toAt = x.at(toX);
        double from = inside(fromY);
        double to = inside(toY);
        double rise = toY - fromY;
        if (!down) {
            point(path, 'M', from == fromY ? fromAt : fromAt + (toAt - fromAt) * (from - fromY) / rise, y.at(from));
        }
        point(path, 'L', to == toY ? toAt : fromAt + (toAt - fromAt) * (to - fromY) / rise, y.at(to));
        return to == toY;
    }

    /** Middles for names that want to stand at given heights, in order and without meeting, within two heights if they fit at all. */
    static double[] apart(List<End> ordered, double from, double to) {
        double[] middles = new double[ordered.size()];
        double free = from;
        for (int i = 0; i < middles.length; i++) {
            double half = ordered.get(i).height() / 2;
            middles[i] = Math.max(ordered.get(i).y(), free + half);
            free = middles[i] + half;
        }
        double limit = to;
        for (int i = middles.length - 1; i >= 0; i--) {
            double half = ordered.get(i).height() / 2;
            middles[i] = Math.min(middles[i], limit - half);
            limit = middles[i] - half;
        }
        return middles;
    }
}
