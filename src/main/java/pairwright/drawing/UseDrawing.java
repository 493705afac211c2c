package pairwright.drawing;

import java.time.DayOfWeek;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How much of each type is taken on the days of a month: a row a type, a cell a day, filled from below by the share that is taken. */
public final class UseDrawing {
    private static final double LEFT = 6;
    private static final double CELL = 11.2;
    private static final double TALL = 17;
    private static final double ROW = 40;
    private static final double TOP = 24;
    private static final double KEY = 26;
    private static final double NUMBERS = 74;
    private static final String INK = "#1d1d1b";
    private static final String FAINT = "#4a4a46";

    /**
     * One type.
     *
     * @param name as it is called
     * @param units how many there are
     * @param taken for each day of the month, how many are taken for some of it
     */
    public record Row(String name, int units, List<Integer> taken) {
        public Row {
            taken = List.copyOf(taken);
        }

        boolean all(int day) {
            return units > 0 && taken.get(day) >= units;
        }

        /** 0 to 1. */
        double share(int day) {
            return units == 0 ? 0 : Math.min(1, taken.get(day) / (double) units);
        }
    }

    private UseDrawing() {
    }

    /**
     * @param rows each with a number for every day of the month
     * @param key unlike that of any other picture of the same page
     */
    public static Drawing of(YearMonth month, List<Row> rows, String key, Reader reader) {
        double height = TOP + rows.size() * ROW + KEY;
        Svg svg = new Svg(key, Svg.PLOT_WIDTH, height, "Taken by day, " + name(month), says(month, rows, reader));
        days(svg, month);
        for (int i = 0; i < rows.size(); i++) {
            row(svg, month, rows.get(i), TOP + i * ROW, reader);
        }
        meaning(svg, height - KEY + 8);
        return svg.drawing();
    }

    /** "March 2027". */
    public static String name(YearMonth month) {
        return month.getMonth().getDisplayName(TextStyle.FULL, Locale.UK) + " " + month.getYear();
    }

    /** Mondays are numbered: a week is what people look for. */
    private static void days(Svg svg, YearMonth month) {
        for (int day = 1; day <= month.lengthOfMonth(); day++) {
            if (month.atDay(day).getDayOfWeek() == DayOfWeek.MONDAY) {
                text(svg, Integer.toString(day), left(day - 1) + CELL / 2, TOP - 6, "middle", true);
            }
        }
    }

    private static void row(Svg svg, YearMonth month, Row row, double top, Reader reader) {
        text(svg, Type.lines(row.name(), Type.SIZE, Svg.PLOT_WIDTH - LEFT - NUMBERS).get(0), LEFT, top + 13, null, false);
        text(svg, "of " + reader.number(row.units(), 0), Svg.PLOT_WIDTH - 2, top + 13, "end", true);
        double cells = top + 18;
        for (int day = 0; day < month.lengthOfMonth(); day++) {
            cell(svg, left(day), cells, row.share(day), row.all(day));
        }
        StringBuilder mondays = new StringBuilder();
        for (int day = 0; day < month.lengthOfMonth(); day++) {
            if (month.atDay(day + 1).getDayOfWeek() == DayOfWeek.MONDAY) {
                Plot.line(mondays, left(day) - 0.6, cells - 2, left(day) - 0.6, cells + TALL + 2);
            }
        }
        svg.leaf("path", "class", "axis", "d", mondays, "fill", "none", "stroke", FAINT, "stroke-width", 1.2);
    }

    private static void cell(Svg svg, double left, double top, double share, boolean all) {
        double wide = CELL - 1.6;
        svg.leaf("rect", "class", "grid", "x", left, "y", top, "width", wide, "height", TALL, "fill", "none", "stroke", "#c9c5ba", "stroke-width", 0.7);
        if (share > 0) {
            double tall = TALL * share;
            svg.leaf("rect", "class", all ? "sum" : "one", "x", left, "y", top + TALL - tall, "width", wide, "height", tall, "fill",
                    all ? Look.SUM.colour() : Look.ONE.colour());
        }
    }

    private static void meaning(Svg svg, double top) {
        cell(svg, LEFT, top - 4, 0.5, false);
        text(svg, "half taken", LEFT + 15, top + 9, null, true);
        cell(svg, LEFT + 100, top - 4, 1, true);
        text(svg, "all taken", LEFT + 115, top + 9, null, true);
        text(svg, "lines: Mondays", Svg.PLOT_WIDTH - 2, top + 9, "end", true);
    }

    private static double left(int day) {
        return LEFT + day * CELL;
    }

    private static void text(Svg svg, String text, double x, double y, String anchor, boolean small) {
        svg.leafText("text", text, "class", small ? "label faint" : "label", "x", x, "y", y, "text-anchor", anchor, "font-size", small ? Type.SMALL : Type.SIZE,
                "fill", small ? FAINT : INK);
    }

    private static String says(YearMonth month, List<Row> rows, Reader reader) {
        if (rows.isEmpty()) {
            return "Nothing to show for " + name(month) + ".";
        }
        StringBuilder says = new StringBuilder("Taken in ").append(name(month)).append(". ");
        for (Row row : rows) {
            says.append(row.name()).append(", of ").append(reader.number(row.units(), 0)).append(": ").append(runs(row, reader)).append(". ");
        }
        return says.toString().strip();
    }

    /** "1 on 3 to 5, all on 9, else none". */
    private static String runs(Row row, Reader reader) {
        List<String> said = new ArrayList<>();
        List<Integer> taken = row.taken();
        boolean some = false;
        for (int from = 0; from < taken.size();) {
            int to = from;
            while (to + 1 < taken.size() && taken.get(to + 1).equals(taken.get(from))) {
                to++;
            }
            if (taken.get(from) > 0) {
                String days = from == to ? "day " + (from + 1) : "days " + (from + 1) + " to " + (to + 1);
                said.add((row.all(from) ? "all" : reader.number(taken.get(from), 0)) + " on " + days);
            } else {
                some = true;
            }
            from = to + 1;
        }
        if (said.isEmpty()) {
            return "none on any day";
        }
        return String.join(", ", said) + (some ? ", else none" : "");
    }
}
