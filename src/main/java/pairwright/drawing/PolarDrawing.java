package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Lobe;
import pairwright.acoustics.Octaves;
import pairwright.model.Pattern;
import pairwright.model.PatternData;

/**
 * What a pattern hears from where, octave by octave: 0 dB at the edge, 25 dB less in the middle, nothing credited with more than
 * {@link FirstOrder#PRACTICAL_NULL_DB}. The front is up. A plate on a surface hears half of it and is drawn from the side: even all
 * round, or with its front to the right.
 */
public final class PolarDrawing {
    private static final double INNERMOST_DB = -25;
    private static final double RING_DB = 5;
    private static final double STEP_DEGREES = 3;
    private static final int[] THREE = {1, 4, 7};
    private static final Look[] THREE_LOOKS = {Look.TWO, Look.SUM, Look.ONE};
    private static final int KILOHERTZ = 4;
    /** Directions nearer than this would share the room of their words. */
    private static final double NEAR_DEGREES = 18;
    private static final double[] SHOWN_DEGREES = {0, 90, 180};

    private PolarDrawing() {
    }

    /**
     * Three octaves in one picture: 125 Hz, 1 kHz and 8 kHz, with the null at 1 kHz.
     *
     * @param title "Long passive ribbon, figure-8"
     * @param key unlike that of any other picture of the page
     * @return null for a contact or a lead, which hear no air
     */
    public static Drawing of(String title, PatternData pattern, String key, Reader reader) {
        if (hearsNoAir(pattern)) {
            return null;
        }
        double radius = 112;
        boolean half = half(pattern);
        double middleX = Svg.PLOT_WIDTH / 2;
        double middleY = radius + 22;
        double below = half ? middleY + 22 : middleY + radius + 20;
        Svg svg = new Svg(key, Svg.PLOT_WIDTH, below + 26, title, says(pattern, THREE, reader));
        Disc disc = new Disc(svg, pattern, middleX, middleY, radius);
        disc.rings(true, reader);
        disc.nullDirections(KILOHERTZ, true, reader);
        for (int i = 0; i < THREE.length; i++) {
            disc.curve(THREE[i], THREE_LOOKS[i]);
        }
        legend(svg, below + 12, reader);
        return svg.drawing();
    }

    /** Nine small pictures, one an octave, each with its null; null for a contact or a lead. */
    public static Drawing octaves(String title, PatternData pattern, String key, Reader reader) {
        if (hearsNoAir(pattern)) {
            return null;
        }
        double radius = 44;
        double wide = Svg.PLOT_WIDTH / 3;
        double tall = half(pattern) ? radius + 46 : 2 * radius + 46;
        int[] all = new int[Octaves.COUNT];
        for (int octave = 0; octave < all.length; octave++) {
            all[octave] = octave;
        }
        Svg svg = new Svg(key, Svg.PLOT_WIDTH, 3 * tall + 2, title + ", octave by octave", says(pattern, all, reader));
        for (int octave : all) {
            double middleX = (octave % 3 + 0.5) * wide;
            double middleY = octave / 3 * tall + radius + 30;
            Disc disc = new Disc(svg, pattern, middleX, middleY, radius);
            disc.rings(false, reader);
            disc.nullDirections(octave, false, reader);
            disc.curve(octave, Look.ONE);
            OptionalDouble nullDegrees = nullDegrees(pattern, octave);
            String words = Words.octave(octave, reader) + (nullDegrees.isPresent() ? ", null " + degrees(nullDegrees.getAsDouble(), reader) : "");
            svg.leafText("text", words, "class", "label", "x", middleX, "y", middleY - radius - 10, "text-anchor", "middle", "font-size", Type.SMALL, "fill", "#1d1d1b");
        }
        return svg.drawing();
    }

    private static boolean hearsNoAir(PatternData pattern) {
        return pattern.pattern() == Pattern.CONTACT || pattern.pattern() == Pattern.ELECTRICAL;
    }

    private static boolean half(PatternData pattern) {
        return pattern.pattern() == Pattern.HALF_OMNI || pattern.pattern() == Pattern.HALF_CARDIOID;
    }

    /** How much is heard from there, against the front. */
    static double heardDb(PatternData pattern, int octave, double angleDegrees) {
        return pattern.directivityIndexDb() != null
                ? Lobe.responseDb(Math.max(0, pattern.directivityIndexDb().at(octave)), angleDegrees, FirstOrder.PRACTICAL_NULL_DB)
                : FirstOrder.responseDb(pattern.coefficient().at(octave), angleDegrees, FirstOrder.PRACTICAL_NULL_DB);
    }

    /** Where it hears least; none where it hears all round or is drawn by its lobe. */
    private static OptionalDouble nullDegrees(PatternData pattern, int octave) {
        return pattern.directivityIndexDb() != null ? OptionalDouble.empty() : FirstOrder.nullDegrees(pattern.coefficient().at(octave));
    }

    private static String degrees(double degrees, Reader reader) {
        return Words.number(degrees, 0, reader) + "\u00b0";
    }

    /** One round picture. */
    private static final class Disc {
        private final Svg svg;
        private final PatternData pattern;
        private final double middleX;
        private final double middleY;
        private final double radius;
        /** Where the front points, turned from up. */
        private final double frontDegrees;
        private final double widestDegrees;
        private final boolean bothSides;

        Disc(Svg svg, PatternData pattern, double middleX, double middleY, double radius) {
            this.svg = svg;
            this.pattern = pattern;
            this.middleX = middleX;
            this.middleY = middleY;
            this.radius = radius;
            frontDegrees = pattern.pattern() == Pattern.HALF_CARDIOID ? 90 : 0;
            widestDegrees = pattern.pattern() == Pattern.HALF_OMNI ? 90 : 180;
            bothSides = pattern.pattern() != Pattern.HALF_CARDIOID;
        }

        private double x(double angleDegrees, double share) {
            return middleX + radius * share * Math.sin(Math.toRadians(frontDegrees - angleDegrees));
        }

        private double y(double angleDegrees, double share) {
            return middleY - radius * share * Math.cos(Math.toRadians(frontDegrees - angleDegrees));
        }

        private static double share(double db) {
            return 1 - db / INNERMOST_DB;
        }

        void rings(boolean numbers, Reader reader) {
            StringBuilder path = new StringBuilder();
            for (double db = 0; db > INNERMOST_DB; db -= numbers ? RING_DB : 2 * RING_DB) {
                double ring = radius * share(db);
                if (half(pattern)) {
                    path.append('M');
                    pair(path, middleX - ring, middleY);
                    path.append('A');
                    pair(path, ring, ring);
                    path.append(" 0 0 1 ");
                    pair(path, middleX + ring, middleY);
                } else {
                    svg.leaf("circle", "class", "grid", "cx", middleX, "cy", middleY, "r", ring, "fill", "none", "stroke", "#c9c5ba", "stroke-width", 0.8);
                }
            }
            for (double angle = 0; angle <= 180; angle += numbers ? 30 : 90) {
                spoke(path, angle);
                if (bothSides && angle > 0 && angle < 180) {
                    spoke(path, -angle);
                }
            }
            svg.leaf("path", "class", "grid", "d", path, "fill", "none", "stroke", "#c9c5ba", "stroke-width", 0.8);
            if (half(pattern)) {
                StringBuilder plate = new StringBuilder();
                Plot.line(plate, middleX - radius - 4, middleY, middleX + radius + 4, middleY);
                svg.leaf("path", "class", "axis", "d", plate, "fill", "none", "stroke", "#4a4a46", "stroke-width", 2.5);
                StringBuilder ground = new StringBuilder();
                for (double at = -radius; at <= radius; at += 7) {
                    Plot.line(ground, middleX + at, middleY + 1, middleX + at - 5, middleY + 6);
                }
                svg.leaf("path", "class", "axis", "d", ground, "fill", "none", "stroke", "#4a4a46", "stroke-width", 0.7);
            }
            if (numbers) {
                numbers(reader);
            }
        }

        private void spoke(StringBuilder path, double angleDegrees) {
            if (angleDegrees <= widestDegrees && -angleDegrees <= widestDegrees) {
                Plot.line(path, middleX, middleY, x(angleDegrees, 1), y(angleDegrees, 1));
            }
        }

        private void numbers(Reader reader) {
            svg.open("g", "class", "label faint", "font-size", Type.SMALL, "fill", "#4a4a46");
            double turned = pattern.pattern() == Pattern.HALF_CARDIOID ? 72 : -18;
            for (double db = -RING_DB; db > INNERMOST_DB + 1; db -= RING_DB) {
                String words = Words.number(db, 0, reader) + (db == -RING_DB ? " dB" : "");
                double at = middleX + radius * share(db) * Math.sin(Math.toRadians(frontDegrees - turned));
                svg.leafText("text", words, "class", "label faint", "x", at, "y", middleY - radius * share(db) * Math.cos(Math.toRadians(frontDegrees - turned)) + 4,
                        "text-anchor", "middle", "font-size", Type.SMALL, "fill", "#4a4a46");
            }
            for (double angle : SHOWN_DEGREES) {
                OptionalDouble nullDegrees = nullDegrees(pattern, KILOHERTZ);
                boolean taken = nullDegrees.isPresent() && Math.abs(nullDegrees.getAsDouble() - angle) < NEAR_DEGREES;
                if (angle <= widestDegrees && !taken) {
                    direction(angle, reader);
                }
            }
            svg.close();
        }

        private void direction(double angleDegrees, Reader reader) {
            double atX = x(angleDegrees, 1);
            double atY = y(angleDegrees, 1);
            String words = angleDegrees == 0 ? "front" : degrees(angleDegrees, reader);
            boolean aside = Math.abs(atX - middleX) > 1;
            svg.leafText("text", words, "class", "label faint", "x", atX + (aside ? Math.signum(atX - middleX) * 7 : 0), "y", aside ? atY + 4 : atY < middleY ? atY - 7 : atY + 16,
                    "text-anchor", !aside ? "middle" : atX > middleX ? "start" : "end", "font-size", Type.SMALL, "fill", "#4a4a46");
        }

        void curve(int octave, Look look) {
            StringBuilder path = new StringBuilder();
            double first = bothSides ? -widestDegrees : 0;
            for (double angle = first; angle <= widestDegrees + 1e-9; angle += STEP_DEGREES) {
                double share = share(heardDb(pattern, octave, Math.abs(angle)));
                Plot.point(path, angle == first ? 'M' : 'L', x(angle, share), y(angle, share));
            }
            if (!half(pattern)) {
                path.append('Z');
            }
            svg.leaf("path", "class", look.style(), "d", path, "fill", "none", "stroke", look.colour(), "stroke-width", look.stroke(), "stroke-dasharray", look.dash(),
                    "stroke-linejoin", "round");
        }

        /** A dashed line each way in which it hears least, with its angle. */
        void nullDirections(int octave, boolean numbers, Reader reader) {
            OptionalDouble nullDegrees = nullDegrees(pattern, octave);
            if (nullDegrees.isEmpty() || nullDegrees.getAsDouble() > widestDegrees) {
                return;
            }
            double angle = nullDegrees.getAsDouble();
            StringBuilder path = new StringBuilder();
            Plot.line(path, middleX, middleY, x(angle, 1.04), y(angle, 1.04));
            boolean two = bothSides && angle < 179;
            if (two) {
                Plot.line(path, middleX, middleY, x(-angle, 1.04), y(-angle, 1.04));
            }
            svg.leaf("path", "class", "null", "d", path, "fill", "none", "stroke", "#4a4a46", "stroke-width", 1.5, "stroke-dasharray", "3 3");
            if (numbers) {
                boolean oneWord = angle > 180 - NEAR_DEGREES;
                nullWords(angle, oneWord ? 180 : angle, reader);
                if (two && !oneWord) {
                    nullWords(angle, -angle, reader);
                }
            }
        }

        private void nullWords(double nullDegrees, double angle, Reader reader) {
            String words = "null " + degrees(nullDegrees, reader);
            double atX = x(angle, 1.04);
            double atY = y(angle, 1.04);
            double aside = Math.abs(atX - middleX) < 12 ? 0 : Math.signum(atX - middleX);
            svg.leafText("text", words, "class", "label", "x", atX + aside * 5, "y", aside == 0 ? atY + 12 : atY + (atY > middleY + 20 ? 12 : -6), "text-anchor",
                    aside == 0 ? "middle" : aside > 0 ? "start" : "end", "font-size", Type.SIZE, "font-weight", "bold", "fill", "#1d1d1b");
        }

        private static void pair(StringBuilder path, double first, double second) {
            Svg.append(path, first);
            path.append(' ');
            Svg.append(path, second);
        }
    }

    private static void legend(Svg svg, double middle, Reader reader) {
        double wide = Svg.PLOT_WIDTH / THREE.length;
        for (int i = 0; i < THREE.length; i++) {
            double from = i * wide + 14;
            StringBuilder line = new StringBuilder();
            Plot.line(line, from, middle, from + 36, middle);
            Look look = THREE_LOOKS[i];
            svg.leaf("path", "class", look.style(), "d", line, "fill", "none", "stroke", look.colour(), "stroke-width", look.stroke(), "stroke-dasharray", look.dash());
            svg.leafText("text", Words.octave(THREE[i], reader), "class", "label", "x", from + 42, "y", middle + 4, "font-size", Type.SIZE, "fill", "#1d1d1b");
        }
    }

    private static String says(PatternData pattern, int[] octaves, Reader reader) {
        List<String> all = new ArrayList<>();
        for (int octave : octaves) {
            OptionalDouble nullDegrees = nullDegrees(pattern, octave);
            all.add(Words.octave(octave, reader) + ": " + whole(pattern, octave, 90, reader) + " dB at 90\u00b0"
                    + (pattern.pattern() == Pattern.HALF_OMNI ? "" : ", " + whole(pattern, octave, 180, reader) + " dB at 180\u00b0")
                    + (nullDegrees.isPresent() ? ", null at " + degrees(nullDegrees.getAsDouble(), reader) : ", no null"));
        }
        String view = pattern.pattern() == Pattern.HALF_CARDIOID ? " Seen from the side: the thick line is the surface it lies on, its front is to the right."
                : pattern.pattern() == Pattern.HALF_OMNI ? " Seen from the side: the thick line is the surface it lies on." : " The front is up.";
        String lobe = pattern.directivityIndexDb() == null ? "" : " Drawn by how narrow its lobe is; the back of a real one is ragged.";
        return "What is heard from each direction against the front. " + String.join("; ", all) + "." + view + " The edge is 0 dB, the middle "
                + Words.number(INNERMOST_DB, 0, reader) + " dB; no null is drawn deeper than " + Words.number(FirstOrder.PRACTICAL_NULL_DB, 0, reader)
                + " dB, since real ones are not." + lobe;
    }

    private static String whole(PatternData pattern, int octave, double angleDegrees, Reader reader) {
        return Words.number(heardDb(pattern, octave, angleDegrees), 0, reader);
    }
}
