package pairwright.acoustics;

import java.util.OptionalDouble;

/**
 * Two alike microphones for stereo: what level and time differences they make, how wide a scene they spread between the
 * loudspeakers, and what mid/side is in terms of a coincident pair. Far sources; ideal first-order patterns.
 */
public final class StereoPair {
    /**
     * How level and time difference add up to an image at the loudspeaker:
     * {@code (dL / full level)^p + (dt / full time)^p = 1}. There is no single criterion; the end points are published, the
     * exponents are fits made for this tool. Quote a recording angle to 10 degrees either way.
     */
    public enum Model {
        /** Full shift at 15 dB or 1.12 ms. Source: published listening tests of 1984; p fitted to 6 dB with 0.5 ms. */
        FULL_AT_15_DB(15, 1.12, 0.80),
        /** Full shift at 18 dB or 1.5 ms. Source: published teaching figures; p fitted to three published angles. */
        FULL_AT_18_DB(18, 1.5, 0.65);

        private final double fullLevelDb;
        private final double fullTimeMs;
        private final double exponent;

        Model(double fullLevelDb, double fullTimeMs, double exponent) {
            this.fullLevelDb = fullLevelDb;
            this.fullTimeMs = fullTimeMs;
            this.exponent = exponent;
        }

        /** The level difference that alone moves the image to a loudspeaker, dB. */
        public double fullLevelDb() {
            return fullLevelDb;
        }

        /** The time difference that alone does, milliseconds. */
        public double fullTimeMs() {
            return fullTimeMs;
        }

        /** The power to which each share of a full difference is taken. */
        public double exponent() {
            return exponent;
        }

        private double shift(double levelDb, double timeMs) {
            return part(levelDb / fullLevelDb) + part(timeMs / fullTimeMs);
        }

        private double part(double share) {
            return Math.signum(share) * Math.pow(Math.abs(share), exponent);
        }
    }

    /** A coincident pair: pattern coefficient, angle between the two in degrees, and gain against one mid microphone. */
    public record VirtualPair(double coefficient, double includedDegrees, double gainRatio) {
        public VirtualPair {
            Check.fraction("coefficient", coefficient);
            Check.within("includedDegrees", includedDegrees, 0, 360);
            Check.finite("gainRatio", Check.within("gainRatio", gainRatio, 0, Double.MAX_VALUE));
        }
    }

    /** A mid microphone's coefficient, and how strong the sideways figure-8 is against it, both on their axes. */
    public record MidSide(double midCoefficient, double sideToMidRatio) {
        public MidSide {
            Check.fraction("midCoefficient", midCoefficient);
            checkSide(sideToMidRatio);
        }
    }

    // fine enough that the curve cannot rise over 1 and fall back between two steps
    private static final double STEP_DEGREES = 0.25;

    private StereoPair() {
    }

    /**
     * Level difference for a source at an angle from the middle, {@code 20 lg(|R(angle - half)| / |R(angle + half)|)} dB, half
     * being half the angle between the microphones; positive if the nearer one is louder. Infinite where one of them has its
     * null, 0 where both have.
     */
    public static double levelDifferenceDb(double coefficient, double includedDegrees, double angleDegrees) {
        double halfDegrees = checkIncluded(includedDegrees) / 2;
        Check.angleDegrees("angleDegrees", angleDegrees);
        double near = Math.abs(FirstOrder.response(coefficient, angleDegrees - halfDegrees));
        double far = Math.abs(FirstOrder.response(coefficient, angleDegrees + halfDegrees));
        return near == far ? 0 : Decibels.ofRatio(near / far);
    }

    /** Time difference for a far source, {@code d sin(angle) / c} milliseconds; spacing in metres, degrees from the middle. */
    public static double timeDifferenceMs(double spacingM, double angleDegrees) {
        Check.angleDegrees("angleDegrees", angleDegrees);
        return Delay.timeMs(checkSpacing(spacingM)) * Degrees.sin(angleDegrees);
    }

    /**
     * The recording angle, degrees: twice the angle from the middle at which the image reaches a loudspeaker. Not the angle
     * between the microphones; more angle or spacing narrows it. Empty if the image never gets there.
     */
    public static OptionalDouble recordingDegrees(
            Model model, double coefficient, double spacingM, double includedDegrees) {
        Check.fraction("coefficient", coefficient);
        checkSpacing(spacingM);
        checkIncluded(includedDegrees);
        for (double degrees = STEP_DEGREES; degrees <= 180; degrees += STEP_DEGREES) {
            if (shift(model, coefficient, spacingM, includedDegrees, degrees) >= 1) {
                return OptionalDouble.of(2 * crossing(
                        model, coefficient, spacingM, includedDegrees, degrees - STEP_DEGREES, degrees));
            }
        }
        return OptionalDouble.empty();
    }

    /**
     * How far toward a loudspeaker a far source is heard, {@code (dL / full level)^p + (dt / full time)^p}: 0 in the middle, 1 at
     * the loudspeaker; a difference that pulls the other way counts below 0. Infinite where the far microphone has its null.
     */
    public static double shift(
            Model model, double coefficient, double spacingM, double includedDegrees, double angleDegrees) {
        return model.shift(levelDifferenceDb(coefficient, includedDegrees, angleDegrees),
                timeDifferenceMs(spacingM, angleDegrees));
    }

    /** How strong the side is against the mid when it is a level higher or lower, {@code 10^(dB / 20)}. */
    public static double sideToMidRatio(double sideToMidDb) {
        return Decibels.toRatio(Check.within("sideToMidDb", sideToMidDb, -120, 120));
    }

    /**
     * The coincident pair that mid plus and minus side makes: {@code B' = sqrt(B^2 + g^2)}, coefficient {@code A / (A + B')},
     * half angle {@code atan(g / B)}, gain {@code A + B'}, for a mid of {@code A + B cos} and a figure-8 whose axis gain is g
     * times the mid's. Exact for ideal patterns in one spot. Source: trigonometry; Eargle.
     */
    public static VirtualPair fromMidSide(double midCoefficient, double sideToMidRatio) {
        double midGradient = 1 - Check.fraction("midCoefficient", midCoefficient);
        checkSide(sideToMidRatio);
        double gradient = Math.hypot(midGradient, sideToMidRatio);
        double gain = midCoefficient + gradient;
        return new VirtualPair(
                midCoefficient / gain, 2 * Math.toDegrees(Math.atan2(sideToMidRatio, midGradient)), gain);
    }

    /**
     * The mid and side that a coincident pair is: mid coefficient {@code A / m}, side against mid {@code B sin(half) / m}, with
     * {@code m = A + B cos(half)}. Included angle 0 to 180 degrees; refused where the mid vanishes (figure-8s back to back).
     */
    public static MidSide toMidSide(double coefficient, double includedDegrees) {
        Check.within("includedDegrees", includedDegrees, 0, 180);
        double mid = FirstOrder.response(coefficient, includedDegrees / 2);
        if (mid < 1e-6) {
            throw Check.refused("includedDegrees", "must leave some mid: less than 180 for a figure-8", includedDegrees);
        }
        return new MidSide(coefficient / mid, (1 - coefficient) * Degrees.sin(includedDegrees / 2) / mid);
    }

    private static double crossing(
            Model model, double coefficient, double spacingM, double includedDegrees, double below, double above) {
        double low = below;
        double high = above;
        while (high - low > 1e-9) {
            double middle = (low + high) / 2;
            if (shift(model, coefficient, spacingM, includedDegrees, middle) < 1) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double checkSpacing(double spacingM) {
        return Check.within("spacingM", spacingM, 0, 100);
    }

    private static double checkIncluded(double includedDegrees) {
        return Check.within("includedDegrees", includedDegrees, 0, 360);
    }

    private static double checkSide(double sideToMidRatio) {
        return Check.within("sideToMidRatio", sideToMidRatio, 0, 1e6);
    }
}
