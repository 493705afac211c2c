package pairwright.numbers;

import java.util.List;
import java.util.Map;
import pairwright.acoustics.Delay;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Proximity;

/** How much bass a directional microphone gains up close. */
final class ProximityRise implements Calculation {
    private static final Input PATTERN = Input.pattern("The pickup pattern.");
    private static final Input DISTANCE = Input.number("distanceM", "m", 0.01, 20,
            "From where the sound starts to the capsule, which sits one to five centimetres behind the grille.");
    private static final Input FREQUENCY = Input.number("frequencyHz", "Hz", 20, 20_000, "The frequency looked at.").usually(100.0);
    private static final Input ANGLE = Input.number("angleDegrees", "degrees", -180, 180, "How far off the front the source is.").usually(0.0);
    private static final double CLOSEST_M = 0.03;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("proximity", "Proximity", "How much does the bass rise up close?",
                "rise = 10 lg(1 + x^2), x = (fc / f) cos(angle) / R(angle), fc = (1 - A) c / (2 pi r), R = A + (1 - A) cos(angle)",
                List.of(PATTERN, DISTANCE, FREQUENCY, ANGLE), Map.of("pattern", "cardioid", "distanceM", 0.1, "frequencyHz", 100.0));
    }

    @Override
    public void check(Inputs in) {
        Pickup pickup = in.pattern(PATTERN);
        if (Double.isInfinite(Proximity.boostDb(pickup.coefficient(), 1, 100, in.number(ANGLE)))) {
            in.refuse(ANGLE, "angleDegrees is " + Figures.of(in.number(ANGLE)) + ", where the " + pickup.name()
                    + " has its null: far away it hears nothing there to compare with. Choose another angle");
        }
    }

    @Override
    public void work(Inputs in, Working out) {
        Pickup pickup = in.pattern(PATTERN);
        double omni = pickup.coefficient();
        double distanceM = in.number(DISTANCE);
        double frequencyHz = in.number(FREQUENCY);
        double angleDegrees = in.number(ANGLE);
        double cornerHz = out.step("Corner, where the rise on the axis is 3 dB: (1 - {}) × {} / (2 pi × {})",
                Proximity.cornerHz(omni, distanceM), "Hz", omni, Delay.SPEED_OF_SOUND_M_PER_S, distanceM);
        double ratio = Proximity.nearFieldRatio(omni, distanceM, frequencyHz, angleDegrees);
        if (angleDegrees == 0) {
            out.step("Near part x: {} / {}", ratio, "1", cornerHz, frequencyHz);
        } else if (ratio == 0) {
            out.remark("Near part x: 0, as from the side, and by an omni, only pressure is heard");
        } else {
            double response = out.step("Heard from far at {} degrees, R: {} + (1 - {}) × cos({}°)", FirstOrder.response(omni, angleDegrees), "1",
                    angleDegrees, omni, omni, angleDegrees);
            out.step("Near part x: {} / {} × cos({}°) / {}", ratio, "1", cornerHz, frequencyHz, angleDegrees, response);
        }
        double boostDb = out.step("Rise at {} Hz: 10 lg(1 + {}^2)", Proximity.boostDb(omni, distanceM, frequencyHz, angleDegrees), "dB",
                frequencyHz, ratio);
        double plannedDb = out.step("To plan with: min({}, {})", Proximity.cappedBoostDb(omni, distanceM, frequencyHz, angleDegrees), "dB",
                boostDb, Proximity.PLANNING_CAP_DB);
        out.result("boostDb", boostDb, "dB");
        out.result("plannedBoostDb", plannedDb, "dB");
        out.result("cornerHz", cornerHz, "Hz");
        out.says("A {} at {} m gives {} dB more at {} Hz than from far away.", pickup.name(), distanceM, boostDb, frequencyHz);
        out.holds("For a small source and an ideal pattern. It is the change against far away, not the response: many microphones for close use "
                + "have a bass cut built in. Sources larger than the distance and dual diaphragms rise less.");
        if (distanceM < CLOSEST_M) {
            out.holds("{} m is nearer than a capsule usually gets: even at the grille it is 1 to 5 cm.", distanceM);
        }
        if (boostDb > Proximity.PLANNING_CAP_DB) {
            out.holds("{} dB is more than real microphones show: count on {} dB at most.", boostDb, Proximity.PLANNING_CAP_DB);
        }
        if (frequencyHz > 1000 && omni < FirstOrder.OMNI) {
            out.holds("At {} Hz and above, the body of the microphone decides more than this.", frequencyHz);
        }
    }
}
