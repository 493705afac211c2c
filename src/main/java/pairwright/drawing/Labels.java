package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds room for labels: none lies on another, on a microphone or on the edge. What finds no room is not written, and whoever asked
 * is told, to say it below the picture.
 */
final class Labels {
    private static final double SIZE = Type.SIZE;
    private static final double EDGE = 3;
    private static final double GAP = 2;
    private static final double FARTHEST = 110;
    /** So far a label goes to keep off an outline. */
    private static final double OFF_OUTLINE = 40;
    private static final int ROUND = 16;

    private final double width;
    private final double height;
    private final List<Box> taken = new ArrayList<>();
    private final List<Box> crossed = new ArrayList<>();
    private final List<Box> outlines = new ArrayList<>();
    private final List<Placed> placed = new ArrayList<>();
    private final List<String> without = new ArrayList<>();

    /** Something that takes room. */
    record Box(double leftPx, double topPx, double rightPx, double bottomPx) {
        static Box round(double x, double y, double reach) {
            return new Box(x - reach, y - reach, x + reach, y + reach);
        }

        boolean meets(Box other) {
            return leftPx < other.rightPx && other.leftPx < rightPx && topPx < other.bottomPx && other.topPx < bottomPx;
        }
    }

    /** A label that found room. */
    record Placed(List<String> lines, Box box, String style, double anchorXPx, double anchorYPx, boolean led) {
    }

    Labels(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** Something no label may lie on. */
    void keepFree(Box box) {
        taken.add(box);
    }

    /** Points along a line that labels had better not lie on. */
    void passing(double fromX, double fromY, double toX, double toY) {
        along(crossed, fromX, fromY, toX, toY);
    }

    /** The same for a line of the source, which gives way sooner. */
    void outline(double fromX, double fromY, double toX, double toY) {
        along(outlines, fromX, fromY, toX, toY);
    }

    private void along(List<Box> boxes, double fromX, double fromY, double toX, double toY) {
        int steps = Math.max(1, (int) (Math.hypot(toX - fromX, toY - fromY) / 6));
        for (int i = 0; i <= steps; i++) {
            double x = fromX + (toX - fromX) * i / steps;
            double y = fromY + (toY - fromY) * i / steps;
            if (x >= 0 && x <= width && y >= 0 && y <= height) {
                boxes.add(Box.round(x, y, 1));
            }
        }
    }

    /** What found no room, to be said elsewhere. */
    List<String> without() {
        return without;
    }

    /** As {@link #put}; what finds no room is remembered, with what it is. */
    void must(List<String> lines, String what, double anchorX, double anchorY, double wantedDegrees) {
        if (!put(lines, "label", anchorX, anchorY, wantedDegrees)) {
            without.add((what + " " + String.join(" ", lines)).strip());
        }
    }

    /** As near to the anchor as there is room, first in the wanted direction (degrees, up being 90); false where there is none. */
    boolean put(String text, String style, double anchorX, double anchorY, double wantedDegrees) {
        return put(List.of(text), style, anchorX, anchorY, wantedDegrees);
    }

    boolean put(List<String> lines, String style, double anchorX, double anchorY, double wantedDegrees) {
        return find(lines, style, anchorX, anchorY, wantedDegrees) != null;
    }

    /** The same, saying where; null where there is no room. */
    Placed find(List<String> lines, String style, double anchorX, double anchorY, double wantedDegrees) {
        double halfWide = lines.stream().mapToDouble(line -> Type.width(line, SIZE)).max().orElse(0) / 2 + GAP;
        double halfHigh = lines.size() * SIZE * Type.LINE / 2 + GAP;
        for (int pass = 0; pass < 3; pass++) {
            for (double reach = 4; reach <= (pass == 0 ? OFF_OUTLINE : FARTHEST); reach += 6) {
                for (int i = 0; i < ROUND; i++) {
                    double step = (i + 1) / 2 * (i % 2 == 0 ? 1 : -1) * 360.0 / ROUND;
                    double angle = Math.toRadians(wantedDegrees + step);
                    double x = anchorX + Math.cos(angle) * (reach + halfWide * Math.abs(Math.cos(angle)));
                    double y = anchorY - Math.sin(angle) * (reach + halfHigh * Math.abs(Math.sin(angle)));
                    Box box = new Box(x - halfWide, y - halfHigh, x + halfWide, y + halfHigh);
                    if (free(box) && (pass == 2 || clearOf(crossed, box)) && (pass > 0 || clearOf(outlines, box))) {
                        taken.add(box);
                        Placed found = new Placed(lines, box, style, anchorX, anchorY, reach > 16);
                        placed.add(found);
                        return found;
                    }
                }
            }
        }
        return null;
    }

    /** Whether nothing lies there and it is inside. */
    boolean isFree(Box box) {
        return free(box);
    }

    private boolean free(Box box) {
        if (box.leftPx < EDGE || box.topPx < EDGE || box.rightPx > width - EDGE || box.bottomPx > height - EDGE) {
            return false;
        }
        return clearOf(taken, box);
    }

    private static boolean clearOf(List<Box> boxes, Box box) {
        for (Box other : boxes) {
            if (box.meets(other)) {
                return false;
            }
        }
        return true;
    }

    /** Writes them, a thin line to the anchor where one had to stand aside. */
    void write(Svg svg) {
        placed.forEach(label -> leader(svg, label, 0, 0));
        placed.forEach(label -> text(svg, label, 0, 0));
    }

    /** The thin line of one, where it has one, from a place that is called the origin. */
    static void leader(Svg svg, Placed label, double originX, double originY) {
        Box box = label.box;
        if (label.led) {
            double x = Math.max(box.leftPx, Math.min(box.rightPx, label.anchorXPx));
            double y = Math.max(box.topPx, Math.min(box.bottomPx, label.anchorYPx));
            svg.leaf("line", "class", "faint", "stroke", "#6a675f", "stroke-width", 0.75, "x1", label.anchorXPx - originX, "y1", label.anchorYPx - originY,
                    "x2", x - originX, "y2", y - originY);
        }
    }

    /** One of them, from such a place. */
    static void text(Svg svg, Placed label, double originX, double originY) {
        double middle = (label.box.leftPx + label.box.rightPx) / 2 - originX;
        double base = label.box.topPx + GAP + SIZE * 0.86 - originY;
        for (String line : label.lines) {
            svg.leafText("text", line, "class", label.style, "x", middle, "y", base, "text-anchor", "middle", "font-family", "sans-serif", "font-size", SIZE,
                    "fill", "#1d1d1b", "stroke", "#fcfaf5", "stroke-width", 3, "stroke-linejoin", "round", "paint-order", "stroke");
            base += SIZE * Type.LINE;
        }
    }
}
