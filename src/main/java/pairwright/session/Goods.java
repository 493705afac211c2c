package pairwright.session;

import java.util.ArrayList;
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
    static Stock with(Stock stock, List<Goods> bought) {
        Stock with = stock;
        for (int i = 0; i < bought.size(); i++) {
            with = with(with, i, bought.get(i));
        }
        return with;
    }

    /**
     * What there is once one of it is bought.
     *
     * @param before so many were bought before
     */
    static Stock with(Stock stock, int before, Goods bought) {
        List<Stock.Held> units = new ArrayList<>(stock.units());
        for (int unit = 1; unit <= bought.units(); unit++) {
            units.add(new Stock.Held(id(before, unit), bought.micType().id(), "New " + bought.micType().name(), null, null, null,
                    bought.units() == 1 ? null : id(before, 3 - unit), null, null));
        }
        return new Stock(true, units);
    }

    /** Ids of the locker are in kebab case, so these are nobody's. */
    private static String id(int number, int unit) {
        return "bought " + number + "." + unit;
    }
}
