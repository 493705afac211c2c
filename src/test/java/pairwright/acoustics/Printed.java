package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;

/** Compares a result with a printed figure, to half its last digit: a table cannot promise more. */
public final class Printed {
    // a figure that ends in 5 may have been rounded either way
    private static final double SLACK = 1e-9;

    private Printed() {
    }

    public static void thenPrints(String printed, double actual) {
        if (printed.endsWith("Infinity")) {
            assertEquals(Double.parseDouble(printed), actual);
            return;
        }
        int point = printed.indexOf('.');
        int decimals = point < 0 ? 0 : printed.length() - point - 1;
        double half = 0.5 * Math.pow(10, -decimals);
        assertEquals(Double.parseDouble(printed), actual, half + SLACK);
    }

    public static void thenPrints(String printed, OptionalDouble actual) {
        if (printed.equals("none")) {
            assertTrue(actual.isEmpty(), () -> "expected none, was " + actual);
            return;
        }
        thenPrints(printed, actual.orElseThrow());
    }
}
