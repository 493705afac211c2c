package pairwright.listen;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.acoustics.Octaves;

/** What two tracks mean for whoever placed the microphones: first what to do, then what there is. */
public final class PairWords {
    private static final double WORTH_DB = 1;
    private static final double SAME_FRAMES = 0.5;
    private static final int MOST_HOLES = 4;
    private static final double UNEVEN_DB = 3;
    /** With less in common a phase is chance. */
    private static final double LEAST_COHERENCE = 0.2;
    private static final double MOST_TOLD_DB = 20;

    private PairWords() {
    }

    /** Sentences, the weightiest first; one at least. */
    public static List<String> of(PairHeard pair) {
        List<String> says = new ArrayList<>();
        if (!pair.related()) {
            says.add("These two have next to nothing in common (" + Words.number(100 * pair.commonShare(), 0) + " % of their power). They hear different sources, or were not recorded at the same time; no delay between them means anything.");
            if (Math.abs(pair.differenceDb()) >= WORTH_DB) {
                level(pair, says);
            }
            return List.copyOf(says);
        }
        polarity(pair, says);
        time(pair, says);
        flip(pair, says);
        holes(pair, says);
        level(pair, says);
        if (pair.stereo()) {
            StereoWords.add(pair, says);
        } else {
            says.add("Correlation is " + Words.number(pair.correlationShare(), 2) + " as they are" + (pair.correlationShare() < -0.2 ? ": folded to mono they lose" : pair.correlationShare() > 0.8 ? ": close to mono" : "") + ".");
        }
        return List.copyOf(says);
    }

    private static void polarity(PairHeard pair, List<String> says) {
        if (pair.inverted() == null) {
            says.add("Whether one is the other way up cannot be told surely (" + Words.db(pair.marginDb()) + " between the two readings, " + Words.db(PairMeter.SURE_DB)
                    + " are wanted): flip it, listen in mono at equal level, and keep the fuller.");
        } else {
            says.add(pair.inverted() ? pair.second() + " is the other way up: invert it, or look for a wrongly wired lead." : "Both are the same way up.");
        }
    }

    private static void time(PairHeard pair, List<String> says) {
        if (Math.abs(pair.laterFrames()) < SAME_FRAMES) {
            says.add("They hear it at the same time, to half a sample.");
            return;
        }
        boolean later = pair.laterFrames() > 0;
        String early = later ? pair.first() : pair.second();
        String late = later ? pair.second() : pair.first();
        String way = Words.way(pair.wayM());
        String frames = Words.number(Math.abs(pair.laterFrames()), 1) + " samples";
        says.add(late + " hears it " + Words.number(Math.abs(pair.laterMs()), 2) + " ms later than " + early + ": " + frames + ", " + way + " of air.");
        String move = "move " + late + " " + way + " nearer or " + early + " " + way + " back, or shift " + late + " earlier by " + Words.number(Math.abs(pair.laterFrames()), 0) + " samples";
        String costs = "; what else " + late + " hears then comes too early by as much, and its depth goes";
        String leave = "If they are a stereo pair, do not shift one against the other: that delay is the place of what plays, and with it gone everything else is out of place. Where the middle leans, move the whole pair "
                + "until both are equally far from what should be in the middle.";
        String bring = "If one is close and the other far, there are two ways. Bring them together: " + move + costs + ". Or leave it for the depth, which costs what the sum loses"
                + (pair.alignedGainDb() >= WORTH_DB ? ", " + Words.db(pair.alignedGainDb()) + " on the whole." : ", here less than " + Words.db(WORTH_DB) + " on the whole.");
        if (pair.stereo()) {
            says.add(leave);
            says.add(bring);
        } else {
            says.add(bring);
            says.add(leave);
        }
    }

    /** Octave by octave, as the phase between two may turn on the way up: what helps below may harm above. */
    private static void flip(PairHeard pair, List<String> says) {
        IntPredicate told = band -> pair.heard(band) && pair.coherence().at(band) > LEAST_COHERENCE;
        IntPredicate gains = band -> told.test(band) && flippedGainDb(pair, band) >= WORTH_DB;
        IntPredicate costs = band -> told.test(band) && flippedGainDb(pair, band) <= -WORTH_DB;
        String gained = Words.octaves(gains);
        String lost = Words.octaves(costs);
        if (gained.isEmpty() && lost.isEmpty()) {
            says.add("Inverting one changes their sum by less than " + Words.db(WORTH_DB) + " anywhere.");
        } else if (gained.isEmpty()) {
            says.add("Inverting one only takes away, at " + lost + ": leave it.");
        } else {
            says.add("Inverting one would fill the sum at " + gained + " by up to " + most(pair, gains) + (lost.isEmpty() ? " and costs nothing." : " and thin it at " + lost + " by up to " + most(pair, costs) + "."));
        }
    }

    private static double flippedGainDb(PairHeard pair, int band) {
        return pair.flippedDb().at(band) - pair.sumDb().at(band);
    }

    private static String most(PairHeard pair, IntPredicate of) {
        double mostDb = IntStream.range(0, Octaves.COUNT).filter(of).mapToDouble(band -> Math.abs(flippedGainDb(pair, band))).max().orElseThrow();
        return mostDb > MOST_TOLD_DB ? "more than " + Words.db(MOST_TOLD_DB) : Words.db(mostDb);
    }

    private static void holes(PairHeard pair, List<String> says) {
        if (pair.combs().isEmpty()) {
            says.add("Their sum has no hole deeper than 6 dB.");
            return;
        }
        List<PairHeard.Comb> first = pair.combs().subList(0, Math.min(MOST_HOLES, pair.combs().size()));
        double deepestDb = first.stream().mapToDouble(PairHeard.Comb::depthDb).max().orElseThrow();
        says.add("At equal faders their sum has holes at " + Words.list(first.stream().map(comb -> Words.hz(comb.frequencyHz())).toList()) + (pair.combs().size() > first.size() ? " and above" : "")
                + ", up to " + Words.db(deepestDb) + " deep.");
    }

    /** On the whole, and where it is otherwise than on the whole. */
    private static void level(PairHeard pair, List<String> says) {
        double differenceDb = pair.differenceDb();
        if (Math.abs(differenceDb) >= WORTH_DB) {
            IntPredicate likewise = band -> pair.heard(band) && Math.signum(differenceDb) * pair.differenceOctavesDb().at(band) >= Math.max(WORTH_DB, Math.abs(differenceDb) / 2);
            boolean everywhere = IntStream.range(0, Octaves.COUNT).filter(pair::heard).allMatch(likewise);
            says.add(pair.second() + " is " + Words.number(Math.abs(differenceDb), 1) + " dB " + (differenceDb > 0 ? "louder" : "softer") + " than " + pair.first()
                    + (everywhere || Words.octaves(likewise).isEmpty() ? "" : ", mostly at " + Words.octaves(likewise)) + ".");
            return;
        }
        String louder = Words.octaves(band -> pair.heard(band) && pair.differenceOctavesDb().at(band) >= UNEVEN_DB);
        String softer = Words.octaves(band -> pair.heard(band) && pair.differenceOctavesDb().at(band) <= -UNEVEN_DB);
        String uneven = Stream.of(louder.isEmpty() ? "" : "louder at " + louder, softer.isEmpty() ? "" : "softer at " + softer).filter(one -> !one.isEmpty()).collect(Collectors.joining(" and "));
        says.add("On the whole they are equally loud, to " + Words.db(WORTH_DB) + (uneven.isEmpty() ? "." : "; but " + pair.second() + " is " + uneven + " by " + Words.db(UNEVEN_DB) + " or more."));
    }
}
