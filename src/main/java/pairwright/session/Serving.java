package pairwright.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pairwright.model.Catalogue;
import pairwright.model.Stock;
import pairwright.session.allocation.Cap;
import pairwright.session.allocation.Problem;
import pairwright.session.allocation.Shortage;

/** What microphones to buy so that a session without a plan has one: the cheapest there are, and nothing else is borrowed. No seat is bought two at once that one would serve. */
final class Serving {
    private final Catalogue catalogue;
    private final int mostTier;
    /** What could be bought at all. */
    private final Stock everything;

    Serving(Catalogue catalogue, int mostTier, Stock everything) {
        this.catalogue = catalogue;
        this.mostTier = mostTier;
        this.everything = everything;
    }

    /**
     * The cheapest units, each by itself; none where no microphones alone would do.
     *
     * @throws pairwright.session.allocation.NotDecided where that was not found out in time
     */
    Optional<List<Goods>> cheapest(PurchaseCase of, Stock stock) {
        Layout layout = of.layout(everything);
        if (!layout.unserved().isEmpty()) {
            return Optional.empty();
        }
        Map<String, Integer> there = new HashMap<>();
        of.layout(stock).resources().caps().forEach(cap -> there.put(cap.name(), cap.there()));
        Problem all = layout.problem(few(layout, stock));
        Set<String> priced = new HashSet<>();
        List<Cap> caps = new ArrayList<>();
        for (Cap cap : all.caps()) {
            String type = cap.name().startsWith(UnitPool.TYPE) ? UnitPool.micType(cap.name()) : null;
            boolean own = UnitPool.micType(cap.name()) != null && type == null;
            int has = own ? cap.there() : there.getOrDefault(cap.name(), 0);
            boolean sold = type != null && catalogue.mics().get(type).tier() <= mostTier;
            caps.add(new Cap(cap.name(), has, sold ? catalogue.mics().get(type).tier() : 0));
            if (sold) {
                priced.add(cap.name());
            }
        }
        Shortage shortage = of.allocator().shortage(new Problem(all.seats(), caps, all.banks(), all.pairs(), List.of(), Map.of()));
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

    /** Of each seat the ways with one microphone, and those with two of which one is there already; only where a seat has none with one all of them. */
    private static List<List<SeatChoices.Way>> few(Layout layout, Stock stock) {
        Set<String> owned = stock.units().stream().filter(Stock.Held::free).map(Stock.Held::micType).collect(Collectors.toSet());
        return layout.withLeavingOut().stream().map(ways -> {
            boolean alone = ways.stream().anyMatch(way -> way.offer() != null && way.offer().mics().size() == 1);
            return ways.stream().filter(way -> way.offer() == null || !alone || way.offer().mics().size() == 1
                    || way.offer().mics().stream().anyMatch(mic -> owned.contains(mic.micType().id()))).toList();
        }).toList();
    }
}
