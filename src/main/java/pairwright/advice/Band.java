package pairwright.advice;

import pairwright.acoustics.OctaveCurve;

/** The nine octaves by name, and the groups an engineer speaks of. */
final class Band {
    static final int COUNT = 9;
    static final int HZ_63 = 0;
    static final int HZ_125 = 1;
    static final int HZ_250 = 2;
    static final int HZ_500 = 3;
    static final int HZ_1000 = 4;
    static final int HZ_2000 = 5;
    static final int HZ_4000 = 6;
    static final int HZ_8000 = 7;
    static final int HZ_16000 = 8;

    private static final OctaveCurve TILT = OctaveCurve.of(-1, -1, -2 / 3.0, -1 / 3.0, 0, 1 / 3.0, 2 / 3.0, 1, 1);

    private Band() {
    }

    /** A tilt about 1 kHz, even per octave as far as 8 kHz up and 125 Hz down: that much more at the top, and as much less at the bottom. */
    static OctaveCurve tilt(double db) {
        return TILT.scaled(db);
    }

    /** Mean of a curve over some octaves, each counted as much as it matters; 0 where none matters. */
    static double mean(OctaveCurve curve, OctaveCurve weights, int from, int to) {
        double sum = 0;
        double total = 0;
        for (int band = from; band <= to; band++) {
            sum += curve.at(band) * weights.at(band);
            total += weights.at(band);
        }
        return total == 0 ? 0 : sum / total;
    }
}
