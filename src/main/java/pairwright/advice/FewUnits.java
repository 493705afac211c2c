package pairwright.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import pairwright.model.Stock;

/** As many units of each type as can make a difference to what comes first: a hundred of one type serve no better than a few. */
final class FewUnits {
    /** No option takes more of a type. */
    private static final int OF_A_TYPE = 2;
    private static final int FEW = 12;

    private FewUnits() {
    }

    /** @param taken whether a unit may be used */
    static List<Stock.Held> of(List<Stock.Held> units, Predicate<Stock.Held> taken) {
        Map<String, List<Stock.Held>> byType = new LinkedHashMap<>();
        units.forEach(unit -> byType.computeIfAbsent(unit.micType(), any -> new ArrayList<>()).add(unit));
        Set<Stock.Held> kept = new LinkedHashSet<>();
        byType.values().forEach(of -> kept.addAll(of.size() <= FEW ? of : few(of, taken)));
        return units.stream().filter(kept::contains).toList();
    }

    /** Those that are predicted by their own response, a matched pair, and two more. */
    private static Set<Stock.Held> few(List<Stock.Held> ofType, Predicate<Stock.Held> taken) {
        Set<Stock.Held> kept = new LinkedHashSet<>();
        ofType.stream().filter(unit -> unit.ownResponseDb() != null && !Supply.isLost(unit)).sorted(Comparator.comparing(Stock.Held::id))
                .limit(Supply.MEASURED_OF_A_TYPE).forEach(kept::add);
        ofType.stream().filter(unit -> taken.test(unit) && !kept.contains(unit)).limit(OF_A_TYPE).toList().forEach(kept::add);
        Map<String, Stock.Held> byId = new LinkedHashMap<>();
        ofType.stream().filter(taken).forEach(unit -> byId.put(unit.id(), unit));
        byId.values().stream().filter(unit -> unit.pairMate() != null && byId.containsKey(unit.pairMate())).findFirst().ifPresent(unit -> {
            kept.add(unit);
            kept.add(byId.get(unit.pairMate()));
        });
        return kept;
    }
}
