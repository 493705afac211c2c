package pairwright.listen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Several tracks, each with each.
 *
 * @param pairs those first of which the sum gains most when they are brought together, strangers last
 * @param says what to do about all of them, in sentences; empty for two tracks, of which the pair says it
 */
public record TracksHeard(List<PairHeard> pairs, List<String> says) {
    private static final double WORTH_DB = 1;
    /** So near one another two delays are one, and tracks are in step. */
    private static final double STEP_MS = 0.1;

    public TracksHeard {
        pairs = List.copyOf(pairs);
        says = List.copyOf(says);
    }

    /** @param pairs each two of the tracks */
    public static TracksHeard of(List<PairHeard> pairs) {
        List<PairHeard> sorted = pairs.stream().sorted(Comparator.comparing((PairHeard pair) -> !pair.related()).thenComparing(pair -> -pair.alignedGainDb())).toList();
        return new TracksHeard(sorted, sorted.size() < 2 ? List.of() : says(sorted));
    }

    private static List<String> says(List<PairHeard> pairs) {
        List<String> says = new ArrayList<>();
        Set<String> names = new LinkedHashSet<>();
        pairs.forEach(pair -> names.addAll(List.of(pair.first(), pair.second())));
        upsideDown(pairs, names, says);
        Move best = best(pairs, names);
        if (best != null) {
            says.add("Moving one track mends most: shift " + best.track + " " + (best.earlierMs > 0 ? "earlier" : "later") + " by " + Words.number(Math.abs(best.earlierMs) * pairs.get(0).rateHz() / 1000, 0)
                    + " samples (" + Words.number(Math.abs(best.earlierMs), 2) + " ms, " + Words.way(best.earlierM) + " of air), and it is in step with " + Words.list(best.with)
                    + ". Leave it where it belongs to a stereo pair.");
        }
        PairHeard first = pairs.get(0);
        if (first.related() && first.alignedGainDb() >= WORTH_DB) {
            says.add("Look first at " + first.first() + " and " + first.second() + ": brought together they are " + Words.db(first.alignedGainDb()) + " louder, A-weighted.");
        } else {
            says.add("No two of them lose " + Words.db(WORTH_DB) + " or more by standing where they stand.");
        }
        return says;
    }

    /** The other way up against all that it can be told of, which are all the same way up. */
    private static void upsideDown(List<PairHeard> pairs, Set<String> names, List<String> says) {
        for (String name : names) {
            List<PairHeard> told = pairs.stream().filter(pair -> pair.related() && pair.inverted() != null).toList();
            List<PairHeard> mine = told.stream().filter(pair -> of(pair, name)).toList();
            if (mine.size() > 1 && mine.stream().allMatch(PairHeard::inverted) && told.stream().filter(pair -> !of(pair, name)).noneMatch(PairHeard::inverted)) {
                says.add(name + " is the other way up against " + mine.size() + " others: invert it first.");
            }
        }
    }

    private record Move(String track, double earlierMs, double earlierM, List<String> with, double gainDb) {
    }

    /** What brings one track in step with most, counted by what the sums gain, and parts none that are in step already; null for none. */
    private static Move best(List<PairHeard> pairs, Set<String> names) {
        Move best = null;
        for (String name : names) {
            List<PairHeard> mine = pairs.stream().filter(pair -> of(pair, name) && pair.related()).toList();
            if (mine.stream().anyMatch(pair -> Math.abs(pair.laterMs()) < STEP_MS)) {
                continue;
            }
            for (PairHeard to : mine) {
                List<PairHeard> mended = mine.stream().filter(pair -> Math.abs(laterMs(pair, name) - laterMs(to, name)) < STEP_MS).toList();
                double gainDb = mended.stream().mapToDouble(PairHeard::alignedGainDb).sum();
                if (gainDb >= WORTH_DB && (best == null || gainDb > best.gainDb)) {
                    best = new Move(name, laterMs(to, name), to.wayM(), mended.stream().map(pair -> pair.first().equals(name) ? pair.second() : pair.first()).toList(), gainDb);
                }
            }
        }
        return best;
    }

    private static boolean of(PairHeard pair, String name) {
        return pair.first().equals(name) || pair.second().equals(name);
    }

    private static double laterMs(PairHeard pair, String name) {
        return pair.second().equals(name) ? pair.laterMs() : -pair.laterMs();
    }
}
