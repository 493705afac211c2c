package pairwright.numbers;

/** What a sound level means for the people near it. */
final class Hearing {
    private static final double TIME_COUNTS_DB = 85;
    private static final double MINUTES_DB = 100;
    private static final double PEAK_DB = 135;

    private Hearing() {
    }

    /** For a running level in dB SPL. */
    static void cautionRunning(Working out, double levelDbSpl) {
        if (levelDbSpl >= MINUTES_DB) {
            out.danger("{} dB SPL harms hearing within minutes for whoever stands there without protection. Place the microphone while "
                    + "nobody plays, wear hearing protection, and see exposure; the law of the place and competent people decide.", levelDbSpl);
        } else if (levelDbSpl >= TIME_COUNTS_DB) {
            out.danger("At {} dB SPL hearing is harmed in time: hours count. See exposure; the law of the place and competent people "
                    + "decide.", levelDbSpl);
        }
    }

    /** For a true peak in dB SPL. */
    static void cautionPeak(Working out, double truePeakDbSpl) {
        if (truePeakDbSpl >= PEAK_DB) {
            out.danger("A peak of {} dB SPL can harm hearing at once, and no number of short takes is safe: 135, 137 and 140 dB(C) are limits "
                    + "in wide use. Nobody's ear belongs where the microphone stands; wear protection near it. The law of the place and "
                    + "competent people decide.", truePeakDbSpl);
        }
    }
}
