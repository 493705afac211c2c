package pairwright.locker;

import java.sql.SQLException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Who has what at this moment, and how much of each type is taken over a month. */
final class Usage {
    private Usage() {
    }

    static List<Out> out(Sql sql, Shelf shelf, long now) throws SQLException {
        List<BookingRows.Taking> takings = sql.all("SELECT unit_id, booking_id, from_ts, until_ts FROM line WHERE taken_ts IS NOT NULL AND returned_ts IS NULL"
                + " ORDER BY until_ts, unit_id", BookingRows.Taking::of);
        Map<Long, Booking> bookings = BookingRows.of(sql, takings.stream().map(BookingRows.Taking::booking).toList());
        return takings.stream().map(taking -> {
            Booking booking = bookings.get(taking.booking());
            Booking.Line line = booking.lines().stream().filter(each -> each.unit().equals(taking.unit())).findFirst().orElseThrow();
            return new Out(shelf.byId().get(taking.unit()), booking, line, taking.until() <= now);
        }).toList();
    }

    static Use of(Sql sql, Shelf shelf, YearMonth month, ZoneId zone) throws SQLException {
        Map<String, Integer> units = new TreeMap<>();
        shelf.units().stream().filter(unit -> unit.kind() == UnitKind.MIC)
                .forEach(unit -> units.merge(unit.micType(), unit.condition() == Condition.LOST ? 0 : 1, Integer::sum));
        long[] days = new long[month.lengthOfMonth() + 1];
        for (int day = 0; day < days.length; day++) {
            LocalDate date = month.atDay(1).plusDays(day);
            days[day] = date.atStartOfDay(zone).toEpochSecond();
        }
        Map<String, List<Set<String>>> taken = new HashMap<>();
        BookingRows.takings(sql, days[0], days[days.length - 1]).forEach(taking -> count(taken, shelf.byId().get(taking.unit()), taking, days));
        List<Use.OfType> types = new ArrayList<>();
        units.forEach((type, many) -> types.add(new Use.OfType(type, many,
                taken.getOrDefault(type, empty(days)).stream().map(Set::size).toList())));
        return new Use(month, types);
    }

    private static void count(Map<String, List<Set<String>>> taken, Unit unit, BookingRows.Taking taking, long[] days) {
        if (unit == null || unit.kind() != UnitKind.MIC) {
            return;
        }
        List<Set<String>> ofType = taken.computeIfAbsent(unit.micType(), type -> empty(days));
        for (int day = 0; day + 1 < days.length; day++) {
            if (taking.from() < days[day + 1] && taking.until() > days[day]) {
                ofType.get(day).add(unit.id());
            }
        }
    }

    private static List<Set<String>> empty(long[] days) {
        List<Set<String>> empty = new ArrayList<>();
        for (int day = 0; day + 1 < days.length; day++) {
            empty.add(new HashSet<>());
        }
        return empty;
    }
}
