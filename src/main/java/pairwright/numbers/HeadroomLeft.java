package pairwright.numbers;

import java.util.List;
import java.util.Map;
import pairwright.acoustics.Headroom;

/** What is left before a microphone distorts. */
final class HeadroomLeft implements Calculation {
    private static final Input MAXIMUM = Input.number("maxDbSpl", "dB SPL", 70, 190, "The maximum level of the microphone as stated, for a sine.");
    private static final Input PEAK = Input.number("truePeakDbSpl", "dB SPL", 20, 200, "The greatest peak at the microphone.");
    private static final Input PAD = Input.number("padDb", "dB", 0, 60, "A pad inside the microphone.").usually(0.0);
    private static final double TIGHT_DB = 6;

    @Override
    public CalculationInfo info() {
        return new CalculationInfo("headroom", "Headroom", "Does the microphone stand the peaks?",
                "headroom = max SPL + pad - (peak - 3.01)", List.of(MAXIMUM, PEAK, PAD),
                Map.of("maxDbSpl", 130.0, "truePeakDbSpl", 140.0, "padDb", 10.0));
    }

    @Override
    public void work(Inputs in, Working out) {
        double peakDbSpl = in.number(PEAK);
        double sineDbSpl = out.step("A sine with that peak has: {} - 3.01", Headroom.sineEquivalentDbSpl(peakDbSpl), "dB SPL", peakDbSpl);
        double leftDb = out.step("Headroom: {} + {} - {}", Headroom.headroomDb(in.number(MAXIMUM), in.number(PAD), sineDbSpl), "dB",
                in.number(MAXIMUM), in.number(PAD), sineDbSpl);
        out.result("headroomDb", leftDb, "dB");
        out.result("sineEquivalentDbSpl", sineDbSpl, "dB SPL");
        out.says(leftDb < 0 ? "The peaks are {} dB over what the microphone stands." : "{} dB are left over the peaks.", Math.abs(leftDb));
        out.holds("Maximum levels are stated for a sine, at 0.5, 1 or 3 % distortion: compare like with like, 0.5 and 1 % are about 6 dB apart. "
                + "Only a pad before the stage that overloads counts; it raises the microphone's noise by as much.");
        if (leftDb < TIGHT_DB) {
            out.care(leftDb < 0 ? "It will distort by {} dB too much. Use a pad, more distance, or a microphone that stands more."
                    : "{} dB is little for a player who may get louder. Use a pad, more distance, or a microphone that stands more.",
                    Math.abs(leftDb));
        }
        if (in.number(PAD) > 0) {
            out.note("A pad on the preamplifier protects the preamplifier only, not the microphone.");
        }
        Hearing.cautionPeak(out, peakDbSpl);
    }
}
