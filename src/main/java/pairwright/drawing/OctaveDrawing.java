package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;

/** Curves over the nine octaves, 63 Hz to 16 kHz. */
public final class OctaveDrawing {
    private static final double TOP = 26;
    private static final double BOTTOM = 206;
    private static final double HEIGHT = 240;
    private static final double LEFT = 34;
    private static final double WIDEST_NAME = 88;
    private static final double LEAST_RANGE_DB = 12;
    private static final double ROOM_FOR_A_VALUE = 20;

    private OctaveDrawing() {
    }

    /**
     * One curve.
     *
     * @param name what it is, in a few words: "long passive ribbon"; empty for the only one
     * @param curveDb its nine values
     * @param look how it is told from the others; no two of a drawing alike
     */
    public record Series(String name, OctaveCurve curveDb, Look look) {
    }

    /**
     * A shaded band.
     *
     * @param name what lies in it
     * @param lowDb its lower edge
     * @param highDb its upper edge
     */
    public record Band(String name, OctaveCurve lowDb, OctaveCurve highDb) {
    }

    /**
     * The curves, each with its name at its end.
     *
     * @param title what is shown: "Response on its axis"
     * @param unit of the values: "dB", "dB re 1 kHz"
     * @param series one to four
     * @param band null for none
     * @param key unlike that of any other picture of the page
     */
    public static Drawing of(String title, String unit, List<Series> series, Band band, String key, Reader reader) {
        StringBuilder says = new StringBuilder();
        for (Series one : series) {
            says.append(says.isEmpty() ? "" : " ").append(Words.sentence((one.name().isEmpty() ? title : one.name()) + ": "
                    + Words.octaves(one.curveDb(), unit, reader)));
        }
        if (band != null) {
            says.append(' ').append(Words.sentence("Shaded: " + band.name()));
        }
        return draw(title, unit, series, band, null, says.toString(), key, reader);
    }

    /**
     * @param shares how much each octave counts, 0 to 1, drawn along the bottom; null for none
     * @param says the whole text
     */
    static Drawing draw(String title, String unit, List<Series> series, Band band, OctaveCurve shares, String says, String key, Reader reader) {
        List<List<String>> names = series.stream().map(one -> Type.lines(one.name(), Type.SIZE, WIDEST_NAME)).toList();
        boolean named = series.stream().anyMatch(one -> !one.name().isEmpty());
        double right = Svg.PLOT_WIDTH - (named ? 2 + Plot.margin(names) : 6);
        Scale x = Scale.octaves(LEFT, right);
        Scale y = fitted(series, band);
        Svg svg = new Svg(key, Svg.PLOT_WIDTH, HEIGHT, title, says);
        Plot plot = new Plot(svg, x, y, LEFT, TOP, right, BOTTOM);
        plot.frame(Scale.octaveTicks(reader), y.ticks(8, "dB", reader), "Hz", unit);
        double[] hertz = hertz();
        if (shares != null) {
            bars(svg, shares, x);
        }
        if (band != null) {
            plot.between(hertz, band.lowDb().toArray(), band.highDb().toArray(), "wanted", Look.WANTED.colour());
        }
        List<Plot.End> ends = new ArrayList<>();
        for (int i = series.size() - 1; i >= 0; i--) {
            Series one = series.get(i);
            plot.curve(one.look(), hertz, one.curveDb().toArray(), true);
            if (!one.name().isEmpty()) {
                ends.add(new Plot.End(one.look(), names.get(i), y.at(one.curveDb().at(Octaves.COUNT - 1))));
            }
        }
        plot.ends(ends);
        if (series.size() == 1) {
            extremes(svg, series.get(0).curveDb(), x, y, right, reader);
        }
        return svg.drawing();
    }

    /** The highest and the lowest value beside their points, above and below, where they differ. */
    private static void extremes(Svg svg, OctaveCurve curve, Scale x, Scale y, double right, Reader reader) {
        int low = 0;
        int high = 0;
        for (int band = 1; band < Octaves.COUNT; band++) {
            low = curve.at(band) < curve.at(low) ? band : low;
            high = curve.at(band) > curve.at(high) ? band : high;
        }
        if (low == high) {
            return;
        }
        for (int band : new int[]{low, high}) {
            if (Math.abs(curve.at(band)) >= 0.05) { // what is written as nought is told by the line at nought
                String words = Words.signed(curve.at(band), 1, reader);
                double half = Type.width(words, Type.SIZE) / 2;
                double atX = Math.max(LEFT + half + 3, Math.min(right - half - 3, x.at(Octaves.centreHz(band))));
                svg.leafText("text", words, "class", "label", "x", atX, "y", y.at(curve.at(band)) + (band == low ? 17 : -8), "text-anchor", "middle",
                        "font-size", Type.SIZE, "font-weight", "bold", "fill", "#1d1d1b");
            }
        }
    }

    private static double[] hertz() {
        double[] hertz = new double[Octaves.COUNT];
        for (int band = 0; band < hertz.length; band++) {
            hertz[band] = Octaves.centreHz(band);
        }
        return hertz;
    }

    /** Bars along the bottom, as tall as an octave counts. */
    private static void bars(Svg svg, OctaveCurve shares, Scale x) {
        double half = (x.at(2000) - x.at(1000)) * 0.38;
        for (int band = 0; band < Octaves.COUNT; band++) {
            double height = 18 * shares.at(band);
            if (height > 0) {
                svg.leaf("rect", "x", x.at(Octaves.centreHz(band)) - half, "y", BOTTOM - height, "width", 2 * half, "height", height, "class", "faint", "fill", "#e3ddcf");
            }
        }
    }

    /** All of the curves, nought as well where it is near, to whole steps. */
    private static Scale fitted(List<Series> series, Band band) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        List<OctaveCurve> curves = new ArrayList<>(series.stream().map(Series::curveDb).toList());
        if (band != null) {
            curves.add(band.lowDb());
            curves.add(band.highDb());
        }
        for (OctaveCurve curve : curves) {
            for (double value : curve.toArray()) {
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
        }
        double lowest = least;
        double highest = most;
        least = least > 0 && least < LEAST_RANGE_DB ? 0 : least;
        most = most < 0 && most > -LEAST_RANGE_DB ? 0 : most;
        double missing = Math.max(0, LEAST_RANGE_DB - (most - least));
        double above = least == 0 && most > 0 ? missing : most == 0 && least < 0 ? 0 : missing / 2;
        double step = Scale.step(most - least + missing, 7, "dB");
        double from = Math.floor((least - (missing - above)) / step + 1e-9) * step;
        double to = Math.ceil((most + above) / step - 1e-9) * step;
        if (series.size() == 1) { // the two values that are written beside it need room
            double room = ROOM_FOR_A_VALUE * (to - from + 2 * step) / (BOTTOM - TOP);
            from -= lowest != 0 && lowest - from < room ? step : 0;
            to += highest != 0 && to - highest < room ? step : 0;
        }
        return new Scale(false, from, to, BOTTOM, TOP);
    }
}
