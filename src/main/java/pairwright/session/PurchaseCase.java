package pairwright.session;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import pairwright.advice.Knowledge;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.MicType;
import pairwright.model.Stock;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.NotDecided;

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
    private final WaysKept kept;
    private final Allocator allocator;
    /** For each seat what the best offer with a type is worth, by type. */
    private final List<Map<String, Long>> bestWith;
    private Bounds bounds;

    PurchaseCase(Purchases.Session session, Gear gear, List<AtSeat> seats, Knowledge now, PlanRules rules, WaysKept kept, Allocator allocator) {
        this.session = session;
        this.gear = gear;
        this.seats = seats;
        this.now = now;
        this.rules = rules;
        this.kept = kept;
        this.allocator = allocator;
        this.bestWith = seats.stream().map(at -> bestWith(at, now.catalogue().mics().values())).toList();
    }

    private static Map<String, Long> bestWith(AtSeat at, Collection<MicType> types) {
        Map<String, Long> best = new HashMap<>();
        for (Offer offer : at.offers().all()) {
            for (OfferedMic mic : offer.mics()) {
                best.merge(mic.micType().id(), offer.centipoints(), Math::max);
                // a box that is bought may be what a pickup was waiting for
                types.stream().filter(type -> type.boxFor(mic.micType())).forEach(box -> best.merge(box.id(), offer.centipoints(), Math::max));
            }
        }
        return best;
    }

    Purchases.Session session() {
        return session;
    }

    Allocator allocator() {
        return allocator;
    }

    Layout layout(Stock stock) {
        return layout(session.lineUp(), seats, stock);
    }

    private Layout layout(LineUp lineUp, List<AtSeat> at, Stock stock) {
        return new Layout(lineUp, at, new Gear(stock, gear.channels(), gear.stands(), gear.boosters(), gear.pads()), Set.of(), now.catalogue(), rules, kept, Map.of());
    }

    /**
     * The best plan with some units; none where there is none.
     *
     * @throws NotDecided where neither was found in time
     */
    Optional<BestPlan> best(Stock stock) {
        return BestPlan.of(layout(stock), allocator);
    }

    /** How many units of each type the best plan takes at once. */
    static Map<String, Integer> used(BestPlan plan) {
        Map<String, Integer> used = new HashMap<>();
        plan.ways().stream().filter(way -> way.offer() != null).forEach(way -> {
            way.offer().mics().forEach(mic -> used.merge(mic.micType().id(), 1, Integer::sum));
            way.courses().stream().filter(course -> course.box() != null).forEach(course -> used.merge(course.box().id(), 1, Integer::sum));
        });
        return used;
    }

    /**
     * What bounds a plan from above: for each seat the plan of all others without it, and its own best way.
     *
     * @param without what a plan of all the others is worth at most
     * @param own what the best way of the seat is worth
     * @param together what all pairs of seats are worth at most
     */
    private record Bounds(long[] without, long[] own, long together) {
    }

    /** Prepares for {@link #bound} with these units. */
    void bounded(Stock stock) {
        long together = PlanRules.twos(session.lineUp()).stream().mapToLong(two -> Math.max(0, rules.mostTwoCentipoints(two.apart()))).sum();
        long[] own = layout(stock).ways().stream().mapToLong(ways -> ways.stream().mapToLong(way -> way.choice().centipoints()).max().orElse(0)).toArray();
        long[] without = IntStream.range(0, seats.size()).mapToLong(seat -> without(stock, seat, Arrays.stream(own).sum() - own[seat]) + together).toArray();
        bounds = new Bounds(without, own, together);
    }

    /**
     * What a plan of all but one seat is worth at most, however they sound beside each other.
     *
     * @param atMost what the best ways of those come to
     */
    private long without(Stock stock, int out, long atMost) {
        List<AtSeat> others = IntStream.range(0, seats.size()).filter(seat -> seat != out).mapToObj(seats::get).toList();
        if (others.isEmpty()) {
            return 0;
        }
        LineUp whole = session.lineUp();
        LineUp left = new LineUp(whole.name(), whole.floor(), others.stream().map(AtSeat::seat).toList(), whole.gobos(), List.of(), List.of(), whole.from(), whole.until(), 1, whole.setUp());
        try {
            return BestPlan.of(layout(left, others, stock), allocator).orElseThrow().solution().boundCentipoints();
        } catch (NotDecided open) {
            return atMost;
        }
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
