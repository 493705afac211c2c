package pairwright.acoustics;

/** Noise of microphones and preamps, as voltages and as the sound that would read the same. */
public final class Noise {
    /** What A-weighting takes off white noise from 20 Hz to 20 kHz, integrated numerically. */
    public static final double WHITE_NOISE_A_WEIGHTED_DB = -2.05;

    private static final double BOLTZMANN_J_PER_K = 1.380649e-23;
    private static final double ZERO_CELSIUS_K = 273.15;

    /** The source input noise is stated with. */
    public static final double TEST_SOURCE_OHM = 150;
    private static final double AUDIO_BANDWIDTH_HZ = 20_000;
    private static final double ROOM_TEMPERATURE_C = 20;

    private Noise() {
    }

    /** Thermal noise of a resistance, {@code sqrt(4 k T R B)} as dBu, unweighted; ohm, hertz, Celsius. */
    public static double johnsonDbu(double resistanceOhm, double bandwidthHz, double temperatureC) {
        Check.positive("resistanceOhm", resistanceOhm, 1e9);
        Check.positive("bandwidthHz", bandwidthHz, 1e6);
        Check.within("temperatureC", temperatureC, -80, 200);
        double squareVolts =
                4 * BOLTZMANN_J_PER_K * (temperatureC + ZERO_CELSIUS_K) * resistanceOhm * bandwidthHz;
        return Decibels.ofPowerRatio(squareVolts) + Gain.DBU_OVER_DBV;
    }

    /** A preamp's input noise as sound, {@code noise dBV - sensitivity dBV + 93.98} dB SPL, weighted as the figure is. */
    public static double inputNoiseDbSpl(double inputNoiseDbu, double sensitivityMvPerPa) {
        return Check.levelDb("inputNoiseDbu", inputNoiseDbu)
                - Gain.DBU_OVER_DBV
                - Gain.sensitivityDbv(sensitivityMvPerPa)
                + Level.ONE_PASCAL_DB_SPL;
    }

    /**
     * Noise of a powered microphone with its preamp, dBA: self-noise (IEC 60268-4) and the preamp's unweighted input noise, less
     * 2.05 dB for the weighting, added as powers. Preamp noise taken as white.
     */
    public static double activeNoiseDba(double selfNoiseDba, double inputNoiseDbu, double sensitivityMvPerPa) {
        Check.levelDb("selfNoiseDba", selfNoiseDba);
        return Level.sumIncoherentDb(
                selfNoiseDba, inputNoiseDbSpl(inputNoiseDbu, sensitivityMvPerPa) + WHITE_NOISE_A_WEIGHTED_DB);
    }

    /**
     * Noise of a coil or ribbon with its preamp, dBA. Input noise is stated with a 150 ohm source and holds that resistor's
     * noise, so 150 ohm's part is taken out and the microphone's resistance put in. Unweighted, 20 kHz, 20 Celsius. An input
     * noise below that of 150 ohm alone (-130.9 dBu) cannot be and is refused; it usually is an A-weighted or shorted figure.
     */
    public static double passiveNoiseDba(double inputNoiseDbu, double resistanceOhm, double sensitivityMvPerPa) {
        return inputNoiseDbSpl(inputNoiseWithDbu(inputNoiseDbu, resistanceOhm), sensitivityMvPerPa)
                + WHITE_NOISE_A_WEIGHTED_DB;
    }

    /**
     * Input noise with another resistance than the 150 ohm it is stated for,
     * {@code 10 lg(10^(EIN/10) - 10^(N150/10) + 10^(NR/10))} dBu, N being thermal noise. Refused as above.
     */
    public static double inputNoiseWithDbu(double inputNoiseDbu, double resistanceOhm) {
        double sourceDbu = resistorDbu(TEST_SOURCE_OHM);
        Check.within("inputNoiseDbu", inputNoiseDbu, sourceDbu, 300);
        double amplifierPower = Decibels.toPowerRatio(inputNoiseDbu) - Decibels.toPowerRatio(sourceDbu);
        return Decibels.ofPowerRatio(amplifierPower + Decibels.toPowerRatio(resistorDbu(resistanceOhm)));
    }

    /** Thermal noise of a resistance as input noise is stated: unweighted over 20 kHz at 20 Celsius; ohm, dBu. */
    public static double resistorDbu(double resistanceOhm) {
        return johnsonDbu(resistanceOhm, AUDIO_BANDWIDTH_HZ, ROOM_TEMPERATURE_C);
    }
}
