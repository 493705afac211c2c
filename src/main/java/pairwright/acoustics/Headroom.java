package pairwright.acoustics;

/** What is left before a microphone distorts. */
public final class Headroom {
    /** A sine's peak above its RMS value, {@code 20 lg sqrt 2} dB. */
    private static final double SINE_CREST_DB = Decibels.ofPowerRatio(2);

    private Headroom() {
    }

    /**
     * {@code max SPL + pad - peak} dB, the peak as the RMS level of a sine with the same peak, as maximum levels are stated
     * (IEC 60268-4). The pad must sit before the stage that overloads: one at the preamp does nothing for the microphone. A
     * maximum for 0.5 % distortion is about 6 dB lower than one for 1 % where distortion grows with pressure.
     */
    public static double headroomDb(double maxDbSpl, double padDb, double peakSineEquivalentDbSpl) {
        return Check.levelDb("maxDbSpl", maxDbSpl)
                + Check.within("padDb", padDb, 0, 60)
                - Check.levelDb("peakSineEquivalentDbSpl", peakSineEquivalentDbSpl);
    }

    /** A true peak level as the RMS level of a sine with that peak: 3.01 dB less, dB SPL. */
    public static double sineEquivalentDbSpl(double truePeakDbSpl) {
        return Check.levelDb("truePeakDbSpl", truePeakDbSpl) - SINE_CREST_DB;
    }
}
