package pairwright.drawing;

import java.util.List;

/** Shares of something, a bar each, the name above its bar. */
public final class SharesDrawing {
    private static final double TOP = 4;
    private static final double BAR = 10;
    private static final double BETWEEN = 9;
    private static final double VALUES = 42;
    private static final double LINE = Type.SIZE * 1.2;

    private SharesDrawing() {
    }

    /**
     * One of them.
     *
     * @param name what it is a share of
     * @param share 0 to 1
     */
    public record Bar(String name, double share) {
    }

    /**
     * All of them, in their order.
     *
     * @param title what the shares are of
     * @param key unlike that of any other picture of the page
     */
    public static Drawing of(String title, List<Bar> bars, String key, Reader reader) {
        List<List<String>> names = bars.stream().map(bar -> Type.lines(bar.name(), Type.SIZE, Svg.PLOT_WIDTH - 4)).toList();
        double height = TOP + names.stream().mapToDouble(lines -> lines.size() * LINE + BAR + BETWEEN).sum();
        StringBuilder says = new StringBuilder(title).append(": ");
        for (int i = 0; i < bars.size(); i++) {
            says.append(i == 0 ? "" : "; ").append(bars.get(i).name()).append(' ').append(percent(bars.get(i), reader));
        }
        Svg svg = new Svg(key, Svg.PLOT_WIDTH, height, title, says.append('.').toString());
        double y = TOP;
        double widest = Svg.PLOT_WIDTH - VALUES;
        for (int i = 0; i < bars.size(); i++) {
            for (String line : names.get(i)) {
                y += LINE;
                text(svg, line, 0, y - 3, null);
            }
            double share = Math.max(0, Math.min(1, bars.get(i).share()));
            svg.leaf("rect", "class", "grid", "x", 0.5, "y", y + 0.5, "width", widest - 1, "height", BAR - 1, "fill", "none", "stroke", "#c9c5ba");
            svg.leaf("rect", "class", "bad", "x", 0, "y", y, "width", share * widest, "height", BAR, "fill", "#a5330f");
            text(svg, percent(bars.get(i), reader), Svg.PLOT_WIDTH - 1, y + BAR, "end");
            y += BAR + BETWEEN;
        }
        return svg.drawing();
    }

    private static String percent(Bar bar, Reader reader) {
        return reader.number(100 * bar.share(), 0) + " %";
    }

    private static void text(Svg svg, String text, double x, double y, String anchor) {
        svg.leafText("text", text, "class", "label", "x", x, "y", y, "text-anchor", anchor, "font-size", Type.SIZE, "fill", "#1d1d1b");
    }
}
