package pairwright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pairwright.model.Naming;

/** One number over another: level over distance, boost over frequency, pickup over angle. */
public final class FunctionDrawing {
    private static final double TOP = 26;
    private static final double BOTTOM = 216;
    private static final double HEIGHT = 250;
    private static final double WIDEST_NAME = 84;
    private static final int MOST_MARKED = 12;
    private static final double INCH_M = 0.0254;
    private static final double FOOT_M = 0.3048;
    private static final List<Look> LOOKS = List.of(Look.ONE, Look.TWO, Look.SUM, Look.WANTED);

    private FunctionDrawing() {
    }

    /**
     * What one side of the picture measures.
     *
     * @param name "Distance"
     * @param unit "m", "Hz", "ms", "dB", "degrees"; empty for a plain number. Metres are shown as the reader has them
     * @param logarithmic every step times as much, for values above 0
     * @param least where it begins; null to fit the values
     * @param most where it ends; null to fit the values
     */
    public record Axis(String name, String unit, boolean logarithmic, Double least, Double most) {
        /** From the least to the most of the values, even steps. */
        public static Axis linear(String name, String unit) {
            return new Axis(name, unit, false, null, null);
        }

        /** From the least to the most of the values, every step times as much. */
        public static Axis logarithmic(String name, String unit) {
            return new Axis(name, unit, true, null, null);
        }

        /** The same between two values. */
        public Axis within(double from, double to) {
            return new Axis(name, unit, logarithmic, from, to);
        }
    }

    /**
     * One curve.
     *
     * @param name what it is, in a few words; empty for the only one
     * @param x values across, rising
     * @param y values up, as many; one that is not finite or beyond the axis leaves the picture
     */
    public record Series(String name, double[] x, double[] y) {
    }

    /**
     * The point the numbers were asked for.
     *
     * @param x across
     * @param y up
     * @param says "you: 40 cm, 3.1 dB"; at most four words or so
     */
    public record Here(double x, double y, String says) {
    }

    /**
     * A place across that matters, such as a null.
     *
     * @param x across
     * @param says "first null 429 Hz"
     */
    public record Mark(double x, String says) {
    }

    /**
     * The curves, with what is marked.
     *
     * @param title what is shown: "Boost by closeness at 100 Hz"
     * @param across the axis from left to right
     * @param up the axis from bottom to top
     * @param series one to four
     * @param here null for none
     * @param marks in any order; empty for none
     * @param key unlike that of any other picture of the page
     */
    public static Drawing of(String title, Axis across, Axis up, List<Series> series, Here here, List<Mark> marks, String key, Reader reader) {
        Measure acrossAs = Measure.of(across, extent(across, series.stream().map(Series::x).toList(), here == null ? Double.NaN : here.x()), reader);
        Measure upAs = Measure.of(up, extent(up, series.stream().map(Series::y).toList(), here == null ? Double.NaN : here.y()), reader);
        List<List<String>> names = series.stream().filter(one -> !one.name().isEmpty()).map(one -> Type.lines(one.name(), Type.SIZE, WIDEST_NAME)).toList();
        double right = Svg.PLOT_WIDTH - (names.isEmpty() ? 12 : 2 + Plot.margin(names));
        double top = TOP + (marks.isEmpty() ? 0 : 2.2 * Type.SIZE);
        Scale y = upAs.scale(BOTTOM, top);
        List<Scale.Tick> ups = y.ticks(7, upAs.unit, reader);
        double left = Math.max(30, 9 + ups.stream().mapToDouble(tick -> Type.width(tick.text(), Type.SMALL)).max().orElse(0));
        Scale x = acrossAs.scale(left, right);
        Svg svg = new Svg(key, Svg.PLOT_WIDTH, HEIGHT, title, says(across, up, series, here, marks, reader));
        Plot plot = new Plot(svg, x, y, left, top, right, BOTTOM);
        plot.frame(x.ticks(8, acrossAs.unit, reader), ups, acrossAs.name(across), upAs.name(up));
        marks(svg, plot, marks.stream().map(mark -> new Mark(mark.x() * acrossAs.factor, mark.says())).toList(), x, top);
        List<Plot.End> ends = new ArrayList<>();
        List<double[]> curves = new ArrayList<>();
        for (int i = series.size() - 1; i >= 0; i--) {
            double[] xs = acrossAs.all(series.get(i).x());
            double[] ys = upAs.all(series.get(i).y());
            plot.curve(LOOKS.get(i), xs, ys, xs.length <= MOST_MARKED);
            curves.add(plot.places(xs, ys));
            if (!series.get(i).name().isEmpty()) {
                ends.add(new Plot.End(LOOKS.get(i), Type.lines(series.get(i).name(), Type.SIZE, WIDEST_NAME), plot.lastHeight(xs, ys)));
            }
        }
        plot.ends(ends);
        if (here != null) {
            here(svg, new Here(here.x() * acrossAs.factor, here.y() * upAs.factor, here.says()), curves, x, y, left, right, top);
        }
        return svg.drawing();
    }

    /** Metres may be shown as centimetres, feet or inches; everything else as it is. */
    private static final class Measure {
        final double factor;
        final String unit;
        final double least;
        final double most;
        final boolean logarithmic;

        private Measure(double factor, String unit, Axis axis, double[] extent) {
            this.factor = factor;
            this.unit = unit;
            this.logarithmic = axis.logarithmic();
            double from = extent[0] * factor;
            double to = extent[1] * factor;
            if (!logarithmic && (axis.least() == null || axis.most() == null)) {
                double step = Scale.step(to - from, 7, unit);
                from = axis.least() == null ? Math.floor(from / step + 1e-9) * step : from;
                to = axis.most() == null ? Math.ceil(to / step - 1e-9) * step : to;
            }
            this.least = from;
            this.most = to;
        }

        static Measure of(Axis axis, double[] extent, Reader reader) {
            if (!axis.unit().equals("m")) {
                return new Measure(1, axis.unit(), axis, extent);
            }
            if (reader.imperial()) {
                return extent[1] <= 1 ? new Measure(1 / INCH_M, "in", axis, extent) : new Measure(1 / FOOT_M, "ft", axis, extent);
            }
            return extent[1] <= 1 ? new Measure(100, "cm", axis, extent) : new Measure(1, "m", axis, extent);
        }

        Scale scale(double from, double to) {
            return new Scale(logarithmic, least, most, from, to);
        }

        double[] all(double[] values) {
            double[] scaled = values.clone();
            for (int i = 0; factor != 1 && i < scaled.length; i++) {
                scaled[i] *= factor;
            }
            return scaled;
        }

        String name(Axis axis) {
            return unit.isEmpty() ? axis.name() : axis.name() + ", " + unit;
        }
    }

    /** From the least to the most of the values, unless the axis says otherwise; never empty. */
    private static double[] extent(Axis axis, List<double[]> all, double more) {
        double least = Double.isFinite(more) ? more : Double.POSITIVE_INFINITY;
        double most = Double.isFinite(more) ? more : Double.NEGATIVE_INFINITY;
        for (double[] values : all) {
            for (double value : values) {
                if (Double.isFinite(value) && (value > 0 || !axis.logarithmic())) {
                    least = Math.min(least, value);
                    most = Math.max(most, value);
                }
            }
        }
        least = axis.least() != null ? axis.least() : Double.isFinite(least) ? least : axis.logarithmic() ? 1 : 0;
        most = axis.most() != null ? axis.most() : Double.isFinite(most) ? most : least + 1;
        if (most <= least) {
            most = axis.logarithmic() ? least * 10 : least + 1;
        }
        return new double[]{least, most};
    }

    /** Upright lines with their words above the frame, in two rows, those that would meet a neighbour without words. */
    private static void marks(Svg svg, Plot plot, List<Mark> marks, Scale x, double top) {
        double[] free = {0, 0};
        for (Mark mark : marks.stream().sorted(Comparator.comparingDouble(Mark::x)).toList()) {
            if (!x.holds(mark.x())) {
                continue;
            }
            plot.upright(mark.x(), "null");
            double width = Type.width(mark.says(), Type.SMALL);
            double from = Math.max(0, Math.min(x.at(mark.x()) - width / 2, Svg.PLOT_WIDTH - width));
            int row = from >= free[0] ? 0 : from >= free[1] ? 1 : -1;
            if (row >= 0) {
                svg.leafText("text", mark.says(), "class", "label", "x", from, "y", top - 5 - row * Type.SIZE * 1.05, "font-size", Type.SMALL, "fill", "#1d1d1b");
                free[row] = from + width + 6;
            }
        }
    }

    /** The point itself, ringed, with its words where there is room for them. */
    private static void here(Svg svg, Here here, List<double[]> curves, Scale x, Scale y, double left, double right, double top) {
        if (!x.holds(here.x()) || !y.holds(here.y())) {
            return;
        }
        double atX = x.at(here.x());
        double atY = y.at(here.y());
        svg.leaf("circle", "class", "sum", "cx", atX, "cy", atY, "r", 7, "fill", "none", "stroke", "#1d1d1b", "stroke-width", 2);
        svg.leaf("circle", "class", "sum", "cx", atX, "cy", atY, "r", 2.5, "fill", "#1d1d1b");
        double width = Type.width(here.says(), Type.SIZE) * 1.06;
        double from = 0;
        double baseline = 0;
        int fewest = Integer.MAX_VALUE;
        for (int place = 0; place < 4; place++) { // beside the point, where the fewest points of curves are hidden
            double tryFrom = Math.max(left + 4, Math.min(right - 3 - width, place % 2 == 0 ? atX + 10 : atX - 10 - width));
            double tryBaseline = place < 2 ? atY - 10 : atY + 20;
            int hidden = tryBaseline - Type.SIZE < top || tryBaseline > BOTTOM - 3 ? 10_000 : hidden(curves, tryFrom, tryFrom + width, tryBaseline);
            if (hidden < fewest) {
                fewest = hidden;
                from = tryFrom;
                baseline = tryBaseline;
            }
        }
        svg.leafText("text", here.says(), "class", "label halo", "x", from, "y", baseline, "font-size", Type.SIZE, "font-weight", "bold", "fill", "#1d1d1b");
    }

    private static int hidden(List<double[]> curves, double from, double to, double baseline) {
        int hidden = 0;
        for (double[] points : curves) {
            for (int i = 0; i < points.length; i += 2) {
                hidden += points[i] > from - 2 && points[i] < to + 2 && points[i + 1] > baseline - Type.SIZE && points[i + 1] < baseline + 4 ? 1 : 0;
            }
        }
        return hidden;
    }

    private static String says(Axis across, Axis up, List<Series> series, Here here, List<Mark> marks, Reader reader) {
        StringBuilder says = new StringBuilder(up.name()).append(" over ").append(Naming.small(across.name())).append('.');
        for (Series one : series) {
            course(says, one, across, up, reader);
        }
        if (here != null) {
            says.append(' ').append(Words.sentence("Marked: " + here.says()));
        }
        if (!marks.isEmpty()) {
            says.append(' ').append(Words.sentence("Also marked: " + String.join(", ", marks.stream().map(Mark::says).toList())));
        }
        return says.toString();
    }

    /** Where a curve begins and ends, and its highest and lowest value where they lie between. */
    private static void course(StringBuilder says, Series one, Axis across, Axis up, Reader reader) {
        int first = -1;
        int last = -1;
        int low = -1;
        int high = -1;
        for (int i = 0; i < one.x().length; i++) {
            if (!Double.isFinite(one.y()[i])) {
                continue;
            }
            first = first < 0 ? i : first;
            last = i;
            low = low < 0 || one.y()[i] < one.y()[low] ? i : low;
            high = high < 0 || one.y()[i] > one.y()[high] ? i : high;
        }
        if (first < 0) {
            return;
        }
        StringBuilder course = new StringBuilder(one.name().isEmpty() ? "it" : one.name());
        course.append(" goes from ").append(point(one, first, across, up, reader)).append(" to ").append(point(one, last, across, up, reader));
        if (high != first && high != last) {
            course.append(", highest ").append(point(one, high, across, up, reader));
        }
        if (low != first && low != last) {
            course.append(", lowest ").append(point(one, low, across, up, reader));
        }
        says.append(' ').append(Words.sentence(course.toString()));
    }

        /** A value with its unit, as one says it. */
        private static String words(double value, Axis axis, Reader reader) {
            double size = Math.abs(value);
            return switch (axis.unit()) {
                case "m" -> reader.distance(value);
                case "Hz" -> Words.hertz(value, reader);
                case "degrees" -> Words.number(value, 0, reader) + "\u00b0";
                case "" -> Words.number(value, decimals(size), reader);
                default -> Words.number(value, axis.unit().startsWith("dB") ? 1 : decimals(size), reader) + " " + axis.unit();
            };
        }

        private static int decimals(double size) {
            return size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
        }

    private static String point(Series one, int i, Axis across, Axis up, Reader reader) {
        return words(one.y()[i], up, reader) + " at " + words(one.x()[i], across, reader);
    }
}
