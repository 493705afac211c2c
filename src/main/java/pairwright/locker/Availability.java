package pairwright.locker;

import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.model.Stock;

/** What is free for a time, and what takes the rest. */
final class Availability {
    /** Of each unit, where the first line ends after which nothing comes for long enough: lines of a unit never overlap, so their ends are in the order of their beginnings. */
    static final String FREE_FROM = "SELECT u.id, (SELECT l.until_ts FROM line l WHERE l.unit_id = u.id AND l.until_ts > ? AND l.from_ts < l.until_ts"
            + " AND COALESCE((SELECT n.from_ts FROM line n WHERE n.unit_id = l.unit_id AND n.until_ts > l.until_ts AND n.from_ts < n.until_ts ORDER BY n.until_ts LIMIT 1), ?)"
            + " >= l.until_ts + ? ORDER BY l.until_ts LIMIT 1) AS free_ts FROM unit u WHERE u.id IN (";

    private Availability() {
    }

    static List<Unit> free(Sql sql, Shelf shelf, Span span, String micType, long now) throws SQLException {
        Set<String> busy = new HashSet<>(takings(sql, span, Set.of()).keySet());
        busy.addAll(overdue(sql, span, now, Set.of()).keySet());
        return shelf.units().stream().filter(unit -> (micType == null || micType.equals(unit.micType())) && unit.condition().usable()
                && !busy.contains(unit.id())).toList();
    }

    static List<Standing> standing(Sql sql, Shelf shelf, Span span, long now, Set<String> but) throws SQLException {
        return standing(sql, shelf, span, now, but, BookingRows::of);
    }

    private static List<Standing> standing(Sql sql, Shelf shelf, Span span, long now, Set<String> but, Read read) throws SQLException {
        long from = span.from().getEpochSecond();
        Map<String, BookingRows.Taking> taking = takings(sql, span, but);
        Map<String, Long> freeFrom = freeFrom(sql, taking.keySet(), from, span.until().getEpochSecond() - from);
        Map<String, BookingRows.Taking> overdue = overdue(sql, span, now, but);
        taking.putAll(overdue);
        Map<Long, Booking> bookings = read.of(sql, taking.values().stream().map(BookingRows.Taking::booking).toList());
        List<Standing> all = new ArrayList<>();
        for (Unit unit : shelf.units()) {
            BookingRows.Taking its = taking.get(unit.id());
            boolean late = overdue.containsKey(unit.id());
            all.add(new Standing(unit, its == null ? null : bookings.get(its.booking()), late,
                    late || !unit.condition().usable() ? null : Instant.ofEpochSecond(freeFrom.getOrDefault(unit.id(), from))));
        }
        return all;
    }

    /** How much of the bookings is read. */
    @FunctionalInterface
    private interface Read {
        Map<Long, Booking> of(Sql sql, List<Long> ids) throws SQLException;
    }

    static Stock stock(Sql sql, Shelf shelf, Span span, long now, Set<String> but, ZoneId zone) throws SQLException {
        if (shelf.units().stream().noneMatch(unit -> unit.kind() == UnitKind.MIC)) {
            return null;
        }
        // the units are in the order of their labels already, which sorting by condition keeps
        return new Stock(true, standing(sql, shelf, span, now, but, BookingRows::heads).stream().filter(standing -> standing.unit().kind() == UnitKind.MIC)
                .sorted(Comparator.comparingInt(standing -> standing.unit().condition().ordinal())).map(standing -> held(standing, shelf, zone)).toList());
    }

    /** What takes each unit first in a time, some bookings left aside. */
    private static Map<String, BookingRows.Taking> takings(Sql sql, Span span, Set<String> but) throws SQLException {
        Map<String, BookingRows.Taking> first = new HashMap<>();
        BookingRows.takings(sql, span.from().getEpochSecond(), span.until().getEpochSecond()).stream()
                .filter(taking -> !but.contains(Long.toString(taking.booking())))
                .forEach(taking -> first.merge(taking.unit(), taking, (one, other) -> one.from() < other.from() ? one : other));
        return first;
    }

    /** From when each of some units, all of which are taken for some of a time, is free for as long. */
    static Map<String, Long> freeFrom(Sql sql, Collection<String> units, long from, long length) throws SQLException {
        Map<String, Long> all = new HashMap<>();
        for (List<String> some : BookingRows.portions(units)) {
            List<Object> with = new ArrayList<>(List.of(from, Long.MAX_VALUE, length));
            with.addAll(some);
            sql.all(FREE_FROM + BookingRows.marks(some.size()) + ")", row -> all.put(row.getString("id"), row.getLong("free_ts")), with.toArray());
        }
        return all;
    }

    /** An overdue unit counts as out for times that begin within a day: who has it may be expected to bring it by then. */
    private static Map<String, BookingRows.Taking> overdue(Sql sql, Span span, long now, Set<String> but) throws SQLException {
        if (span.from().getEpochSecond() >= now + BookingWork.AHEAD_S) {
            return Map.of();
        }
        Map<String, BookingRows.Taking> overdue = BookingRows.overdue(sql, now);
        overdue.values().removeIf(out -> out.until() >= span.until().getEpochSecond() || but.contains(Long.toString(out.booking())));
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
