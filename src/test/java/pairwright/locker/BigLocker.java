package pairwright.locker;

import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;

/**
 * Fills a locker as a large house fills it in years, always the same around a moment: written straight into the tables, since booking one after the
 * other would take most of an hour. The tables still refuse what must not be.
 */
final class BigLocker {
    static final int UNITS = 5_000;
    static final int BOOKINGS = 200_000;

    private static final int MICS = 4_000;
    private static final int MOST_UNITS = 4;
    /** A unit is booked by the quarter of a day. */
    private static final long SLOT_S = 6 * 3600;
    private static final int SLOTS_A_DAY = 4;
    private static final int DAYS_BEFORE = 3 * 365;
    private static final int DAYS_AFTER = 365;
    private static final int NOW = DAYS_BEFORE * SLOTS_A_DAY;
    private static final int SLOTS = (DAYS_BEFORE + DAYS_AFTER) * SLOTS_A_DAY;
    /** Half of all bookings lie within about four months of now. */
    private static final double SPREAD_DAYS = 180;
    private static final int AT_ONCE = 5_000;

    private final Instant start;
    private final long nowS;
    private final Random random = new Random(5);
    private final BitSet[] taken = new BitSet[UNITS];
    private final Set<Integer> out = new LinkedHashSet<>();
    private final List<Object[]> bookings = new ArrayList<>();
    private final List<Object[]> lines = new ArrayList<>();
    private final List<Object[]> events = new ArrayList<>();
    private final List<Object[]> concerned = new ArrayList<>();

    private BigLocker(Instant now) {
        nowS = now.getEpochSecond();
        start = now.minus(Duration.ofDays(DAYS_BEFORE)).minusSeconds(SLOT_S / 2);
        for (int unit = 0; unit < UNITS; unit++) {
            taken[unit] = new BitSet(SLOTS);
        }
    }

    /**
     * Fills a locker that is empty, with its tables there.
     *
     * @param types of microphones there may be
     */
    static void fill(Place place, List<String> types, Instant now) {
        try (Database database = Database.open(inBatches(place))) {
            BigLocker big = new BigLocker(now);
            database.write(sql -> {
                big.units(sql, types);
                return null;
            });
            for (int from = 1; from <= BOOKINGS; from += AT_ONCE) {
                int first = from;
                database.write(sql -> {
                    big.bookings(sql, first, Math.min(BOOKINGS + 1, first + AT_ONCE));
                    return null;
                });
            }
            database.write(sql -> sql.run("ANALYZE")); // a server does so by itself within a minute
        }
    }

    /** The driver of PostgreSQL then sends many rows as one statement. */
    private static Place inBatches(Place place) {
        return place.file() != null ? place : Place.at(place.address() + (place.address().contains("?") ? "&" : "?") + "reWriteBatchedInserts=true");
    }

    static String id(int unit) {
        return "unit-" + (unit + 1);
    }

    private void units(Sql sql, List<String> types) throws SQLException {
        SplittableRandom which = new SplittableRandom(3);
        for (int unit = 0; unit < UNITS; unit++) {
            boolean mic = unit < MICS;
            Condition condition = unit % 97 == 0 ? Condition.IN_REPAIR : unit % 61 == 0 ? Condition.LIMITED : unit % 499 == 0 ? Condition.LOST : Condition.GOOD;
            UnitRows.insert(sql, new Unit(id(unit), mic ? UnitKind.MIC : UnitKind.STAND, mic ? types.get(which.nextInt(types.size())) : null,
                    (mic ? "Mic " : "Stand ") + (unit + 1), "S" + (100_000 + unit), "T-" + (10_000 + unit), mic && unit % 5 == 0 ? id(unit + 1) : null, condition,
                    condition == Condition.LIMITED ? "crackles when warm" : null, "Shelf " + (unit % 40), null,
                    mic ? null : new StandData(3.0, 1.5, 0.4, 3, 2.0), null, null, List.of(), 1));
        }
        sql.run("UPDATE state SET units_revision = units_revision + 1, revision = revision + 1, next_booking = ?", BOOKINGS + 1);
    }

    private void bookings(Sql sql, int first, int end) throws SQLException {
        for (int id = first; id < end; id++) {
            booking(id);
        }
        sql.runAll("INSERT INTO booking (id, from_ts, until_ts, kind, for_what, by_whom, version) VALUES (?, ?, ?, ?, ?, ?, 1)", bookings);
        // where nothing stands in a column the type differs, and PostgreSQL thinks again about the statement whenever it does
        for (List<Object[]> alike : lines.stream().collect(Collectors.groupingBy(line -> List.of(line[6] == null, line[8] == null))).values()) {
            sql.runAll("INSERT INTO line (booking_id, place, unit_id, unit_label, from_ts, until_ts, taken_ts, taken_by, returned_ts) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)", alike);
        }
        sql.runAll("INSERT INTO event (number, at_ts, who, what, about, says) VALUES (?, ?, 'Wren', 'booked', ?, ?)", events);
        sql.runAll("INSERT INTO event_about (id, number) VALUES (?, ?)", concerned);
        List.of(bookings, lines, events, concerned).forEach(List::clear);
    }

    /** Of one to four units, for a quarter of a day to three months; the long ones are few. */
    private void booking(int id) {
        int length = length();
        int slot;
        List<Integer> units = new ArrayList<>();
        do {
            slot = NOW + (int) Math.round(random.nextGaussian() * SPREAD_DAYS * SLOTS_A_DAY) - length / 2;
            units.clear();
            int wanted = 1 + random.nextInt(MOST_UNITS);
            for (int tried = 0; slot >= 0 && slot + length <= SLOTS && tried < 2 * MOST_UNITS && units.size() < wanted; tried++) {
                int unit = random.nextInt(UNITS);
                int free = taken[unit].nextSetBit(slot);
                if (!units.contains(unit) && (free < 0 || free >= slot + length)) {
                    units.add(unit);
                }
            }
        } while (units.isEmpty());
        long from = start.getEpochSecond() + slot * SLOT_S;
        long until = from + length * SLOT_S - 1800;
        bookings.add(new Object[] {id, from, until, length > 30 ? "loan" : "session", "Session " + id, "Engineer " + (id % 40)});
        for (int place = 0; place < units.size(); place++) {
            int unit = units.get(place);
            taken[unit].set(slot, slot + length);
            line(id, place, unit, from, until);
        }
        events.add(new Object[] {id, Math.min(nowS, from - 86_400), Integer.toString(id), "Booked " + units.size() + " units."});
        concerned.add(new Object[] {Integer.toString(id), id});
        units.forEach(unit -> concerned.add(new Object[] {id(unit), id}));
    }

    private int length() {
        int kind = random.nextInt(100);
        return kind < 80 ? 1 + random.nextInt(2) : kind < 97 ? SLOTS_A_DAY * (1 + random.nextInt(4)) : SLOTS_A_DAY * (14 + random.nextInt(80));
    }

    /** What is over came back; of what is on, most is out; a few are late. */
    private void line(int id, int place, int unit, long from, long until) {
        boolean late = until <= nowS && until > nowS - 5 * 86_400 && random.nextInt(100) == 0;
        boolean isOut = (late || from <= nowS && until > nowS && random.nextInt(10) > 0) && out.add(unit);
        boolean back = !isOut && until <= nowS;
        lines.add(new Object[] {id, place, id(unit), (unit < MICS ? "Mic " : "Stand ") + (unit + 1), from, until, isOut || back ? (Long) from : null,
                isOut || back ? "Wren" : null, back ? (Long) until : null});
    }
}
