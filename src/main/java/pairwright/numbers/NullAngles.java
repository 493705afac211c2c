package pairwright.numbers;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pairwright.acoustics.FirstOrder;

/** Where a microphone hears nothing, and how to turn that toward what is not wanted. */
final class NullAngles implements Calculation {
    private static final Input PATTERN = Input.pattern("The pickup pattern.");
    private static final Input OTHER = Input.number("otherDegrees", "degrees", -180, 180,
            "At the microphone, between what is wanted, straight ahead, and a source that is not; left out, nothing is turned.").optional();

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("null-angles", "Null angles", "Where does the microphone hear nothing, and how should it be turned?",
                "R = A + (1 - A) cos(angle), null = acos(-A / (1 - A)) for A up to 0.5, REE = A^2 + (1 - A)^2 / 3, DI = -10 lg(REE), "
                        + "times as far as an omni = 1 / sqrt(REE)",
                List.of(PATTERN, OTHER), Map.of("pattern", "supercardioid", "otherDegrees", 150.0));
    }

    @Override
    public void work(Inputs in, Working out) {
        Pickup pickup = in.pattern(PATTERN);
        double omni = pickup.coefficient();
        OptionalDouble nul = FirstOrder.nullDegrees(omni);
        if (nul.isPresent()) {
            double nullDegrees = out.step("Null: acos(-{} / (1 - {}))", nul.getAsDouble(), "degrees", omni, omni);
            out.result("nullDegrees", nullDegrees, "degrees");
            out.says("The {} has its null {} degrees off its front.", pickup.name(), nullDegrees);
        } else {
            out.remark("No null: with A above 0.5 the pattern hears something everywhere, and least straight behind");
            out.says("The {} has no null.", pickup.name());
        }
        level(out, "at90Db", "From the side, 90", omni, 90);
        level(out, "at180Db", "From behind, 180", omni, 180);
        double efficiency = out.step("Share of a room against an omni, REE: {}^2 + (1 - {})^2 / 3", FirstOrder.randomEfficiency(omni), "1", omni, omni);
        double indexDb = out.step("Room less than with an omni, DI: -10 lg({})", FirstOrder.directivityIndexDb(omni), "dB", efficiency);
        double factor = out.step("Times as far as an omni for the same share of room: 1 / sqrt({})", FirstOrder.distanceFactor(omni), "1", efficiency);
        out.result("directivityIndexDb", indexDb, "dB");
        out.result("distanceRatio", factor, "1");
        if (in.has(OTHER)) {
            turn(in, out, omni, nul);
        }
        holds(out, omni, nul);
    }

    /** In dB, no lower than a null is in practice. */
    private static double level(Working out, String name, String from, double omni, double degrees) {
        double db = out.step("{} degrees: max(20 lg(abs({} + (1 - {}) × cos({}°))), {})",
                FirstOrder.responseDb(omni, degrees, FirstOrder.PRACTICAL_NULL_DB), "dB", from, omni, omni, degrees, FirstOrder.PRACTICAL_NULL_DB);
        out.result(name, db, "dB");
        return db;
    }

    private static void turn(Inputs in, Working out, double omni, OptionalDouble nul) {
        double otherDegrees = Math.abs(in.number(OTHER));
        double otherDb = level(out, "otherDb", "The other source, aimed straight, " + Figures.of(otherDegrees), omni, otherDegrees);
        if (nul.isEmpty()) {
            return;
        }
        double turnDegrees = out.step("To put the null on it, turn away from it by: {} - {}", nul.getAsDouble() - otherDegrees, "degrees",
                nul.getAsDouble(), otherDegrees);
        out.result("turnDegrees", turnDegrees, "degrees");
        double lostDb = level(out, "wantedDb", "What is wanted, then " + Figures.of(Math.abs(turnDegrees)), omni, turnDegrees);
        out.says("Turned {} degrees {} the other source, the null is on it; the other falls from {} dB, and what is wanted changes by {} dB.",
                Math.abs(turnDegrees), turnDegrees < 0 ? "toward" : "away from", otherDb, lostDb);
        if (lostDb < -3) {
            out.holds("Turning by {} degrees costs {} dB of what is wanted, and its tone: turn less, or choose another pattern or place.",
                    Math.abs(turnDegrees), -lostDb);
        }
    }

    private static void holds(Working out, double omni, OptionalDouble nul) {
        out.holds("For ideal patterns; real ones widen in the bass and narrow in the treble. A null is counted as {} dB at most, because real ones "
                + "are 20 to 30 dB deep at 1 kHz and less near walls. In a room nulls help only until what comes back from its walls is as loud.",
                -FirstOrder.PRACTICAL_NULL_DB);
        if (nul.isPresent()) {
            out.holds(omni == FirstOrder.CARDIOID ? "This null is one direction, straight behind."
                    : omni == FirstOrder.FIGURE_EIGHT ? "This null is a plane, all round the side."
                    : "This null is a cone, all round the axis; straight behind it hears again.");
        }
    }
}
