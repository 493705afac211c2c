package pairwright.numbers;

import java.util.List;
import java.util.Map;
import pairwright.acoustics.Delay;

/** How long sound takes, in milliseconds and samples. */
final class TravelTime implements Calculation {
    private static final Input DISTANCE = Input.number("distanceM", "m", 0.001, 1000, "The way, or how much longer one way is than another.");
    private static final Input RATE = Input.number("sampleRateHz", "Hz", 8000, 768_000, "The sample rate.").usually(48_000.0);
    private static final Input FREQUENCY = Input.number("frequencyHz", "Hz", 1, 100_000,
            "A frequency whose phase is asked for; left out, none is.").optional();
    private static final double LONG_MS = 30;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("delay", "Delay", "How long does the sound take, in milliseconds and samples?",
                "t = r / c, samples = t × rate, phase = 360 f t, c = 343 m/s", List.of(DISTANCE, RATE, FREQUENCY),
                Map.of("distanceM", 1.0, "sampleRateHz", 48_000.0));
    }

    @Override
    public void work(Inputs in, Working out) {
        double distanceM = in.number(DISTANCE);
        double rateHz = in.number(RATE);
        double delayMs = out.step("Time: 1000 × {} / {}", Delay.timeMs(distanceM), "ms", distanceM, Delay.SPEED_OF_SOUND_M_PER_S);
        double samples = out.step("Samples: {} / {} × {}", Delay.samples(distanceM, rateHz), "samples", distanceM, Delay.SPEED_OF_SOUND_M_PER_S, rateHz);
        out.result("delayMs", delayMs, "ms");
        out.result("samples", samples, "samples");
        if (in.has(FREQUENCY)) {
            double degrees = out.step("Phase at {} Hz: 360 × {} × {} / 1000", Delay.phaseDegrees(in.number(FREQUENCY), delayMs), "degrees",
                    in.number(FREQUENCY), in.number(FREQUENCY), delayMs);
            out.result("phaseDegrees", degrees, "degrees");
        }
        out.says("Over {} m sound takes {} ms, which is {} samples at {} Hz.", distanceM, delayMs, samples, rateHz);
        out.holds("At about 20 degrees Celsius, {} m/s; {} m/s at 0 and {} m/s at 35 degrees, so a stage in winter or summer is up to 3 % off.",
                Delay.SPEED_OF_SOUND_M_PER_S, Delay.speedOfSoundMPerS(0), Delay.speedOfSoundMPerS(35));
        if (delayMs > LONG_MS) {
            out.holds("{} ms is late enough to be heard as an echo.", delayMs);
        }
    }
}
