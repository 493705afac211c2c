package pairwright.numbers;

import java.util.List;
import java.util.Map;
import pairwright.acoustics.Noise;

/** How far a sound stands above the noise of microphone and preamplifier. */
final class NoiseFloor implements Calculation {
    private static final Input SENSITIVITY = Input.number("sensitivityMvPerPa", "mV/Pa", 0.05, 500, "Of the microphone, open circuit.");
    private static final Input LEVEL = Input.number("levelDba", "dB(A)", 0, 160, "The running level of the source at the microphone.");
    private static final Input SELF = Input.number("selfNoiseDba", "dB(A)", 0, 60,
            "Self-noise of a powered microphone; this or resistanceOhm.").optional();
    private static final Input RESISTANCE = Input.number("resistanceOhm", "ohm", 1, 100_000,
            "Of the coil or ribbon of a passive microphone; this or selfNoiseDba.").optional();
    private static final Input INPUT_NOISE = Input.number("inputNoiseDbu", "dBu", -135, -60,
            "Input noise of the preamplifier, unweighted, with 150 ohm.").usually(-128.0);
    private static final double NOISY_DB = 40;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("noise", "Noise and signal-to-noise ratio", "How far does the source stand above the noise?",
                "preamplifier as sound = EIN dBV - S dBV + 93.98 dB, less 2.05 dB for A-weighting; noise = 10 lg(sum 10^(L / 10)); a passive "
                        + "microphone: EIN with the 150 ohm it was measured with exchanged for its own resistance",
                List.of(SENSITIVITY, LEVEL, SELF, RESISTANCE, INPUT_NOISE),
                Map.of("sensitivityMvPerPa", 20.0, "selfNoiseDba", 14.0, "levelDba", 74.0));
    }

    @Override
    public void check(Inputs in) {
        if (in.has(SELF) == in.has(RESISTANCE)) {
            in.refuse(SELF, (in.has(SELF) ? "selfNoiseDba and resistanceOhm are both given" : "neither selfNoiseDba nor resistanceOhm is given")
                    + ". Give selfNoiseDba for a powered microphone, resistanceOhm for a passive one");
        }
        if (in.has(RESISTANCE) && in.number(INPUT_NOISE) < Noise.resistorDbu(Noise.TEST_SOURCE_OHM)) {
            in.refuse(INPUT_NOISE, "inputNoiseDbu is " + Figures.of(in.number(INPUT_NOISE)) + ", less than 150 ohm alone make ("
                    + Figures.of(Noise.resistorDbu(Noise.TEST_SOURCE_OHM)) + " dBu). Give the unweighted figure for 150 ohm");
        }
    }

    @Override
    public void work(Inputs in, Working out) {
        double noiseDba = in.has(SELF) ? active(in, out) : passive(in, out);
        double levelDba = in.number(LEVEL);
        // the subtraction is all there is to a ratio in decibels
        double ratioDb = out.step("Signal to noise: {} - {}", levelDba - noiseDba, "dB", levelDba, noiseDba);
        out.result("signalToNoiseDb", ratioDb, "dB");
        out.result("noiseDba", noiseDba, "dB(A)");
        out.says("Microphone and preamplifier hiss like {} dB(A) at the microphone; the source is {} dB over that.", noiseDba, ratioDb);
        out.holds("For preamplifier noise that is white, and gain turned up as far as usual; cables, loading and the room are left out, and "
                + "a quiet room alone has 20 to 30 dB(A).");
        if (ratioDb < NOISY_DB) {
            out.holds("{} dB is little: hiss is heard in the gaps. Move nearer, or take a microphone that is quieter or more sensitive.", ratioDb);
        }
        Hearing.cautionRunning(out, levelDba);
    }

    private static double active(Inputs in, Working out) {
        double sensitivity = in.number(SENSITIVITY);
        double noiseDbu = in.number(INPUT_NOISE);
        double preampDbSpl = asSound(out, noiseDbu, sensitivity);
        return out.step("Together with the self-noise: 10 lg(10^({} / 10) + 10^(({} - 2.05) / 10))",
                Noise.activeNoiseDba(in.number(SELF), noiseDbu, sensitivity), "dB(A)", in.number(SELF), preampDbSpl);
    }

    private static double passive(Inputs in, Working out) {
        double resistanceOhm = in.number(RESISTANCE);
        double inputDbu = in.number(INPUT_NOISE);
        double testDbu = out.step("Thermal noise of 150 ohm over 20 kHz: 10 lg(4 × 1.380649 × 10^(-23) × 293.15 × 150 × 20000) + 2.218",
                Noise.resistorDbu(Noise.TEST_SOURCE_OHM), "dBu");
        double ownDbu = out.step("Thermal noise of the microphone's {} ohm: {} + 10 lg({} / 150)", Noise.resistorDbu(resistanceOhm), "dBu",
                resistanceOhm, testDbu, resistanceOhm);
        double withDbu = out.step("Input noise with the microphone: 10 lg(10^({} / 10) - 10^({} / 10) + 10^({} / 10))",
                Noise.inputNoiseWithDbu(inputDbu, resistanceOhm), "dBu", inputDbu, testDbu, ownDbu);
        double sensitivity = in.number(SENSITIVITY);
        double flatDbSpl = asSound(out, withDbu, sensitivity);
        return out.step("A-weighted: {} - 2.05", Noise.passiveNoiseDba(inputDbu, resistanceOhm, sensitivity), "dB(A)", flatDbSpl);
    }

    private static double asSound(Working out, double noiseDbu, double sensitivityMvPerPa) {
        return out.step("Preamplifier noise as sound: {} - 2.218 - 20 lg({} / 1000) + 93.98",
                Noise.inputNoiseDbSpl(noiseDbu, sensitivityMvPerPa), "dB SPL", noiseDbu, sensitivityMvPerPa);
    }
}
