package pairwright.lab;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import pairwright.advice.Knowledge;
import pairwright.advice.MoveFinder;
import pairwright.model.Catalogue;
import pairwright.model.Complaint;
import pairwright.model.MicType;
import pairwright.model.Room;
import pairwright.model.Source;
import pairwright.model.Stock;
import pairwright.numbers.Numbers;
import pairwright.rules.RuleBase;

/** What exercises are made of: what is known at one moment, and the types there are to work with. Safe to share between threads. */
public final class Lab {
    private static final int MOST_WORKED = 4;

    private final Knowledge now;
    private final Map<String, Integer> units;
    private final MoveFinder moves;
    private final Numbers numbers = new Numbers();
    private final Map<Case, Object> worked = new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Case, Object> eldest) {
            return size() > MOST_WORKED;
        }
    };

    /**
     * A lab.
     *
     * @param now what is known
     * @param units how many there are of each type that may be used; types that the catalogue does not have are left aside. Null for any type
     */
    public Lab(Knowledge now, Map<String, Integer> units) {
        this.now = now;
        this.units = units == null ? null : new TreeMap<>(units.entrySet().stream()
                .filter(of -> of.getValue() > 0 && now.catalogue().mics().containsKey(of.getKey())).collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
        this.moves = new MoveFinder(() -> now);
    }

    /** What there is of each type in a locker, whoever has it; what is lost is left out. */
    public static Map<String, Integer> units(Stock stock) {
        return stock.units().stream().filter(unit -> unit.free() || !unit.out().why().equals("lost"))
                .collect(Collectors.groupingBy(Stock.Held::micType, TreeMap::new, Collectors.summingInt(unit -> 1)));
    }

    public Catalogue catalogue() {
        return now.catalogue();
    }

    public RuleBase rules() {
        return now.rules();
    }

    public Knowledge knowledge() {
        return now;
    }

    /** Finds what to move. */
    public MoveFinder moves() {
        return moves;
    }

    public Numbers numbers() {
        return numbers;
    }

    /** Hands over what was worked out while a case was drawn; a few are kept. */
    void worked(Case drawn, Object work) {
        synchronized (worked) {
            worked.put(drawn, work);
        }
    }

    /** What was worked out of a case, made anew where nobody handed it over. Whoever takes it has it alone. */
    <T> T worked(Case drawn, Class<T> kind, Supplier<T> anew) {
        synchronized (worked) {
            Object work = worked.remove(drawn);
            if (kind.isInstance(work)) {
                return kind.cast(work);
            }
        }
        return anew.get();
    }

    /** The types there are to work with, in the order of the catalogue. */
    public List<MicType> types() {
        return now.catalogue().mics().values().stream().filter(type -> units == null || units.containsKey(type.id())).toList();
    }

    /** How many there are of a type; as many as are wanted without a locker. */
    public int units(String micType) {
        return units == null ? Integer.MAX_VALUE : units.getOrDefault(micType, 0);
    }

    /** A locker with one unit of each of these types and no other. */
    static Stock oneOfEach(Collection<String> types) {
        return new Stock(true, types.stream().map(type -> new Stock.Held(type, type, type, null, null, null, null, null, null)).toList());
    }

    /** @throws IllegalArgumentException where there is none */
    Source source(String id) {
        return there(id, "source", now.catalogue().sources()::get);
    }

    /** @throws IllegalArgumentException where there is none */
    MicType type(String id) {
        return there(id, "mic type", now.catalogue().mics()::get);
    }

    /** @throws IllegalArgumentException where there is none */
    Room room(String id) {
        return there(id, "room", now.catalogue().rooms()::get);
    }

    /** @throws IllegalArgumentException where there is none */
    Complaint complaint(String id) {
        return there(id, "complaint", now.catalogue().complaints()::get);
    }

    private static <T> T there(String id, String what, Function<String, T> find) {
        T found = find.apply(id);
        if (found == null) {
            throw new IllegalArgumentException("The exercise needs the " + what + " \"" + id + "\", which the catalogue does not have any more");
        }
        return found;
    }
}
