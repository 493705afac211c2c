package pairwright.acoustics;

import java.util.OptionalDouble;

/**
 * Polar patterns of the first order, {@code R = A + (1 - A) cos angle}: from omni (coefficient A = 1) over cardioid (0.5) to
 * figure-8 (0). Ideal patterns; a real one holds best in its middle octaves. Source: Eargle, The Microphone Book; Beranek.
 */
public final class FirstOrder {
    /** Hears all round alike. */
    public static final double OMNI = 1;
    /** The wide cardioid 8 dB down at the back; 0.75 (6 dB down) is in print as well. */
    public static final double WIDE_CARDIOID = 0.7;
    /** Null straight behind. */
    public static final double CARDIOID = 0.5;
    /** The greatest ratio of front to back, (sqrt 3 - 1) / 2 = 0.366. */
    public static final double SUPERCARDIOID = (Math.sqrt(3) - 1) / 2;
    /** The least pick-up of a diffuse room. */
    public static final double HYPERCARDIOID = 0.25;
    /** Null all round the side. */
    public static final double FIGURE_EIGHT = 0;

    /** What a null is worth in practice. Real ones reach 20 to 30 dB at 1 kHz and less near walls. Trade practice. */
    public static final double PRACTICAL_NULL_DB = -22;

    private FirstOrder() {
    }

    /** Sensitivity at an angle compared with the front, {@code A + (1 - A) cos angle}; negative where polarity is inverted. */
    public static double response(double coefficient, double angleDegrees) {
        Check.fraction("coefficient", coefficient);
        Check.angleDegrees("angleDegrees", angleDegrees);
        return coefficient + (1 - coefficient) * Degrees.cos(angleDegrees);
    }

    /** {@code 20 lg |R|} dB, 0 at the front; negative infinity exactly at a null. */
    public static double responseDb(double coefficient, double angleDegrees) {
        return Decibels.ofRatio(Math.abs(response(coefficient, angleDegrees)));
    }

    /**
     * The same, but no lower than a floor in dB (at most 0), because no real null is as deep as the drawing. For planning use
     * {@link #PRACTICAL_NULL_DB}.
     */
    public static double responseDb(double coefficient, double angleDegrees, double nullFloorDb) {
        return Math.max(responseDb(coefficient, angleDegrees), checkFloor(nullFloorDb));
    }

    /**
     * The angle from the front at which nothing is heard, {@code acos(-A / (1 - A))} degrees; empty above A = 0.5. A single
     * direction for the cardioid, a cone for tighter patterns, a plane for the figure-8.
     */
    public static OptionalDouble nullDegrees(double coefficient) {
        Check.fraction("coefficient", coefficient);
        return coefficient > 0.5
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.toDegrees(Math.acos(-coefficient / (1 - coefficient))));
    }

    /** Random energy efficiency, {@code A^2 + (1 - A)^2 / 3}: diffuse sound picked up, as a share of what an omni picks up. */
    public static double randomEfficiency(double coefficient) {
        double gradient = 1 - Check.fraction("coefficient", coefficient);
        return coefficient * coefficient + gradient * gradient / 3;
    }

    /** {@code -10 lg} of the random energy efficiency, dB: how much quieter a diffuse room is than with an omni. */
    public static double directivityIndexDb(double coefficient) {
        return -Decibels.ofPowerRatio(randomEfficiency(coefficient)) + 0.0;
    }

    /** How many times farther than an omni it may stand for the same share of room, {@code 1 / sqrt(REE)}; diffuse room. */
    public static double distanceFactor(double coefficient) {
        return 1 / Math.sqrt(randomEfficiency(coefficient));
    }

    /**
     * Diffuse sound heard from the front half against the back half, dB:
     * {@code 10 lg((A^2 + A B + B^2/3) / (A^2 - A B + B^2/3))} with {@code B = 1 - A}. From integrating each hemisphere.
     */
    public static double frontToBackDb(double coefficient) {
        double gradient = 1 - Check.fraction("coefficient", coefficient);
        double even = randomEfficiency(coefficient);
        double odd = coefficient * gradient;
        return Decibels.ofPowerRatio((even + odd) / (even - odd));
    }

    /**
     * The whole arc about the front within which the response has fallen by no more than {@code dropDb} (more than 0),
     * {@code 2 acos((10^(-drop/20) - A) / (1 - A))} degrees; empty if it falls by less all round. Half power is a drop of
     * 3.0103 dB, half pressure one of 6.0206 dB.
     */
    public static OptionalDouble arcDegrees(double coefficient, double dropDb) {
        Check.fraction("coefficient", coefficient);
        Check.positive("dropDb", dropDb, 200);
        if (coefficient == OMNI) {
            return OptionalDouble.empty();
        }
        double cosine = (Decibels.toRatio(-dropDb) - coefficient) / (1 - coefficient);
        // a pattern that just reaches the drop at the very back must not miss it by a rounding
        return cosine < -1 - 1e-9
                ? OptionalDouble.empty()
                : OptionalDouble.of(2 * Math.toDegrees(Math.acos(Math.max(cosine, -1))));
    }

    static double checkFloor(double nullFloorDb) {
        return Check.within("nullFloorDb", nullFloorDb, -300, 0);
    }
}
