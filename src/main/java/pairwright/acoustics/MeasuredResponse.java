package pairwright.acoustics;

/** A response that somebody measured, as the nine octaves everything is predicted in. */
public final class MeasuredResponse {
    private static final int REFERENCE_BAND = 4;
    /** From this many points within an octave on, its average is taken; with fewer there is nothing to average. */
    private static final int ENOUGH_POINTS = 3;
    private static final double LN_PER_DB = Math.log(10) / 10;

    private MeasuredResponse() {
    }

    /**
     * One value an octave, dB re the octave at 1 kHz.
     *
     * <p>Between its points the response is taken as straight in decibels over the logarithm of frequency. An octave in which at least three
     * points lie is averaged on a power basis, every part of the octave counting alike:
     * {@code 10 lg (1/w * integral of 10^(L/10) d(lg f))} over its width {@code w} from {@code f_m 10^-0.15} to {@code f_m 10^0.15}.
     * That is what a meter with octave filters shows with pink noise, however close the points lie and whatever their spacing. An octave
     * with fewer points is read at its middle, so that nine values at the nine middles come back as they are. Beyond the
     * outermost points their value is held.
     *
     * <p>Valid where the points follow the shape of the response: a notch between two points is not seen. Whoever calls decides how far beyond
     * the points, and how far between two of them, is too far. Source: IEC 61260-1 for mid-band frequencies {@code 1000 * 10^(0.3 n)}
     * Hz and band edges; the average is elementary calculus.
     *
     * @param frequencyHz rising, above 0 and at most 200000; at least two
     * @param levelDb one for each frequency, re anything, -300 to 300
     */
    public static OctaveCurve octavesDb(double[] frequencyHz, double[] levelDb) {
        if (frequencyHz.length < 2 || frequencyHz.length != levelDb.length) {
            throw new IllegalArgumentException("frequencyHz and levelDb must hold as many values each, at least 2, but held "
                    + frequencyHz.length + " and " + levelDb.length);
        }
        double[] decades = new double[frequencyHz.length];
        for (int i = 0; i < decades.length; i++) {
            decades[i] = Math.log10(Check.frequencyHz("frequencyHz[" + i + "]", frequencyHz[i]));
            Check.levelDb("levelDb[" + i + "]", levelDb[i]);
            if (i > 0 && frequencyHz[i] <= frequencyHz[i - 1]) {
                throw Check.refused("frequencyHz[" + i + "]", "must be more than the one before, " + frequencyHz[i - 1], frequencyHz[i]);
            }
        }
        double[] nine = new double[Octaves.COUNT];
        for (int band = 0; band < nine.length; band++) {
            double middle = 3 + 0.3 * (band - REFERENCE_BAND);
            nine[band] = points(decades, middle - 0.15, middle + 0.15) >= ENOUGH_POINTS
                    ? averageDb(decades, levelDb, middle - 0.15, middle + 0.15)
                    : atDb(decades, levelDb, nominal(decades, band, middle));
        }
        return OctaveCurve.of(nine).relativeToBand(REFERENCE_BAND);
    }

    /** 63 Hz is written where 63.1 Hz is meant: a point at the nominal frequency is the middle. */
    private static double nominal(double[] decades, int band, double middle) {
        double nominal = Math.log10(Octaves.centreHz(band));
        for (double point : decades) {
            if (Math.abs(point - nominal) < 1e-9) {
                return nominal;
            }
        }
        return middle;
    }

    private static int points(double[] decades, double from, double to) {
        int inside = 0;
        for (double point : decades) {
            inside += point >= from && point <= to ? 1 : 0;
        }
        return inside;
    }

    private static double averageDb(double[] decades, double[] levelDb, double from, double to) {
        // relative to the strongest part, so that no power overflows
        double strongest = Math.max(atDb(decades, levelDb, from), atDb(decades, levelDb, to));
        for (int i = 0; i < decades.length; i++) {
            strongest = decades[i] > from && decades[i] < to ? Math.max(strongest, levelDb[i]) : strongest;
        }
        double power = 0;
        double left = from;
        double leftDb = atDb(decades, levelDb, from) - strongest;
        for (int i = 0; i <= decades.length; i++) {
            double right = i < decades.length ? decades[i] : to;
            if (right <= left) {
                continue;
            }
            right = Math.min(right, to);
            double rightDb = atDb(decades, levelDb, right) - strongest;
            power += (right - left) * meanPower(leftDb, rightDb);
            left = right;
            leftDb = rightDb;
        }
        return strongest + 10 * Math.log10(power / (to - from));
    }

    /** The mean of 10^(L/10) where L runs straight from one level to the other. */
    private static double meanPower(double firstDb, double secondDb) {
        double slope = (secondDb - firstDb) * LN_PER_DB;
        double first = Math.exp(firstDb * LN_PER_DB);
        return Math.abs(slope) < 1e-9 ? first : first * Math.expm1(slope) / slope;
    }

    private static double atDb(double[] decades, double[] levelDb, double at) {
        int above = 0;
        while (above < decades.length && decades[above] < at) {
            above++;
        }
        if (above == 0 || above == decades.length) {
            return levelDb[above == 0 ? 0 : above - 1];
        }
        double share = (at - decades[above - 1]) / (decades[above] - decades[above - 1]);
        return levelDb[above - 1] + share * (levelDb[above] - levelDb[above - 1]);
    }
}
