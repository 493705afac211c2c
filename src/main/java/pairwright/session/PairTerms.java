package pairwright.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.session.allocation.PairTerm;

/** What the ways of two seats are worth together, laid out for the search. */
final class PairTerms {
    private final List<PlanRules.Two> twos;
    private final Map<String, Integer> index;
    private final PlanRules rules;

    /** @param index where each seat is in the lists of ways */
    PairTerms(List<PlanRules.Two> twos, Map<String, Integer> index, PlanRules rules) {
        this.twos = twos;
        this.index = index;
        this.rules = rules;
    }

    /**
     * For each two seats of which that is asked.
     *
     * @param some of the ways of each seat
     * @param exact some of those, which are counted beside each other
     * @param hopes is given the most that each way may be worth beside others that are not counted with it
     */
    List<PairTerm> of(List<List<SeatChoices.Way>> some, List<List<SeatChoices.Way>> exact, long[][] hopes) {
        List<PairTerm> pairs = new ArrayList<>();
        for (PlanRules.Two two : twos) {
            int first = index.get(two.first());
            int second = index.get(two.second());
            List<Integer> ofFirst = served(some.get(first));
            List<Integer> ofSecond = served(some.get(second));
            Set<SeatChoices.Way> firstExact = Set.copyOf(exact.get(first));
            Set<SeatChoices.Way> secondExact = Set.copyOf(exact.get(second));
            long[][] points = rules.twoCentipoints(two.apart(), voices(some.get(first), ofFirst), voices(some.get(second), ofSecond));
            long[] most = new long[ofSecond.size()];
            List<PairTerm.Together> together = new ArrayList<>();
            for (int i = 0; i < points.length; i++) {
                boolean counted = firstExact.contains(some.get(first).get(ofFirst.get(i)));
                long rowMost = Long.MIN_VALUE;
                for (int j = 0; j < points[i].length; j++) {
                    rowMost = Math.max(rowMost, points[i][j]);
                    most[j] = Math.max(most[j], points[i][j]);
                    if (points[i][j] != 0 && counted && secondExact.contains(some.get(second).get(ofSecond.get(j)))) {
                        together.add(new PairTerm.Together(ofFirst.get(i), ofSecond.get(j), points[i][j]));
                    }
                }
                // where the other seat is left out, nothing is gained or lost
                hopes[first][ofFirst.get(i)] += counted ? 0 : Math.max(0, rowMost);
            }
            for (int j = 0; j < most.length; j++) {
                hopes[second][ofSecond.get(j)] += secondExact.contains(some.get(second).get(ofSecond.get(j))) ? 0 : most[j];
            }
            pairs.add(new PairTerm(first, second, together));
        }
        return pairs;
    }

    private static List<Integer> served(List<SeatChoices.Way> ways) {
        List<Integer> served = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            if (ways.get(i).offer() != null) {
                served.add(i);
            }
        }
        return served;
    }

    private static List<Voice> voices(List<SeatChoices.Way> ways, List<Integer> which) {
        return which.stream().map(way -> ways.get(way).offer()).map(offer -> Voice.of(offer.mics().get(0).micType().id(), offer.technique(),
                offer.mics().get(0).predicted().toneDb(), offer.mics().get(0).predicted().colourDb())).toList();
    }
}
