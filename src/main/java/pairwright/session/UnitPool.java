package pairwright.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.Given;
import pairwright.model.Stock;
import pairwright.session.allocation.Cap;

/**
 * The units that are free, as counts that a search can reckon with, and handed out by name when a plan is found. Units that are predicted by a
 * response of their own are told apart; the others of a type are alike but for who is matched with whom.
 */
final class UnitPool {
    static final String TYPE = "type ";
    private static final String PLAIN = "plain ";
    private static final String UNIT = "unit ";
    private static final String MATCHED = "matched ";

    private final boolean counted;
    private final Map<String, List<Stock.Held>> byType = new TreeMap<>();
    private final Map<String, List<List<Stock.Held>>> matched = new TreeMap<>();
    /** Ids of units that are offered by their own response. */
    private final Set<String> own;

    /**
     * @param stock null where units are not counted
     * @param own ids of units that an offer may ask for by name
     */
    UnitPool(Stock stock, Set<String> own) {
        this.counted = stock != null;
        this.own = own;
        if (counted) {
            stock.units().stream().filter(Stock.Held::free).forEach(unit -> byType.computeIfAbsent(unit.micType(), any -> new ArrayList<>()).add(unit));
            byType.forEach((type, units) -> matched.put(type, pairs(units)));
        }
    }

    /** @param types empty where units are not counted */
    record Sorts(boolean counted, Map<String, Sort> types) {
        /** Whether there is the same of all types of an offer. */
        boolean alike(Sorts other, Offer offer) {
            return counted == other.counted && offer.mics().stream().allMatch(mic -> !mic.micType().wantsBox() && Objects.equals(types.get(mic.micType().id()), other.types.get(mic.micType().id())));
        }
    }

    /**
     * What there is of a type.
     *
     * @param two whether there are two or more
     * @param plain whether there is any without a response of its own
     * @param own ids of those that have one
     * @param plainPair whether there is a matched pair without
     * @param ownPairs the ids of each other matched pair
     */
    private record Sort(boolean two, boolean plain, Set<String> own, boolean plainPair, List<List<String>> ownPairs) {
    }

    Sorts sorts() {
        Map<String, Sort> types = new HashMap<>();
        byType.forEach((type, units) -> types.put(type, new Sort(units.size() > 1, units.stream().anyMatch(unit -> !isOwn(unit)),
                units.stream().filter(this::isOwn).map(Stock.Held::id).collect(Collectors.toSet()), matched.get(type).stream().anyMatch(this::plain),
                matched.get(type).stream().filter(pair -> !plain(pair)).map(pair -> pair.stream().map(Stock.Held::id).toList()).toList())));
        return new Sorts(counted, types);
    }

    boolean counted() {
        return counted;
    }

    /** Whether any of a type is free. */
    boolean has(String micType) {
        return byType.containsKey(micType);
    }

    /** How many of a type are free. */
    int count(String micType) {
        return byType.getOrDefault(micType, List.of()).size();
    }

    /** A type of which there is none. */
    Cap none(String micType, int price) {
        return new Cap(TYPE + micType, 0, price);
    }

    /** What line boxes of a type take; nothing where units are not counted. */
    Map<String, Integer> box(String micType, int count) {
        return !counted ? Map.of() : hasOwn(micType) ? Map.of(TYPE + micType, count, PLAIN + micType, count) : Map.of(TYPE + micType, count);
    }

    /** Two by two those that were matched, each once. */
    private static List<List<Stock.Held>> pairs(List<Stock.Held> units) {
        Set<Stock.Held> taken = new HashSet<>();
        List<List<Stock.Held>> pairs = new ArrayList<>();
        for (Stock.Held unit : units) {
            units.stream().filter(other -> other != unit && !taken.contains(unit) && !taken.contains(other)
                    && (other.id().equals(unit.pairMate()) || unit.id().equals(other.pairMate()))).findFirst().ifPresent(mate -> {
                taken.add(unit);
                taken.add(mate);
                pairs.add(List.of(unit, mate));
            });
        }
        return pairs;
    }

    private boolean isOwn(Stock.Held unit) {
        return own.contains(unit.id());
    }

    private boolean hasOwn(String micType) {
        return byType.getOrDefault(micType, List.of()).stream().anyMatch(this::isOwn);
    }

    /**
     * What there is.
     *
     * @param price of borrowing one more of a type
     */
    List<Cap> caps(ToIntFunction<String> price) {
        List<Cap> caps = new ArrayList<>();
        byType.forEach((type, units) -> {
            caps.add(new Cap(TYPE + type, units.size(), price.applyAsInt(type)));
            if (hasOwn(type)) {
                caps.add(new Cap(PLAIN + type, (int) units.stream().filter(unit -> !isOwn(unit)).count(), price.applyAsInt(type)));
                units.stream().filter(this::isOwn).forEach(unit -> caps.add(new Cap(UNIT + unit.id(), 1, 0)));
            }
            List<List<Stock.Held>> pairs = matched.get(type);
            caps.add(new Cap(MATCHED + type, (int) pairs.stream().filter(this::plain).count(), 0));
            pairs.stream().filter(pair -> !plain(pair)).forEach(pair -> caps.add(new Cap(MATCHED + pair.get(0).id(), 1, 0)));
        });
        return caps;
    }

    private boolean plain(List<Stock.Held> pair) {
        return pair.stream().noneMatch(this::isOwn);
    }

    /** The mic type a cap counts; null for a cap of something else. */
    static String micType(String cap) {
        return cap.startsWith(TYPE) ? cap.substring(TYPE.length()) : cap.startsWith(PLAIN) ? cap.substring(PLAIN.length()) : null;
    }

    /** The ways an offer may be served, each as what it takes; empty where it cannot be, one that takes nothing where units are not counted. */
    List<Map<String, Integer>> ways(Offer offer) {
        if (!counted) {
            return List.of(Map.of());
        }
        List<OfferedMic> mics = offer.mics();
        String type = mics.get(0).micType().id();
        if (mics.size() == 2 && type.equals(mics.get(1).micType().id())) {
            return offer.matchedPair() ? matchedWays(type) : byType.getOrDefault(type, List.of()).size() < 2 ? List.of() : List.of(Map.of(TYPE + type, 2));
        }
        Map<String, Integer> takes = new LinkedHashMap<>();
        for (OfferedMic mic : mics) {
            List<Stock.Held> units = byType.getOrDefault(mic.micType().id(), List.of());
            if (units.stream().noneMatch(unit -> mic.unit() == null ? !isOwn(unit) : unit.id().equals(mic.unit()))) {
                return List.of();
            }
            takes.merge(TYPE + mic.micType().id(), 1, Integer::sum);
            if (mic.unit() != null) {
                takes.merge(UNIT + mic.unit(), 1, Integer::sum);
            } else if (hasOwn(mic.micType().id())) {
                takes.merge(PLAIN + mic.micType().id(), 1, Integer::sum);
            }
        }
        return List.of(takes);
    }

    private List<Map<String, Integer>> matchedWays(String type) {
        List<Map<String, Integer>> ways = new ArrayList<>();
        boolean plainOne = false;
        for (List<Stock.Held> pair : matched.getOrDefault(type, List.of())) {
            if (plain(pair)) {
                plainOne = true;
                continue;
            }
            Map<String, Integer> takes = new LinkedHashMap<>(Map.of(TYPE + type, 2, MATCHED + pair.get(0).id(), 1));
            pair.forEach(unit -> takes.merge(isOwn(unit) ? UNIT + unit.id() : PLAIN + type, 1, Integer::sum));
            ways.add(takes);
        }
        if (plainOne) {
            Map<String, Integer> takes = new LinkedHashMap<>(Map.of(TYPE + type, 2, MATCHED + type, 1));
            if (hasOwn(type)) {
                takes.put(PLAIN + type, 2);
            }
            ways.add(takes);
        }
        return ways;
    }

    /**
     * The units for what was chosen. Who must have a certain unit or a matched pair comes first; then who takes one, of those whose mate is not left
     * either, if there are; then who takes any two.
     *
     * @param chosen an offer and how it is served, as {@link #ways} says
     */
    List<List<Given>> handOut(List<Chosen> chosen) {
        Set<Stock.Held> left = new LinkedHashSet<>();
        byType.values().forEach(left::addAll);
        Stock.Held[][] given = new Stock.Held[chosen.size()][];
        for (int i = 0; i < chosen.size() && counted; i++) {
            given[i] = new Stock.Held[chosen.get(i).offer().mics().size()];
        }
        for (Turn turn : Turn.values()) {
            // those who have theirs already keep it, before anybody else chooses
            for (boolean again : counted ? new boolean[] {true, false} : new boolean[0]) {
                for (int i = 0; i < chosen.size(); i++) {
                    if (given[i][0] == null && turn(chosen.get(i)) == turn) {
                        give(chosen.get(i), given[i], left, again);
                    }
                }
            }
        }
        List<List<Given>> named = new ArrayList<>();
        for (int i = 0; i < chosen.size(); i++) {
            List<Given> of = new ArrayList<>();
            for (int mic = 0; mic < chosen.get(i).offer().mics().size(); mic++) {
                of.add(counted ? named(given[i], mic) : null);
            }
            named.add(of);
        }
        return named;
    }

    /** An offer, what it takes, and the ids of the units that stand there already, one for each microphone; null for none. */
    record Chosen(Offer offer, Map<String, Integer> takes, List<String> standing) {
    }

    private enum Turn { MATCHED, APART, ANY_TWO }

    private static Turn turn(Chosen chosen) {
        List<OfferedMic> mics = chosen.offer().mics();
        boolean alike = mics.size() == 2 && mics.get(0).micType().id().equals(mics.get(1).micType().id());
        return !alike ? Turn.APART : chosen.offer().matchedPair() ? Turn.MATCHED : Turn.ANY_TWO;
    }

    private void give(Chosen chosen, Stock.Held[] given, Set<Stock.Held> left, boolean again) {
        List<OfferedMic> mics = chosen.offer().mics();
        List<Stock.Held> found = switch (turn(chosen)) {
            case MATCHED -> matchedLeft(chosen, left, again);
            case ANY_TWO -> twoLeft(chosen, left, again);
            case APART -> {
                List<Stock.Held> one = new ArrayList<>();
                for (int mic = 0; mic < mics.size(); mic++) {
                    Stock.Held unit = oneLeft(mics.get(mic), standing(chosen, mic), left, again);
                    if (unit != null) {
                        one.add(unit);
                    }
                }
                yield one.size() == mics.size() ? one : List.of();
            }
        };
        if (found.isEmpty()) {
            if (!again) {
                throw new IllegalStateException("The plan takes more units than are free for " + chosen.takes());
            }
            return;
        }
        for (int mic = 0; mic < given.length; mic++) {
            given[mic] = found.get(mic);
            left.remove(found.get(mic));
        }
    }

    private static String standing(Chosen chosen, int mic) {
        return chosen.standing() == null || mic >= chosen.standing().size() ? null : chosen.standing().get(mic);
    }

    private List<Stock.Held> matchedLeft(Chosen chosen, Set<Stock.Held> left, boolean again) {
        String type = chosen.offer().mics().get(0).micType().id();
        return matched.get(type).stream()
                .filter(pair -> left.containsAll(pair))
                .filter(pair -> chosen.takes().containsKey(MATCHED + (plain(pair) ? type : pair.get(0).id())))
                .filter(pair -> !again || pair.stream().allMatch(unit -> chosen.standing() != null && chosen.standing().contains(unit.id())))
                .findFirst().map(pair -> again && pair.get(1).id().equals(standing(chosen, 0)) ? List.of(pair.get(1), pair.get(0)) : pair).orElse(List.of());
    }

    private List<Stock.Held> twoLeft(Chosen chosen, Set<Stock.Held> left, boolean again) {
        String type = chosen.offer().mics().get(0).micType().id();
        List<Stock.Held> units = left.stream().filter(unit -> unit.micType().equals(type)).toList();
        if (again) {
            List<Stock.Held> same = new ArrayList<>();
            for (int mic = 0; mic < 2; mic++) {
                String id = standing(chosen, mic);
                units.stream().filter(unit -> unit.id().equals(id)).findFirst().ifPresent(same::add);
            }
            return same.size() == 2 && same.get(0) != same.get(1) ? same : List.of();
        }
        return units.size() < 2 ? List.of() : List.of(units.get(0), units.get(1));
    }

    private Stock.Held oneLeft(OfferedMic mic, String standing, Set<Stock.Held> left, boolean again) {
        List<Stock.Held> fit = left.stream().filter(unit -> mic.unit() != null ? unit.id().equals(mic.unit()) : unit.micType().equals(mic.micType().id()) && !isOwn(unit)).toList();
        if (again) {
            return fit.stream().filter(unit -> unit.id().equals(standing)).findFirst().orElse(null);
        }
        return fit.stream().filter(unit -> left.stream().noneMatch(other -> mates(unit, other))).findFirst().orElse(fit.isEmpty() ? null : fit.get(0));
    }

    private static boolean mates(Stock.Held unit, Stock.Held other) {
        return other != unit && (other.id().equals(unit.pairMate()) || unit.id().equals(other.pairMate()));
    }

    /**
     * Line boxes that nobody has yet, one after the other.
     *
     * @param gone ids of units that are handed out; what is given here is added
     * @param standing the one that is there already; null for none
     * @return null where units are not counted
     */
    Given handOutBox(String micType, String standing, Set<String> gone) {
        if (!counted) {
            return null;
        }
        List<Stock.Held> left = byType.get(micType).stream().filter(unit -> !gone.contains(unit.id()) && !isOwn(unit)).toList();
        Stock.Held box = left.stream().filter(unit -> unit.id().equals(standing)).findFirst().orElseGet(() -> left.get(0));
        gone.add(box.id());
        return named(new Stock.Held[] {box}, 0);
    }

    private static Given named(Stock.Held[] units, int mic) {
        Stock.Held unit = units[mic];
        String mate = units.length == 2 && mates(unit, units[1 - mic]) ? units[1 - mic].id() : null;
        return new Given(unit.id(), unit.label(), unit.tag(), unit.storedAt(), unit.note(), mate, null, null);
    }
}
