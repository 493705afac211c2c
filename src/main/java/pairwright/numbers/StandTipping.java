package pairwright.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import pairwright.acoustics.StandStability;
import pairwright.acoustics.StandStability.Boom;
import pairwright.acoustics.StandStability.Load;
import pairwright.acoustics.StandStability.Stand;

/** Whether a boom stand tips. */
final class StandTipping implements Calculation {
    private static final Input STAND = Input.number("standMassKg", "kg", 0.1, 200, "The stand without its arm.");
    private static final Input FEET = Input.number("footRadiusM", "m", 0.05, 3, "From the column to the end of a foot, or of the base.");
    private static final Input LEGS = Input.whole("legs", 0, 12, "How many legs, at least 3; 0 for a round base.").usually(3);
    private static final Input BOOM = Input.word("boom", "Where the boom points; between two legs is the worse.", "over-leg", "between-legs")
            .usually("between-legs");
    private static final Input MIC = Input.number("micMassKg", "kg", 0, 50, "Microphone with its mount.");
    private static final Input REACH = Input.number("reachM", "m", 0, 6, "From the column to the microphone, along the floor.");
    private static final Input ARM = Input.number("armMassKg", "kg", 0, 50, "The arm, counted at half its reach.").usually(0.5);
    private static final Input WEIGHT = Input.number("counterweightMassKg", "kg", 0, 100, "A counterweight behind the column.").usually(0.0);
    private static final Input BEHIND = Input.number("counterweightReachM", "m", 0, 3, "How far behind.").usually(0.3);
    private static final Input SANDBAG = Input.number("sandbagMassKg", "kg", 0, 200, "Sandbags at the foot of the column.").usually(0.0);

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("stand-stability", "Stability of a boom stand", "Does the stand tip, and what may hang on it?",
                "e = R cos(180 / n), holding = g (M e + sum m (e - x cos u)), tipping = g sum m (x cos u - e), each load on its side; "
                        + "ratio = holding / tipping over the worst edge, u between the boom and where that edge lies",
                List.of(STAND, FEET, LEGS, BOOM, MIC, REACH, ARM, WEIGHT, BEHIND, SANDBAG),
                Map.of("standMassKg", 2.5, "footRadiusM", 0.35, "micMassKg", 1.0, "reachM", 0.8, "boom", "over-leg"));
    }

    @Override
    public void check(Inputs in) {
        if (in.number(LEGS) == 1 || in.number(LEGS) == 2) {
            in.refuse(LEGS, "legs must be 3 to 12, or 0 for a round base, but was " + Figures.of(in.number(LEGS)));
        }
    }

    @Override
    public void work(Inputs in, Working out) {
        double massKg = in.number(STAND) + in.number(SANDBAG);
        Stand stand = new Stand(massKg, in.number(FEET), (int) in.number(LEGS));
        Boom boom = Boom.valueOf(in.word(BOOM).toUpperCase(Locale.ROOT).replace('-', '_'));
        Load mic = new Load(in.number(MIC), in.number(REACH));
        List<Load> others = new ArrayList<>();
        others.add(new Load(in.number(ARM), in.number(REACH) / 2));
        if (in.number(WEIGHT) > 0) {
            others.add(new Load(in.number(WEIGHT), -in.number(BEHIND)));
        }
        Load[] without = others.toArray(Load[]::new);
        others.add(mic);
        Load[] loads = others.toArray(Load[]::new);

        if (in.number(SANDBAG) > 0) {
            out.step("Stand with sandbags: {} + {}", massKg, "kg", in.number(STAND), in.number(SANDBAG));
        }
        double ratio = ratio(out, stand, boom, loads);
        if (Double.isFinite(ratio)) {
            out.result("holdingRatio", ratio, "1");
        }
        if (in.number(WEIGHT) > 0) {
            out.remark("And once more with the microphone taken off:");
            double alone = ratio(out, stand, boom, without);
            if (Double.isFinite(alone)) {
                out.result("withoutMicRatio", alone, "1");
            }
            if (alone < StandStability.SAFE_RATIO) {
                out.danger("With the microphone off, the counterweight leaves a ratio of {}: take the weight off first, or hold the stand.", alone);
            }
        }
        largest(out, stand, boom, in.number(REACH), without);
        double clutchNm = out.step("What the clutch of the boom must hold: 9.81 × {} × ({} + {} / 2)",
                StandStability.clutchMomentNm(in.number(MIC), in.number(REACH), in.number(ARM)), "N m",
                in.number(REACH), in.number(MIC), in.number(ARM));
        out.result("clutchMomentNm", clutchNm, "N m");
        verdict(out, ratio, boom);
    }

    private static double ratio(Working out, Stand stand, Boom boom, Load[] loads) {
        double edgeM = stand.legs() == Stand.ROUND_BASE
                ? out.step("It tips over the rim, from the column: 1 × {}", stand.edgeM(), "m", stand.footRadiusM())
                : out.step("It tips over a line between two feet, from the column: {} × cos(180° / {})", stand.edgeM(), "m", stand.footRadiusM(),
                        stand.legs());
        double degrees = StandStability.worstEdgeDegrees(stand, boom, loads);
        double cosine = Math.cos(Math.toRadians(degrees));
        List<String> holding = new ArrayList<>(List.of(Figures.in("{} × {}", stand.massKg(), edgeM)));
        List<String> tipping = new ArrayList<>();
        for (Load load : loads) {
            boolean beyond = load.reachM() * cosine > edgeM;
            (beyond ? tipping : holding).add(beyond
                    ? Figures.in("{} × ({} × cos({}°) - {})", load.massKg(), load.reachM(), degrees, edgeM)
                    : Figures.in("{} × ({} - {} × cos({}°))", load.massKg(), edgeM, load.reachM(), degrees));
        }
        double holdingNm = out.step("Worst edge, {} degrees from the boom; what holds: 9.81 × (" + String.join(" + ", holding) + ")",
                StandStability.holdingNm(stand, degrees, loads), "N m", degrees);
        if (tipping.isEmpty()) {
            out.remark("Nothing hangs beyond the feet, so nothing tips it by its weight alone");
            return Double.POSITIVE_INFINITY;
        }
        double tippingNm = out.step("What tips: 9.81 × (" + String.join(" + ", tipping) + ")", StandStability.tippingNm(stand, degrees, loads), "N m");
        double ratio = StandStability.ratio(stand, boom, loads);
        return Double.isFinite(ratio) ? out.step("Holding over tipping: {} / {}", ratio, "1", holdingNm, tippingNm) : ratio;
    }

    private static void largest(Working out, Stand stand, Boom boom, double reachM, Load[] others) {
        double largestKg = StandStability.largestLoadKg(stand, boom, reachM, StandStability.SAFE_RATIO, others);
        if (Double.isFinite(largestKg)) {
            out.result("largestMicMassKg", out.step("Heaviest microphone there that leaves a ratio of {}, over every edge",
                    largestKg, "kg", StandStability.SAFE_RATIO), "kg");
        }
    }

    private static void verdict(Working out, double ratio, Boom boom) {
        String leg = boom == Boom.OVER_LEG ? "" : "turn a leg under the boom, ";
        if (ratio < 1) {
            out.says("It falls: what holds is only {} times what tips.", ratio);
            out.danger("A ratio of {} falls over as soon as it is let go. Do not let go: first " + leg + "shorten the reach, take a heavier "
                    + "stand or a counterweight.", ratio);
        } else if (ratio < StandStability.SAFE_RATIO) {
            out.says("It stands, but not safely: what holds is {} times what tips, and 2 is wanted.", ratio);
            out.danger("With a ratio of {} a knock or a pulled cable brings it down: " + leg + "add sandbags, or shorten the reach.", ratio);
        } else {
            out.says(Double.isFinite(ratio) ? "It stands: what holds is {} times what tips, and 2 is wanted."
                    : "It stands: nothing hangs beyond the feet.", ratio);
        }
        out.holds("For a rigid stand at rest on a level floor, boom level, clutches tight. A slope, a knock, a cable, soft floor or wind ask for more "
                + "than 2.");
        out.danger("What hangs over people can injure them. Sandbags on the feet, cables tied down, a safety wire on what hangs, and nobody "
                + "beneath while it is set up; over an audience or from a ceiling only by a competent rigger and by the rules of the place.");
    }
}
