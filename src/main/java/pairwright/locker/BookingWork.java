package pairwright.locker;

import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pairwright.model.Fault;

/** Units booked, taken out and brought back within a transaction. */
final class BookingWork {
    /** So far ahead a booking may be for a unit that is taken out now to be taken for it, and so long an overdue unit counts as out. */
    static final long AHEAD_S = 24 * 3600;
    private static final int NAMED = 5;

    private final Sql sql;
    private final UnitWork units;
    private final Instant now;
    private final ZoneId zone;
    private final String who;
    private boolean changed;

    BookingWork(Sql sql, UnitWork units, Instant now, ZoneId zone, String who) {
        this.sql = sql;
        this.units = units;
        this.now = Instant.ofEpochSecond(now.getEpochSecond());
        this.zone = zone;
        this.who = who;
    }

    boolean changed() {
        return changed;
    }

    boolean isThere(String id) throws SQLException {
        return BookingRows.of(sql, id).isPresent();
    }

    Booking present(String id) throws SQLException {
        return BookingRows.of(sql, id).orElseThrow(() -> new LockerFault.NotThere("There is no booking " + Said.quoted(id) + ". It may have been cancelled"));
    }

    Booking book(BookingDraft asked) throws SQLException {
        Shelf shelf = units.shelf();
        BookingDraft draft = BookingChecks.read(asked, shelf.byId(), Set.of(), who, now);
        Span span = new Span(draft.from(), draft.until());
        free(draft.units(), span, -1, shelf, unusable(draft.units(), draft.kind(), shelf));
        long id = sql.number("SELECT next_booking FROM state");
        sql.run("UPDATE state SET next_booking = ?", id + 1);
        List<Booking.Line> lines = draft.units().stream().map(unit -> new Booking.Line(unit, span, null, null, null, shelf.byId().get(unit).label())).toList();
        Booking booking = new Booking(Long.toString(id), lines, span, draft.kind(), draft.forWhat(), draft.by(), draft.note(), 1);
        BookingRows.insert(sql, booking);
        done("booked", booking.id(), booking.units(), "Booked " + labels(booking) + " for " + what(booking) + " by " + booking.by() + ", "
                + Said.time(span, zone) + ".");
        return booking;
    }

    Booking alter(String id, BookingDraft asked, Long version) throws SQLException {
        Booking before = present(id, version);
        Shelf shelf = units.shelf();
        BookingDraft draft = BookingChecks.read(new BookingDraft(asked.units().isEmpty() ? before.units() : asked.units(),
                asked.from() == null ? before.span().from() : asked.from(), asked.until() == null ? before.span().until() : asked.until(),
                asked.kind() == null ? before.kind() : asked.kind(), asked.forWhat() == null ? before.forWhat() : asked.forWhat(),
                asked.by() == null ? before.by() : asked.by(), asked.note() == null ? before.note() : asked.note()),
                shelf.byId(), Set.copyOf(before.units()), who, now);
        Span span = new Span(draft.from(), draft.until());
        Map<String, Booking.Line> lines = new LinkedHashMap<>();
        before.lines().forEach(line -> lines.put(line.unit(), line));
        outStay(before, draft, span);
        gone(draft.units(), lines, shelf, span);
        boolean forUse = before.kind() == BookingKind.REPAIR && draft.kind() != BookingKind.REPAIR;
        List<Unit> not = unusable(draft.units().stream().filter(unit -> forUse || !lines.containsKey(unit)).toList(), draft.kind(), shelf);
        // all of them at once, so that whoever has several of them is told at once; what is out already has a time of its own
        free(draft.units().stream().filter(unit -> !lines.containsKey(unit) || lines.get(unit).takenAt() == null).toList(), span, Long.parseLong(id), shelf, not);
        Set<String> wanted = new LinkedHashSet<>(draft.units());
        before.lines().stream().filter(line -> line.returnedAt() != null).forEach(line -> wanted.add(line.unit()));
        List<Booking.Line> anew = new ArrayList<>();
        for (String unit : wanted) {
            Booking.Line line = lines.get(unit);
            if (line != null && line.returnedAt() != null) {
                anew.add(line);
                continue;
            }
            boolean isOut = line != null && line.isOut();
            Span its = isOut ? new Span(line.span().from(), span.until()) : span;
            if (isOut) {
                free(List.of(unit), its, Long.parseLong(id), shelf, List.of());
            }
            anew.add(new Booking.Line(unit, its, line == null ? null : line.takenAt(), line == null ? null : line.takenBy(), null,
                    line == null ? shelf.byId().get(unit).label() : line.label()));
        }
        if (new Booking(id, anew, span, draft.kind(), draft.forWhat(), draft.by(), draft.note(), before.version()).equals(before)) {
            return before; // nothing was altered, as with a unit
        }
        Booking after = new Booking(id, anew, span, draft.kind(), draft.forWhat(), draft.by(), draft.note(), before.version() + 1);
        BookingRows.replace(sql, after);
        Set<String> concerned = new LinkedHashSet<>(before.units());
        concerned.addAll(after.units());
        done("altered", id, List.copyOf(concerned), "Altered booking " + id + ": now " + labels(after) + " for " + what(after) + " by " + after.by() + ", "
                + Said.time(span, zone) + "; it was " + labels(before) + ", " + Said.time(before.span(), zone) + ".");
        return present(id);
    }

    /** A unit that was removed stays in the booking it was in, but cannot be had at another time. */
    private static void gone(List<String> ids, Map<String, Booking.Line> lines, Shelf shelf, Span span) {
        List<Fault> faults = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            Booking.Line line = lines.get(ids.get(i));
            if (line != null && line.returnedAt() == null && !shelf.byId().containsKey(line.unit()) && !line.span().equals(span)) {
                faults.add(new Fault("/units/" + i, line.label() + " is no longer in the locker. Take it out of the booking, or leave the time as it was"));
            }
        }
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults);
        }
    }

    private void outStay(Booking before, BookingDraft draft, Span span) {
        for (Booking.Line line : before.lines()) {
            if (line.isOut() && !draft.units().contains(line.unit())) {
                throw new LockerFault.Taken(line.label() + " is out with " + line.takenBy() + ". Check it in before it is taken from the booking", List.of(before));
            }
            if (line.isOut() && !span.until().isAfter(line.span().from())) {
                throw new LockerFault.Unusable(List.of(new Fault("/until", "is before " + line.label() + " was taken out, "
                        + Said.time(line.span().from(), zone) + ". Let it end later")));
            }
        }
    }

    Void cancel(String id, Long version) throws SQLException {
        Booking booking = present(id, version);
        List<String> out = booking.lines().stream().filter(Booking.Line::isOut).map(Booking.Line::label).toList();
        if (!out.isEmpty()) {
            throw new LockerFault.Taken("Booking " + id + " cannot be cancelled: " + Said.list(out, NAMED) + (out.size() == 1 ? " is" : " are")
                    + " out. Check in first", List.of(booking));
        }
        long number = Long.parseLong(id);
        sql.run("DELETE FROM line WHERE booking_id = ? AND taken_ts IS NULL", number);
        if (sql.number("SELECT COUNT(*) FROM line WHERE booking_id = ?", number) == 0) {
            sql.run("DELETE FROM booking WHERE id = ?", number);
        } else {
            sql.run("UPDATE booking SET version = version + 1 WHERE id = ?", number);
        }
        done("cancelled", id, booking.units(), "Cancelled booking " + id + " of " + labels(booking) + " for " + what(booking) + " by " + booking.by() + ", "
                + Said.time(booking.span(), zone) + ".");
        return null;
    }

    Booking takeOut(String scanned, String by, Instant until) throws SQLException {
        List<Fault> faults = new ArrayList<>();
        String taker = Said.line(by, 80, "/by", faults);
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults);
        }
        Unit unit = one(scanned);
        Optional<BookingRows.Taking> out = BookingRows.out(sql, unit.id());
        if (out.isPresent()) {
            Booking booking = present(Long.toString(out.get().booking()));
            throw new LockerFault.Taken(unit.label() + " is out already: " + UnitWork.said(booking, zone) + ". Check it in first", List.of(booking));
        }
        long second = now.getEpochSecond();
        List<BookingRows.Taking> next = BookingRows.touching(sql, unit.id(), second, second + AHEAD_S);
        boolean belongs = !next.isEmpty() && (next.get(0).from() <= second || until == null);
        if (!belongs && until == null) {
            throw new LockerFault.Unusable(List.of(new Fault("/until", "no booking has " + unit.label() + " within a day. Say until when it is taken")));
        }
        String id = belongs ? Long.toString(next.get(0).booking())
                : book(new BookingDraft(List.of(unit.id()), now, until, BookingKind.LOAN, "", taker, null)).id();
        Booking booking = present(id);
        usable(List.of(unit.id()), booking.kind(), units.shelf());
        sql.run("UPDATE line SET from_ts = ?, taken_ts = ?, taken_by = ? WHERE booking_id = ? AND unit_id = ?",
                belongs ? Math.min(second, next.get(0).from()) : second, second, taker == null ? booking.by() : taker, Long.parseLong(id), unit.id());
        sql.run("UPDATE booking SET version = version + 1 WHERE id = ?", Long.parseLong(id));
        Booking after = present(id);
        Booking.Line line = line(after, unit.id());
        done("took out", unit.id(), List.of(id), line.takenBy() + " took out " + unit.label() + " for booking " + id + " until "
                + Said.time(line.span().until(), zone) + ".");
        return after;
    }

    Booking bringBack(String scanned) throws SQLException {
        Unit unit = one(scanned);
        BookingRows.Taking out = BookingRows.out(sql, unit.id()).orElseThrow(() ->
                new LockerFault.NotThere(unit.label() + " is not out, so there is nothing to check in. See that the right unit was scanned"));
        long second = now.getEpochSecond();
        // a clock that was set back must not let it come back before it left
        sql.run("UPDATE line SET returned_ts = CASE WHEN taken_ts > ? THEN taken_ts ELSE ? END, until_ts = ? WHERE booking_id = ? AND unit_id = ?", second, second,
                Math.min(out.until(), Math.max(second, out.from())), out.booking(), unit.id());
        sql.run("UPDATE booking SET version = version + 1 WHERE id = ?", out.booking());
        Booking after = present(Long.toString(out.booking()));
        done("brought back", unit.id(), List.of(after.id()), unit.label() + " came back from " + line(after, unit.id()).takenBy() + ", booking " + after.id() + ".");
        return after;
    }

    private Unit one(String scanned) throws SQLException {
        List<Unit> found = units.shelf().scanned(scanned);
        if (found.isEmpty()) {
            throw new LockerFault.NotThere("No unit has the tag, id, serial or label " + Said.quoted(scanned == null ? "" : scanned) + ". Scan it again, or look at the list of units");
        }
        if (found.size() > 1) {
            throw new LockerFault.Unusable(List.of(new Fault("/scanned", Said.quoted(scanned) + " may be "
                    + Said.list(found.stream().map(Unit::id).toList(), NAMED) + ". Scan the tag, or type the id")));
        }
        return found.get(0);
    }

    private Booking present(String id, Long version) throws SQLException {
        Booking booking = present(id);
        if (version != null && version != booking.version()) {
            throw new LockerFault.Changed("Booking " + id + " was altered meanwhile. Look at it again, then alter it", booking.version());
        }
        return booking;
    }

    private static List<Unit> unusable(List<String> ids, BookingKind kind, Shelf shelf) {
        return ids.stream().map(shelf.byId()::get)
                .filter(unit -> unit != null && !unit.condition().usable() && !(kind == BookingKind.REPAIR && unit.condition() == Condition.IN_REPAIR)).toList();
    }

    private static void usable(List<String> ids, BookingKind kind, Shelf shelf) {
        usable(unusable(ids, kind, shelf));
    }

    private static void usable(List<Unit> not) {
        if (!not.isEmpty()) {
            throw new LockerFault.Taken(broken(not) + ". Choose another unit, or correct the condition", List.of());
        }
    }

    private static String broken(List<Unit> units) {
        return Said.list(units.stream().map(unit -> unit.label() + " is " + (unit.condition() == Condition.LOST ? "lost" : "in repair")).toList(), NAMED);
    }

    /**
     * Refuses where anything but one booking takes any of the units for some of a time, or any of them cannot be used.
     *
     * @param not those that cannot, whoever has them
     */
    private void free(List<String> units, Span span, long but, Shelf shelf, List<Unit> not) throws SQLException {
        List<String> ids = units.stream().filter(id -> not.stream().noneMatch(unit -> unit.id().equals(id))).toList();
        long from = span.from().getEpochSecond();
        long until = span.until().getEpochSecond();
        Map<String, BookingRows.Taking> overdue = from < now.getEpochSecond() + AHEAD_S ? BookingRows.overdue(sql, now.getEpochSecond()) : Map.of();
        List<BookingRows.Taking> clashes = new ArrayList<>();
        Set<String> late = new LinkedHashSet<>();
        Map<String, List<BookingRows.Taking>> touching = BookingRows.touching(sql, ids, from, until);
        for (String unit : ids) {
            BookingRows.Taking out = overdue.get(unit);
            if (out != null && out.booking() != but && until > out.until()) {
                clashes.add(out);
                late.add(unit);
            }
            touching.getOrDefault(unit, List.of()).stream().filter(taking -> taking.booking() != but).forEach(clashes::add);
        }
        if (clashes.isEmpty()) {
            usable(not);
            return;
        }
        Map<Long, Booking> bookings = BookingRows.of(sql, clashes.stream().map(BookingRows.Taking::booking).toList());
        Map<String, Long> freeFrom = Availability.freeFrom(sql, touching.keySet(), from, until - from);
        List<String> said = new ArrayList<>();
        Set<String> told = new LinkedHashSet<>();
        for (BookingRows.Taking clash : clashes) {
            if (told.add(clash.unit())) {
                Booking booking = bookings.get(clash.booking());
                boolean isLate = late.contains(clash.unit());
                said.add(shelf.byId().get(clash.unit()).label() + (isLate ? " is overdue: " : ": ") + UnitWork.said(booking, zone)
                        + (isLate ? "" : ", free again from " + Said.time(Instant.ofEpochSecond(freeFrom.get(clash.unit())), zone)));
            }
        }
        throw new LockerFault.Taken((not.isEmpty() ? "" : broken(not) + "; ") + said.stream().limit(NAMED).collect(Collectors.joining("; "))
                + (said.size() > NAMED ? "; and " + (said.size() - NAMED) + " more" : "") + ". Choose another unit or time", List.copyOf(bookings.values()));
    }

    private static Booking.Line line(Booking booking, String unit) {
        return booking.lines().stream().filter(line -> line.unit().equals(unit)).findFirst().orElseThrow();
    }

    private static String labels(Booking booking) {
        return Said.list(booking.lines().stream().map(Booking.Line::label).toList(), NAMED);
    }

    private static String what(Booking booking) {
        return "a " + booking.kind().id() + (booking.forWhat().isEmpty() ? "" : " (" + booking.forWhat() + ")");
    }

    private void done(String what, String about, List<String> also, String says) throws SQLException {
        changed = true;
        History.add(sql, now, who, what, about, also, says);
    }
}
