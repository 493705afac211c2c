package pairwright.session;

import java.util.ArrayList;
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
 * What the marks of a locker remember. One small number is read from the database each time; the marks of a source are read again only where that says
 * that some mark is another one now. Safe to share between threads.
 */
public final class HouseMarks implements HouseMemory {
    private final Marks marks;
    private volatile Read read = new Read(-1);

    /** The marks of the sources that were asked for, none older than a revision. */
    private record Read(long revision, Map<String, List<Marks.Used>> bySource) {
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
        boolean holds(Marks.Used used) {
            return (room == null || room.equals(used.room())) && (player == null || player.equals(used.player()));
        }
    }

    /** For each type and place once for all sessions, and where room or player are named once for those alone and once for both. */
    @Override
    public List<Kept> of(String source, String room, String player) {
        List<Marks.Used> used;
        try {
            used = used(source);
        } catch (LockerFault.Unreachable away) {
            return List.of(); // a question is still answered
        }
        Set<Scope> scopes = new LinkedHashSet<>(List.of(new Scope(null, null), new Scope(room, null), new Scope(null, player), new Scope(room, player)));
        List<Kept> kept = new ArrayList<>();
        for (Scope scope : scopes) {
            counted(used, scope).forEach((place, sessions) -> kept.add(new Kept(place.micType(), place.position(),
                    (int) sessions.values().stream().filter(whole -> whole).count(), sessions.size(), scope.room(), scope.player())));
        }
        return List.copyOf(kept);
    }

    private List<Marks.Used> used(String source) {
        long revision = marks.revision();
        Read known = read;
        if (known.revision() != revision) {
            known = new Read(revision);
            read = known;
        }
        return known.bySource().computeIfAbsent(source, marks::used);
    }

    /** For each type and place the sessions it stood in, and whether it was kept in each: by everybody who had it there. */
    private static Map<Place, Map<String, Boolean>> counted(List<Marks.Used> used, Scope scope) {
        Map<Place, Map<String, Boolean>> counted = new LinkedHashMap<>();
        used.stream().filter(one -> one.position() != null && scope.holds(one)).forEach(one -> counted
                .computeIfAbsent(new Place(one.micType(), one.position()), place -> new LinkedHashMap<>())
                .merge(one.session(), one.kept(), (first, second) -> first && second));
        return counted;
    }
}
