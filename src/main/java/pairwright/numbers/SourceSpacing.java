package pairwright.numbers;

import java.util.List;
import java.util.Map;
import pairwright.acoustics.Delay;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Room;

/** How far another source must be for a wanted separation. */
final class SourceSpacing implements Calculation {
    private static final Input SEPARATION = Input.number("separationDb", "dB", 0, 60, "How far the own source shall stand above the other.").usually(10.0);
    private static final Input DISTANCE = Input.number("distanceM", "m", 0.01, 20, "From the microphone to its own source.");
    private static final Input LOUDER = Input.number("otherLouderDb", "dB", -60, 60,
            "How much louder the other source is at 1 m; below 0 if it is quieter.").usually(0.0);
    private static final Input PATTERN = Input.pattern("The pickup pattern.").usually("omni");
    private static final Input ANGLE = Input.number("otherDegrees", "degrees", -180, 180, "How far off the microphone's front the other source is.")
            .usually(90.0);
    private static final double ANY_DB_SPL = 90;
    private static final double ROOM_M = 5;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("spacing", "Spacing for a separation", "How far must another source be from the microphone?",
                "r2 = r1 10^((S + louder + 20 lg|R|) / 20), R = A + (1 - A) cos(angle)", List.of(DISTANCE, SEPARATION, LOUDER, PATTERN, ANGLE),
                Map.of("distanceM", 0.3, "separationDb", 10.0));
    }

    @Override
    public void work(Inputs in, Working out) {
        double omni = in.pattern(PATTERN).coefficient();
        double ownM = in.number(DISTANCE);
        double rejectedDb = out.step("The pattern's say at {} degrees: max(20 lg(abs({} + (1 - {}) × cos({}°))), {})",
                FirstOrder.responseDb(omni, in.number(ANGLE), FirstOrder.PRACTICAL_NULL_DB), "dB",
                in.number(ANGLE), omni, omni, in.number(ANGLE), FirstOrder.PRACTICAL_NULL_DB);
        // what is missing when both are equally far is what distance must bring
        double sameDb = Room.directSeparationDb(ANY_DB_SPL, ownM, ANY_DB_SPL + in.number(LOUDER), ownM, omni, in.number(ANGLE), 0,
                FirstOrder.PRACTICAL_NULL_DB);
        double neededDb = out.step("What distance must bring: {} + {} + {}", in.number(SEPARATION) - sameDb, "dB",
                in.number(SEPARATION), in.number(LOUDER), rejectedDb);
        double ratio = out.step("Times as far: 10^({} / 20)", Delay.distanceRatio(neededDb), "1", neededDb);
        double otherM = out.step("The other source at: {} × {}", ownM * ratio, "m", ownM, ratio);
        out.result("otherDistanceM", otherM, "m");
        out.result("distanceRatio", ratio, "1");
        out.says("For {} dB the other source must be {} m from this microphone, {} times as far as its own.", in.number(SEPARATION), otherM, ratio);
        out.holds("For the direct sound alone. Not for two microphones on one source: there take equal distances, one spot, or enough difference in "
                + "level. Three times as far is 9.5 dB and leaves a ripple of 6 dB, for equally loud sources, omnis and equal gain.");
        if (otherM > ROOM_M) {
            out.holds("At {} m indoors the room carries the other source in, and no distance brings this separation: use closeness, screens or another "
                    + "room; see critical-distance.", otherM);
        }
        if (ratio < 1) {
            out.holds("The other source may be nearer than the own one; so near, it is neither a point nor in one direction.");
        }
    }
}
