package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;
import pairwright.model.Source;

/** The floor that a source and its player take, as a floor plan draws them: closed outlines in the room, each as the corners of the least box round it in the player's own direction. */
public final class Footprint {
    private static final int CORNERS = 4;

    private final List<double[]> boxes = new ArrayList<>();

    private Footprint() {
    }

    /**
     * Of a source where it is.
     *
     * @param xM of its player, from the left wall
     * @param yM from the lower wall
     * @param facingDegrees 0 up the plan, clockwise
     */
    public static Footprint of(Source source, double xM, double yM, double facingDegrees) {
        Footprint footprint = new Footprint();
        double facing = Math.toRadians(facingDegrees);
        for (Outline.Line line : BodyFromAbove.of(source, Bodies.of(source)).lines()) {
            if (line.closed() && line.kind() != Outline.Kind.DETAIL) {
                footprint.boxes.add(box(line.xy(), xM, yM, Math.sin(facing), Math.cos(facing)));
            }
        }
        return footprint;
    }

    private static double[] box(double[] xy, double xM, double yM, double sin, double cos) {
        double back = Double.POSITIVE_INFINITY;
        double front = Double.NEGATIVE_INFINITY;
        double right = Double.POSITIVE_INFINITY;
        double left = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < xy.length; i += 2) {
            back = Math.min(back, xy[i]);
            front = Math.max(front, xy[i]);
            right = Math.min(right, xy[i + 1]);
            left = Math.max(left, xy[i + 1]);
        }
        double[] box = new double[2 * CORNERS];
        double[][] corners = {{back, right}, {front, right}, {front, left}, {back, left}};
        for (int i = 0; i < CORNERS; i++) {
            box[2 * i] = xM + corners[i][0] * sin - corners[i][1] * cos;
            box[2 * i + 1] = yM + corners[i][0] * cos + corners[i][1] * sin;
        }
        return box;
    }

    /** How far it reaches out of a room that begins at the origin; 0 where it does not. */
    public double acrossWallsM(double widthM, double depthM) {
        double acrossM = 0;
        for (double[] box : boxes) {
            for (int i = 0; i < box.length; i += 2) {
                acrossM = Math.max(acrossM, Math.max(Math.max(-box[i], box[i] - widthM), Math.max(-box[i + 1], box[i + 1] - depthM)));
            }
        }
        return acrossM;
    }

    /** How far one would have to be moved so that no two of their outlines lie on each other; 0 where none do. */
    public double onTopM(Footprint other) {
        double deepestM = 0;
        for (double[] one : boxes) {
            for (double[] two : other.boxes) {
                deepestM = Math.max(deepestM, Math.min(overlapM(one, two), overlapM(two, one)));
            }
        }
        return deepestM;
    }

    /** The least overlap of the shadows of both along the sides of the first; 0 where they are apart. */
    private static double overlapM(double[] one, double[] two) {
        double leastM = Double.POSITIVE_INFINITY;
        for (int side = 0; side < 2; side++) {
            double x = one[2 * side + 2] - one[2 * side];
            double y = one[2 * side + 3] - one[2 * side + 1];
            double lengthM = Math.max(1e-9, Math.hypot(x, y));
            double[] first = shadow(one, x / lengthM, y / lengthM);
            double[] second = shadow(two, x / lengthM, y / lengthM);
            leastM = Math.min(leastM, Math.min(first[1], second[1]) - Math.max(first[0], second[0]));
        }
        return Math.max(0, leastM);
    }

    private static double[] shadow(double[] box, double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < box.length; i += 2) {
            double along = box[i] * x + box[i + 1] * y;
            least = Math.min(least, along);
            most = Math.max(most, along);
        }
        return new double[] {least, most};
    }
}
