package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pairwright.session.allocation.Kept;
import pairwright.session.allocation.Prices;
import pairwright.session.allocation.Pricing;

/** Of all ways of a layout those that need to be searched. Two seats that shall be heard together are weighed together once few enough ways are left. */
final class Narrowed {
    /** So many pairs of ways are weighed at once. */
    static final long MOST_PAIRS = 50_000;

    private final Layout layout;
    private final long keptCentipoints;
    /** What was found last is near to what is sought next. */
    private Prices last;

    /**
     * What is left to be searched.
     *
     * @param boundCentipoints no plan is worth more
     */
    record Left(List<List<SeatChoices.Way>> ways, double boundCentipoints) {
    }

    /** @param keptCentipoints what it is worth to leave a seat as it is set up */
    Narrowed(Layout layout, long keptCentipoints) {
        this.layout = layout;
        this.keptCentipoints = keptCentipoints;
    }

    /**
     * Of every seat those ways that can be in a plan worth that much or more, and those that stand already.
     *
     * @param centipoints of a plan that was found, what is kept counted
     */
    Left within(long centipoints) {
        long alone = centipoints - layout.mostTogether();
        Prices prices = priced(layout.pricing(), layout.ways(), alone);
        List<List<SeatChoices.Way>> some = within(layout.ways(), prices, alone);
        if (!layout.weighsTogether() || layout.pairsOf(some) > MOST_PAIRS) {
            return new Left(some, prices.boundCentipoints() + layout.mostTogether());
        }
        Prices together = priced(layout.pricing(some), some, centipoints);
        return new Left(within(some, together, centipoints), together.boundCentipoints());
    }

    private List<List<SeatChoices.Way>> within(List<List<SeatChoices.Way>> some, Prices prices, long centipoints) {
        double spare = prices.boundCentipoints() - centipoints;
        return chosen(some, (seat, way) -> prices.behindCentipoints(seat, way) <= spare);
    }

    /**
     * Of every seat those ways that come nearest to the best when everybody pays for what is short, and those that stand already. Nothing is proven of them.
     *
     * @param most of each seat
     * @param centipoints of a plan; 0 where none is known
     */
    List<List<SeatChoices.Way>> likeliest(int most, long centipoints) {
        Prices prices = priced(layout.pricing(), layout.ways(), centipoints - layout.mostTogether());
        List<Set<Integer>> nearest = IntStream.range(0, layout.ways().size()).mapToObj(seat -> IntStream.range(0, layout.ways().get(seat).size()).boxed()
                .sorted(Comparator.comparingDouble(way -> prices.behindCentipoints(seat, way))).limit(most).collect(Collectors.toSet())).toList();
        return chosen(layout.ways(), (seat, way) -> nearest.get(seat).contains(way));
    }

    private Prices priced(Pricing pricing, List<List<SeatChoices.Way>> some, long centipoints) {
        List<Kept> kept = new ArrayList<>();
        for (int seat = 0; seat < some.size(); seat++) {
            for (int way = 0; way < some.get(seat).size(); way++) {
                if (keptCentipoints > 0 && layout.keeps(seat, some.get(seat).get(way))) {
                    kept.add(new Kept(seat, way, keptCentipoints));
                }
            }
        }
        last = last == null ? pricing.prices(kept, centipoints) : pricing.prices(kept, centipoints, last);
        return last;
    }

    private interface Wanted {
        boolean is(int seat, int way);
    }

    private List<List<SeatChoices.Way>> chosen(List<List<SeatChoices.Way>> some, Wanted wanted) {
        return IntStream.range(0, some.size()).mapToObj(seat -> IntStream.range(0, some.get(seat).size())
                .filter(way -> wanted.is(seat, way) || layout.stands(seat, some.get(seat).get(way))).mapToObj(some.get(seat)::get).toList()).toList();
    }
}
