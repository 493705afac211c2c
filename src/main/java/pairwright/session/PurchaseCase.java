package pairwright.session;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import pairwright.advice.Knowledge;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.Stock;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.Choice;
import pairwright.session.allocation.PairTerm;
import pairwright.session.allocation.Problem;

/**
 * One session with everything judged that could be bought for it. What an offer is worth does not depend on what else there is, so a plan with other
 * units is found without judging again.
 */
final class PurchaseCase {
    private final Purchases.Session session;
    private final Gear gear;
    private final List<AtSeat> seats;
    private final Knowledge now;
    private final PlanRules rules;
    private final Allocator allocator;
    /** For each seat what the best offer with a type is worth, by type. */
    private final List<Map<String, Long>> bestWith;
    private Bounds bounds;

    PurchaseCase(Purchases.Session session, Gear gear, List<AtSeat> seats, Knowledge now, PlanRules rules, Allocator allocator) {
        this.session = session;
        this.gear = gear;
        this.seats = seats;
        this.now = now;
        this.rules = rules;
        this.allocator = allocator;
        this.bestWith = seats.stream().map(PurchaseCase::bestWith).toList();
    }

    private static Map<String, Long> bestWith(AtSeat at) {
        Map<String, Long> best = new HashMap<>();
        for (Offer offer : at.offers().all()) {
            for (OfferedMic mic : offer.mics()) {
                best.merge(mic.micType().id(), offer.centipoints(), Math::max);
            }
        }
        return best;
    }

    Purchases.Session session() {
        return session;
    }

    Layout layout(Stock stock) {
        return new Layout(session.lineUp(), seats, new Gear(stock, gear.channels(), gear.stands(), gear.boosters(), gear.pads()), now.catalogue(), rules, Map.of());
    }

    /** The best plan with some units; none where there is none. */
    Optional<BestPlan> best(Stock stock) {
        return BestPlan.of(layout(stock), allocator);
    }

    /** How many units of each type the best plan takes at once. */
    static Map<String, Integer> used(BestPlan plan) {
        Map<String, Integer> used = new HashMap<>();
        plan.ways().stream().filter(way -> way.offer() != null).forEach(way -> way.offer().mics().forEach(mic -> used.merge(mic.micType().id(), 1, Integer::sum)));
        return used;
    }

    /**
     * What bounds a plan from above: for each seat the plan of all others without it, and its own best way.
     *
     * @param without what the others' best plan is worth, and whatever it may be worth to sit beside this seat
     * @param own what the best way of the seat is worth; what it costs to leave it out where it has no other
     * @param together of all pairs of seats
     */
    private record Bounds(long[] without, long[] own, long together) {
    }

    /** Prepares for {@link #bound} with these units. */
    void bounded(Stock stock) {
        Layout layout = layout(stock);
        List<List<SeatChoices.Way>> ways = layout.ways();
        List<PlanRules.Two> twos = PlanRules.twos(session.lineUp());
        Problem whole = layout.problem(ways, 0);
        long[] without = new long[seats.size()];
        long[] own = new long[seats.size()];
        for (int seat = 0; seat < seats.size(); seat++) {
            String id = seats.get(seat).seat().id();
            own[seat] = ways.get(seat).stream().mapToLong(way -> way.choice().centipoints()).max().orElse(0);
            without[seat] = allocator.best(without(whole, seat)).orElseThrow().boundCentipoints()
                    + twos.stream().filter(two -> two.first().equals(id) || two.second().equals(id)).mapToLong(this::most).sum();
        }
        bounds = new Bounds(without, own, twos.stream().mapToLong(this::most).sum());
    }

    private long most(PlanRules.Two two) {
        return Math.max(0, rules.mostTwoCentipoints(two.apart()));
    }

    private static Problem without(Problem whole, int out) {
        List<pairwright.session.allocation.Seat> left = IntStream.range(0, whole.seats().size()).mapToObj(seat -> seat != out ? whole.seats().get(seat)
                : new pairwright.session.allocation.Seat(whole.seats().get(seat).id(), false, List.of(Choice.out(SeatChoices.OUT, 0)))).toList();
        List<PairTerm> pairs = whole.pairs().stream().filter(pair -> pair.first() != out && pair.second() != out).toList();
        return new Problem(left, whole.caps(), whole.banks(), pairs, List.of(), whole.channelPrices());
    }

    /**
     * No plan can be worth more once these are bought: one seat takes them, or two where there are two of them, and the others get no more than they could
     * without.
     *
     * @return hundredths of a point
     */
    long bound(Goods goods) {
        long[] with = IntStream.range(0, seats.size()).mapToLong(seat -> bestWith.get(seat).getOrDefault(goods.micType().id(), Long.MIN_VALUE / 4)).toArray();
        long most = IntStream.range(0, with.length).mapToLong(seat -> with[seat] + bounds.without()[seat]).max().orElse(Long.MIN_VALUE / 4);
        if (goods.units() == 1 || with.length < 2) {
            return most;
        }
        long[] more = IntStream.range(0, with.length).mapToLong(seat -> with[seat] - bounds.own()[seat]).sorted().toArray();
        return Math.max(most, Arrays.stream(bounds.own()).sum() + bounds.together() + more[more.length - 1] + more[more.length - 2]);
    }
}
