package pairwright.numbers;

import java.util.List;
import java.util.Map;
import pairwright.acoustics.Loading;

/** What a preamplifier's input impedance takes from a passive ribbon. */
final class RibbonLoading implements Calculation {
    private static final Input LOAD = Input.number("loadOhm", "ohm", 10, 10_000_000, "The input impedance of the preamplifier.");
    private static final Input MIDDLE = Input.number("midOhm", "ohm", 1, 10_000, "The impedance as stated, in the middle of the range.").usually(300.0);
    private static final Input RESONANCE = Input.number("resonanceOhm", "ohm", 1, 100_000,
            "The impedance at the resonance, 20 to 70 Hz, two to four times as high; left out, three times midOhm.").optional();
    private static final double USUAL_RISE = 3;
    /** Usual bridging, IEC 61938. */
    private static final double WANTED = 5;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("ribbon-loading", "Loading of a ribbon", "What does the preamplifier's input take from a passive ribbon?",
                "loss = 20 lg(load / (source + load)), bass against middle = loss at resonance - loss in the middle",
                List.of(LOAD, MIDDLE, RESONANCE), Map.of("loadOhm", 1500.0, "midOhm", 300.0, "resonanceOhm", 900.0));
    }

    @Override
    public void work(Inputs in, Working out) {
        double loadOhm = in.number(LOAD);
        double midOhm = in.number(MIDDLE);
        double resonanceOhm = in.has(RESONANCE) ? in.number(RESONANCE)
                : out.step("Impedance at the resonance, taken as three times: {} × {}", USUAL_RISE * midOhm, "ohm", USUAL_RISE, midOhm);
        double middleDb = out.step("In the middle: 20 lg({} / ({} + {}))", Loading.lossDb(midOhm, loadOhm), "dB", loadOhm, midOhm, loadOhm);
        double resonanceDb = out.step("At the resonance: 20 lg({} / ({} + {}))", Loading.lossDb(resonanceOhm, loadOhm), "dB",
                loadOhm, resonanceOhm, loadOhm);
        double bassDb = out.step("Bass against the middle: {} - {}", Loading.ribbonBassLossDb(midOhm, resonanceOhm, loadOhm), "dB",
                resonanceDb, middleDb);
        double peakOhm = Math.max(midOhm, resonanceOhm);
        double neededOhm = out.step("Five times the highest impedance: {} × {}", WANTED * peakOhm, "ohm", WANTED, peakOhm);
        out.result("bassChangeDb", bassDb, "dB");
        out.result("midChangeDb", middleDb, "dB");
        out.result("resonanceChangeDb", resonanceDb, "dB");
        out.result("wantedLoadOhm", neededOhm, "ohm");
        out.says("Into {} ohm the ribbon's bass changes by {} dB against its middle; {} ohm or more would leave it alone.", loadOhm, bassDb, neededOhm);
        out.holds("Impedances taken as plain resistances; the cable, which matters at high impedances, is left out.");
        if (loadOhm < neededOhm) {
            out.holds("{} ohm is less than five times the {} ohm of the resonance: the bass is damped and the level lower.", loadOhm, peakOhm);
        }
        if (resonanceOhm < midOhm) {
            out.holds("An impedance of {} ohm at the resonance, below the {} ohm of the middle, is unusual: look it up again.", resonanceOhm, midOhm);
        }
        out.care("Keep phantom power off a passive ribbon, and wait half a minute after it was on: a faulty or patched lead under power can "
                + "tear the ribbon.");
    }
}
