package pairwright.acoustics;

/** Trigonometry in degrees that is exact where a polar pattern has its null. */
final class Degrees {
    private Degrees() {
    }

    /** Even in the angle to the last bit; exactly 0 at a right angle. */
    static double cos(double angleDegrees) {
        double folded = Math.abs(Math.IEEEremainder(angleDegrees, 360));
        return folded == 90 ? 0 : Math.cos(Math.toRadians(folded));
    }

    static double sin(double angleDegrees) {
        return Math.sin(Math.toRadians(angleDegrees));
    }
}
