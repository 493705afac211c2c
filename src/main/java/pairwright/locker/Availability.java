package pairwright.locker;

import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.model.Stock;

/** What is free for a time, and what takes the rest. */
final class Availability {
    /** The first line of a unit that ends after the time begins: since lines of a unit never overlap, no other can begin earlier. */
    private static final String BUSY = "SELECT u.id FROM unit u WHERE (SELECT l.from_ts FROM line l WHERE l.unit_id = u.id AND l.until_ts > ?"
            + " AND l.from_ts < l.until_ts ORDER BY l.until_ts LIMIT 1) < ?";
    private static final Comparator<Unit> HANDED_OUT = Comparator.<Unit, Integer>comparing(unit -> unit.condition().ordinal()).thenComparing(Shelf.BY_LABEL);

    private Availability() {
    }

    static List<Unit> free(Sql sql, Shelf shelf, Span span, String micType, long now) throws SQLException {
        Set<String> busy = busy(sql, span);
        busy.addAll(overdue(sql, span, now).keySet());
        return shelf.units().stream().filter(unit -> (micType == null || micType.equals(unit.micType())) && unit.condition().usable()
                && !busy.contains(unit.id())).toList();
    }

    static List<Standing> standing(Sql sql, Shelf shelf, Span span, long now) throws SQLException {
        long from = span.from().getEpochSecond();
        long until = span.until().getEpochSecond();
        Map<String, BookingRows.Taking> overdue = overdue(sql, span, now);
        Map<String, List<BookingRows.Taking>> after = BookingRows.after(sql, busy(sql, span), from);
        Map<String, Long> taking = new HashMap<>();
        after.forEach((unit, all) -> taking.put(unit, all.get(0).booking()));
        overdue.forEach((unit, out) -> taking.put(unit, out.booking()));
        Map<Long, Booking> bookings = BookingRows.of(sql, taking.values());
        List<Standing> all = new ArrayList<>();
        for (Unit unit : shelf.units()) {
            Booking booking = bookings.get(taking.getOrDefault(unit.id(), -1L));
            boolean late = overdue.containsKey(unit.id());
            Instant freeFrom = late || !unit.condition().usable() ? null
                    : Instant.ofEpochSecond(freeFrom(after.getOrDefault(unit.id(), List.of()), from, until - from));
            all.add(new Standing(unit, booking, late, freeFrom));
        }
        return all;
    }

    static Stock stock(Sql sql, Shelf shelf, Span span, long now, ZoneId zone) throws SQLException {
        if (shelf.units().stream().noneMatch(unit -> unit.kind() == UnitKind.MIC)) {
            return null;
        }
        return new Stock(true, standing(sql, shelf, span, now).stream().filter(standing -> standing.unit().kind() == UnitKind.MIC)
                .sorted(Comparator.comparing(Standing::unit, HANDED_OUT)).map(standing -> held(standing, shelf, zone)).toList());
    }

    /** The first moment from which a unit is free for as long, given what takes it, earliest first. */
    static long freeFrom(List<BookingRows.Taking> takings, long from, long length) {
        long start = from;
        for (BookingRows.Taking taking : takings) {
            if (taking.from() >= start + length) {
                break;
            }
            start = Math.max(start, taking.until());
        }
        return start;
    }

    private static Set<String> busy(Sql sql, Span span) throws SQLException {
        return new HashSet<>(sql.all(BUSY, row -> row.getString(1), span.from().getEpochSecond(), span.until().getEpochSecond()));
    }

    /** An overdue unit counts as out for times that begin within a day: who has it may be expected to bring it by then. */
    private static Map<String, BookingRows.Taking> overdue(Sql sql, Span span, long now) throws SQLException {
        if (span.from().getEpochSecond() >= now + BookingWork.AHEAD_S) {
            return Map.of();
        }
        Map<String, BookingRows.Taking> overdue = BookingRows.overdue(sql, now);
        overdue.values().removeIf(out -> out.until() >= span.until().getEpochSecond());
        return overdue;
    }

    private static Stock.Held held(Standing standing, Shelf shelf, ZoneId zone) {
        Unit unit = standing.unit();
        return new Stock.Held(unit.id(), unit.micType(), unit.label(), unit.tag(), unit.storedAt(), unit.note(), shelf.mates().get(unit.id()),
                shelf.ownResponsesDb().get(unit.id()), standing.free() ? null : out(standing, zone));
    }

    private static Stock.Out out(Standing standing, ZoneId zone) {
        Booking booking = standing.booking();
        String why = !standing.unit().condition().usable() ? standing.unit().condition().id() : standing.overdue() ? "overdue" : booking.kind().id();
        OffsetDateTime freeFrom = standing.freeFrom() == null ? null : standing.freeFrom().atZone(zone).toOffsetDateTime();
        return new Stock.Out(why, booking == null || booking.forWhat().isEmpty() ? null : booking.forWhat(), booking == null ? null : booking.by(), freeFrom);
    }
}
