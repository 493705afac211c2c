package pairwright.locker;

import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pairwright.model.MicType;

/** Units added, altered and removed within a transaction. */
final class UnitWork {
    private final Sql sql;
    private final Map<String, MicType> types;
    private final Instant now;
    private final ZoneId zone;
    private final String who;
    /** The highest number behind each name in the labels of a kind, once somebody asked for the next. A table may ask ten thousand times. */
    private final Map<UnitKind, Map<String, Long>> highest = new EnumMap<>(UnitKind.class);
    /** The number last given behind an id. */
    private final Map<String, Integer> numbers = new HashMap<>();
    private Shelf shelf;
    private boolean changed;
    private boolean stale;

    UnitWork(Sql sql, Shelf shelf, Map<String, MicType> types, Instant now, ZoneId zone, String who) {
        this.sql = sql;
        this.shelf = shelf;
        this.types = types;
        this.now = now;
        this.zone = zone;
        this.who = who;
    }

    boolean changed() {
        return changed;
    }

    /** All units as they are within the transaction. */
    Shelf shelf() throws SQLException {
        if (stale) {
            shelf = Shelf.of(shelf.revision(), UnitRows.all(sql));
            stale = false;
        }
        return shelf;
    }

    Optional<Unit> of(String id) throws SQLException {
        return stale ? UnitRows.of(sql, id) : Optional.ofNullable(shelf.byId().get(id));
    }

    Unit add(UnitDraft draft) throws SQLException {
        UnitChecks checks = new UnitChecks(types);
        Unit read = checks.read(draft, null);
        if (!read.id().isEmpty() && of(read.id()).isPresent()) {
            checks.fault("/id", "there is a unit " + read.id() + " already. Choose another id, or alter that one");
        }
        tagFree(checks, read);
        refuse(checks);
        String label = read.label().isEmpty() ? nextLabel(read) : read.label();
        Unit unit = named(read, read.id().isEmpty() ? freeId(Said.kebab(label)) : read.id(), label);
        UnitRows.insert(sql, unit);
        count(unit.kind(), unit.label());
        done("added", unit.id(), "Added " + unit.label() + ", a " + (unit.micType() == null ? unit.kind().id() : unit.micType()) + ".");
        return unit;
    }

    Unit alter(String id, UnitDraft draft, Long version) throws SQLException {
        Unit before = present(id, version);
        UnitChecks checks = new UnitChecks(types);
        Unit read = checks.read(draft, before);
        if (!read.id().isEmpty() && !read.id().equals(id)) {
            checks.fault("/id", "the id of a unit never changes, and this one is " + id + ". Leave it out");
        }
        Unit unit = named(read, id, read.label().isEmpty() ? before.label() : read.label());
        tagFree(checks, unit);
        refuse(checks);
        String says = UnitDifferences.said(before, unit);
        if (says.isEmpty()) {
            return before;
        }
        UnitRows.update(sql, unit);
        count(unit.kind(), unit.label());
        if (!unit.label().equals(before.label())) {
            sql.run("UPDATE line SET unit_label = ? WHERE unit_id = ?", unit.label(), id);
        }
        done("altered", id, "Altered " + before.label() + ": " + says + ".");
        return unit;
    }

    Void remove(String id, Long version) throws SQLException {
        Unit unit = present(id, version);
        List<Long> kept = new ArrayList<>();
        BookingRows.touching(sql, id, now.getEpochSecond(), Long.MAX_VALUE).forEach(taking -> kept.add(taking.booking()));
        BookingRows.out(sql, id).ifPresent(taking -> kept.add(taking.booking()));
        if (!kept.isEmpty()) {
            List<Booking> bookings = List.copyOf(BookingRows.of(sql, kept).values());
            throw new LockerFault.Taken(unit.label() + " cannot be removed: " + said(bookings.get(0), zone)
                    + ". Cancel what is booked and check it in first", bookings);
        }
        sql.run("DELETE FROM unit WHERE id = ?", id);
        done("removed", id, "Removed " + unit.label() + " for good.");
        return null;
    }

    /** Who has units, what for and for how long. */
    static String said(Booking booking, ZoneId zone) {
        return booking.by() + " has it" + (booking.forWhat().isEmpty() ? "" : " for " + booking.forWhat()) + " from " + Said.time(booking.span(), zone)
                + " (booking " + booking.id() + ")";
    }

    Unit present(String id, Long version) throws SQLException {
        Unit unit = of(id).orElseThrow(() -> new LockerFault.NotThere("There is no unit " + Said.quoted(id) + ". Look at the list of units"));
        if (version != null && version != unit.version()) {
            throw new LockerFault.Changed(unit.label() + " was altered meanwhile. Look at it again, then alter it", unit.version());
        }
        return unit;
    }

    private void tagFree(UnitChecks checks, Unit unit) throws SQLException {
        if (unit.tag() != null) {
            UnitRows.tagged(sql, unit.tag()).filter(other -> !other.id().equals(unit.id())).ifPresent(other ->
                    checks.fault("/tag", "the tag " + Said.quoted(unit.tag()) + " is on " + other.label() + " (" + other.id() + ") already. Give each unit a tag of its own"));
        }
    }

    private static void refuse(UnitChecks checks) {
        if (!checks.faults().isEmpty()) {
            throw new LockerFault.Unusable(checks.faults());
        }
    }

    private String nextLabel(Unit unit) throws SQLException {
        String name = unit.micType() == null ? unit.kind().id() : types.containsKey(unit.micType()) ? types.get(unit.micType()).name() : unit.micType();
        String start = Character.toUpperCase(name.charAt(0)) + name.substring(1);
        if (!highest.containsKey(unit.kind())) {
            highest.put(unit.kind(), new HashMap<>());
            sql.all("SELECT label FROM unit WHERE kind = ?", row -> row.getString(1), unit.kind().id()).forEach(label -> count(unit.kind(), label));
        }
        return start + " " + (highest.get(unit.kind()).getOrDefault(start, 0L) + 1);
    }

    /** Minds the number at the end of a label. */
    private void count(UnitKind kind, String label) {
        int blank = label.lastIndexOf(' ');
        if (highest.containsKey(kind) && blank > 0 && label.substring(blank + 1).matches("[0-9]{1,6}")) {
            highest.get(kind).merge(label.substring(0, blank), Long.parseLong(label.substring(blank + 1)), Math::max);
        }
    }

    /** The id that is wanted, or with the first number that is free; numbers that were taken are not looked at again. */
    private String freeId(String wanted) throws SQLException {
        int number = numbers.getOrDefault(wanted, 1);
        String id = number == 1 ? wanted : wanted + "-" + number;
        while (of(id).isPresent()) {
            number++;
            id = wanted + "-" + number;
        }
        numbers.put(wanted, number);
        return id;
    }

    private static Unit named(Unit unit, String id, String label) {
        return new Unit(id, unit.kind(), unit.micType(), label, unit.serial(), unit.tag(), unit.pairMate(), unit.condition(), unit.note(), unit.storedAt(),
                unit.channel(), unit.stand(), unit.pad(), unit.booster(), unit.response(), unit.version());
    }

    private void done(String what, String id, String says) throws SQLException {
        changed = true;
        stale = true;
        History.add(sql, now, who, what, id, List.of(), says);
    }
}
