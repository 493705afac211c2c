package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import pairwright.advice.HouseMemory;
import pairwright.advice.Knowledge;
import pairwright.model.MicType;
import pairwright.model.Stock;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.NotDecided;

/**
 * What to buy next for sessions that are stored: first the cheapest microphones with which every session has a plan, then, one purchase after the other,
 * what raises the plans most for its price. Each is worth exactly what is said: the plans are searched anew with it. Sessions are taken to be at different
 * times, so that each may use all there is.
 */
public final class Purchases {
    private static final int MOST_STEPS = 40;

    private final Wish wish;
    private final Knowledge now;
    private final Consumer<Progress> progress;
    private final Function<Session, Allocator> allocators;
    private final List<PurchaseCase> cases = new ArrayList<>();
    /** Sessions of which nobody knows whether there is a plan: nothing is bought for them. */
    private final Set<PurchaseCase> undecided = new HashSet<>();
    private final List<Goods> bought = new ArrayList<>();
    private final List<Purchased.Step> steps = new ArrayList<>();
    /** The best plans with all that is bought, by session; none where there is none. */
    private final Map<PurchaseCase, BestPlan> plans = new LinkedHashMap<>();
    private final List<Purchased.Unserved> unserved = new ArrayList<>();
    private Stock stock;
    private int spent;
    private boolean cheapest = true;
    private boolean proven = true;

    /** A stored session. */
    public record Session(String id, LineUp lineUp) {
        String name() {
            return lineUp.name() == null ? id : lineUp.name();
        }
    }

    /**
     * What is wanted.
     *
     * @param sessions whose plans are to be better
     * @param gear what is owned
     * @param budget how much may be spent, in prices of the cheapest class
     * @param mostTier no type of a dearer class, 1 to {@value #DEAREST}
     */
    public record Wish(List<Session> sessions, Gear gear, int budget, int mostTier) {
        public static final int DEAREST = 5;
        public static final int USUAL_BUDGET = 12;
        public static final int MOST_BUDGET = 100;

        public Wish {
            sessions = List.copyOf(sessions);
            // what cannot be used does not matter, nor does when it may be again
            gear = gear.stock() == null ? gear : new Gear(new Stock(true, gear.stock().units().stream().filter(Stock.Held::free).toList()), gear.channels(), gear.stands(), gear.boosters(),
                    gear.pads());
        }
    }

    private Purchases(Wish wish, Knowledge now, Consumer<Progress> progress, Function<Session, Allocator> allocators) {
        this.wish = wish;
        this.now = now;
        this.progress = progress;
        this.allocators = allocators;
    }

    /**
     * What to buy.
     *
     * @param memory what was kept in this house before
     * @param progress is told how far it is; what it throws ends the work
     */
    public static Purchased of(Wish wish, Knowledge now, HouseMemory memory, Consumer<Progress> progress) {
        Allocator usual = new Allocator();
        return of(wish, now, memory, progress, session -> usual);
    }

    /** @param allocators plans each session */
    static Purchased of(Wish wish, Knowledge now, HouseMemory memory, Consumer<Progress> progress, Function<Session, Allocator> allocators) {
        return new Purchases(wish, now, progress, allocators).found(new Judging(memory));
    }

    private Purchased found(Judging judging) {
        stock = wish.gear().stock() == null ? new Stock(true, List.of()) : wish.gear().stock();
        List<Goods> all = Goods.all(now.catalogue(), wish.mostTier());
        // two of each type that are matched, beside what there is: whatever is bought is judged already
        Stock everything = Goods.with(stock, all.stream().filter(goods -> goods.units() == 2).toList());
        PlanRules rules = judging.rules(now);
        for (Session session : wish.sessions()) {
            progress.accept(new Progress("Judging everything for " + session.name(), cases.size(), wish.sessions().size()));
            List<AtSeat> seats = judging.of(session.lineUp(), now, everything, new ChannelPool(wish.gear().channels(), Set.of()), step -> { });
            cases.add(new PurchaseCase(session, wish.gear(), seats, now, rules, judging.ways(), allocators.apply(session)));
        }
        planned();
        List<Purchased.Served> before = served();
        List<Purchased.Idle> idle = idle();
        serve(new Serving(now.catalogue(), wish.mostTier(), everything));
        colour(all);
        return new Purchased(wish.budget(), wish.mostTier(), before, steps, served(), idle, unserved, cheapest, proven, now.rules().version(), now.catalogue().version());
    }

    private void planned() {
        plans.clear();
        for (PurchaseCase one : cases) {
            progress.accept(new Progress("Planning with what there is", plans.size(), cases.size()));
            try {
                one.best(stock).ifPresent(plan -> plans.put(one, plan));
            } catch (NotDecided open) {
                leave(one);
            }
        }
        proven = undecided.isEmpty() && plans.values().stream().allMatch(plan -> plan.solution().proven());
    }

    /** One session that takes too long does not keep the others from an answer. */
    private void leave(PurchaseCase one) {
        undecided.add(one);
        unserved.add(new Purchased.Unserved(one.session().id(), one.session().name(),
                "Left out of this: no plan was found in the time there is, nor that there is none. Plan the session by itself to see what could be changed."));
    }

    /** None as well where that was not found out in time: what is not known is not counted on. */
    private Optional<BestPlan> best(PurchaseCase one, Stock with) {
        try {
            Optional<BestPlan> best = one.best(with);
            proven &= best.map(plan -> plan.solution().proven()).orElse(true);
            return best;
        } catch (NotDecided open) {
            proven = false;
            return Optional.empty();
        }
    }

    private static Double points(BestPlan plan) {
        return plan == null ? null : Double.valueOf(plan.solution().centipoints() / 100.0);
    }

    private List<Purchased.Served> served() {
        return cases.stream().map(one -> new Purchased.Served(one.session().id(), one.session().name(), points(plans.get(one)))).toList();
    }

    private List<Purchased.Idle> idle() {
        Map<String, List<Stock.Held>> owned = new TreeMap<>();
        stock.units().stream().filter(Stock.Held::free).filter(unit -> now.catalogue().mics().containsKey(unit.micType()))
                .forEach(unit -> owned.computeIfAbsent(unit.micType(), type -> new ArrayList<>()).add(unit));
        Map<String, Integer> used = new HashMap<>();
        plans.values().forEach(plan -> PurchaseCase.used(plan).forEach((type, count) -> used.merge(type, count, Math::max)));
        List<Purchased.Idle> idle = new ArrayList<>();
        owned.forEach((type, units) -> {
            int most = used.getOrDefault(type, 0);
            if (most < units.size() && !plans.isEmpty()) {
                idle.add(new Purchased.Idle(type, now.catalogue().mics().get(type).name(), units.size(), most, most > 0 ? List.of() : units.stream().map(Stock.Held::label).toList()));
            }
        });
        return idle;
    }

    /** Buys what serves the sessions that have no plan, the cheapest first, as far as the budget goes. */
    private void serve(Serving serving) {
        Map<PurchaseCase, List<Goods>> needs = new LinkedHashMap<>();
        for (PurchaseCase one : cases) {
            if (!plans.containsKey(one) && !undecided.contains(one)) {
                progress.accept(new Progress("Looking for what serves " + one.session().name(), needs.size(), cases.size()));
                cheapest(serving, one, stock).ifPresentOrElse(goods -> needs.put(one, goods), () -> unserved.add(new Purchased.Unserved(one.session().id(), one.session().name(),
                        "No microphones of these price classes alone make a plan possible. Plan the session to see what else is short.")));
            }
        }
        int least = needs.values().stream().mapToInt(Purchases::price).max().orElse(0);
        List<Goods> all = new ArrayList<>();
        for (PurchaseCase one : needs.keySet().stream().sorted(Comparator.comparingInt((PurchaseCase of) -> price(needs.get(of)))).toList()) {
            Stock with = Goods.with(stock, all);
            List<Goods> more = best(one, with).isPresent() ? List.of() : cheapest(serving, one, with).orElse(List.of());
            if (price(all) + price(more) > wish.budget()) {
                unserved.add(new Purchased.Unserved(one.session().id(), one.session().name(), "The cheapest that would serve it costs " + price(more) + ", and "
                        + (wish.budget() - price(all)) + " of the budget is left."));
            } else {
                all.addAll(more);
            }
        }
        List<Goods> needed = withoutNeedless(all, needs.keySet().stream().toList());
        cheapest = price(needed) <= least && unserved.isEmpty() || needs.isEmpty();
        needed.forEach(goods -> buy(Purchased.Phase.SERVE, goods));
    }

    /** None as well where that was not found out in time. */
    private static Optional<List<Goods>> cheapest(Serving serving, PurchaseCase one, Stock with) {
        try {
            return serving.cheapest(one, with);
        } catch (NotDecided open) {
            return Optional.empty();
        }
    }

    private static int price(List<Goods> goods) {
        return goods.stream().mapToInt(Goods::price).sum();
    }

    /** What was bought for one session may serve another as well, so that something bought earlier is not needed any more: the dearest such goes first. */
    private List<Goods> withoutNeedless(List<Goods> all, List<PurchaseCase> wanting) {
        List<Goods> needed = new ArrayList<>(all);
        List<PurchaseCase> served = wanting.stream().filter(one -> best(one, Goods.with(stock, all)).isPresent()).toList();
        for (Goods goods : all.stream().sorted(Comparator.comparingInt(Goods::price).reversed().thenComparing(one -> one.micType().id())).toList()) {
            List<Goods> fewer = new ArrayList<>(needed);
            fewer.remove(goods);
            if (served.stream().allMatch(one -> best(one, Goods.with(stock, fewer)).isPresent())) {
                needed.remove(goods);
            }
        }
        return needed;
    }

    private void buy(Purchased.Phase phase, Goods goods) {
        stock = Goods.with(stock, bought.size(), goods);
        bought.add(goods);
        spent += goods.price();
        List<Purchased.Raised> raises = new ArrayList<>();
        long gain = 0;
        for (PurchaseCase one : cases) {
            BestPlan before = plans.get(one);
            BestPlan after = best(one, stock).orElse(null);
            if (after != null && (before == null || after.solution().centipoints() > before.solution().centipoints())) {
                raises.add(new Purchased.Raised(one.session().id(), one.session().name(), points(before), points(after)));
                gain += before == null ? 0 : after.solution().centipoints() - before.solution().centipoints();
                plans.put(one, after);
            }
        }
        MicType type = goods.micType();
        steps.add(new Purchased.Step(phase, type.id(), type.name(), goods.units(), goods.price(), spent, gain / 100.0,
                plans.values().stream().mapToLong(plan -> plan.solution().centipoints()).sum() / 100.0, plans.size(), raises));
    }

    /** One purchase after the other: always the one that gains most for its price, what is never worth more than another one is not searched. */
    private void colour(List<Goods> all) {
        while (steps.size() < MOST_STEPS) {
            int left = wish.budget() - spent;
            List<Goods> affordable = all.stream().filter(goods -> goods.price() <= left).toList();
            if (affordable.isEmpty() || plans.isEmpty()) {
                return;
            }
            for (PurchaseCase one : plans.keySet()) {
                progress.accept(new Progress("Looking for what raises the plans most, " + spent + " of " + wish.budget() + " spent", spent, wish.budget()));
                one.bounded(stock);
            }
            Gain best = mostGain(affordable);
            if (best == null) {
                return;
            }
            buy(Purchased.Phase.COLOUR, best.goods());
        }
    }

    /** What something gains, or at most gains, in hundredths of a point. */
    private record Gain(Goods goods, long centipoints) {
        /** Most for its price first; of two that are equal the greater gain, then the cheaper, then by type. */
        static final Comparator<Gain> BEST_FIRST = ((Comparator<Gain>) (one, other) -> Long.compare(other.centipoints() * one.goods().price(), one.centipoints() * other.goods().price()))
                .thenComparing(Comparator.comparingLong(Gain::centipoints).reversed()).thenComparing(gain -> gain.goods().price())
                .thenComparing(gain -> gain.goods().micType().id()).thenComparing(gain -> gain.goods().units());
    }

    /** Null where nothing gains anything. */
    private Gain mostGain(List<Goods> affordable) {
        List<Gain> most = new ArrayList<>(affordable.stream().map(goods -> new Gain(goods, bound(goods))).filter(gain -> gain.centipoints() > 0).sorted(Gain.BEST_FIRST).toList());
        Gain best = null;
        for (Gain bound : most) {
            if (best != null && Gain.BEST_FIRST.compare(best, bound) <= 0) {
                return best;
            }
            progress.accept(new Progress("Looking for what raises the plans most, " + spent + " of " + wish.budget() + " spent", spent, wish.budget()));
            Gain exact = new Gain(bound.goods(), exact(bound.goods()));
            if (exact.centipoints() > 0 && (best == null || Gain.BEST_FIRST.compare(exact, best) < 0)) {
                best = exact;
            }
        }
        return best;
    }

    private long bound(Goods goods) {
        return plans.entrySet().stream().mapToLong(one -> Math.max(0, one.getKey().bound(goods) - one.getValue().solution().centipoints())).sum();
    }

    private long exact(Goods goods) {
        Stock with = Goods.with(stock, bought.size(), goods);
        long gain = 0;
        for (Map.Entry<PurchaseCase, BestPlan> one : plans.entrySet()) {
            long before = one.getValue().solution().centipoints();
            if (one.getKey().bound(goods) > before) {
                gain += Math.max(0, best(one.getKey(), with).map(plan -> plan.solution().centipoints()).orElse(before) - before);
            }
        }
        return gain;
    }
}
