package pairwright.locker;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Looks for two who have one unit at a time, by another way than the locker does: it sorts and compares neighbours. */
final class Overlaps {
    private Overlaps() {
    }

    private record Held(String booking, Span span) {
    }

    static List<String> of(List<Booking> bookings) {
        Map<String, List<Held>> byUnit = new TreeMap<>();
        bookings.forEach(booking -> booking.lines().forEach(line ->
                byUnit.computeIfAbsent(line.unit(), unit -> new ArrayList<>()).add(new Held(booking.id(), line.span()))));
        List<String> found = new ArrayList<>();
        byUnit.forEach((unit, held) -> {
            held.sort(Comparator.comparing(one -> one.span().from()));
            for (int next = 1; next < held.size(); next++) {
                Held before = held.get(next - 1);
                Held after = held.get(next);
                if (after.span().from().isBefore(before.span().until())) {
                    found.add(unit + " is in bookings " + before.booking() + " and " + after.booking() + " at " + after.span().from());
                }
            }
        });
        return found;
    }

    static Map<String, Booking> byId(List<Booking> bookings) {
        Map<String, Booking> byId = new HashMap<>();
        bookings.forEach(booking -> byId.put(booking.id(), booking));
        return byId;
    }
}
