package pairwright.acoustics;

/** A boundary microphone on a plate that is not a wall. */
public final class BoundaryPlate {
    private static final double HZ_M = 57.3;

    private BoundaryPlate() {
    }

    /**
     * Below about {@code 57.3 / D} Hz the plate no longer doubles the pressure and the level is 6 dB lower; D is its side in
     * metres. A rule of thumb (188 over the side in feet) for a free square plate; on a floor or wall the surface counts. Trade
     * practice.
     */
    public static double lowerHz(double sideM) {
        return HZ_M / Check.positive("sideM", sideM, 1000);
    }
}
