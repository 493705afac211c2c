package pairwright.listen;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** What two tracks mean for whoever placed the microphones: first what to do, then what there is. */
public final class PairWords {
    private static final double WORTH_DB = 1;
    private static final double SAME_FRAMES = 0.5;
    private static final int MOST_HOLES = 4;

    private PairWords() {
    }

    /** Sentences, the weightiest first; one at least. */
    public static List<String> of(PairHeard pair) {
        List<String> says = new ArrayList<>();
        if (!pair.related()) {
            says.add("These two have next to nothing in common (" + Words.number(100 * pair.commonShare(), 0) + " % of their power). They hear different sources, or were not recorded at the same time; no delay between them means anything.");
            level(pair, says);
            return List.copyOf(says);
        }
        polarity(pair, says);
        time(pair, says);
        flip(pair, says);
        holes(pair, says);
        level(pair, says);
        says.add("Correlation is " + Words.number(pair.correlationShare(), 2) + " as they are" + (pair.correlationShare() < -0.2 ? ": folded to mono they lose" : pair.correlationShare() > 0.8 ? ": close to mono" : "") + ".");
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
        says.add(late + " hears it " + Words.number(Math.abs(pair.laterMs()), 2) + " ms later than " + early + ": " + Words.number(Math.abs(pair.laterFrames()), 1) + " samples, " + way
                + " of air. To bring them together move " + late + " " + way + " nearer or " + early + " " + way + " back, or shift " + late + " earlier by "
                + Words.number(Math.abs(pair.laterFrames()), 0) + " samples. If the room or the width of the two is wanted, leave it.");
    }

    private static void flip(PairHeard pair, List<String> says) {
        IntPredicate gains = band -> pair.flippedDb().at(band) - pair.sumDb().at(band) >= WORTH_DB && pair.coherence().at(band) > 0.2;
        IntPredicate costs = band -> pair.sumDb().at(band) - pair.flippedDb().at(band) >= WORTH_DB && pair.coherence().at(band) > 0.2;
        String gained = Words.octaves(gains);
        String lost = Words.octaves(costs);
        if (gained.isEmpty() && lost.isEmpty()) {
            says.add("Inverting one changes their sum by less than " + Words.db(WORTH_DB) + " anywhere.");
        } else if (gained.isEmpty()) {
            says.add("Inverting one only takes away, at " + lost + ": leave it.");
        } else {
            says.add("Inverting one would fill the sum at " + gained + (lost.isEmpty() ? " and costs nothing." : " and thin it at " + lost + "."));
        }
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

    private static void level(PairHeard pair, List<String> says) {
        if (Math.abs(pair.differenceDb()) >= WORTH_DB) {
            says.add(pair.second() + " is " + Words.number(Math.abs(pair.differenceDb()), 1) + " dB " + (pair.differenceDb() > 0 ? "louder" : "softer") + " than " + pair.first() + ".");
        }
    }
}
