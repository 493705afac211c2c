package pairwright.drawing;

/** A player on a floor plan, seen from above, with an arrow where they look. */
final class PlayerGlyph {
    /** A player is about so wide; drawn no narrower than this many units, to be seen at all. */
    private static final double PERSON_M = 0.46;
    private static final double LEAST_PX = 15;
    private static final double ARROW = 15;
    private static final double RING = 4;
    /** Labels keep this far off the middle even of something large, and may lie on its far ends. */
    private static final double MOST_KEPT_PX = 17;

    private final FloorPlan.Who who;
    private final FloorScale scale;
    private final Outline outline;
    private final double pxPerM;
    private final double reachPx;
    private final double forwardPx;

    PlayerGlyph(FloorPlan.Who who, FloorScale scale) {
        this.who = who;
        this.scale = scale;
        this.outline = BodyFromAbove.of(who.source(), Bodies.of(who.source()));
        this.pxPerM = Math.max(scale.pxPerM(), LEAST_PX / PERSON_M);
        double reachM = 0;
        double forwardM = 0;
        for (Outline.Line line : outline.lines()) {
            for (int i = 0; i < line.xy().length; i += 2) {
                reachM = Math.max(reachM, Math.hypot(line.xy()[i], line.xy()[i + 1]));
                forwardM = Math.max(forwardM, line.xy()[i]);
            }
        }
        this.reachPx = Math.max(8, reachM * pxPerM);
        this.forwardPx = Math.max(4, forwardM * pxPerM);
    }

    boolean enlarged() {
        return pxPerM > scale.pxPerM();
    }

    void keepFree(Labels labels) {
        double x = scale.x(who.xM());
        double y = scale.y(who.yM());
        labels.keepFree(Labels.Box.round(x, y, Math.min(MOST_KEPT_PX, reachPx)));
        double facing = Math.toRadians(90 - who.facingDegrees());
        double tip = forwardPx + ARROW + 3;
        labels.passing(x, y, x + tip * Math.cos(facing), y - tip * Math.sin(facing));
        for (Outline.Line line : outline.lines()) {
            if (line.kind() == Outline.Kind.BODY) {
                for (int i = 0; i + 3 < line.xy().length; i += 2) {
                    labels.outline(x + right(line, i), y - up(line, i), x + right(line, i + 2), y - up(line, i + 2));
                }
            }
        }
    }

    /** To the right on the plan, of a point forward and to the left of the player. */
    private double right(Outline.Line line, int at) {
        double facing = Math.toRadians(who.facingDegrees());
        return pxPerM * (line.xy()[at] * Math.sin(facing) - line.xy()[at + 1] * Math.cos(facing));
    }

    private double up(Outline.Line line, int at) {
        double facing = Math.toRadians(who.facingDegrees());
        return pxPerM * (line.xy()[at] * Math.cos(facing) + line.xy()[at + 1] * Math.sin(facing));
    }

    /** Round the middle, and across what reaches far: the ring is a mark and no outline. */
    private double ringPx() {
        return Math.min(MOST_KEPT_PX, reachPx) + RING;
    }

    /** Into a group whose origin is the place of the player. */
    void write(Svg svg, boolean marked) {
        svg.open("g", "class", "turns", "transform", "rotate(" + Svg.number(who.facingDegrees() - 90) + ")");
        if (!who.must()) {
            svg.leaf("circle", "class", "axis ring", "cx", 0, "cy", 0, "r", ringPx(), "fill", "none", "stroke", "#6a675f", "stroke-width", 1.25, "stroke-dasharray", "4 4");
        }
        if (marked) {
            svg.leaf("circle", "class", "wanted ring", "cx", 0, "cy", 0, "r", ringPx() + RING, "fill", "none", "stroke", Look.WANTED.colour(), "stroke-width", 2.5);
        }
        for (Outline.Line line : outline.lines()) {
            StringBuilder path = new StringBuilder(line.xy().length * 7);
            for (int i = 0; i < line.xy().length; i += 2) {
                path.append(i == 0 ? 'M' : 'L');
                Svg.append(path, line.xy()[i] * pxPerM);
                path.append(' ');
                Svg.append(path, -line.xy()[i + 1] * pxPerM);
            }
            path.append(line.closed() ? "Z" : "");
            switch (line.kind()) {
                case BODY -> svg.leaf("path", "class", "source", "d", path, "fill", line.closed() ? "#efe9dc" : "none", "stroke", "#1d1d1b", "stroke-width", 1.25, "stroke-linejoin", "round");
                case DETAIL -> svg.leaf("path", "class", "source", "d", path, "fill", "none", "stroke", "#1d1d1b", "stroke-width", 0.6);
                case PLAYER -> svg.leaf("path", "class", "faint", "d", path, "fill", "none", "stroke", "#6a675f", "stroke-width", 1, "stroke-dasharray", "3 2");
            }
        }
        double from = forwardPx + 2;
        svg.leaf("path", "class", "axis looks", "d", "M" + Svg.number(from) + " 0h" + Svg.number(ARROW) + "m-6 -4l6 4l-6 4", "fill", "none", "stroke", "#1d1d1b", "stroke-width", 1.5);
        svg.close();
    }
}
