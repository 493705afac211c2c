package pairwright.session;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import pairwright.advice.HouseMemory;
import pairwright.advice.Kept;
import pairwright.locker.LockerFault;
import pairwright.locker.Marks;

/**
 * What the marks of a locker remember. One small number is read from the database each time; the marks of a source are read and counted again only where
 * that says that some mark is another one now. Safe to share between threads.
 */
public final class HouseMarks implements HouseMemory {
    private final Marks marks;
    private volatile Read read = new Read(-1);

    /** What was counted of the sources that were asked for, from marks none older than a revision. */
    private record Read(long revision, Map<String, Map<Scope, List<Kept>>> bySource) {
        Read(long revision) {
            this(revision, new ConcurrentHashMap<>());
        }
    }

    public HouseMarks(Marks marks) {
        this.marks = marks;
    }

    /** A type at a place. */
    private record Place(String micType, String position) {
    }

    /** How narrow something holds: null for any room, for anybody. */
    private record Scope(String room, String player) {
        /** All that a room and a player are in, the widest first; either may be null for not known. */
        static Set<Scope> around(String room, String player) {
            return new LinkedHashSet<>(List.of(new Scope(null, null), new Scope(room, null), new Scope(null, player), new Scope(room, player)));
        }
    }

    /** For each type and place once for all sessions, and where room or player are named once for those alone and once for both. */
    @Override
    public List<Kept> of(String source, String room, String player) {
        Map<Scope, List<Kept>> kept;
        try {
            kept = kept(source);
        } catch (LockerFault.Unreachable away) {
            return List.of(); // a question is still answered
        }
        return Scope.around(room, player).stream().flatMap(scope -> kept.getOrDefault(scope, List.of()).stream()).toList();
    }

    private Map<Scope, List<Kept>> kept(String source) {
        long revision = marks.revision();
        Read known = read;
        if (known.revision() != revision) {
            known = new Read(revision);
            read = known;
        }
        return known.bySource().computeIfAbsent(source, any -> counted(marks.used(any)));
    }

    /** Every mark counts for all sessions, for those in its room, for those of its player, and for both. */
    private static Map<Scope, List<Kept>> counted(List<Marks.Used> used) {
        Map<Scope, Map<Place, Map<String, Boolean>>> sessions = new HashMap<>();
        used.stream().filter(one -> one.position() != null).forEach(one -> Scope.around(one.room(), one.player()).forEach(scope -> sessions
                .computeIfAbsent(scope, any -> new LinkedHashMap<>())
                .computeIfAbsent(new Place(one.micType(), one.position()), any -> new LinkedHashMap<>())
                .merge(one.session(), one.kept(), (first, second) -> first && second)));
        Map<Scope, List<Kept>> kept = new HashMap<>();
        sessions.forEach((scope, places) -> kept.put(scope, places.entrySet().stream().map(place -> kept(place.getKey(), place.getValue(), scope)).toList()));
        return kept;
    }

    /** @param wholes for each session in which it stood there, whether it was kept: by everybody who had it there */
    private static Kept kept(Place place, Map<String, Boolean> wholes, Scope scope) {
        return new Kept(place.micType(), place.position(), (int) wholes.values().stream().filter(whole -> whole).count(), wholes.size(), scope.room(), scope.player());
    }
}
