package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;
import pairwright.model.KeepClear;

/** What stands below a picture: which microphone is which, and what the marks mean. */
final class Legend {
    private static final double ROW = 18;
    private static final double ABOVE = 10;
    private static final double TEXT_X = 34;
    private static final double MARK_X = 16;

    private final Reader reader;
    private final List<Row> rows = new ArrayList<>();

    private enum Mark { ONE, TWO, NULL, KEEP_CLEAR, NONE }

    private record Row(Mark mark, List<String> lines) {
    }

    Legend(Reader reader) {
        this.reader = reader;
    }

    private void add(Mark mark, String text) {
        rows.add(new Row(mark, Type.lines(text, Type.SIZE, Frame.WIDTH - TEXT_X - 6)));
    }

    void mic(int number, String text) {
        add(number == 1 ? Mark.ONE : Mark.TWO, text);
    }

    void plain(String text) {
        add(Mark.NONE, text);
    }

    void nulls() {
        add(Mark.NULL, "Null: hears least from there");
    }

    void keepClear(KeepClear clear, boolean drawn) {
        add(drawn ? Mark.KEEP_CLEAR : Mark.NONE, (drawn ? "Keep clear: " : "Keep clear (not drawn): ") + clear.of() + ", " + reader.distance(clear.distanceM()));
    }

    double height() {
        return ABOVE + rows.stream().mapToDouble(row -> row.lines().size() * ROW + 4).sum();
    }

    void write(Svg svg, String key, double top) {
        double y = top + ABOVE;
        for (Row row : rows) {
            double middle = y + ROW / 2;
            switch (row.mark()) {
                case ONE -> MicGlyph.number(svg, 1, MARK_X, middle);
                case TWO -> MicGlyph.number(svg, 2, MARK_X, middle);
                case NULL -> svg.leaf("line", "class", "null", "stroke", "#4a4a46", "stroke-width", 1.25, "stroke-dasharray", "4 3", "x1", 4, "y1", middle, "x2", 28, "y2", middle);
                case KEEP_CLEAR -> svg.leaf("rect", "class", "keep-clear", "x", 7, "y", middle - 7, "width", 18, "height", 14, "fill", "url(#" + key + "-hatch)", "stroke", "#a3200d",
                        "stroke-width", 0.75);
                case NONE -> {
                    // goes on about the row above
                }
            }
            for (String line : row.lines()) {
                svg.leafText("text", line, "class", "label", "x", TEXT_X, "y", y + ROW / 2 + 4.4, "font-family", "sans-serif", "font-size", Type.SIZE, "fill", "#1d1d1b");
                y += ROW;
            }
            y += 4;
        }
    }
}
