package pairwright.session;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import pairwright.advice.Offer;

/** What seats can get, kept for other plans: it depends on what sorts of things there are, not on how many of them, and on what is left to be done. Safe to share between threads. */
final class WaysKept {
    /** As many seats as are kept judged, with all of the gear and with some of it lost. */
    private static final int MOST_KEPT = 300;

    private final Map<Key, Held> kept = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Held> eldest) {
            return size() > MOST_KEPT;
        }
    };

    /** The seat is meant by identity: what is judged anew is another. */
    private record Key(AtSeat at, Resources.Others others, long rangeCentipoints) {
        @Override
        public int hashCode() {
            return Objects.hash(System.identityHashCode(at), rangeCentipoints);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && at == key.at && rangeCentipoints == key.rangeCentipoints && others.equals(key.others);
        }
    }

    /** @param found with the units of that time, and the work that was left then */
    private record Held(UnitPool.Sorts units, Object work, SeatChoices.Found found) {
    }

    /**
     * What was found before; where the units are of other sorts by now, what is found anew of those types that differ.
     *
     * @param rangeCentipoints how much more a seat beside another can make of one offer than of another
     * @param work equal where the same is left to be done
     * @param anew finds it, given which offers are as they were and what was found before
     */
    SeatChoices.Found of(AtSeat at, Resources.Sorts sorts, long rangeCentipoints, Object work,
            BiFunction<Predicate<Offer>, SeatChoices.Found, SeatChoices.Found> anew) {
        Key key = new Key(at, sorts.others(), rangeCentipoints);
        Held before = last(key);
        if (before != null && before.units().equals(sorts.units()) && Objects.equals(before.work(), work)) {
            return before.found();
        }
        SeatChoices.Found found = before == null ? anew.apply(any -> false, SeatChoices.Found.NOTHING) : anew.apply(offer -> before.units().alike(sorts.units(), offer), before.found());
        synchronized (kept) {
            kept.put(key, new Held(sorts.units(), work, found));
        }
        return found;
    }

    private Held last(Key key) {
        synchronized (kept) {
            return kept.get(key);
        }
    }
}
