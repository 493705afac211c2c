package pairwright.listen;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

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

    /** What is said of one of the pairs: of several nothing that those words about all of them say better. */
    public List<String> says(PairHeard pair) {
        if (pairs.size() < 2) {
            return PairWords.of(pair);
        }
        String odd = odd(pairs).stream().filter(name -> of(pair, name)).findFirst().orElse(null);
        return PairWords.of(pair, odd == null ? "They are the other way up against one another: invert one of them, listen to all together in mono, and keep the fuller."
                : odd + " is the other way up, as said above.", false);
    }

    private static Set<String> names(List<PairHeard> pairs) {
        Set<String> names = new TreeSet<>();
        pairs.forEach(pair -> names.addAll(List.of(pair.first(), pair.second())));
        return names;
    }

    private static List<String> says(List<PairHeard> pairs) {
        List<String> says = new ArrayList<>();
        Set<String> names = names(pairs);
        upsideDown(pairs, odd(pairs), says);
        Move best = best(pairs, names);
        if (best != null) {
            says.add("Moving one track mends most: shift " + best.track + " " + (best.earlierMs > 0 ? "earlier" : "later") + " by " + Words.number(Math.abs(best.earlierMs) * pairs.get(0).rateHz() / 1000, 0)
                    + " samples (" + Words.number(Math.abs(best.earlierMs), 2) + " ms, " + Words.way(best.earlierM) + " of air), and it is in step with " + Words.list(best.with)
                    + ". What else it hears is then out of step by as much, and if it is far its depth goes. Leave it where it belongs to a stereo pair.");
        }
        PairHeard first = pairs.get(0);
        if (first.related() && first.alignedGainDb() >= WORTH_DB) {
            says.add("Look first at " + first.first() + " and " + first.second() + ": brought together they are " + Words.db(first.alignedGainDb()) + " louder, A-weighted.");
        } else {
            says.add("No two of them lose " + Words.db(WORTH_DB) + " or more by standing where they stand.");
        }
        return says;
    }

    private static void upsideDown(List<PairHeard> pairs, List<String> odd, List<String> says) {
        List<String> others = pairs.stream().filter(pair -> told(pair) && pair.inverted() && odd.contains(pair.first()) != odd.contains(pair.second()))
                .map(pair -> odd.contains(pair.first()) ? pair.second() : pair.first()).distinct().sorted().toList();
        if (odd.size() == 1) {
            says.add(odd.get(0) + " is the other way up against " + others.size() + (others.size() == 1 ? " other" : " others") + ": invert it first" + PairWords.BY_THE_BUTTON);
        } else if (!odd.isEmpty()) {
            says.add(Words.list(odd) + " are the other way up against " + Words.list(others) + ": invert " + Words.list(odd) + " first" + PairWords.BY_THE_BUTTON);
        }
    }

    private static boolean told(PairHeard pair) {
        return pair.related() && pair.inverted() != null;
    }

    /** Of all tracks that can be told against one another the fewer that are the other way up; none of those where that does not come out even. */
    private static List<String> odd(List<PairHeard> pairs) {
        List<String> odd = new ArrayList<>();
        Set<String> done = new TreeSet<>();
        for (String name : names(pairs)) {
            if (!done.contains(name)) {
                Map<String, Boolean> up = new TreeMap<>(Map.of(name, true));
                spread(pairs, up);
                done.addAll(up.keySet());
                boolean holds = pairs.stream().filter(pair -> told(pair) && up.containsKey(pair.first())).allMatch(pair -> pair.inverted() == (up.get(pair.first()) != up.get(pair.second())));
                List<String> straight = up.keySet().stream().filter(up::get).toList();
                List<String> turned = up.keySet().stream().filter(one -> !up.get(one)).toList();
                odd.addAll(!holds ? List.of() : turned.size() <= straight.size() ? turned : straight);
            }
        }
        odd.sort(Comparator.naturalOrder());
        return odd;
    }

    /** To all that can be told against one of them. */
    private static void spread(List<PairHeard> pairs, Map<String, Boolean> up) {
        int before;
        do {
            before = up.size();
            for (PairHeard pair : pairs) {
                if (told(pair) && up.containsKey(pair.first()) != up.containsKey(pair.second())) {
                    boolean known = up.getOrDefault(pair.first(), up.get(pair.second()));
                    up.putIfAbsent(pair.first(), pair.inverted() != known);
                    up.putIfAbsent(pair.second(), pair.inverted() != known);
                }
            }
        } while (up.size() > before);
    }

    private record Move(String track, double earlierMs, double earlierM, List<String> with, double gainDb) {
    }

    /** What brings one track in step with most, counted by what the sums gain, and parts none that are in step already; null for none. */
    private static Move best(List<PairHeard> pairs, Set<String> names) {
        Move best = null;
        for (String name : names) {
            List<PairHeard> mine = pairs.stream().filter(pair -> of(pair, name) && pair.related() && pair.rivalFrames() == null).toList();
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
