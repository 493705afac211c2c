package pairwright.acoustics;

/**
 * The forward lobe of an interference tube, drawn as {@code ((1 + cos angle) / 2)^n}. Averaging its square over the sphere gives
 * {@code 1 / (2 n + 1)}, so a directivity factor Q asks for {@code n = (Q - 1) / 2}: the lobe has the directivity index it is
 * given. Its smooth back is a stand-in for the ragged one of a real tube. Derived here.
 */
public final class Lobe {
    private Lobe() {
    }

    /**
     * Response at an angle from the front, {@code 20 n lg((1 + cos angle) / 2)} dB, for a directivity index of 0 to 30 dB.
     * Negative infinity straight behind, unless the index is 0.
     */
    public static double responseDb(double directivityIndexDb, double angleDegrees) {
        double factor = Decibels.toPowerRatio(Check.within("directivityIndexDb", directivityIndexDb, 0, 30));
        Check.angleDegrees("angleDegrees", angleDegrees);
        double exponent = (factor - 1) / 2;
        return exponent == 0 ? 0 : exponent * Decibels.ofRatio((1 + Degrees.cos(angleDegrees)) / 2);
    }

    /** The same, but no lower than a floor in dB (at most 0); for planning use {@link FirstOrder#PRACTICAL_NULL_DB}. */
    public static double responseDb(double directivityIndexDb, double angleDegrees, double nullFloorDb) {
        return Math.max(responseDb(directivityIndexDb, angleDegrees), FirstOrder.checkFloor(nullFloorDb));
    }
}
