package pairwright.locker;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What a locker should do, in the plainest way: whole hours, counted one by one. Every act says whether it may be done; if not, nothing changed. */
final class NaiveLocker {
    private static final int A_DAY = 24;

    final Map<String, Condition> units = new TreeMap<>();
    final Map<Integer, Kept> bookings = new TreeMap<>();
    int now;
    private int next = 1;

    /** A booking. */
    static final class Kept {
        final BookingKind kind;
        final Map<String, Part> parts = new LinkedHashMap<>();

        Kept(BookingKind kind) {
            this.kind = kind;
        }
    }

    /** One unit of it; hours, null for not yet. */
    record Part(int from, int until, Integer taken, Integer returned) {
        boolean isOut() {
            return taken != null && returned == null;
        }

        boolean has(int hour) {
            return from <= hour && hour < until;
        }
    }

    boolean book(List<String> wanted, int from, int until, BookingKind kind) {
        if (!wanted.stream().allMatch(unit -> fit(unit, kind) && alone(unit, from, until, null))) {
            return false;
        }
        Kept kept = new Kept(kind);
        wanted.forEach(unit -> kept.parts.put(unit, new Part(from, until, null, null)));
        bookings.put(next++, kept);
        return true;
    }

    boolean alter(int id, List<String> wanted, int from, int until) {
        Kept before = bookings.get(id);
        Kept after = new Kept(before.kind);
        Set<String> units = new LinkedHashSet<>(wanted.isEmpty() ? before.parts.keySet() : wanted);
        for (Map.Entry<String, Part> part : before.parts.entrySet()) {
            if (part.getValue().isOut() && (!units.contains(part.getKey()) || until <= part.getValue().from())) {
                return false;
            }
            if (part.getValue().returned() != null) {
                units.add(part.getKey());
            }
        }
        for (String unit : units) {
            Part part = before.parts.get(unit);
            if (part != null && part.returned() != null) {
                after.parts.put(unit, part);
                continue;
            }
            int since = part != null && part.isOut() ? part.from() : from;
            if (part == null && !fit(unit, before.kind) || !alone(unit, since, until, before)) {
                return false;
            }
            after.parts.put(unit, new Part(since, until, part == null ? null : part.taken(), null));
        }
        bookings.put(id, after);
        return true;
    }

    boolean cancel(int id) {
        Map<String, Part> parts = bookings.get(id).parts;
        if (parts.values().stream().anyMatch(Part::isOut)) {
            return false;
        }
        parts.values().removeIf(part -> part.taken() == null);
        if (parts.isEmpty()) {
            bookings.remove(id);
        }
        return true;
    }

    boolean takeOut(String unit, Integer until) {
        if (out().contains(unit)) {
            return false;
        }
        Kept holder = null;
        for (int hour = now; hour < now + A_DAY && holder == null; hour++) {
            holder = holder(unit, hour);
        }
        if (holder != null && (holder.parts.get(unit).has(now) || until == null)) {
            Part part = holder.parts.get(unit);
            if (!fit(unit, holder.kind)) {
                return false;
            }
            holder.parts.put(unit, new Part(Math.min(now, part.from()), part.until(), now, null));
            return true;
        }
        if (until == null || !book(List.of(unit), now, until, BookingKind.LOAN)) {
            return false;
        }
        bookings.get(next - 1).parts.put(unit, new Part(now, until, now, null));
        return true;
    }

    boolean bringBack(String unit) {
        for (Kept kept : bookings.values()) {
            Part part = kept.parts.get(unit);
            if (part != null && part.isOut()) {
                kept.parts.put(unit, new Part(part.from(), Math.min(part.until(), Math.max(now, part.from())), part.taken(), now));
                return true;
            }
        }
        return false;
    }

    Set<String> free(int from, int until) {
        Set<String> free = new TreeSet<>(units.keySet());
        free.removeIf(unit -> !units.get(unit).usable() || !alone(unit, from, until, null));
        return free;
    }

    Set<String> out() {
        Set<String> out = new TreeSet<>();
        bookings.values().forEach(kept -> kept.parts.forEach((unit, part) -> {
            if (part.isOut()) {
                out.add(unit);
            }
        }));
        return out;
    }

    Set<String> overdue() {
        Set<String> late = new TreeSet<>();
        bookings.values().forEach(kept -> kept.parts.forEach((unit, part) -> {
            if (part.isOut() && part.until() <= now) {
                late.add(unit);
            }
        }));
        return late;
    }

    /** Each booking with its parts, as text. */
    List<String> told() {
        List<String> told = new ArrayList<>();
        bookings.forEach((id, kept) -> told.add(id + " " + kept.parts));
        return told;
    }

    private boolean fit(String unit, BookingKind kind) {
        return units.get(unit).usable() || kind == BookingKind.REPAIR && units.get(unit) == Condition.IN_REPAIR;
    }

    private Kept holder(String unit, int hour) {
        return bookings.values().stream().filter(kept -> kept.parts.containsKey(unit) && kept.parts.get(unit).has(hour)).findFirst().orElse(null);
    }

    private boolean alone(String unit, int from, int until, Kept but) {
        for (int hour = from; hour < until; hour++) {
            Kept holder = holder(unit, hour);
            if (holder != null && holder != but) {
                return false;
            }
        }
        return from >= now + A_DAY || bookings.values().stream().noneMatch(kept -> kept != but && kept.parts.containsKey(unit)
                && kept.parts.get(unit).isOut() && kept.parts.get(unit).until() <= now && kept.parts.get(unit).until() < until);
    }
}
