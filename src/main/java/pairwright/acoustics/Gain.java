package pairwright.acoustics;

/**
 * From sensitivity to converter. Levels on the wire are RMS; 0 dBu is 0.7746 V, 0 dBFS is a full-scale sine (AES17), and which
 * dBu that is differs from converter to converter, so it is always an argument. Sensitivity as in IEC 60268-4, in mV/Pa.
 */
public final class Gain {
    /** What to add to dBV for dBu: {@code 10 lg(1 / 0.6)}, since 0 dBu is the voltage of 1 mW in 600 ohm. */
    static final double DBU_OVER_DBV = Decibels.ofPowerRatio(1 / 0.6);

    private Gain() {
    }

    /** Sensitivity as a level, {@code 20 lg(mV / 1000)} dBV for one pascal. */
    public static double sensitivityDbv(double sensitivityMvPerPa) {
        return Decibels.ofRatio(checkSensitivity(sensitivityMvPerPa) / 1000);
    }

    /** Open-circuit output, {@code sensitivity dBV + SPL - 93.98 + 2.22} dBu; below overload. */
    public static double outputDbu(double sensitivityMvPerPa, double levelDbSpl) {
        return sensitivityDbv(sensitivityMvPerPa)
                + Check.levelDb("levelDbSpl", levelDbSpl) - Level.ONE_PASCAL_DB_SPL
                + DBU_OVER_DBV;
    }

    /** Open-circuit output in millivolts, {@code mV/Pa * pressure}; below overload. */
    public static double outputMv(double sensitivityMvPerPa, double levelDbSpl) {
        return checkSensitivity(sensitivityMvPerPa) * Level.pressurePa(levelDbSpl);
    }

    /** Preamp gain that brings an RMS level to a wanted one, {@code target + full scale - output} dB. */
    public static double gainDb(
            double sensitivityMvPerPa, double levelDbSpl, double targetDbfs, double fullScaleDbu) {
        return Check.levelDb("targetDbfs", targetDbfs)
                + Check.levelDb("fullScaleDbu", fullScaleDbu)
                - outputDbu(sensitivityMvPerPa, levelDbSpl);
    }

    /**
     * Where a true acoustic peak lands on the meter, dBFS: its {@link Headroom#sineEquivalentDbSpl sine equivalent} through
     * sensitivity and gain, against full scale.
     */
    public static double peakDbfs(
            double sensitivityMvPerPa, double truePeakDbSpl, double gainDb, double fullScaleDbu) {
        return outputDbu(sensitivityMvPerPa, Headroom.sineEquivalentDbSpl(truePeakDbSpl))
                + Check.levelDb("gainDb", gainDb)
                - Check.levelDb("fullScaleDbu", fullScaleDbu);
    }

    private static double checkSensitivity(double sensitivityMvPerPa) {
        return Check.positive("sensitivityMvPerPa", sensitivityMvPerPa, 10_000);
    }
}
