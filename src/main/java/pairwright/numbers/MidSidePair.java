package pairwright.numbers;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.StereoPair;
import pairwright.acoustics.StereoPair.Model;
import pairwright.acoustics.StereoPair.VirtualPair;

/** The coincident pair that a mid and a side microphone make. */
final class MidSidePair implements Calculation {
    private static final Input PATTERN = Input.pattern("The pickup pattern of the mid microphone.").usually("cardioid");
    private static final Input SIDE = Input.number("sideToMidDb", "dB", -40, 40,
            "How much louder the side is than the mid, both taken on their axes and after all gains.").usually(0.0);
    private static final double THIN_DB = -12;
    private static final double WIDE_DB = 3;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("mid-side", "Mid/side", "Which pair of crossed microphones does this mid and side make?",
                "L = M + S, R = M - S; g = 10^(dB / 20), B' = sqrt((1 - A)^2 + g^2), A' = A / (A + B'), half angle = atan(g / (1 - A))",
                List.of(PATTERN, SIDE), Map.of("pattern", "cardioid", "sideToMidDb", -6.0));
    }

    @Override
    public void work(Inputs in, Working out) {
        double omni = in.pattern(PATTERN).coefficient();
        double sideDb = in.number(SIDE);
        double ratio = out.step("Side against mid, g: 10^({} / 20)", StereoPair.sideToMidRatio(sideDb), "1", sideDb);
        VirtualPair pair = StereoPair.fromMidSide(omni, ratio);
        double gain = out.step("Loudness on its axis against the mid, A + B': {} + sqrt((1 - {})^2 + {}^2)", pair.gainRatio(), "1", omni, omni, ratio);
        double coefficient = out.step("Omni part of each: {} / {}", pair.coefficient(), "1", omni, gain);
        double included = omni == FirstOrder.OMNI
                ? out.step("Angle between the two, as an omni mid leaves only the side to look anywhere: 2 × 90", pair.includedDegrees(), "degrees")
                : out.step("Angle between the two: 2 × atan({} / (1 - {}))", pair.includedDegrees(), "degrees", ratio, omni);
        out.result("includedDegrees", included, "degrees");
        out.result("coefficient", coefficient, "1");
        out.result("gainRatio", gain, "1");
        OptionalDouble angle = StereoPair.recordingDegrees(Model.FULL_AT_15_DB, coefficient, 0, included);
        if (angle.isPresent()) {
            double half = angle.getAsDouble() / 2;
            out.step("Level difference of that pair at {} degrees, a full shift: 20 lg(abs({} + (1 - {}) × cos({}° - {}° / 2)) / abs({} + (1 - {}) × "
                    + "cos({}° + {}° / 2)))", StereoPair.levelDifferenceDb(coefficient, included, half), "dB",
                    half, coefficient, coefficient, half, included, coefficient, coefficient, half, included);
            out.result("recordingAngleDegrees", out.step("Recording angle: 2 × {}", angle.getAsDouble(), "degrees", half), "degrees");
            out.says("It is a pair of patterns with A = {}, {} degrees apart, and spreads a scene of {} degrees.", coefficient, included,
                    angle.getAsDouble());
        } else {
            out.remark("The level difference never reaches 15 dB, so there is no recording angle");
            out.says("It is a pair of patterns with A = {}, {} degrees apart; no source reaches a loudspeaker.", coefficient, included);
        }
        out.holds("For ideal patterns in one spot. In mono the side vanishes and only the mid is left, so the mid must be good alone. The marked "
                + "side of the figure-8 points left.");
        if (sideDb < THIN_DB) {
            out.holds("At {} dB the side hardly widens anything.", sideDb);
        }
        if (sideDb > WIDE_DB) {
            out.holds("At {} dB the side is louder than the mid: the middle turns hollow and what is out of phase is heard as such.", sideDb);
        }
    }
}
