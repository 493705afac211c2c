package pairwright.session.allocation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A problem made ready to look for {@link Prices}, which is done more than once of the same. */
public final class Pricing {
    /** What there is: of each cap and of each group of channels. */
    final double[] there;
    /** By seat and choice: what it is worth, what it takes (index and count in turn), and the sets of each of which it takes one. */
    final long[][] worth;
    final int[][][] takes;
    final int[][][][] oneOf;
    /** By seat: with whom it chooses, itself where alone; what choices of the two are worth together stands at the first of them. */
    final int[] mate;
    final long[][][] together;

    private final Map<String, Integer> caps = new HashMap<>();
    private final Map<String, Integer> groups = new HashMap<>();
    /** Most choices ask for the same few sets. */
    private final Map<Set<String>, int[]> capSets = new HashMap<>();
    private final Map<Set<String>, int[]> groupSets = new HashMap<>();

    /** Looks at all of a problem but at what is kept. */
    public Pricing(Problem problem) {
        List<Integer> counts = new ArrayList<>();
        problem.caps().forEach(cap -> {
            caps.put(cap.name(), counts.size());
            counts.add(cap.there());
        });
        problem.banks().stream().flatMap(bank -> bank.channels().stream()).forEach(group -> {
            int at = groups.computeIfAbsent(group, any -> {
                counts.add(0);
                return counts.size() - 1;
            });
            counts.set(at, counts.get(at) + 1);
        });
        there = counts.stream().mapToDouble(one -> one).toArray();
        List<Seat> seats = problem.seats();
        worth = new long[seats.size()][];
        takes = new int[seats.size()][][];
        oneOf = new int[seats.size()][][][];
        mate = new int[seats.size()];
        together = new long[seats.size()][][];
        for (int seat = 0; seat < worth.length; seat++) {
            List<Choice> choices = seats.get(seat).choices();
            worth[seat] = choices.stream().mapToLong(Choice::centipoints).toArray();
            takes[seat] = choices.stream().map(this::takes).toArray(int[][]::new);
            oneOf[seat] = choices.stream().map(this::oneOf).toArray(int[][][]::new);
            mate[seat] = seat;
        }
        problem.pairs().forEach(this::pair);
    }

    /**
     * Looks for prices.
     *
     * @param kept what it is worth to leave seats as they are
     * @param planCentipoints what a plan is worth, which no bound can be below; the search ends when it comes near
     */
    public Prices prices(List<Kept> kept, long planCentipoints) {
        return new Prices(this, kept, planCentipoints, new double[there.length]);
    }

    /** The same from prices that were found before for the same caps and banks, which are seldom far off. */
    public Prices prices(List<Kept> kept, long planCentipoints, Prices before) {
        return new Prices(this, kept, planCentipoints, before.each());
    }

    private int[] takes(Choice choice) {
        // always in the same order, since prices are added up
        int[] of = choice.takes().keySet().stream().mapToInt(caps::get).sorted().toArray();
        int[] takes = new int[2 * of.length];
        choice.takes().forEach((cap, count) -> {
            int at = 2 * Arrays.binarySearch(of, caps.get(cap));
            takes[at] = caps.get(cap);
            takes[at + 1] = count;
        });
        return takes;
    }

    private int[][] oneOf(Choice choice) {
        List<int[]> all = new ArrayList<>(choice.anyOf().size() + choice.feeds().size());
        choice.anyOf().forEach(names -> all.add(capSets.computeIfAbsent(names, set -> indexes(set, caps))));
        choice.feeds().forEach(feed -> all.add(groupSets.computeIfAbsent(feed.groups(), set -> indexes(set, groups))));
        all.removeIf(any -> any.length == 0);
        return all.toArray(int[][]::new);
    }

    private static int[] indexes(Set<String> names, Map<String, Integer> index) {
        return names.stream().filter(index::containsKey).mapToInt(index::get).sorted().toArray();
    }

    private void pair(PairTerm pair) {
        long[][] worths = new long[worth[pair.first()].length][worth[pair.second()].length];
        pair.together().forEach(one -> worths[one.first()][one.second()] += one.centipoints());
        if (mate[pair.first()] == pair.first() && mate[pair.second()] == pair.second()) {
            mate[pair.first()] = pair.second();
            mate[pair.second()] = pair.first();
            together[pair.first()] = worths;
            return;
        }
        for (int choice = 0; choice < worths.length; choice++) {
            long most = Long.MIN_VALUE;
            for (long one : worths[choice]) {
                most = Math.max(most, one);
            }
            worth[pair.first()][choice] += most;
        }
    }
}
