package pairwright.acoustics;

/** Trigonometry in degrees that is exact where a polar pattern has its null. */
final class Degrees {
    private Degrees() {
    }

    /** Even in the angle to the last bit; exactly 0 at a right angle. */
    static double cos(double angleDegrees) {
        double size = Math.abs(angleDegrees);
        double folded = size <= 180 ? size : Math.abs(Math.IEEEremainder(size, 360)); // the remainder is exact but slow
        return folded == 90 ? 0 : Math.cos(Math.toRadians(folded));
    }

    static double sin(double angleDegrees) {
        return Math.sin(Math.toRadians(angleDegrees));
    }
}
