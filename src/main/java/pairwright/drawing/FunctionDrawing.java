package pairwright.drawing;

import java.util.List;

/** One number over another: level over distance, boost over frequency, pickup over angle. */
public final class FunctionDrawing {
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
        return new Svg(key, 400, 300, title, "").drawing();
    }
}
