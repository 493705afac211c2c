package pairwright.drawing;

/**
 * How a curve is told from the others: by colour, and without colour by dash and marker. The colours are apart for colour-blind eyes as well.
 */
public enum Look {
    /** The first microphone. */
    ONE("one", "#0072b2", null, Marker.ROUND, 2),
    /** The second microphone. */
    TWO("two", "#b8480a", "7 4", Marker.SQUARE, 2),
    /** Both together. */
    SUM("sum", "#1d1d1b", null, Marker.DIAMOND, 3),
    /** What is wanted. */
    WANTED("wanted", "#00705a", "2 3.5", Marker.TRIANGLE, 2.5),
    /** The source itself. */
    SOURCE("source", "#4a4a46", "11 3 2 3", Marker.NONE, 2),
    /** Who plays beside it. */
    NEIGHBOUR("neighbour", "#8a3d77", "4 3", Marker.CROSS, 2);

    private final String style;
    private final String colour;
    private final String dash;
    private final Marker marker;
    private final double stroke;

    Look(String style, String colour, String dash, Marker marker, double stroke) {
        this.style = style;
        this.colour = colour;
        this.dash = dash;
        this.marker = marker;
        this.stroke = stroke;
    }

    /** What stands on a curve where it has a value. */
    enum Marker {
        NONE, ROUND, SQUARE, DIAMOND, TRIANGLE, CROSS
    }

    String style() {
        return style;
    }

    String colour() {
        return colour;
    }

    String dash() {
        return dash;
    }

    Marker marker() {
        return marker;
    }

    double stroke() {
        return stroke;
    }
}
