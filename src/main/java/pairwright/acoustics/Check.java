package pairwright.acoustics;

/** Refuses a number that cannot be, and says its name, what is allowed and what it was. */
final class Check {
    private static final double GREATEST_LEVEL_DB = 300;
    private static final double GREATEST_DISTANCE_M = 1000;
    private static final double GREATEST_ANGLE_DEGREES = 720;
    private static final double GREATEST_FREQUENCY_HZ = 200_000;

    private Check() {
    }

    static double within(String name, double value, double least, double most) {
        // written so that NaN fails
        if (!(value >= least && value <= most)) {
            throw refused(name, "must be between " + plain(least) + " and " + plain(most), value);
        }
        return value;
    }

    static int within(String name, int value, int least, int most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(
                    name + " must be between " + least + " and " + most + ", but was " + value);
        }
        return value;
    }

    static double positive(String name, double value, double most) {
        if (!(value > 0 && value <= most)) {
            throw refused(name, "must be more than 0 and at most " + plain(most), value);
        }
        return value;
    }

    static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw refused(name, "must be a finite number", value);
        }
        return value;
    }

    static double levelDb(String name, double value) {
        return within(name, value, -GREATEST_LEVEL_DB, GREATEST_LEVEL_DB);
    }

    static double[] levelsDb(String name, double... values) {
        if (values.length == 0) {
            throw new IllegalArgumentException(name + " must hold at least one level, but was empty");
        }
        for (double value : values) {
            levelDb(name, value);
        }
        return values;
    }

    static double distanceM(String name, double value) {
        return positive(name, value, GREATEST_DISTANCE_M);
    }

    static double distanceOrZeroM(String name, double value) {
        return within(name, value, 0, GREATEST_DISTANCE_M);
    }

    static double angleDegrees(String name, double value) {
        return within(name, value, -GREATEST_ANGLE_DEGREES, GREATEST_ANGLE_DEGREES);
    }

    static double frequencyHz(String name, double value) {
        return positive(name, value, GREATEST_FREQUENCY_HZ);
    }

    static double fraction(String name, double value) {
        return within(name, value, 0, 1);
    }

    static IllegalArgumentException refused(String name, String allowed, double value) {
        return new IllegalArgumentException(name + " " + allowed + ", but was " + value);
    }

    static String plain(double limit) {
        return limit == Math.rint(limit) && Math.abs(limit) < 1e15 ? Long.toString((long) limit) : Double.toString(limit);
    }
}
