package pairwright.numbers;

import java.util.List;
import java.util.Map;
import pairwright.acoustics.Delay;

/** What happens when one sound arrives twice. */
final class CombFilter implements Calculation {
    private static final String INVERTED = "inverted";
    private static final Input PATH = Input.number("pathDifferenceM", "m", 0.001, 100, "How much longer the second way is.");
    private static final Input LEVEL = Input.number("levelDifferenceDb", "dB", -60, 60,
            "How much quieter the second arrival is; below 0 if it is louder.").usually(0.0);
    private static final Input POLARITY = Input.word("polarity", "Of the second arrival against the first.", "same", INVERTED).usually("same");
    private static final double HEARD_HZ = 20_000;
    private static final double HARMLESS_DB = 10;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("comb", "Comb filter", "Which frequencies cancel when a sound arrives twice, and how deep?",
                "nulls (n - 1/2) c / d, peaks n c / d, changed about when one polarity is inverted; peak 20 lg(1 + g), dip 20 lg|1 - g|, "
                        + "g = 10^(-difference / 20)",
                List.of(PATH, LEVEL, POLARITY), Map.of("pathDifferenceM", 0.3, "levelDifferenceDb", 6.0));
    }

    @Override
    public void work(Inputs in, Working out) {
        double pathM = in.number(PATH);
        double differenceDb = in.number(LEVEL);
        boolean inverted = in.word(POLARITY).equals(INVERTED);
        double delayMs = out.step("Delay: 1000 × {} / {}", Delay.timeMs(pathM), "ms", pathM, Delay.SPEED_OF_SOUND_M_PER_S);
        double firstHz = nullHz(out, "First", 1, pathM, inverted);
        double secondHz = nullHz(out, "Second", 2, pathM, inverted);
        double thirdHz = nullHz(out, "Third", 3, pathM, inverted);
        double peakHz = out.step("First peak: {} × {} / {}", inverted ? Delay.nullHz(pathM, 1) : Delay.peakHz(pathM, 1), "Hz",
                inverted ? 0.5 : 1, Delay.SPEED_OF_SOUND_M_PER_S, pathM);
        if (inverted) {
            out.remark("With one polarity inverted there is a null at 0 Hz as well: the bass goes first");
        }
        double peakDb = out.step("Peaks: 20 lg(1 + 10^(-{} / 20))", Delay.ripplePeakDb(differenceDb), "dB", differenceDb);
        out.result("firstNullHz", firstHz, "Hz");
        out.result("secondNullHz", secondHz, "Hz");
        out.result("thirdNullHz", thirdHz, "Hz");
        out.result("firstPeakHz", peakHz, "Hz");
        out.result("delayMs", delayMs, "ms");
        out.result("peakDb", peakDb, "dB");
        if (differenceDb == 0) {
            out.remark("Dips: two equal arrivals cancel to nothing, so dip and ripple have no number");
            out.says("The first null is at {} Hz, and it is complete: the two are equally loud.", firstHz);
        } else {
            double dipDb = out.step("Dips: 20 lg(abs(1 - 10^(-{} / 20)))", Delay.rippleDipDb(differenceDb), "dB", differenceDb);
            double rippleDb = out.step("Top to bottom: {} - {}", Delay.rippleDb(differenceDb), "dB", peakDb, dipDb);
            out.result("dipDb", dipDb, "dB");
            out.result("rippleDb", rippleDb, "dB");
            out.says("The first null is at {} Hz; from peak to dip the response moves by {} dB.", firstHz, rippleDb);
        }
        holds(out, pathM, differenceDb, firstHz);
    }

    private static double nullHz(Working out, String which, int order, double pathM, boolean inverted) {
        return out.step("{} null: {} × {} / {}", inverted ? Delay.peakHz(pathM, order) : Delay.nullHz(pathM, order), "Hz",
                which, inverted ? order : order - 0.5, Delay.SPEED_OF_SOUND_M_PER_S, pathM);
    }

    private static void holds(Working out, double pathM, double differenceDb, double firstHz) {
        out.holds("For the same sound arriving twice, such as one source at two microphones that are mixed, or a reflection. Real nulls are "
                + "20 to 30 dB deep at most. A polarity switch moves the nulls, it never removes a delay.");
        if (Math.abs(differenceDb) >= HARMLESS_DB) {
            out.holds("With {} dB between them the comb is hardly heard.", Math.abs(differenceDb));
        }
        if (firstHz > HEARD_HZ) {
            out.holds("The first null, at {} Hz, is above hearing: {} m does no harm.", firstHz, pathM);
        }
        if (pathM > 10) {
            out.holds("{} m is late enough to be heard as an echo rather than as a comb.", pathM);
        }
    }
}
