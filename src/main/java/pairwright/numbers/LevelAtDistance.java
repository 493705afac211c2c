package pairwright.numbers;

import java.util.List;
import java.util.Map;
import pairwright.acoustics.Level;

/** How loud a source is somewhere else. */
final class LevelAtDistance implements Calculation {
    private static final Input LEVEL = Input.number("levelDbSpl", "dB SPL", 0, 200, "The level that is known.");
    private static final Input REFERENCE = Input.number("referenceDistanceM", "m", 0.01, 100, "Where it is known.").usually(1.0);
    private static final Input DISTANCE = Input.number("distanceM", "m", 0.01, 500, "Where it is asked for.");
    private static final Input OFFSET = Input.number("centreOffsetM", "m", 0, 2,
            "How far behind the surface you measure from the sound seems to start: some centimetres for a mouth, more for a large body.")
            .usually(0.0);
    /** Nearer than this hardly any source is a point. */
    private static final double CLOSE_M = 0.2;
    /** Farther than this the room is usually heard as well. */
    private static final double FAR_M = 3;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("level-at-distance", "Level at a distance", "How loud is a source at another distance?",
                "L(r) = L(r0) - 20 lg((r + d) / (r0 + d))", List.of(LEVEL, DISTANCE, REFERENCE, OFFSET),
                Map.of("levelDbSpl", 94.0, "distanceM", 2.0));
    }

    @Override
    public void work(Inputs in, Working out) {
        double levelDbSpl = in.number(LEVEL);
        double distanceM = in.number(DISTANCE);
        double fromM = in.number(REFERENCE) + in.number(OFFSET);
        double toM = distanceM + in.number(OFFSET);
        if (in.number(OFFSET) > 0) {
            out.step("Known at, from where the sound starts: {} + {}", fromM, "m", in.number(REFERENCE), in.number(OFFSET));
            out.step("Asked for at, from where the sound starts: {} + {}", toM, "m", distanceM, in.number(OFFSET));
        }
        double changeDb = out.step("Change: -20 lg({} / {})", Level.atDistanceDbSpl(0, fromM, toM), "dB", toM, fromM);
        double thereDbSpl = out.step("Level at {} m: {} + {}", Level.atDistanceDbSpl(levelDbSpl, fromM, toM), "dB SPL",
                distanceM, levelDbSpl, changeDb);
        out.result("levelDbSpl", thereDbSpl, "dB SPL");
        out.result("changeDb", changeDb, "dB");
        out.says("{} dB SPL at {} m is {} dB SPL at {} m.", levelDbSpl, in.number(REFERENCE), thereDbSpl, distanceM);
        out.holds("For the direct sound of a source that is small against both distances, with nothing in the way. Trust it to 1 dB at best.");
        if (distanceM < CLOSE_M && in.number(OFFSET) == 0) {
            out.holds("At {} m most sources are as large as the distance: the real level is lower. Give centreOffsetM.", distanceM);
        }
        if (distanceM > FAR_M) {
            out.holds("At {} m indoors the room adds as much or more: see critical-distance.", distanceM);
        }
        Hearing.cautionRunning(out, thereDbSpl);
    }
}
