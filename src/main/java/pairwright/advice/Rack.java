package pairwright.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import pairwright.model.MicType;
import pairwright.model.Stock;
import pairwright.rules.Paired;

/** The units that may be taken, or everything there is. Which unit is taken for what is the same every time. */
final class Rack {
    /** No locker: any number of any type. */
    static final Rack EVERYTHING = new Rack((List<Stock.Held>) null, Map.of());

    private final Map<String, List<Stock.Held>> byType;
    private final Map<MicType, Stock.Held> measured;

    /**
     * @param units in the order they are to be handed out; null for everything
     * @param measured the units that are predicted by a response of their own, by identity of what they are predicted as
     */
    Rack(List<Stock.Held> units, Map<MicType, Stock.Held> measured) {
        this.measured = measured;
        this.byType = units == null ? null : new LinkedHashMap<>();
        if (units != null) {
            units.forEach(unit -> byType.computeIfAbsent(unit.micType(), any -> new ArrayList<>()).add(unit));
        }
    }

    private Rack(Map<String, List<Stock.Held>> byType, Map<MicType, Stock.Held> measured) {
        this.byType = byType;
        this.measured = measured;
    }

    /** The same and more units of one type, which are handed out last. */
    Rack with(String micType, List<Stock.Held> more) {
        Map<String, List<Stock.Held>> all = new LinkedHashMap<>(byType);
        all.put(micType, Stream.concat(units(micType).stream(), more.stream()).toList());
        return new Rack(all, measured);
    }

    boolean everything() {
        return byType == null;
    }

    private List<Stock.Held> units(String micType) {
        return byType.getOrDefault(micType, List.of());
    }

    /** How many of a type there are. */
    int count(String micType) {
        return units(micType).size();
    }

    /** Whether there is a unit of that type at all. */
    boolean has(String micType) {
        return everything() || count(micType) > 0;
    }

    /** Whether a unit can be had that is predicted as this. */
    boolean alone(MicType kind) {
        return everything() || one(kind) != null;
    }

    /** Whether two units can be had that are predicted as these. Two of one type are predicted as their type, so that one prediction holds for both. */
    boolean both(MicType first, MicType second) {
        if (everything()) {
            return true;
        }
        return first.id().equals(second.id()) ? !measured.containsKey(first) && !measured.containsKey(second) && count(first.id()) > 1
                : alone(first) && alone(second);
    }

    /** Whether it can be set up as it was judged, a matched pair with a matched pair. */
    boolean serves(Paired pair) {
        return both(pair.first().mic(), pair.second().mic()) && (everything() || !pair.matchedPair() || matched(pair.first().mic().id()));
    }

    /** Whether it may be in an option, alone or as one of two. */
    boolean useful(MicType kind) {
        return everything() || (measured.containsKey(kind) ? alone(kind) : count(kind.id()) > 0);
    }

    /** Tells apart what is predicted differently. */
    String kind(MicType mic) {
        Stock.Held own = measured.get(mic);
        return own == null ? mic.id() : mic.id() + " " + own.id();
    }

    /** All units of a type, in the order they are handed out; none without a locker. */
    List<Stock.Held> all(String micType) {
        return everything() ? List.of() : units(micType);
    }

    /** Those of them that are predicted as this, where only one of the type is used. */
    List<Stock.Held> fit(MicType kind) {
        Stock.Held own = measured.get(kind);
        return all(kind.id()).stream().filter(unit -> own == null ? !measured.containsValue(unit) : unit.equals(own)).toList();
    }

    /** The unit to take: one that leaves every matched pair whole, if there is; null for none. */
    Stock.Held one(MicType kind) {
        List<Stock.Held> fit = fit(kind);
        return fit.stream().filter(unit -> mate(unit) == null).findFirst().orElse(fit.isEmpty() ? null : fit.get(0));
    }

    /**
     * Two units of a type to take; empty where there are not two.
     *
     * @param alike whether they should be a matched pair; else one is left whole, if there are others
     */
    List<Stock.Held> two(String micType, boolean alike) {
        List<Stock.Held> units = units(micType);
        if (units.size() < 2) {
            return List.of();
        }
        if (alike) {
            Stock.Held first = units.stream().filter(unit -> unit.free() && mate(unit) != null && mate(unit).free()).findFirst()
                    .or(() -> units.stream().filter(unit -> mate(unit) != null).findFirst()).orElse(null);
            return first == null ? units.subList(0, 2) : List.of(first, mate(first));
        }
        List<Stock.Held> apart = new ArrayList<>(units.stream().filter(unit -> mate(unit) == null).toList());
        units.stream().filter(unit -> mate(unit) != null).forEach(apart::add);
        return List.copyOf(apart.subList(0, 2));
    }

    /** Whether two of a type are here that were matched. */
    boolean matched(String micType) {
        return !everything() && units(micType).stream().anyMatch(unit -> mate(unit) != null);
    }

    /** The unit it was matched with, if that is here too. */
    private Stock.Held mate(Stock.Held unit) {
        return unit.pairMate() == null ? null
                : units(unit.micType()).stream().filter(other -> other != unit && other.id().equals(unit.pairMate())).findFirst().orElse(null);
    }
}
