package pairwright.acoustics;

/** Arrival times, and what happens when one sound arrives twice. Source, where not said otherwise: Beranek, Acoustics. */
public final class Delay {
    /** At about 20 degrees Celsius; everything in this package uses it. */
    public static final double SPEED_OF_SOUND_M_PER_S = 343;

    /** What the ripple of two equal arrivals is taken to be, which has no bottom by the formula. Trade practice. */
    public static final double DEEPEST_RIPPLE_DB = 40;

    private static final int HIGHEST_ORDER = 100_000;

    private Delay() {
    }

    /** Travel time, {@code r / c} milliseconds; metres, 0 allowed. */
    public static double timeMs(double distanceM) {
        return 1000 * Check.distanceOrZeroM("distanceM", distanceM) / SPEED_OF_SOUND_M_PER_S;
    }

    /** Travel time in samples, {@code r / c * rate}, not rounded; metres and hertz. */
    public static double samples(double distanceM, double sampleRateHz) {
        return Check.distanceOrZeroM("distanceM", distanceM) / SPEED_OF_SOUND_M_PER_S
                * Check.positive("sampleRateHz", sampleRateHz, 1e6);
    }

    /**
     * The n-th frequency at which two arrivals of equal polarity work against each other, {@code (2 n - 1) c / (2 d)} Hz for a
     * path difference d in metres, n from 1. With one polarity inverted nulls and peaks change places.
     */
    public static double nullHz(double pathDifferenceM, int order) {
        Check.distanceM("pathDifferenceM", pathDifferenceM);
        return (checkOrder(order) - 0.5) * SPEED_OF_SOUND_M_PER_S / pathDifferenceM;
    }

    /** The n-th frequency above 0 at which two arrivals of equal polarity help each other, {@code n c / d} Hz, n from 1. */
    public static double peakHz(double pathDifferenceM, int order) {
        Check.distanceM("pathDifferenceM", pathDifferenceM);
        return checkOrder(order) * SPEED_OF_SOUND_M_PER_S / pathDifferenceM;
    }

    /**
     * Top of the comb when a second arrival is {@code levelDifferenceDb} quieter, against the first alone:
     * {@code 20 lg(1 + g)} dB, {@code g = 10^(-difference/20)}. A negative difference is a louder second arrival.
     */
    public static double ripplePeakDb(double levelDifferenceDb) {
        return Decibels.ofRatio(1 + secondArrival(levelDifferenceDb));
    }

    /** Bottom of the comb, {@code 20 lg |1 - g|} dB; negative infinity for equal arrivals. */
    public static double rippleDipDb(double levelDifferenceDb) {
        return Decibels.ofRatio(Math.abs(1 - secondArrival(levelDifferenceDb)));
    }

    /** Top to bottom of the comb, dB; the same whichever arrival is louder, positive infinity for equal ones. */
    public static double rippleDb(double levelDifferenceDb) {
        return ripplePeakDb(levelDifferenceDb) - rippleDipDb(levelDifferenceDb);
    }

    /**
     * The same as deep as it is met with: {@link #DEEPEST_RIPPLE_DB} for equal arrivals too, since no two are equal in all of an octave.
     */
    public static double practicalRippleDb(double levelDifferenceDb) {
        double apartDb = Math.abs(Check.levelDb("levelDifferenceDb", levelDifferenceDb));
        return apartDb == 0 ? DEEPEST_RIPPLE_DB : Math.min(DEEPEST_RIPPLE_DB, rippleDb(apartDb));
    }

    /**
     * How many times farther the other source must be for a wanted separation, {@code 10^(S/20)}: 3 for 9.54 dB. Holds for two
     * equally loud sources, omnis, equal gain, no room; add a level difference to S first and take polar rejection off it. Not a
     * rule for two microphones on one source. A negative separation gives a ratio below 1.
     */
    public static double distanceRatio(double separationDb) {
        return Decibels.toRatio(Check.levelDb("separationDb", separationDb));
    }

    /**
     * How much longer the way over the floor is than the direct one, metres:
     * {@code sqrt(d^2 + (hs + hm)^2) - sqrt(d^2 + (hs - hm)^2)}; d along the floor, heights above it. Mirror source, flat floor.
     */
    public static double bouncePathM(double distanceM, double sourceHeightM, double microphoneHeightM) {
        return reflectedM(distanceM, sourceHeightM, microphoneHeightM)
                - directM(distanceM, sourceHeightM, microphoneHeightM);
    }

    /**
     * Level of the floor reflection against the direct sound, {@code 20 lg(direct / reflected)} dB from the two path lengths.
     * A hard floor and a source that radiates down as it does forward; carpet and directivity make it less.
     */
    public static double bounceRelativeDb(double distanceM, double sourceHeightM, double microphoneHeightM) {
        return Decibels.ofRatio(directM(distanceM, sourceHeightM, microphoneHeightM)
                / reflectedM(distanceM, sourceHeightM, microphoneHeightM));
    }

    /**
     * Phase a delay makes at a frequency, {@code 360 f t} degrees, not folded into one turn; hertz and milliseconds, a negative
     * delay being an early arrival. Inverted polarity is 180 degrees at every frequency and so never undoes a delay.
     */
    public static double phaseDegrees(double frequencyHz, double delayMs) {
        Check.frequencyHz("frequencyHz", frequencyHz);
        return 360 * frequencyHz * Check.within("delayMs", delayMs, -10_000, 10_000) / 1000;
    }

    /**
     * Speed of sound in dry air, {@code 331.3 sqrt(1 + t / 273.15)} m/s, for -80 to 80 degrees Celsius; damp air adds less than
     * 0.5 %.
     */
    public static double speedOfSoundMPerS(double temperatureC) {
        return 331.3 * Math.sqrt(1 + Check.within("temperatureC", temperatureC, -80, 80) / 273.15);
    }

    private static int checkOrder(int order) {
        return Check.within("order", order, 1, HIGHEST_ORDER);
    }

    private static double secondArrival(double levelDifferenceDb) {
        return Decibels.toRatio(-Check.levelDb("levelDifferenceDb", levelDifferenceDb));
    }

    private static double directM(double distanceM, double sourceHeightM, double microphoneHeightM) {
        checkBounce(distanceM, sourceHeightM, microphoneHeightM);
        return Math.hypot(distanceM, sourceHeightM - microphoneHeightM);
    }

    private static double reflectedM(double distanceM, double sourceHeightM, double microphoneHeightM) {
        checkBounce(distanceM, sourceHeightM, microphoneHeightM);
        return Math.hypot(distanceM, sourceHeightM + microphoneHeightM);
    }

    private static void checkBounce(double distanceM, double sourceHeightM, double microphoneHeightM) {
        Check.distanceM("distanceM", distanceM);
        Check.distanceOrZeroM("sourceHeightM", sourceHeightM);
        Check.distanceOrZeroM("microphoneHeightM", microphoneHeightM);
    }
}
