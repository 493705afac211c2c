package pairwright.numbers;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pairwright.acoustics.Delay;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.StereoPair;
import pairwright.acoustics.StereoPair.Model;

/** How wide a scene a stereo pair spreads from loudspeaker to loudspeaker. */
final class RecordingAngle implements Calculation {
    private static final Input PATTERN = Input.pattern("The pickup pattern of both.");
    private static final Input SPACING = Input.number("spacingM", "m", 0, 10, "Between the capsules.").usually(0.0);
    private static final Input INCLUDED = Input.number("includedDegrees", "degrees", 0, 180, "Between the two axes.").usually(0.0);
    private static final double NARROW_DEGREES = 60;
    private static final double WIDE_DEGREES = 150;
    private static final double HOLE_M = 0.6;
    private static final double SHOWN_DEGREES = 30;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("recording-angle", "Recording angle of a stereo pair", "How wide a scene does the pair spread between the loudspeakers?",
                "(dL / 15 dB)^0.8 + (dt / 1.12 ms)^0.8 = 1 at half of it; dL = 20 lg(|R(t - h)| / |R(t + h)|), dt = d sin(t) / c, h half the angle "
                        + "between the microphones; a second model has 18 dB, 1.5 ms and 0.65",
                List.of(PATTERN, SPACING, INCLUDED), Map.of("pattern", "cardioid", "spacingM", 0.17, "includedDegrees", 110.0));
    }

    @Override
    public void check(Inputs in) {
        if (in.number(SPACING) == 0 && in.number(INCLUDED) == 0) {
            in.refuse(SPACING, "spacingM and includedDegrees are both 0: two microphones in one spot that look one way are mono. Space them or "
                    + "turn them apart");
        } else if (in.number(SPACING) == 0 && in.pattern(PATTERN).coefficient() == FirstOrder.OMNI) {
            in.refuse(SPACING, "spacingM is 0: two omnis in one spot hear the same whichever way they look. Space them");
        }
    }

    @Override
    public void work(Inputs in, Working out) {
        Pickup pickup = in.pattern(PATTERN);
        double omni = pickup.coefficient();
        double spacingM = in.number(SPACING);
        double includedDegrees = in.number(INCLUDED);
        OptionalDouble usual = angle(out, "recordingAngleDegrees", Model.FULL_AT_15_DB, omni, spacingM, includedDegrees);
        OptionalDouble other = angle(out, "otherModelDegrees", Model.FULL_AT_18_DB, omni, spacingM, includedDegrees);
        double shift = differences(out, Model.FULL_AT_15_DB, omni, spacingM, includedDegrees, SHOWN_DEGREES);
        // beyond the loudspeaker there is nowhere to go
        double image = out.step(Double.isFinite(shift) ? "Image of a source {} degrees off the middle, 1 being the loudspeaker: min(1, {})"
                : "Image of a source {} degrees off the middle, at the loudspeaker", Math.min(1, shift), "1", SHOWN_DEGREES, shift);
        out.result("imageAt30Share", image, "1");
        if (usual.isPresent()) {
            out.says("The pair spreads {} degrees over the whole width between the loudspeakers{}.", usual.getAsDouble(),
                    other.isPresent() ? ", " + Figures.of(other.getAsDouble()) + " by the other model" : "");
        } else {
            out.says("No source reaches a loudspeaker: the picture stays narrow, whatever the width of the scene.");
        }
        out.holds("For far sources, ideal patterns, and listeners in the middle of an even triangle. There is no single criterion: take it "
                + "within 10 degrees. It is not the angle between the microphones, and more angle or spacing makes it narrower.");
        if (usual.isPresent() && usual.getAsDouble() < NARROW_DEGREES) {
            out.holds("{} degrees are little: all that stands wider sticks to the loudspeakers. Bring the microphones nearer together or turn them in.",
                    usual.getAsDouble());
        }
        if (usual.isPresent() && usual.getAsDouble() > WIDE_DEGREES) {
            out.holds("{} degrees are wide: an ensemble of the usual 90 to 120 stays near the middle.", usual.getAsDouble());
        }
        if (spacingM > HOLE_M) {
            out.holds("{} m apart, phase says little about direction: expect a wide, vague picture with a hole in its middle.", spacingM);
        }
    }

    private static OptionalDouble angle(Working out, String name, Model model, double omni, double spacingM, double includedDegrees) {
        OptionalDouble angle = StereoPair.recordingDegrees(model, omni, spacingM, includedDegrees);
        if (angle.isEmpty()) {
            out.remark("With full shift at {} dB or {} ms the image reaches no loudspeaker, so there is no such angle",
                    model.fullLevelDb(), model.fullTimeMs());
            return angle;
        }
        double half = angle.getAsDouble() / 2;
        differences(out, model, omni, spacingM, includedDegrees, half);
        out.result(name, out.step("Recording angle with full shift at {} dB or {} ms: 2 × {}", angle.getAsDouble(), "degrees",
                model.fullLevelDb(), model.fullTimeMs(), half), "degrees");
        return angle;
    }

    /** What the two differ by for a source at an angle from the middle, and how far that moves it: 1 at the loudspeaker. */
    private static double differences(Working out, Model model, double omni, double spacingM, double includedDegrees, double degrees) {
        double halfIncluded = includedDegrees / 2;
        double near = out.step("Near microphone at {} degrees: abs({} + (1 - {}) × cos({}° - {}°))",
                Math.abs(FirstOrder.response(omni, degrees - halfIncluded)), "1", degrees, omni, omni, degrees, halfIncluded);
        double far = out.step("Far microphone at {} degrees: abs({} + (1 - {}) × cos({}° + {}°))",
                Math.abs(FirstOrder.response(omni, degrees + halfIncluded)), "1", degrees, omni, omni, degrees, halfIncluded);
        double timeMs = out.step("Time difference at {} degrees: 1000 × {} × sin({}°) / {}", StereoPair.timeDifferenceMs(spacingM, degrees), "ms",
                degrees, spacingM, degrees, Delay.SPEED_OF_SOUND_M_PER_S);
        double levelDb = StereoPair.levelDifferenceDb(omni, includedDegrees, degrees);
        double shift = StereoPair.shift(model, omni, spacingM, includedDegrees, degrees);
        if (!Double.isFinite(levelDb)) {
            out.remark("Level difference at {} degrees: without end, as one of them has its null there", degrees);
            return shift;
        }
        out.step("Level difference at {} degrees: 20 lg({} / {})", levelDb, "dB", degrees, near, far);
        return out.step(levelDb < 0 ? "Way to the loudspeaker, the level pulling the other way: -(abs({}) / {})^{} + ({} / {})^{}"
                : "Way to the loudspeaker: ({} / {})^{} + ({} / {})^{}", shift, "1",
                levelDb, model.fullLevelDb(), model.exponent(), timeMs, model.fullTimeMs(), model.exponent());
    }
}
