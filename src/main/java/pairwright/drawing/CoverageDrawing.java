package pairwright.drawing;

import java.util.List;

/** How many sources of each family can be served: well, poorly, not at all. A family is a bar as long as it has sources. */
public final class CoverageDrawing {
    private static final double LEFT = 6;
    private static final double BAR = 13;
    private static final double ROW = 39;
    private static final double TOP = 30;
    private static final double HATCH = 5;
    private static final double GAP = 1.5;
    private static final String GOOD = "#12704d";
    private static final String BAD = "#a5330f";
    private static final String INK = "#1d1d1b";
    private static final String FAINT = "#4a4a46";

    /**
     * One family.
     *
     * @param name as it is called
     * @param well sources that are served well
     * @param poorly sources that are served, but poorly
     * @param none sources that are not served at all
     */
    public record Bar(String name, int well, int poorly, int none) {
        int all() {
            return well + poorly + none;
        }
    }

    private enum Served { WELL, POORLY, NONE }

    private CoverageDrawing() {
    }

    /** @param key unlike that of any other picture of the same page */
    public static Drawing of(List<Bar> bars, String key, Reader reader) {
        int longest = bars.stream().mapToInt(Bar::all).max().orElse(1);
        double each = (Svg.PLOT_WIDTH - 2 * LEFT) / Math.max(1, longest);
        Svg svg = new Svg(key, Svg.PLOT_WIDTH, TOP + bars.size() * ROW + 4, "Sources served, by family", says(bars, reader));
        meaning(svg);
        for (int i = 0; i < bars.size(); i++) {
            row(svg, bars.get(i), TOP + i * ROW, each, reader);
        }
        return svg.drawing();
    }

    private static void meaning(Svg svg) {
        double[] at = {LEFT, LEFT + 80, LEFT + 176};
        String[] words = {"well", "poorly", "not at all"};
        for (Served served : Served.values()) {
            part(svg, served, at[served.ordinal()], 6, 20);
            text(svg, words[served.ordinal()], at[served.ordinal()] + 26, 16.5, null, true);
        }
    }

    private static void row(Svg svg, Bar bar, double top, double each, Reader reader) {
        String count = reader.number(bar.well(), 0) + " · " + reader.number(bar.poorly(), 0) + " · " + reader.number(bar.none(), 0);
        double room = Svg.PLOT_WIDTH - LEFT - Type.width(count, Type.SIZE) - 14;
        text(svg, Type.lines(bar.name(), Type.SIZE, room).get(0), LEFT, top + 14, null, false);
        text(svg, count, Svg.PLOT_WIDTH - LEFT, top + 14, "end", false);
        double x = LEFT;
        int[] counts = {bar.well(), bar.poorly(), bar.none()};
        for (Served served : Served.values()) {
            double wide = counts[served.ordinal()] * each;
            if (wide > 0) {
                part(svg, served, x, top + 20, wide - GAP);
            }
            x += wide;
        }
    }

    /** Full, hatched, or an empty frame. */
    private static void part(Svg svg, Served served, double left, double top, double wide) {
        switch (served) {
            case WELL -> svg.leaf("rect", "class", "good", "x", left, "y", top, "width", wide, "height", BAR, "fill", GOOD, "stroke", GOOD);
            case POORLY -> {
                svg.leaf("rect", "class", "good", "x", left, "y", top, "width", wide, "height", BAR, "fill", "none", "stroke", GOOD);
                svg.leaf("path", "class", "good", "d", hatch(left, top, wide), "fill", "none", "stroke", GOOD);
            }
            case NONE -> svg.leaf("rect", "class", "bad", "x", left, "y", top, "width", wide, "height", BAR, "fill", "none", "stroke", BAD, "stroke-dasharray", "3 2");
        }
    }

    private static StringBuilder hatch(double left, double top, double wide) {
        StringBuilder path = new StringBuilder();
        for (double foot = left - BAR + HATCH; foot < left + wide; foot += HATCH) {
            double from = Math.max(left, foot);
            double to = Math.min(left + wide, foot + BAR);
            Plot.line(path, from, top + BAR - (from - foot), to, top + BAR - (to - foot));
        }
        return path;
    }

    private static void text(Svg svg, String text, double x, double y, String anchor, boolean small) {
        svg.leafText("text", text, "class", small ? "label faint" : "label", "x", x, "y", y, "text-anchor", anchor, "font-size", small ? Type.SMALL : Type.SIZE,
                "fill", small ? FAINT : INK);
    }

    private static String says(List<Bar> bars, Reader reader) {
        if (bars.isEmpty()) {
            return "There are no sources.";
        }
        StringBuilder says = new StringBuilder("Sources served, by family. ");
        for (Bar bar : bars) {
            says.append(bar.name()).append(", of ").append(reader.number(bar.all(), 0)).append(": ").append(reader.number(bar.well(), 0)).append(" well, ")
                    .append(reader.number(bar.poorly(), 0)).append(" poorly, ").append(reader.number(bar.none(), 0)).append(" not at all. ");
        }
        return says.toString().strip();
    }
}
