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
    private static final double SHARED = 0.5;
    /** No two microphones agree so well. */
    private static final double SAME_SHARE = 0.99999;
    private static final double SAME_DB = 0.05;
    private static final double LEAST_MOVE_M = 0.01;
    private static final double MOST_MOVE_M = 2;
    /** After whom to invert. */
    static final String BY_THE_BUTTON = " (the polarity button, \u00f8, of the channel), or look for a wrongly wired lead.";

    private PairWords() {
    }

    /** Sentences, the weightiest first; one at least. */
    public static List<String> of(PairHeard pair) {
        return of(pair, pair.inverted() == null || !pair.inverted() ? null : pair.second() + " is the other way up: invert it" + BY_THE_BUTTON, true);
    }

    /**
     * Sentences on one of several pairs, of which those about all of them say what to do.
     *
     * @param inverted what is said where one is the other way up
     * @param alone whether nothing else is said of when they hear it
     */
    static List<String> of(PairHeard pair, String inverted, boolean alone) {
        List<String> says = new ArrayList<>();
        if (!pair.related()) {
            strangers(pair, says);
            return List.copyOf(says);
        }
        if (pair.correlationShare() > SAME_SHARE && Math.abs(pair.differenceDb()) < SAME_DB) {
            return List.of(pair.stereo() ? "Left and right are the same: a mono recording in a stereo file. Of two microphones it tells nothing; look how it was exported."
                    : "Both hold the very same sound: one is a copy of the other. Look whether the right tracks were exported.");
        }
        if (pair.inverted() != null) {
            says.add(pair.inverted() ? inverted : "Both are the same way up.");
        }
        flip(pair, says);
        time(pair, alone, says);
        holes(pair, says);
        level(pair, says);
        if (pair.stereo()) {
            StereoWords.add(pair, says);
        } else {
            says.add("Correlation is " + Words.number(pair.correlationShare(), 2) + " as they are" + (pair.correlationShare() < -0.2 ? ": folded to mono they lose" : pair.correlationShare() > 0.8 ? ": close to mono" : "") + ".");
        }
        return List.copyOf(says);
    }

    private static void strangers(PairHeard pair, List<String> says) {
        String shared = Words.octaves(band -> pair.heard(band) && pair.coherence().at(band) >= SHARED);
        says.add("These two have next to nothing in common (" + Words.number(100 * pair.commonShare(), 0) + " % of their power). They hear different sources, or were not recorded at the same time; no delay between them means anything."
                + (shared.isEmpty() ? "" : " Only at " + shared + " do they share something, such as a hum or what comes through the floor."));
        if (Math.abs(pair.differenceDb()) >= WORTH_DB) {
            level(pair, says);
        }
    }

    private static void time(PairHeard pair, boolean alone, List<String> says) {
        if (pair.rivalFrames() != null) {
            says.add("Two delays fit about as well: " + pair.second() + " " + moment(pair, pair.laterFrames()) + ", or " + moment(pair, pair.rivalFrames())
                    + ". What plays stands in more than one place, or one note goes on: move and shift nothing by this. Clap once where the main player is and measure that.");
            return;
        }
        if (Math.abs(pair.laterFrames()) < SAME_FRAMES) {
            says.add("They hear it at the same time, to half a sample.");
            return;
        }
        boolean later = pair.laterFrames() > 0;
        String early = later ? pair.first() : pair.second();
        String late = later ? pair.second() : pair.first();
        String way = Words.way(pair.wayM());
        says.add(late + " hears it " + Words.number(Math.abs(pair.laterMs()), 2) + " ms later than " + early + ": " + samples(pair.laterFrames(), 1) + ", " + way + " of air.");
        if (!alone) {
            return;
        }
        String costs = "; what else " + late + " hears then comes too early by as much, and its depth goes";
        String leave = "If they are a stereo pair, do not shift one against the other: that delay is the place of what plays, and with it gone everything else is out of place. Where the middle leans, move the whole pair "
                + "until both are equally far from what should be in the middle.";
        String bring = "If one is close and the other far, there are two ways. Bring them together: " + move(pair, late, way) + costs + ". Or leave it for the depth, which costs what the sum loses"
                + (pair.alignedGainDb() >= WORTH_DB ? ", " + Words.db(pair.alignedGainDb()) + " on the whole." : ", here less than " + Words.db(WORTH_DB) + " on the whole.");
        if (pair.stereo()) {
            says.add(leave);
            says.add(bring);
        } else {
            says.add(bring);
            says.add(leave);
        }
    }

    private static String moment(PairHeard pair, double laterFrames) {
        return Math.abs(laterFrames) < SAME_FRAMES ? "hears it at the same time"
                : "hears it " + Words.number(Math.abs(laterFrames) / pair.rateHz() * 1000, 2) + " ms " + (laterFrames > 0 ? "later" : "earlier");
    }

    private static String samples(double frames, int digits) {
        String number = Words.number(Math.abs(frames), digits);
        return number + (number.equals("1") ? " sample" : " samples");
    }

    /** A stand is set to a centimetre or two, and is not carried through the room for this. */
    private static String move(PairHeard pair, String late, String way) {
        String shift = "shift " + late + " earlier by " + samples(pair.laterFrames(), 0);
        double sizeM = Math.abs(pair.wayM());
        return sizeM < LEAST_MOVE_M ? shift + ", as no stand can be set to " + way : sizeM > MOST_MOVE_M ? shift + ", rather than carry a stand over " + way : "move " + late + " " + way + " nearer, or " + shift;
    }

    /** Octave by octave, as the phase between two may turn on the way up: what helps below may harm above. Never against what is said of polarity. */
    private static void flip(PairHeard pair, List<String> says) {
        IntPredicate told = band -> pair.heard(band) && pair.coherence().at(band) > LEAST_COHERENCE;
        IntPredicate gains = band -> told.test(band) && flippedGainDb(pair, band) >= WORTH_DB;
        IntPredicate costs = band -> told.test(band) && flippedGainDb(pair, band) <= -WORTH_DB;
        boolean fills = !Words.octaves(gains).isEmpty();
        boolean thins = !Words.octaves(costs).isEmpty();
        String what = (fills ? "fill the sum at " + Words.octaves(gains) + " by up to " + most(pair, gains) : "") + (fills && thins ? " and " : "")
                + (thins ? "thin it at " + Words.octaves(costs) + " by up to " + most(pair, costs) : "");
        boolean apart = pair.rivalFrames() == null && Math.abs(pair.laterFrames()) >= SAME_FRAMES;
        String turns = ": the phase between them turns on the way up, so listen in mono and keep the fuller.";
        boolean inverted = Boolean.TRUE.equals(pair.inverted());
        if (pair.inverted() == null) {
            says.add("Whether one is the other way up cannot be told surely (" + Words.db(pair.marginDb()) + " between the two readings, " + Words.db(PairMeter.SURE_DB) + " are wanted). "
                    + (fills ? "Inverting one would " + what + (thins ? "" : " and cost nothing") + ": press the polarity button (\u00f8) of one, listen in mono at equal level, and keep the fuller."
                    : thins ? "As they stand, inverting one only takes away, at " + Words.octaves(costs) + ": leave it." : "As they stand it makes less than " + Words.db(WORTH_DB) + " of difference anywhere."));
        } else if (!fills && !thins) {
            says.add("Inverting one changes their sum by less than " + Words.db(WORTH_DB) + " anywhere" + (inverted && apart ? " as they stand: the time between them decides that." : "."));
        } else if (inverted) {
            says.add("Inverting it would " + what + (!thins ? " and cost nothing." : apart ? " as they stand; what it thins is the time between them, and goes once they are brought together." : turns));
        } else if (!fills) {
            says.add("Inverting one only takes away, at " + Words.octaves(costs) + ": leave it.");
        } else {
            says.add(apart ? "Leave them so: inverting one would " + what + " as they stand, but that is the time between them; brought together it would take away everywhere." : "Inverting one would " + what + turns);
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
