package pairwright.session.allocation;

import java.util.Arrays;
import java.util.List;

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
    private final long[][] worth;
    private final int[][][] takes;
    private final int[][][][] oneOf;
    private final int[] mate;
    private final long[][][] together;
    private final double[][] behind;
    private double[] lowest;
    private double bound;

    /**
     * @param more what single choices are worth beyond what they are by themselves
     * @param from prices to begin with
     */
    Prices(Pricing of, List<Kept> more, long planCentipoints, double[] from) {
        there = of.there;
        takes = of.takes;
        oneOf = of.oneOf;
        mate = of.mate;
        together = of.together;
        worth = Arrays.stream(of.worth).map(long[]::clone).toArray(long[][]::new);
        more.forEach(kept -> worth[kept.seat()][kept.choice()] += kept.centipoints());
        behind = Arrays.stream(worth).map(choices -> new double[choices.length]).toArray(double[][]::new);
        seek(planCentipoints, from);
    }

    /** No plan is worth more, in hundredths of a point. */
    public double boundCentipoints() {
        return bound;
    }

    /** The prices at which that is so. */
    double[] each() {
        return lowest;
    }

    /** How far a plan with this choice is behind the bound at least, in hundredths of a point. */
    public double behindCentipoints(int seat, int choice) {
        return behind[seat][choice];
    }

    private void seek(long plan, double[] from) {
        double[] prices = from;
        lowest = prices;
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
        measure();
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
                int other = best(others, together[seat][best]);
                now += left[best] + others[other] + together[seat][best][other];
                take(seat, best, prices, spare);
                take(mate[seat], other, prices, spare);
            }
        }
        return now;
    }

    private void measure() {
        for (int seat = 0; seat < worth.length; seat++) {
            double[] left = left(seat, lowest);
            if (mate[seat] != seat) {
                long[][] worths = together[seat] != null ? together[seat] : turned(together[mate[seat]]);
                left = withOther(left, left(mate[seat], lowest), worths);
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
            int best = best(others, worths[choice]);
            both[choice] = left[choice] + others[best] + worths[choice][best];
        }
        return both;
    }

    private static int best(double[] left, long[] more) {
        int best = 0;
        for (int choice = 1; choice < left.length; choice++) {
            best = left[choice] + more[choice] > left[best] + more[best] ? choice : best;
        }
        return best;
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
