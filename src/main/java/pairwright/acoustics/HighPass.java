package pairwright.acoustics;

/** A high-pass of second order, 12 dB an octave, with a maximally flat (Butterworth) pass band. */
public final class HighPass {
    private HighPass() {
    }

    /**
     * What it takes away, decibels, 0 or more: {@code 10 lg(1 + (fc/f)^4)}.
     *
     * @param cornerHz where 3 dB are gone, above 0
     * @param frequencyHz above 0
     */
    public static double lossDb(double cornerHz, double frequencyHz) {
        Check.frequencyHz("cornerHz", cornerHz);
        Check.frequencyHz("frequencyHz", frequencyHz);
        return 10 * Math.log10(1 + Math.pow(cornerHz / frequencyHz, 4));
    }

    /**
     * The highest corner that takes no more than so much from a frequency.
     *
     * @param lowestHz the lowest frequency that is to be kept, above 0
     * @param lossDb what may be lost there, above 0
     */
    public static double cornerHz(double lowestHz, double lossDb) {
        Check.frequencyHz("lowestHz", lowestHz);
        Check.positive("lossDb", lossDb, 100);
        return lowestHz * Math.pow(Math.pow(10, lossDb / 10) - 1, 0.25);
    }
}
