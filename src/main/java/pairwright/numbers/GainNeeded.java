package pairwright.numbers;

import java.util.List;
import java.util.Map;
import pairwright.acoustics.Gain;

/** How much preamplifier gain a microphone needs, and where the peaks land. */
final class GainNeeded implements Calculation {
    private static final Input SENSITIVITY = Input.number("sensitivityMvPerPa", "mV/Pa", 0.05, 500, "Of the microphone, open circuit.");
    private static final Input LEVEL = Input.number("levelDbSpl", "dB SPL", 0, 180, "The running level at the microphone, as a meter shows it.");
    private static final Input TARGET = Input.number("targetDbfs", "dBFS", -60, 0, "Where the running level shall sit.").usually(-18.0);
    private static final Input FULL_SCALE = Input.number("fullScaleDbu", "dBu", 0, 30,
            "The level of a full-scale sine at the converter: +18, +20, +22 or +24 dBu, its manual says which.").usually(22.0);
    private static final Input PEAK = Input.number("truePeakDbSpl", "dB SPL", 0, 200,
            "The greatest peak at the microphone; left out, peaks are not looked at.").optional();
    private static final double MUCH_DB = 60;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("gain", "Preamplifier gain", "How much gain does the microphone need, and do the peaks fit?",
                "out = 20 lg(S / 1000) + L - 93.98 + 2.218 dBu, gain = target + full scale - out, peak = out(peak - 3.01) + gain - full scale",
                List.of(SENSITIVITY, LEVEL, TARGET, FULL_SCALE, PEAK),
                Map.of("sensitivityMvPerPa", 1.8, "levelDbSpl", 94.0, "truePeakDbSpl", 110.0));
    }

    @Override
    public void check(Inputs in) {
        if (in.has(PEAK) && in.number(PEAK) < in.number(LEVEL)) {
            in.refuse(PEAK, "truePeakDbSpl is " + Figures.of(in.number(PEAK)) + ", less than levelDbSpl with " + Figures.of(in.number(LEVEL))
                    + ". A peak is never below the running level: look which is which");
        }
    }

    @Override
    public void work(Inputs in, Working out) {
        double sensitivity = in.number(SENSITIVITY);
        double levelDbSpl = in.number(LEVEL);
        double fullScaleDbu = in.number(FULL_SCALE);
        double sensitivityDbv = out.step("Sensitivity: 20 lg({} / 1000)", Gain.sensitivityDbv(sensitivity), "dBV", sensitivity);
        double outputDbu = out.step("What the microphone puts out: {} + {} - 93.98 + 2.218", Gain.outputDbu(sensitivity, levelDbSpl), "dBu",
                sensitivityDbv, levelDbSpl);
        double gainDb = out.step("Gain: {} + {} - {}", Gain.gainDb(sensitivity, levelDbSpl, in.number(TARGET), fullScaleDbu), "dB",
                in.number(TARGET), fullScaleDbu, outputDbu);
        out.result("gainDb", gainDb, "dB");
        out.result("outputDbu", outputDbu, "dBu");
        if (in.has(PEAK)) {
            double peakDbfs = out.step("Peaks land at: {} + {} - 3.01 - 93.98 + 2.218 + {} - {}",
                    Gain.peakDbfs(sensitivity, in.number(PEAK), gainDb, fullScaleDbu), "dBFS",
                    sensitivityDbv, in.number(PEAK), gainDb, fullScaleDbu);
            out.result("peakDbfs", peakDbfs, "dBFS");
            if (peakDbfs > 0) {
                out.care("The peaks would land at {} dBFS and clip. Take off {} dB of gain and some for safety, or use a pad.", peakDbfs, peakDbfs);
            }
            Hearing.cautionPeak(out, in.number(PEAK));
        }
        out.says(gainDb < 0 ? "The microphone puts out {} dBu, too much already: it needs a pad of {} dB."
                : "The microphone puts out {} dBu and needs {} dB of gain.", outputDbu, Math.abs(gainDb));
        out.holds("For a microphone that is not overloaded, into an input of ten times its impedance or more. Full scale differs between converters "
                + "and must be looked up.");
        if (gainDb > MUCH_DB) {
            out.holds("{} dB is more than many preamplifiers have or keep quiet: see noise.", gainDb);
        }
        out.danger("Turn monitors and headphones down before gain or phantom power is switched or a lead is plugged: a howl or a thump at {} dB of "
                + "gain can harm hearing and loudspeakers.", gainDb);
    }
}
