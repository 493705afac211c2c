package pairwright.acoustics;

/** What a source impedance and the input behind it do to level and tone. Plain circuit theory. */
public final class Loading {
    private static final double GREATEST_OHM = 1e12;

    private Loading() {
    }

    /** Level lost into an input, {@code 20 lg(Zl / (Zs + Zl))} dB, never above 0. Aim for five times the source (IEC 61938). */
    public static double lossDb(double sourceOhm, double loadOhm) {
        checkOhm("sourceOhm", sourceOhm);
        checkOhm("loadOhm", loadOhm);
        return Decibels.ofRatio(loadOhm / (sourceOhm + loadOhm));
    }

    /**
     * Bass a ribbon loses against its middle when its impedance rises at resonance: loss there less loss in the middle, dB.
     * Impedances taken as resistive. Negative where the resonance is the higher of the two.
     */
    public static double ribbonBassLossDb(double midOhm, double resonanceOhm, double loadOhm) {
        checkOhm("midOhm", midOhm);
        checkOhm("resonanceOhm", resonanceOhm);
        checkOhm("loadOhm", loadOhm);
        return lossDb(resonanceOhm, loadOhm) - lossDb(midOhm, loadOhm);
    }

    /** Where a source resistance and cable capacitance are 3 dB down, {@code 1 / (2 pi R C)} Hz; above it treble is lost. */
    public static double lowPassHz(double resistanceOhm, double capacitanceF) {
        return cornerHz(resistanceOhm, capacitanceF);
    }

    /**
     * Where a capacitive pickup into a load resistance is 3 dB down, {@code 1 / (2 pi R C)} Hz; below it bass is lost, so the
     * load must be high.
     */
    public static double highPassHz(double resistanceOhm, double capacitanceF) {
        return cornerHz(resistanceOhm, capacitanceF);
    }

    /** Level through an ideal step-down transformer of N to 1 turns, {@code -20 lg N} dB. */
    public static double transformerGainDb(double turnsRatio) {
        return -Decibels.ofRatio(checkTurns(turnsRatio)) + 0.0;
    }

    /** The load seen through it from the many-turns side, {@code N^2 Z} ohm. */
    public static double reflectedOhm(double turnsRatio, double loadOhm) {
        return Math.pow(checkTurns(turnsRatio), 2) * checkOhm("loadOhm", loadOhm);
    }

    private static double cornerHz(double resistanceOhm, double capacitanceF) {
        checkOhm("resistanceOhm", resistanceOhm);
        Check.positive("capacitanceF", capacitanceF, 1);
        return 1 / (2 * Math.PI * resistanceOhm * capacitanceF);
    }

    private static double checkOhm(String name, double ohm) {
        return Check.positive(name, ohm, GREATEST_OHM);
    }

    private static double checkTurns(double turnsRatio) {
        return Check.positive("turnsRatio", turnsRatio, 1000);
    }
}
