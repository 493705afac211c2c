package pairwright.acoustics;

import java.util.function.DoubleUnaryOperator;

/** Averages over directions, the slow way. */
final class Sphere {
    private Sphere() {
    }

    /** What the belt between two angles from the front adds to the average over the whole sphere; midpoint rule. */
    static double share(DoubleUnaryOperator powerAtDegrees, double fromDegrees, double toDegrees) {
        int steps = 2000;
        double width = (toDegrees - fromDegrees) / steps;
        double sum = 0;
        for (int step = 0; step < steps; step++) {
            double degrees = fromDegrees + (step + 0.5) * width;
            sum += powerAtDegrees.applyAsDouble(degrees) * Math.sin(Math.toRadians(degrees));
        }
        return sum * Math.toRadians(width) / 2;
    }
}
