package pairwright.session;

import java.util.List;
import pairwright.model.Option;

/**
 * One option for each source of a line-up, with units, channels, stands and power.
 *
 * @param rank from 1
 * @param score the sum of the scores of its options and of the points of its reasons, exactly
 * @param proven whether it is proven that no plan can have more
 * @param bound no plan can have more than this; the score itself where it is proven
 * @param served what each seat gets, in the order of the line-up
 * @param leftOut ids of seats without a microphone
 * @param lines its microphones in the order of the channels
 * @param bleed what each line hears of every other seat
 * @param timing sources that reach two lines
 * @param supplies the banks and what is drawn from them
 * @param counts what is used up of what there is
 * @param setUp how long it takes to set it up
 * @param patch what to do in which order, so that nothing is harmed
 * @param reasons what moved its score beside its options, strongest first
 * @param cautions gravest first
 */
public record Plan(int rank, double score, boolean proven, double bound, List<Served> served, List<String> leftOut, List<Line> lines, List<Hears> bleed,
        List<Arrival> timing, List<Supply> supplies, List<Count> counts, SetUp setUp, List<String> patch, List<Said> reasons, List<Said> cautions) {
    public Plan {
        served = List.copyOf(served);
        leftOut = List.copyOf(leftOut);
        lines = List.copyOf(lines);
        bleed = List.copyOf(bleed);
        timing = List.copyOf(timing);
        supplies = List.copyOf(supplies);
        counts = List.copyOf(counts);
        patch = List.copyOf(patch);
        reasons = List.copyOf(reasons);
        cautions = List.copyOf(cautions);
    }

    /** What one seat gets. Its option names the units. */
    public record Served(String seat, Option option) {
    }

    /**
     * One bank of channels.
     *
     * @param bank its name; the id of the channel for one that stands alone
     * @param phantom whether phantom power is on, anywhere in it
     * @param drawnMa by the microphones that need it
     * @param supplyMa what there is; null for unknown
     * @param used channels in use
     * @param channels how many there are
     */
    public record Supply(String bank, boolean phantom, double drawnMa, Double supplyMa, int used, int channels) {
    }

    /** How many of a thing are used, and how many there are; null where they are not counted. */
    public record Count(String of, int used, Integer there) {
    }

    /**
     * How long it takes to set a plan up from nothing, as the tasks of the catalogue have it: an estimate.
     *
     * @param minutes there are, by the clock; null where the line-up does not say
     * @param hands pairs of hands there are; null where the line-up does not say
     * @param workS what it takes, for one pair of hands
     */
    public record SetUp(Integer minutes, Integer hands, double workS) {
        /** What it takes and of what, in words. */
        public String words() {
            int work = SetUpTime.minutes(workS);
            if (minutes == null) {
                return work + " min for one pair of hands";
            }
            SetUpTime time = new SetUpTime(minutes, hands);
            return hands == 1 ? work + " of " + minutes + " min for one pair of hands" : work + " of " + SetUpTime.minutes(time.workS()) + " min of work (" + time.words() + ")";
        }
    }

    /** The lines of one seat. */
    public List<Line> linesOf(String seat) {
        return lines.stream().filter(line -> line.seat().equals(seat)).toList();
    }
}
