package pairwright.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import pairwright.model.Catalogue;
import pairwright.model.Stock;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.Cap;
import pairwright.session.allocation.Problem;
import pairwright.session.allocation.Shortage;

/** What microphones to buy so that a session without a plan has one: the cheapest there are, and nothing else is borrowed. */
final class Serving {
    private final Catalogue catalogue;
    private final Allocator allocator;
    private final int mostTier;
    /** What could be bought at all. */
    private final Stock everything;

    Serving(Catalogue catalogue, Allocator allocator, int mostTier, Stock everything) {
        this.catalogue = catalogue;
        this.allocator = allocator;
        this.mostTier = mostTier;
        this.everything = everything;
    }

    /** The cheapest units, each by itself; none where no microphones alone would do. */
    Optional<List<Goods>> cheapest(PurchaseCase of, Stock stock) {
        Layout layout = of.layout(everything);
        if (!layout.unserved().isEmpty()) {
            return Optional.empty();
        }
        Map<String, Long> there = new HashMap<>();
        of.layout(stock).problem(of.layout(stock).first(1), 0).caps().forEach(cap -> there.put(cap.name(), (long) cap.there()));
        Problem all = layout.problem(few(layout), 0);
        Set<String> priced = new HashSet<>();
        List<Cap> caps = new ArrayList<>();
        for (Cap cap : all.caps()) {
            String type = cap.name().startsWith(UnitPool.TYPE) ? UnitPool.micType(cap.name()) : null;
            boolean own = UnitPool.micType(cap.name()) != null && type == null;
            int has = own ? cap.there() : (int) (long) there.getOrDefault(cap.name(), 0L);
            boolean sold = type != null && catalogue.mics().get(type).tier() <= mostTier;
            caps.add(new Cap(cap.name(), has, sold ? catalogue.mics().get(type).tier() : 0));
            if (sold) {
                priced.add(cap.name());
            }
        }
        Shortage shortage = allocator.shortage(new Problem(all.seats(), caps, all.banks(), all.pairs(), List.of(), Map.of()));
        return shortage.waysOut().stream().filter(way -> way.means() == Shortage.Means.BORROW && priced.containsAll(way.caps().keySet())).findFirst().map(way -> goods(way.caps()));
    }

    private List<Goods> goods(Map<String, Integer> caps) {
        List<Goods> goods = new ArrayList<>();
        new TreeMap<>(caps).forEach((cap, count) -> {
            for (int i = 0; i < count; i++) {
                goods.add(new Goods(catalogue.mics().get(UnitPool.micType(cap)), 1));
            }
        });
        return goods;
    }

    /** Of each seat the best way for each set of types: which of them it is does not matter for whether it can be served. */
    private static List<List<SeatChoices.Way>> few(Layout layout) {
        return layout.withLeavingOut().stream().map(ways -> {
            Set<List<String>> seen = new HashSet<>();
            return ways.stream().filter(way -> way.offer() == null || seen.add(way.offer().mics().size() > 1 ? List.of("two", way.offer().mics().get(0).micType().id())
                    : List.of(way.offer().mics().get(0).micType().id(), way.boosted().toString()))).toList();
        }).toList();
    }
}
