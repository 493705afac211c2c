package pairwright.listen;

import java.util.Arrays;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/** Spectra of two signals at a time: one is put where the other has no part of it, and they are told apart afterwards. For one thread. */
final class Fourier {
    private final int size;
    private final double[][] both;
    private final double[] window;
    /** Of the first signal up to half the rate, real and imaginary; then of the second. */
    final double[] firstRe;
    final double[] firstIm;
    final double[] secondRe;
    final double[] secondIm;

    /** @param size a power of 2, as long as what is taken */
    static Fourier plain(int size) {
        double[] window = new double[size];
        Arrays.fill(window, 1);
        return new Fourier(size, window);
    }

    /**
     * With what is taken swelling and fading, so that its ends make no sound of their own.
     *
     * @param size a power of 2
     * @param taken how much is taken of it; zeros follow
     */
    static Fourier faded(int size, int taken) {
        double[] window = new double[size];
        for (int i = 0; i < taken; i++) {
            // of mean square 1, so that power is that of the signal
            window[i] = (0.5 - 0.5 * Math.cos(2 * Math.PI * i / taken)) / Math.sqrt(0.375);
        }
        return new Fourier(size, window);
    }

    private Fourier(int size, double[] window) {
        this.size = size;
        this.both = new double[2][size];
        this.firstRe = new double[size / 2 + 1];
        this.firstIm = new double[size / 2 + 1];
        this.secondRe = new double[size / 2 + 1];
        this.secondIm = new double[size / 2 + 1];
        this.window = window;
    }

    /** Takes as many samples of each as there are from a place on, zeros after them. */
    void of(double[] first, int firstFrom, double[] second, int secondFrom, int count) {
        for (int i = 0; i < size; i++) {
            both[0][i] = i < count ? first[firstFrom + i] * window[i] : 0;
            both[1][i] = i < count ? second[secondFrom + i] * window[i] : 0;
        }
        FastFourierTransformer.transformInPlace(both, DftNormalization.STANDARD, TransformType.FORWARD);
        for (int bin = 0; bin <= size / 2; bin++) {
            int mirror = (size - bin) % size;
            firstRe[bin] = (both[0][bin] + both[0][mirror]) / 2;
            firstIm[bin] = (both[1][bin] - both[1][mirror]) / 2;
            secondRe[bin] = (both[1][bin] + both[1][mirror]) / 2;
            secondIm[bin] = (both[0][mirror] - both[0][bin]) / 2;
        }
    }

    /** The real signal of which a spectrum up to half the rate is given. */
    static double[] back(double[] re, double[] im) {
        int size = 2 * (re.length - 1);
        double[][] all = new double[2][size];
        for (int bin = 0; bin < re.length; bin++) {
            all[0][bin] = re[bin];
            all[1][bin] = im[bin];
            if (bin > 0 && bin < size / 2) {
                all[0][size - bin] = re[bin];
                all[1][size - bin] = -im[bin];
            }
        }
        FastFourierTransformer.transformInPlace(all, DftNormalization.STANDARD, TransformType.INVERSE);
        return all[0];
    }
}
