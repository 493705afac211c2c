package pairwright.numbers;

import java.util.List;
import java.util.Map;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Room;

/** Where the room is as loud as the source, and how the two stand at a microphone. */
final class CriticalDistance implements Calculation {
    private static final Input VOLUME = Input.number("volumeM3", "m3", 1, 100_000, "The volume of the room.");
    private static final Input TIME = Input.number("reverbTimeS", "s", 0.05, 20, "Its reverberation time in the middle of the range.");
    private static final Input PATTERN = Input.pattern("The pickup pattern.").usually("omni");
    private static final Input SOURCE = Input.number("sourceDirectivityFactor", "1", 0.1, 50,
            "How much more the source sends toward the microphone than it would evenly: 1 all round, 2 to 3 in front of a mouth or a bell.")
            .usually(1.0);
    private static final Input DISTANCE = Input.number("distanceM", "m", 0.01, 200, "From source to microphone.").usually(1.0);
    private static final Input ANGLE = Input.number("angleDegrees", "degrees", -180, 180, "How far off the microphone's front the source is.")
            .usually(0.0);
    private static final double SMALL_M3 = 30;
    private static final double DRY_S = 0.2;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("critical-distance", "Critical distance",
                "Where is the room as loud as the source, and how much direct sound is left at the microphone?",
                "A = 0.161 V / T, rc = sqrt(A / (16 pi)) sqrt(Q / REE), REE = a^2 + (1 - a)^2 / 3, direct to reverberant = "
                        + "10 lg(Q R^2 / REE) + 20 lg(rc / r) with rc of an omni",
                List.of(VOLUME, TIME, PATTERN, SOURCE, DISTANCE, ANGLE),
                Map.of("volumeM3", 100.0, "reverbTimeS", 0.4, "pattern", "cardioid", "distanceM", 1.0));
    }

    @Override
    public void work(Inputs in, Working out) {
        double volumeM3 = in.number(VOLUME);
        double timeS = in.number(TIME);
        Pickup pickup = in.pattern(PATTERN);
        double omni = pickup.coefficient();
        double factor = in.number(SOURCE);
        double distanceM = in.number(DISTANCE);
        double absorptionM2 = out.step("Absorption area: 0.1611 × {} / {}", Room.absorptionM2(volumeM3, timeS), "m2", volumeM3, timeS);
        double plainM = out.step("For an omni and a source that radiates evenly: sqrt({} / (16 pi))",
                Room.criticalDistanceM(volumeM3, timeS), "m", absorptionM2);
        double efficiency = out.step("Share of the room that the {} pattern hears, REE: {}^2 + (1 - {})^2 / 3", FirstOrder.randomEfficiency(omni), "1",
                pickup.name(), omni, omni);
        double criticalM = out.step("Critical distance here: {} × sqrt({} / {})",
                Room.criticalDistanceM(volumeM3, timeS, factor, 1 / efficiency), "m", plainM, factor, efficiency);
        double schroederHz = out.step("Below this single room modes rule: 2000 sqrt({} / {})", Room.schroederHz(volumeM3, timeS), "Hz",
                timeS, volumeM3);
        out.result("criticalDistanceM", criticalM, "m");
        out.result("omniCriticalDistanceM", plainM, "m");
        directToReverb(in, out, plainM, efficiency, criticalM);
        out.result("absorptionM2", absorptionM2, "m2");
        out.result("schroederHz", schroederHz, "Hz");
        out.holds("For a room whose sound dies away evenly, above {} Hz, away from walls; not in the open.", schroederHz);
        if (volumeM3 < SMALL_M3) {
            out.holds("{} m3 is small: single modes and near walls decide as much as this.", volumeM3);
        }
        if (timeS < DRY_S) {
            out.holds("At {} s the room is too dry for an even field: what comes back are single reflections.", timeS);
        }
        if (distanceM > criticalM) {
            out.holds("Beyond the critical distance moving farther changes little but the first reflections.");
        }
    }

    private static void directToReverb(Inputs in, Working out, double plainM, double efficiency, double criticalM) {
        double omni = in.pattern(PATTERN).coefficient();
        double angleDegrees = in.number(ANGLE);
        double distanceM = in.number(DISTANCE);
        double response = out.step("The microphone hears the source with R: {} + (1 - {}) × cos({}°)", FirstOrder.response(omni, angleDegrees), "1",
                omni, omni, angleDegrees);
        if (response == 0) {
            out.remark("Direct against reverberant: the source is in the null, so there is only room and no number");
            out.says("The room is as loud as the source at {} m. This microphone has the source in its null and hears only room.", criticalM);
            return;
        }
        double ratioDb = out.step("Direct against reverberant: 10 lg({} × {}^2 / {}) + 20 lg({} / {})",
                Room.directToReverbDb(in.number(VOLUME), in.number(TIME), distanceM, in.number(SOURCE), omni, angleDegrees), "dB",
                in.number(SOURCE), response, efficiency, plainM, distanceM);
        out.result("directToReverbDb", ratioDb, "dB");
        out.says("The room is as loud as the source at {} m; at {} m the direct sound is {} dB {} the room.", criticalM, distanceM,
                Math.abs(ratioDb), ratioDb < 0 ? "under" : "over");
    }
}
