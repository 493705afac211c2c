package pairwright.advice;

import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Lobe;
import pairwright.model.PatternData;

/** What a pattern leaves of a sound by where it comes from, octave by octave. No null is credited with more than a real one has. */
final class Pickup {
    private static final double LEAST_POWER = Math.pow(10, FirstOrder.PRACTICAL_NULL_DB / 10);

    private Pickup() {
    }

    /** From an angle off its axis, against the front: 0 dB or less. */
    static double db(PatternData pattern, int band, double angleDegrees) {
        double angle = Math.abs(angleDegrees);
        if (angle == 0) {
            return 0;
        }
        return switch (pattern.pattern()) {
            case CONTACT, ELECTRICAL -> 0;
            case LOBAR -> Math.max(FirstOrder.PRACTICAL_NULL_DB, Lobe.responseDb(pattern.directivityIndexDb().at(band), angle));
            default -> FirstOrder.responseDb(pattern.coefficient().at(band), angle, FirstOrder.PRACTICAL_NULL_DB);
        };
    }

    /** The same as a power, 1 or less, from any angle round the clock. */
    static double power(PatternData pattern, int band, double angleDegrees) {
        double angle = Scene.foldedDegrees(angleDegrees);
        return switch (pattern.pattern()) {
            case CONTACT, ELECTRICAL -> 1;
            case LOBAR -> Math.pow(10, db(pattern, band, angle) / 10);
            default -> {
                double response = FirstOrder.response(pattern.coefficient().at(band), angle);
                yield Math.max(LEAST_POWER, response * response);
            }
        };
    }

    /** Whether the cosine of an angle says what is taken up from there. */
    static boolean byCosine(PatternData pattern) {
        return switch (pattern.pattern()) {
            case CONTACT, ELECTRICAL, LOBAR -> false;
            default -> true;
        };
    }

    /** The same power, of such a pattern, from the cosine of the angle, which is what a figure-8 hears: the pattern is so much omni and the rest figure-8. */
    static double powerAt(double cosine, double coefficient) {
        double response = coefficient + (1 - coefficient) * cosine;
        return Math.max(LEAST_POWER, response * response);
    }

    /** From all round alike, as a room sounds: a power against an omni. */
    static double diffusePower(PatternData pattern, int band) {
        return pattern.directivityIndexDb() != null ? Math.pow(10, -pattern.directivityIndexDb().at(band) / 10)
                : pattern.coefficient() == null ? 1 : FirstOrder.randomEfficiency(pattern.coefficient().at(band));
    }
}
