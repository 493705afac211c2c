package pairwright.session.allocation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is short has a price, so that not every seat reckons with the same microphone: no plan is worth more than what the seats have left at best when each pays for what it takes,
 * and the price of all there is. That holds at any prices of 0 or more; those sought here make the bound low (a Lagrangian relaxation). Two seats that are worth something together
 * choose together; of a seat with several such others that is so with one of them, and with the rest it hopes for the best. Left aside is where there is phantom power.
 */
public final class Prices {
    private static final int ROUNDS = 300;
    /** After so many rounds without a lower bound the steps are halved. */
    private static final int PATIENCE = 10;
    /** In hundredths of a point; sums of some hundred terms are reckoned far more exactly than that. */
    private static final double ROUNDING = 0.01;

    private final double[] there;
    /** By seat and choice: what it is worth, what it takes (index and count in turn), and the sets of each of which it takes one. */
    private final long[][] worth;
    private final int[][][] takes;
    private final int[][][][] oneOf;
    /** By seat: with whom it chooses, itself where alone; what choices of the two are worth together stands at the first of them. */
    private final int[] mate;
    private final long[][][] together;
    private final double[][] behind;
    private double bound;

    /**
     * Looks for prices.
     *
     * @param planCentipoints what a plan is worth, which no bound can be below; the search ends when it comes near
     */
    public Prices(Problem problem, long planCentipoints) {
        List<Seat> seats = problem.seats();
        Map<String, Integer> index = new HashMap<>();
        List<Integer> counts = new ArrayList<>();
        problem.caps().forEach(cap -> {
            index.put("cap " + cap.name(), counts.size());
            counts.add(cap.there());
        });
        problem.banks().stream().flatMap(bank -> bank.channels().stream()).forEach(group -> {
            int at = index.computeIfAbsent("group " + group, any -> {
                counts.add(0);
                return counts.size() - 1;
            });
            counts.set(at, counts.get(at) + 1);
        });
        there = counts.stream().mapToDouble(one -> one).toArray();
        worth = new long[seats.size()][];
        takes = new int[seats.size()][][];
        oneOf = new int[seats.size()][][][];
        behind = new double[seats.size()][];
        mate = new int[seats.size()];
        together = new long[seats.size()][][];
        for (int seat = 0; seat < worth.length; seat++) {
            List<Choice> choices = seats.get(seat).choices();
            worth[seat] = choices.stream().mapToLong(Choice::centipoints).toArray();
            takes[seat] = choices.stream().map(choice -> takes(choice, index)).toArray(int[][]::new);
            oneOf[seat] = choices.stream().map(choice -> oneOf(choice, index)).toArray(int[][][]::new);
            behind[seat] = new double[choices.size()];
            mate[seat] = seat;
        }
        problem.kept().forEach(kept -> worth[kept.seat()][kept.choice()] += kept.centipoints());
        problem.pairs().forEach(this::pair);
        seek(planCentipoints);
    }

    private static int[] takes(Choice choice, Map<String, Integer> index) {
        int[] takes = new int[2 * choice.takes().size()];
        int at = 0;
        for (Map.Entry<String, Integer> one : choice.takes().entrySet().stream().sorted(Map.Entry.comparingByKey()).toList()) {
            takes[at++] = index.get("cap " + one.getKey());
            takes[at++] = one.getValue();
        }
        return takes;
    }

    private static int[][] oneOf(Choice choice, Map<String, Integer> index) {
        List<int[]> all = new ArrayList<>();
        choice.anyOf().forEach(caps -> all.add(indexes("cap ", caps, index)));
        choice.feeds().forEach(feed -> all.add(indexes("group ", feed.groups(), index)));
        return all.stream().filter(any -> any.length > 0).toArray(int[][]::new);
    }

    private static int[] indexes(String kind, Set<String> names, Map<String, Integer> index) {
        return names.stream().filter(name -> index.containsKey(kind + name)).mapToInt(name -> index.get(kind + name)).sorted().toArray();
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

    /** No plan is worth more, in hundredths of a point. */
    public double boundCentipoints() {
        return bound;
    }

    /** How far a plan with this choice is behind the bound at least, in hundredths of a point. */
    public double behindCentipoints(int seat, int choice) {
        return behind[seat][choice];
    }

    private void seek(long plan) {
        double[] prices = new double[there.length];
        double[] lowest = prices;
        bound = Double.POSITIVE_INFINITY;
        double step = 1;
        int waited = 0;
        for (int round = 0; round < ROUNDS && bound > plan + 1; round++) {
            double[] spare = there.clone();
            double now = bound(prices, spare);
            if (now < bound) {
                bound = now;
                lowest = prices;
                waited = 0;
            } else if (++waited > PATIENCE) {
                step /= 2;
                waited = 0;
                prices = lowest;
                continue;
            }
            double square = 0;
            for (int i = 0; i < spare.length; i++) {
                square += prices[i] > 0 || spare[i] < 0 ? spare[i] * spare[i] : 0;
            }
            if (square == 0) {
                break; // nothing is short at these prices
            }
            double length = step * (now - plan) / square;
            double[] next = new double[spare.length];
            for (int i = 0; i < spare.length; i++) {
                next[i] = Math.max(0, prices[i] - length * spare[i]);
            }
            prices = next;
        }
        bound += ROUNDING;
        measure(lowest);
    }

    /** @param spare what there is; what is taken at these prices is taken from it */
    private double bound(double[] prices, double[] spare) {
        double now = 0;
        for (int i = 0; i < there.length; i++) {
            now += prices[i] * there[i];
        }
        for (int seat = 0; seat < worth.length; seat++) {
            if (mate[seat] == seat) {
                int best = best(seat, prices);
                now += left(seat, best, prices);
                take(seat, best, prices, spare);
            } else if (together[seat] != null) {
                double[] left = left(seat, prices);
                double[] others = left(mate[seat], prices);
                int best = best(withOther(left, others, together[seat]));
                int other = best(with(others, together[seat][best]));
                now += left[best] + others[other] + together[seat][best][other];
                take(seat, best, prices, spare);
                take(mate[seat], other, prices, spare);
            }
        }
        return now;
    }

    private void measure(double[] prices) {
        for (int seat = 0; seat < worth.length; seat++) {
            double[] left = left(seat, prices);
            if (mate[seat] != seat) {
                long[][] worths = together[seat] != null ? together[seat] : turned(together[mate[seat]]);
                left = withOther(left, left(mate[seat], prices), worths);
            }
            double most = left[best(left)];
            for (int choice = 0; choice < left.length; choice++) {
                behind[seat][choice] = Math.max(0, most - left[choice] - ROUNDING);
            }
        }
    }

    private static long[][] turned(long[][] worths) {
        long[][] turned = new long[worths[0].length][worths.length];
        for (int i = 0; i < worths.length; i++) {
            for (int j = 0; j < turned.length; j++) {
                turned[j][i] = worths[i][j];
            }
        }
        return turned;
    }

    /** What each choice leaves with the best for the other. */
    private static double[] withOther(double[] left, double[] others, long[][] worths) {
        double[] both = new double[left.length];
        for (int choice = 0; choice < left.length; choice++) {
            double[] beside = with(others, worths[choice]);
            both[choice] = left[choice] + beside[best(beside)];
        }
        return both;
    }

    private static double[] with(double[] left, long[] more) {
        double[] with = new double[left.length];
        for (int choice = 0; choice < left.length; choice++) {
            with[choice] = left[choice] + more[choice];
        }
        return with;
    }

    /** Of one seat by itself. Nobody is paid back, so what is worth less than another leaves is not reckoned. */
    private int best(int seat, double[] prices) {
        int best = 0;
        double most = left(seat, 0, prices);
        for (int choice = 1; choice < worth[seat].length; choice++) {
            if (worth[seat][choice] > most) {
                double left = left(seat, choice, prices);
                if (left > most) {
                    most = left;
                    best = choice;
                }
            }
        }
        return best;
    }

    private static int best(double[] left) {
        int best = 0;
        for (int choice = 1; choice < left.length; choice++) {
            best = left[choice] > left[best] ? choice : best;
        }
        return best;
    }

    /** What each choice of a seat is worth beyond what it pays. */
    private double[] left(int seat, double[] prices) {
        double[] left = new double[worth[seat].length];
        for (int choice = 0; choice < left.length; choice++) {
            left[choice] = left(seat, choice, prices);
        }
        return left;
    }

    private double left(int seat, int choice, double[] prices) {
        double left = worth[seat][choice];
        int[] of = takes[seat][choice];
        for (int i = 0; i < of.length; i += 2) {
            left -= prices[of[i]] * of[i + 1];
        }
        for (int[] any : oneOf[seat][choice]) {
            left -= prices[cheapest(any, prices)];
        }
        return left;
    }

    private static int cheapest(int[] any, double[] prices) {
        int cheapest = any[0];
        for (int one : any) {
            cheapest = prices[one] < prices[cheapest] ? one : cheapest;
        }
        return cheapest;
    }

    private void take(int seat, int choice, double[] prices, double[] spare) {
        int[] of = takes[seat][choice];
        for (int i = 0; i < of.length; i += 2) {
            spare[of[i]] -= of[i + 1];
        }
        for (int[] any : oneOf[seat][choice]) {
            spare[cheapest(any, prices)]--;
        }
    }
}
