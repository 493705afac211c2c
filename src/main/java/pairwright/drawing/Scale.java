package pairwright.drawing;

import java.util.ArrayList;
import java.util.List;
import pairwright.acoustics.Octaves;

/** An axis: where a value stands in the picture, and which values are written beside it. */
final class Scale {
    private static final double[] DECIMAL = {1, 2, 5};
    private static final double[] DEGREES = {5, 10, 15, 30, 45, 90, 180};
    private static final double[] DECIBELS = {0.5, 1, 2, 3, 5, 6, 10, 20, 50};

    private final boolean logarithmic;
    private final double least;
    private final double most;
    private final double from;
    private final double to;

    /**
     * A value that is written beside the axis.
     *
     * @param value in the unit of the axis
     * @param text as it is written
     */
    record Tick(double value, String text) {
    }

    /**
     * @param least where the axis begins
     * @param most where it ends, above the least
     * @param from where the least stands in the picture
     * @param to where the most stands
     */
    Scale(boolean logarithmic, double least, double most, double from, double to) {
        if (!(most > least) || !Double.isFinite(most - least) || logarithmic && least <= 0) {
            throw new IllegalArgumentException("an axis must rise" + (logarithmic ? " from above 0" : "") + ", but goes from " + least + " to " + most);
        }
        this.logarithmic = logarithmic;
        this.least = least;
        this.most = most;
        this.from = from;
        this.to = to;
    }

    /** The nine octaves, with a little air at both ends. */
    static Scale octaves(double from, double to) {
        return new Scale(true, 63 / 1.35, 16000 * 1.35, from, to);
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }

    /** Where a value stands. */
    double at(double value) {
        double share = logarithmic ? Math.log(value / least) / Math.log(most / least) : (value - least) / (most - least);
        return from + share * (to - from);
    }

    /** The value that stands there. */
    double value(double at) {
        double share = (at - from) / (to - from);
        return logarithmic ? least * Math.pow(most / least, share) : least + share * (most - least);
    }

    boolean holds(double value) {
        return value >= least && value <= most;
    }

    /** The octaves as they are called. */
    static List<Tick> octaveTicks(Reader reader) {
        List<Tick> ticks = new ArrayList<>();
        for (int band = 0; band < Octaves.COUNT; band++) {
            ticks.add(new Tick(Octaves.centreHz(band), shortHz(Octaves.centreHz(band), reader)));
        }
        return ticks;
    }

    /** 500, 2k, 16k. */
    static String shortHz(double hertz, Reader reader) {
        return hertz >= 1000 ? reader.number(hertz / 1000, 1) + "k" : reader.number(hertz, 0);
    }

    /** The step between round values of which a range holds at most so many. */
    static double step(double range, int count, String unit) {
        double[] steps = unit.startsWith("dB") ? DECIBELS : unit.equals("degrees") ? DEGREES : DECIMAL;
        if (steps != DECIMAL) {
            for (double step : steps) {
                if (range / step <= count) {
                    return step;
                }
            }
        }
        double decade = Math.pow(10, Math.floor(Math.log10(range / count)));
        for (double step : DECIMAL) {
            if (range / (step * decade) <= count) {
                return step * decade;
            }
        }
        return 10 * decade;
    }

    /** Round values along the axis, at most about so many, each with enough room for its text. */
    List<Tick> ticks(int count, String unit, Reader reader) {
        return logarithmic ? timesAsMuch(count, unit, reader) : evenly(count, unit, reader);
    }

    private List<Tick> evenly(int count, String unit, Reader reader) {
        double step = step(most - least, count, unit);
        int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
        List<Tick> ticks = new ArrayList<>();
        for (double multiple = Math.ceil(least / step - 1e-9); multiple * step <= most + 1e-9 * step; multiple++) {
            ticks.add(new Tick(multiple * step, Words.number(multiple * step, step == 0.5 ? 1 : decimals, reader)));
        }
        return ticks;
    }

    private List<Tick> timesAsMuch(int count, String unit, Reader reader) {
        List<Tick> ticks = new ArrayList<>();
        double decades = Math.log10(most / least);
        double[] steps = decades * 5 <= count ? new double[]{1, 1.5, 2, 3, 5, 7} : decades * 3 <= count ? DECIMAL
                : decades * 2 <= count ? new double[]{1, 3} : new double[]{1};
        for (int decade = (int) Math.floor(Math.log10(least)); decade <= Math.log10(most); decade++) {
            for (double step : steps) {
                double value = step * Math.pow(10, decade);
                if (value >= least * (1 - 1e-9) && value <= most * (1 + 1e-9)) {
                    ticks.add(new Tick(value, unit.equals("Hz") ? shortHz(value, reader)
                            : Words.number(value, Math.max(0, 1 - decade), reader)));
                }
            }
        }
        return ticks;
    }
}
