package pairwright.session;

import java.util.List;
import pairwright.acoustics.Delay;
import pairwright.model.Word;

/**
 * One source that two lines hear, one later than the other.
 *
 * @param seat whose sound it is
 * @param source id
 * @param lines the nearer and the farther, by number
 * @param own whether both are microphones of that seat
 * @param pathM how much farther it is to the second
 * @param delayMs how much later it arrives there
 * @param firstNullHz first cancellation of their sum at one polarity; null where they are equally far
 * @param levelDifferenceDb how much lower the second line has it than the first, of what comes straight, A-weighted: with both lines brought to
 *     the same level by their own sources; of two lines of one seat at equal gain, as {@link pairwright.model.Together} has it
 * @param rippleDb peak to dip of the sum of both at that difference
 * @param distanceRatio farther over nearer
 * @param inverted of two lines of one seat, whether they see opposite sides of what moves, so that one channel is inverted; from seat to seat,
 *     whether they have the source with opposite polarity as the channels are set
 * @param treat what to do about it
 * @param cautions what the rules say of it
 */
public record Arrival(String seat, String source, List<Integer> lines, boolean own, double pathM, double delayMs, Double firstNullHz,
        double levelDifferenceDb, double rippleDb, double distanceRatio, boolean inverted, Treat treat, List<Said> cautions) {
    public Arrival {
        lines = List.copyOf(lines);
        cautions = List.copyOf(cautions);
    }

    /** The delay in samples, not rounded; the rate in hertz. */
    public double samples(double sampleRateHz) {
        return Delay.samples(pathM, sampleRateHz);
    }

    /** The same, treated otherwise, and what the rules say of it. */
    public Arrival treated(Treat otherwise, List<Said> says) {
        return new Arrival(seat, source, lines, own, pathM, delayMs, firstNullHz, levelDifferenceDb, rippleDb, distanceRatio, inverted, otherwise, says);
    }

    /** What to do about a delay. */
    public enum Treat implements Word {
        /** Delay the nearer, or slide the track, until both agree. */
        ALIGN("align"),
        /** The difference is the sound that was wanted, or too small to hear. */
        LEAVE("leave"),
        /** Neither: move a microphone, or keep one of them low in the mix. */
        WATCH("watch");

        private final String id;

        Treat(String id) {
            this.id = id;
        }

        @Override
        public String id() {
            return id;
        }
    }
}
