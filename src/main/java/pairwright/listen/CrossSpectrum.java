package pairwright.listen;

import java.util.Arrays;

/** Two tracks laid over one another as far as whole samples go: their power and what they have in common, by frequency. */
final class CrossSpectrum {
    private static final double CLOSEST_FRAMES = 1e-4;

    private final Fourier fourier;
    private final double binHz;
    private final int hop;
    private final double[] first;
    private final double[] second;
    private final double[] one;
    private final double[] two;
    private final double[] re;
    private final double[] im;
    private int filled;
    private int windows;

    /** @param seconds how long about; of a long one every stretch is looked at once, of a short one twice */
    CrossSpectrum(double rateHz, double seconds) {
        int size = rateHz > 100_000 ? 1 << 14 : rateHz > 50_000 ? 1 << 13 : 1 << 12;
        this.fourier = Fourier.faded(size, size);
        this.binHz = rateHz / size;
        this.hop = seconds > 600 ? size : size / 2;
        this.first = new double[size];
        this.second = new double[size];
        this.one = new double[size / 2 + 1];
        this.two = new double[size / 2 + 1];
        this.re = new double[size / 2 + 1];
        this.im = new double[size / 2 + 1];
    }

    void add(double[] firstBlock, double[] secondBlock, int frames) {
        for (int from = 0; from < frames;) {
            int count = Math.min(frames - from, first.length - filled);
            System.arraycopy(firstBlock, from, first, filled, count);
            System.arraycopy(secondBlock, from, second, filled, count);
            filled += count;
            from += count;
            if (filled == first.length) {
                look();
                System.arraycopy(first, hop, first, 0, first.length - hop);
                System.arraycopy(second, hop, second, 0, second.length - hop);
                filled -= hop;
            }
        }
    }

    private void look() {
        fourier.of(first, 0, second, 0, first.length);
        for (int bin = 0; bin < one.length; bin++) {
            double a = fourier.firstRe[bin];
            double b = fourier.firstIm[bin];
            double c = fourier.secondRe[bin];
            double d = fourier.secondIm[bin];
            one[bin] += a * a + b * b;
            two[bin] += c * c + d * d;
            re[bin] += c * a + d * b;
            im[bin] += d * a - c * b;
        }
        windows++;
    }

    int bins() {
        return one.length;
    }

    double binHz() {
        return binHz;
    }

    double[] one() {
        return one;
    }

    double[] two() {
        return two;
    }

    /** How much of one follows from the other, 0 to 1, less what chance makes of a few windows. */
    double coherence(int bin) {
        double both = one[bin] * two[bin];
        double raw = both <= 0 ? 0 : (re[bin] * re[bin] + im[bin] * im[bin]) / both;
        // half of the windows' length is shared with the next, which makes two count as little more than one
        double chance = Math.min(1, 1.6 / Math.max(1, windows));
        return Math.max(0, Math.min(1, (raw - chance) / (1 - chance)));
    }

    /**
     * What is left beside the whole samples, -1 to 1: where all that belongs together has turned back to one phase.
     *
     * @param inverted whether that phase is half a turn
     */
    double restFrames(boolean inverted) {
        double best = 0;
        double step = 0.05;
        for (double rest = -1; rest <= 1; rest += step) {
            best = fit(rest, inverted) > fit(best, inverted) ? rest : best;
        }
        for (; step > CLOSEST_FRAMES; step /= 2) {
            double lower = fit(best - step / 2, inverted);
            double upper = fit(best + step / 2, inverted);
            double at = fit(best, inverted);
            best = lower > at && lower >= upper ? best - step / 2 : upper > at ? best + step / 2 : best;
        }
        return best;
    }

    /** Each frequency counts by how sure its phase is: {@code c / (1 - c)}, the maximum-likelihood weight. Source: Knapp and Carter, 1976. */
    private double fit(double restFrames, boolean inverted) {
        double sum = 0;
        for (int bin = 1; bin < one.length - 1; bin++) {
            double coherence = Math.min(0.999, coherence(bin));
            double size = Math.hypot(re[bin], im[bin]);
            if (coherence > 0.05 && size > 0) {
                double turn = 2 * Math.PI * bin * restFrames / (2.0 * (one.length - 1));
                sum += coherence / (1 - coherence) * (re[bin] * Math.cos(turn) - im[bin] * Math.sin(turn)) / size;
            }
        }
        return inverted ? -sum : sum;
    }

    /**
     * The power of both together, the second so much later than it is laid here.
     *
     * @param sign 1, or -1 for the second the other way up
     */
    double[] sum(double laterFrames, int sign) {
        double[] sum = new double[one.length];
        for (int bin = 0; bin < sum.length; bin++) {
            double turn = 2 * Math.PI * bin * laterFrames / (2.0 * (one.length - 1));
            sum[bin] = Math.max(0, one[bin] + two[bin] + sign * 2 * (re[bin] * Math.cos(turn) + im[bin] * Math.sin(turn)));
        }
        return sum;
    }

    /** Both together as if neither had anything to do with the other. */
    double[] apart() {
        double[] sum = new double[one.length];
        Arrays.setAll(sum, bin -> one[bin] + two[bin]);
        return sum;
    }

    /** The part of both that is common, for a mean by octave. */
    double[] common() {
        double[] all = new double[one.length];
        Arrays.setAll(all, bin -> coherence(bin) * (one[bin] + two[bin]) / 2);
        return all;
    }

    /** At no delay: what the two have in common with its sign, over all frequencies. */
    double[] product(double laterFrames) {
        double[] product = new double[one.length];
        for (int bin = 0; bin < product.length; bin++) {
            double turn = 2 * Math.PI * bin * laterFrames / (2.0 * (one.length - 1));
            product[bin] = re[bin] * Math.cos(turn) + im[bin] * Math.sin(turn);
        }
        return product;
    }
}
