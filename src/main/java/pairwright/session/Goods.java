package pairwright.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import pairwright.model.Catalogue;
import pairwright.model.MicType;
import pairwright.model.Stock;

/**
 * Something that can be bought: one unit of a type, or two that are matched to each other.
 *
 * @param micType the type
 * @param units 1 or 2
 */
record Goods(MicType micType, int units) {
    /** In prices of the cheapest class: a class is as dear as its number says. */
    int price() {
        return units * micType.tier();
    }

    /** All there are up to a price class, by type, single units first. */
    static List<Goods> all(Catalogue catalogue, int mostTier) {
        List<Goods> all = new ArrayList<>();
        for (int units = 1; units <= 2; units++) {
            for (MicType type : catalogue.mics().values()) {
                if (type.tier() <= mostTier) {
                    all.add(new Goods(type, units));
                }
            }
        }
        return List.copyOf(all);
    }

    /** What there is once all of it is bought. */
    static Stock with(Stock stock, Collection<Goods> bought) {
        List<Stock.Held> units = new ArrayList<>(stock.units());
        int number = 0;
        for (Goods one : bought) {
            number++;
            for (int unit = 1; unit <= one.units(); unit++) {
                units.add(new Stock.Held(id(number, unit), one.micType().id(), "New " + one.micType().name(), null, null, null,
                        one.units() == 1 ? null : id(number, 3 - unit), null, null));
            }
        }
        return new Stock(true, units);
    }

    /** Ids of the locker are in kebab case, so these are nobody's. */
    private static String id(int number, int unit) {
        return "bought " + number + "." + unit;
    }
}
