package pairwright.drawing;

import java.util.List;

/**
 * How much of the world a picture shows and how large: whatever matters is inside with room around it, and as much of the source as
 * leaves the shortest distance long enough to be read.
 *
 * @param leftM the left edge, in metres
 * @param topM the upper edge, in metres
 * @param scalePxPerM units of the picture for a metre
 * @param heightPx of the picture, in its units
 */
record Frame(double leftM, double topM, double scalePxPerM, double heightPx) {
    static final double WIDTH = Svg.PLOT_WIDTH;
    /** Around what matters: room for a microphone, its pattern and a label. */
    static final double ROOM = 62;
    /** Where arrows to neighbours stand at the edge. */
    static final double MORE_ROOM = 84;
    private static final double MOST_HEIGHT = 330;
    private static final double LEAST_HEIGHT = 210;
    /** The shortest distance is drawn at least so long, where the longest one leaves room for it. */
    private static final double SHORTEST = 50;
    private static final double LARGEST_SCALE = 2500;

    /** A stretch of one axis, in metres. */
    record Span(double least, double most) {
        Span with(double other) {
            return new Span(Math.min(least, other), Math.max(most, other));
        }

        double length() {
            return most - least;
        }
    }

    static Frame around(List<View.Seen> mics, Span bodyX, Span bodyY, double room) {
        Span x = new Span(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
        Span y = x;
        double shortestM = Double.POSITIVE_INFINITY;
        for (View.Seen mic : mics) {
            for (View.Flat at : List.of(mic.surface(), mic.place(), mic.capsule())) {
                x = x.with(at.xM());
                y = y.with(at.yM());
            }
            shortestM = Math.min(shortestM, mic.mic().placement().distanceM());
        }
        Span allX = bodyX.with(x.least()).with(x.most());
        Span allY = bodyY.with(y.least()).with(y.most());
        double whole = Math.min(reach(WIDTH, allX, room), reach(MOST_HEIGHT, allY, room));
        double mattering = Math.min(reach(WIDTH, x, room), reach(MOST_HEIGHT, y, room));
        double scale = Math.min(Math.min(mattering, LARGEST_SCALE), Math.max(whole, SHORTEST / shortestM));
        double height = Math.max(LEAST_HEIGHT, Math.min(MOST_HEIGHT, allY.length() * scale + 2 * room));
        double leftM = start(x, allX, WIDTH / scale, room / scale);
        double bottomM = start(y, allY, height / scale, room / scale);
        return new Frame(leftM, bottomM + height / scale, scale, height);
    }

    private static double reach(double length, Span span, double room) {
        return (length - 2 * room) / Math.max(1e-6, span.length());
    }

    /** The middle of everything in the middle, but what matters inside. */
    private static double start(Span mattering, Span all, double windowM, double roomM) {
        double wanted = (all.least() + all.most() - windowM) / 2;
        return Math.max(mattering.most() + roomM - windowM, Math.min(mattering.least() - roomM, wanted));
    }

    double x(double metres) {
        return (metres - leftM) * scalePxPerM;
    }

    double y(double metres) {
        return (topM - metres) * scalePxPerM;
    }

    double x(View.Flat at) {
        return x(at.xM());
    }

    double y(View.Flat at) {
        return y(at.yM());
    }

    /** How far it is from a place inside, in a direction, to where so much room is left before the edge. */
    double toEdge(double x, double y, double radians, double room) {
        double right = Math.cos(radians);
        double up = Math.sin(radians);
        double across = right > 1e-9 ? (WIDTH - room - x) / right : right < -1e-9 ? (x - room) / -right : Double.POSITIVE_INFINITY;
        double along = up > 1e-9 ? (y - room) / up : up < -1e-9 ? (heightPx - room - y) / -up : Double.POSITIVE_INFINITY;
        return Math.min(across, along);
    }

    /** Whether a place is inside with so much room around it. */
    boolean holds(double x, double y, double room) {
        return x >= room && x <= WIDTH - room && y >= room && y <= heightPx - room;
    }
}
