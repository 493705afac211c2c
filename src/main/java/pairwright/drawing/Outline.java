package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Lines of a simple drawing, in metres: to the right and up in the picture. */
final class Outline {
    private static final int ROUND_POINTS = 48;
    private static final int DOT_POINTS = 12;

    private final List<Line> lines = new ArrayList<>();
    private double leastX = Double.POSITIVE_INFINITY;
    private double mostX = Double.NEGATIVE_INFINITY;
    private double leastY = Double.POSITIVE_INFINITY;
    private double mostY = Double.NEGATIVE_INFINITY;

    /** How a line is drawn: what sounds, what belongs to it, who plays it. */
    enum Kind { BODY, DETAIL, PLAYER }

    /** Points as x and y in turn, in metres. */
    record Line(Kind kind, boolean closed, double[] xy) {
    }

    List<Line> lines() {
        return lines;
    }

    double leastX() {
        return leastX;
    }

    double mostX() {
        return mostX;
    }

    double leastY() {
        return leastY;
    }

    double mostY() {
        return mostY;
    }

    Outline shape(Kind kind, double... xy) {
        return add(kind, true, xy);
    }

    Outline line(Kind kind, double... xy) {
        return add(kind, false, xy);
    }

    Outline box(Kind kind, double leftX, double lowY, double rightX, double highY) {
        return add(kind, true, leftX, lowY, rightX, lowY, rightX, highY, leftX, highY);
    }

    Outline round(Kind kind, double centreX, double centreY, double acrossX, double acrossY) {
        return round(kind, centreX, centreY, acrossX, acrossY, ROUND_POINTS);
    }

    /** One of many, drawn with fewer points. */
    Outline dot(Kind kind, double centreX, double centreY, double acrossX, double acrossY) {
        return round(kind, centreX, centreY, acrossX, acrossY, DOT_POINTS);
    }

    private Outline round(Kind kind, double centreX, double centreY, double acrossX, double acrossY, int points) {
        double[] xy = new double[2 * points];
        for (int i = 0; i < points; i++) {
            double angle = 2 * Math.PI * i / points;
            xy[2 * i] = centreX + acrossX * Math.cos(angle);
            xy[2 * i + 1] = centreY + acrossY * Math.sin(angle);
        }
        return add(kind, true, xy);
    }

    private Outline add(Kind kind, boolean closed, double... xy) {
        lines.add(new Line(kind, closed, xy));
        if (kind == Kind.BODY) {
            for (int i = 0; i < xy.length; i += 2) {
                leastX = Math.min(leastX, xy[i]);
                mostX = Math.max(mostX, xy[i]);
                leastY = Math.min(leastY, xy[i + 1]);
                mostY = Math.max(mostY, xy[i + 1]);
            }
        }
        return this;
    }

    /** The same, turned by a half turn about the upright through the origin as seen from above, or mirrored as seen from the side. */
    Outline facing(boolean backward, boolean fromAbove) {
        if (!backward) {
            return this;
        }
        Outline other = new Outline();
        for (Line line : lines) {
            double[] xy = line.xy().clone();
            for (int i = 0; i < xy.length; i += 2) {
                xy[i] = -xy[i];
                xy[i + 1] = fromAbove ? -xy[i + 1] : xy[i + 1];
            }
            other.add(line.kind(), line.closed(), xy);
        }
        return other;
    }
}
