package pairwright.listen;

import pairwright.acoustics.Octaves;

/** The bins of a spectrum that make up each octave, those at an edge shared out. Edges are those of IEC 61260-1 with factor 10^0.3. */
final class Bands {
    static final double OCTAVE = Math.pow(10, 0.3);

    private Bands() {
    }

    static double lowestHz(int band) {
        return exactHz(band) / Math.sqrt(OCTAVE);
    }

    static double highestHz(int band) {
        return exactHz(band) * Math.sqrt(OCTAVE);
    }

    /** The middle of a band, 1000 Hz in band 4. */
    private static double exactHz(int band) {
        return 1000 * Math.pow(OCTAVE, band - 4);
    }

    /** What each octave has of something that is given by bin. */
    static double[] sums(double[] byBin, double binHz) {
        double[] sums = new double[Octaves.COUNT];
        for (int band = 0; band < sums.length; band++) {
            sums[band] = between(byBin, binHz, lowestHz(band), highestHz(band));
        }
        return sums;
    }

    /** What lies between two frequencies; each bin reaches half a bin to either side. */
    static double between(double[] byBin, double binHz, double fromHz, double untilHz) {
        double sum = 0;
        int last = Math.min(byBin.length - 1, (int) Math.ceil(untilHz / binHz));
        for (int bin = Math.max(0, (int) Math.floor(fromHz / binHz)); bin <= last; bin++) {
            double share = Math.min(untilHz / binHz, bin + 0.5) - Math.max(fromHz / binHz, bin - 0.5);
            sum += share > 0 ? Math.min(1, share) * byBin[bin] : 0;
        }
        return sum;
    }

    static double db(double power) {
        return 10 * Math.log10(Math.max(power, 1e-30));
    }
}
