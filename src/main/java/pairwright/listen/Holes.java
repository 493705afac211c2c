package pairwright.listen;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Where two tracks together have holes that each alone has not. */
final class Holes {
    private static final double LEAST_DB = 6;
    private static final double RISES_TO_DB = -3;
    private static final int MOST = 8;
    private static final double LOWEST_HZ = 50;
    private static final double HIGHEST_HZ = 16_000;
    /** What lies so far under the loudest is no music, and a hole in it harms nobody. */
    private static final double HEARD_SHARE = 1e-5;

    private Holes() {
    }

    /** The lowest first. */
    static List<PairHeard.Comb> of(double[] sum, CrossSpectrum spectrum) {
        double[] apart = spectrum.apart();
        double[] smooth = new double[spectrum.bins()];
        double[] over = new double[spectrum.bins()];
        Arrays.setAll(smooth, bin -> smooth(apart, bin));
        Arrays.setAll(over, bin -> PairMeter.ratioDb(smooth(sum, bin), smooth[bin]));
        double least = HEARD_SHARE * Arrays.stream(smooth).max().orElse(0);
        List<PairHeard.Comb> combs = new ArrayList<>();
        int last = Math.min(over.length - 2, (int) (HIGHEST_HZ / spectrum.binHz()));
        for (int bin = Math.max(2, (int) (LOWEST_HZ / spectrum.binHz())); bin <= last && combs.size() < MOST; bin++) {
            if (over[bin] <= -LEAST_DB && over[bin] <= over[bin - 1] && over[bin] < over[bin + 1] && smooth[bin] > least && deepest(over, bin)) {
                combs.add(new PairHeard.Comb((bin + Pitch.top(over[bin - 1], over[bin], over[bin + 1])) * spectrum.binHz(), -over[bin]));
            }
        }
        return combs;
    }

    /** Whether it rises to either side to where they hardly take anything from one another, and nothing on the way is deeper: what cancels all over has no holes. */
    private static boolean deepest(double[] over, int bin) {
        for (int side = -1; side <= 1; side += 2) {
            int at = bin + side;
            while (at > 0 && at < over.length && over[at] < RISES_TO_DB) {
                if (over[at] < over[bin]) {
                    return false;
                }
                at += side;
            }
            if (at <= 0 || at >= over.length) {
                return false;
            }
        }
        return true;
    }

    /** Over three bins, and from some hundred hertz on over a forty-eighth of an octave to either side. */
    private static double smooth(double[] power, int bin) {
        int reach = Math.max(1, (int) (bin * 0.0145));
        double sum = 0;
        for (int at = Math.max(0, bin - reach); at <= Math.min(power.length - 1, bin + reach); at++) {
            sum += power[at];
        }
        return sum;
    }
}
