package pairwright.listen;

/**
 * By how much one track is later than the other and whether it is the other way up: where the product of the two, all frequencies that belong together
 * counted about alike, is greatest.
 */
final class Alignment {
    /** Half of what is transformed; the other half keeps the end from meeting the beginning. */
    static final int WINDOW = 1 << 14;
    /** How strongly loud frequencies count: 0 as they are, 1 not at all more than soft ones. */
    private static final double EVENING = 0.8;
    private static final double LOWEST_HZ = 60;
    private static final double HIGHEST_HZ = 16_000;
    /** A second place that fits so nearly as well is a second reading, where between the two it fits much worse. */
    private static final double NEARLY = 0.85;
    private static final double MUCH_WORSE = 0.6;

    private final Fourier fourier = Fourier.faded(2 * WINDOW, WINDOW);
    private final double binHz;
    private final double[] crossRe = new double[WINDOW + 1];
    private final double[] crossIm = new double[WINDOW + 1];

    Alignment(double rateHz) {
        this.binHz = rateHz / (2 * WINDOW);
    }

    /** A block as long as {@link #WINDOW}, zeros where it ends before. */
    void add(double[] first, double[] second, int frames) {
        if (frames == 0) {
            return;
        }
        fourier.of(first, 0, second, 0, Math.min(frames, WINDOW));
        for (int bin = 0; bin <= WINDOW; bin++) {
            crossRe[bin] += fourier.secondRe[bin] * fourier.firstRe[bin] + fourier.secondIm[bin] * fourier.firstIm[bin];
            crossIm[bin] += fourier.secondIm[bin] * fourier.firstRe[bin] - fourier.secondRe[bin] * fourier.firstIm[bin];
        }
    }

    /**
     * What was found.
     *
     * @param laterFrames by how many samples the second is later, whole ones
     * @param inverted whether it is the other way up
     * @param marginDb by how much this fits better than the best that is the other way up
     * @param rivalFrames another delay that fits about as well, the same way up; null for none
     */
    record Found(int laterFrames, boolean inverted, double marginDb, Integer rivalFrames) {
    }

    Found found(int mostFrames) {
        double[] re = new double[WINDOW + 1];
        double[] im = new double[WINDOW + 1];
        for (int bin = 1; bin < WINDOW; bin++) {
            double hz = bin * binHz;
            double size = Math.hypot(crossRe[bin], crossIm[bin]);
            if (size > 0 && hz >= LOWEST_HZ && hz <= HIGHEST_HZ) {
                double even = Math.pow(size, -EVENING);
                re[bin] = crossRe[bin] * even;
                im[bin] = crossIm[bin] * even;
            }
        }
        double[] product = Fourier.back(re, im);
        int highest = 0;
        int lowest = 0;
        for (int shift = -mostFrames; shift <= mostFrames; shift++) {
            double value = product[Math.floorMod(shift, product.length)];
            highest = value > product[Math.floorMod(highest, product.length)] ? shift : highest;
            lowest = value < product[Math.floorMod(lowest, product.length)] ? shift : lowest;
        }
        double up = Math.max(0, product[Math.floorMod(highest, product.length)]);
        double down = Math.max(0, -product[Math.floorMod(lowest, product.length)]);
        boolean inverted = down > up;
        int later = inverted ? lowest : highest;
        return new Found(later, inverted, 2 * Math.abs(Bands.db(Math.max(up, 1e-12)) - Bands.db(Math.max(down, 1e-12))), rival(product, later, mostFrames));
    }

    private static Integer rival(double[] product, int best, int mostFrames) {
        double height = product[Math.floorMod(best, product.length)];
        Integer rival = null;
        for (int side = -1; side <= 1; side += 2) {
            double least = 1;
            for (int shift = best + side; Math.abs(shift) <= mostFrames; shift += side) {
                double share = product[Math.floorMod(shift, product.length)] / height;
                least = Math.min(least, share);
                if (least < MUCH_WORSE && share >= (rival == null ? NEARLY : product[Math.floorMod(rival, product.length)] / height)) {
                    rival = shift;
                }
            }
        }
        return rival;
    }
}
