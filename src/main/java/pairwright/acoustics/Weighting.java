package pairwright.acoustics;

/** What counts how much: A-weighting of levels, source IEC 61672-1, and a coarser one for comparing tone. */
public final class Weighting {
    // the four corner frequencies of the standard's formula, squared
    private static final double LOWEST = Math.pow(20.6, 2);
    private static final double LOW = Math.pow(107.7, 2);
    private static final double HIGH = Math.pow(737.9, 2);
    private static final double HIGHEST = Math.pow(12194, 2);

    /** Rough audibility of the nine octaves at studio levels: the outermost count less. Our own, for comparing tone only. */

    private static final double AT_ONE_KILOHERTZ_DB = unnormalisedDb(1000);

    private static final OctaveCurve OCTAVES_DB = octavesDb();

    private Weighting() {
    }

    /**
     * {@code 20 lg(f4^2 f^4 / ((f^2 + f1^2) sqrt(f^2 + f2^2) sqrt(f^2 + f3^2) (f^2 + f4^2)))} dB with f1 to f4 = 20.6, 107.7,
     * 737.9 and 12194 Hz, shifted to 0 dB at 1 kHz. Up to 200 kHz; the standard's tolerances cover 10 Hz to 20 kHz.
     */
    public static double aWeightingDb(double frequencyHz) {
        return unnormalisedDb(Check.frequencyHz("frequencyHz", frequencyHz)) - AT_ONE_KILOHERTZ_DB;
    }

    /** The weighting of each octave, dB, at the exact centres {@code 1000 * 10^(3 n / 10)} Hz the standard's table is for. */
    public static OctaveCurve octaveWeightingDb() {
        return OCTAVES_DB;
    }

    /**
     * A-weighted less unweighted overall level of a spectrum in octave levels, dB:
     * {@code 10 lg(sum 10^((L + A)/10) / sum 10^(L/10))}. Only the shape matters. Octaves are coarse: within about 1 dB for
     * sounds with most of their energy above 125 Hz.
     */
    public static double aWeightedOffsetDb(OctaveCurve spectrumDb) {
        // from the loudest octave down, so that no level is too great for its power
        double loudestDb = Double.NEGATIVE_INFINITY;
        for (int band = 0; band < Octaves.COUNT; band++) {
            loudestDb = Math.max(loudestDb, spectrumDb.at(band));
        }
        double weighted = 0;
        double unweighted = 0;
        for (int band = 0; band < Octaves.COUNT; band++) {
            double downDb = spectrumDb.at(band) - loudestDb;
            unweighted += Decibels.toPowerRatio(downDb);
            weighted += Decibels.toPowerRatio(downDb + OCTAVES_DB.at(band));
        }
        return Decibels.ofPowerRatio(weighted / unweighted);
    }

    private static OctaveCurve octavesDb() {
        double[] nine = new double[Octaves.COUNT];
        for (int band = 0; band < nine.length; band++) {
            nine[band] = aWeightingDb(1000 * Math.pow(10, 0.3 * (band - 4)));
        }
        return OctaveCurve.of(nine);
    }

    private static double unnormalisedDb(double frequencyHz) {
        double square = frequencyHz * frequencyHz;
        return Decibels.ofRatio(square / (square + LOWEST) * square / (square + HIGHEST)
                / Math.sqrt((square + LOW) * (square + HIGH)));
    }
}
