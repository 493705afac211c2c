package pairwright.drawing;

import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Lobe;
import pairwright.model.Address;
import pairwright.model.Pattern;
import pairwright.model.PatternData;

/** A microphone, its number, and what it hears from where. Sizes are of the picture, not of the world. */
final class MicGlyph {
    /** How far its number stands behind the capsule. */
    static final double NUMBER = 33;
    private static final int AT_1_KHZ = 4;
    private static final double POLAR = 40;
    private static final int POLAR_STEP_DEGREES = 5;
    private static final double NULL_FROM = 7;
    static final double NULL_TO = 58;

    private final Svg svg;
    private final Look look;
    private final double x;
    private final double y;

    MicGlyph(Svg svg, int number, double x, double y) {
        this.svg = svg;
        this.look = number == 1 ? Look.ONE : Look.TWO;
        this.x = x;
        this.y = y;
    }

    /** What the pattern hears at 1 kHz, as much as the line is away from the capsule; round where it faces the reader. */
    void polar(PatternData pattern, Double aimDegrees, boolean upperHalfOnly) {
        StringBuilder path = new StringBuilder(1200);
        boolean begun = false;
        for (int degrees = -180; degrees <= 180; degrees += POLAR_STEP_DEGREES) {
            double reach = POLAR * (aimDegrees == null ? acrossRatio(pattern) : hearsRatio(pattern, degrees));
            double angle = Math.toRadians((aimDegrees == null ? 0 : aimDegrees) + degrees);
            if (upperHalfOnly && Math.sin(angle) < -0.02) {
                continue;
            }
            path.append(begun ? 'L' : 'M');
            Svg.append(path, x + reach * Math.cos(angle));
            path.append(' ');
            Svg.append(path, y - reach * Math.sin(angle));
            begun = true;
        }
        path.append('Z');
        svg.leaf("path", "class", look.style() + " polar", "d", path, "fill", look.colour(), "fill-opacity", 0.1, "stroke", look.colour(), "stroke-width", 1.25,
                "stroke-dasharray", look.dash());
    }

    /** Seen along its axis a pattern is as wide as what it hears from the side. */
    private static double acrossRatio(PatternData pattern) {
        return Math.max(0.3, hearsRatio(pattern, 90));
    }

    /** What is heard from an angle at 1 kHz, against the front. */
    static double hearsRatio(PatternData pattern, double degrees) {
        double away = Math.abs(degrees);
        if (pattern.pattern() == Pattern.LOBAR && pattern.directivityIndexDb() != null) {
            return Math.pow(10, Lobe.responseDb(pattern.directivityIndexDb().at(AT_1_KHZ), away, -40) / 20);
        }
        return pattern.coefficient() == null ? 1 : Math.abs(FirstOrder.response(pattern.coefficient().at(AT_1_KHZ), away));
    }

    /** A dashed ray in a direction it hears least from. */
    void nullRay(double degrees, Frame frame) {
        double angle = Math.toRadians(degrees);
        double to = Math.min(NULL_TO, frame.toEdge(x, y, angle, 3));
        svg.leaf("line", "class", "null", "stroke", "#4a4a46", "stroke-width", 1.25, "stroke-dasharray", "4 3", "x1", x + NULL_FROM * Math.cos(angle), "y1",
                y - NULL_FROM * Math.sin(angle), "x2", x + to * Math.cos(angle), "y2", y - to * Math.sin(angle));
    }

    /** The body: behind the capsule where the end looks at the source, across where the side does. */
    void body(Address address, double facingDegrees, boolean facesReader) {
        String transform = "translate(" + Svg.number(x) + " " + Svg.number(y) + ") rotate(" + Svg.number(-facingDegrees) + ")";
        svg.open("g", "class", look.style() + " mic", "transform", transform, "stroke", look.colour(), "stroke-width", 1.5, "fill", "#fcfaf5");
        String style = look.style();
        Object inside = look == Look.ONE ? look.colour() : "#fcfaf5";
        String insideStyle = look == Look.ONE ? style : style + " paper";
        switch (address) {
            case SIDE -> {
                svg.leaf("rect", "class", insideStyle, "x", facesReader ? -6 : -9, "y", facesReader ? -6 : -12, "width", facesReader ? 12 : 9, "height", facesReader ? 12 : 24, "rx", 4,
                        "stroke", look.colour(), "fill", inside);
                // the front is the open side
                svg.leaf("path", "class", style, "d", facesReader ? "M-3 0A3 3 0 1 1 3 0A3 3 0 1 1 -3 0Z" : "M2.5 -9L2.5 9", "fill", "none", "stroke", look.colour(), "stroke-width", 2.5);
            }
            case PLATE -> svg.leaf("rect", "class", insideStyle, "x", -12, "y", -3.5, "width", 24, "height", 7, "rx", 1, "stroke", look.colour(), "fill", inside);
            default -> {
                double back = address == Address.CLIP ? -12 : -22;
                if (facesReader) {
                    svg.leaf("circle", "class", insideStyle, "cx", 0, "cy", 0, "r", 7, "stroke", look.colour(), "fill", inside);
                } else {
                    svg.leaf("path", "class", insideStyle, "d", "M0 -5.5Q3 -5.5 3 0Q3 5.5 0 5.5L-7 5L" + Svg.number(back) + " 3L" + Svg.number(back) + " -3L-7 -5Z", "stroke",
                            look.colour(), "fill", inside, "stroke-linejoin", "round");
                }
            }
        }
        svg.close();
    }

    /** An arrow in the direction it faces. */
    void aim(double degrees) {
        String transform = "translate(" + Svg.number(x) + " " + Svg.number(y) + ") rotate(" + Svg.number(-degrees) + ")";
        svg.leaf("path", "class", look.style() + " aim", "transform", transform, "d", "M6 0L27 0M21 -4L28 0L21 4", "fill", "none", "stroke", look.colour(), "stroke-width", 1.75);
    }

    /** The number in a round: filled for the first, open for the second. */
    static void number(Svg svg, int number, double x, double y) {
        Look look = number == 1 ? Look.ONE : Look.TWO;
        boolean first = number == 1;
        svg.leaf("circle", "class", first ? look.style() : look.style() + " paper", "cx", x, "cy", y, "r", 8.5, "fill", first ? look.colour() : "#fcfaf5", "stroke", look.colour(),
                "stroke-width", 1.75, "stroke-dasharray", first ? null : "3 2");
        svg.leafText("text", String.valueOf(number), "class", first ? "on-mark" : "label", "x", x, "y", y + 4.4, "text-anchor", "middle", "font-family", "sans-serif", "font-size", Type.SIZE,
                "font-weight", "bold", "fill", first ? "#fcfaf5" : "#1d1d1b");
    }
}
