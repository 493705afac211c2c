package pairwright.locker;

import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Times near a wanted one at which all of some units can be had for as long. */
final class NearestTimes {
    private static final long QUARTER_S = 15 * 60;
    private static final int DAYS = 60;
    private static final int AT_THAT_HOUR = 2;

    private final List<BookingRows.Taking> takings;
    private final long length;

    private NearestTimes(List<BookingRows.Taking> takings, long length) {
        this.takings = takings;
        this.length = length;
    }

    /**
     * The last such time before the wanted one, the first after it, and the next days at the same time of day; nearest first. None begins before now, and
     * all but those of the same time of day begin on a quarter of an hour, as people agree on times.
     *
     * @param but number of a booking that does not count; -1 for none
     */
    static List<Span> of(Sql sql, Collection<String> units, Span wanted, long but, long now, ZoneId zone) throws SQLException {
        List<BookingRows.Taking> all = new ArrayList<>();
        BookingRows.after(sql, units, now).values().forEach(all::addAll);
        Map<String, BookingRows.Taking> overdue = BookingRows.overdue(sql, now);
        // an overdue unit is in the way of whatever begins within a day
        units.stream().map(overdue::get).filter(late -> late != null)
                .forEach(late -> all.add(new BookingRows.Taking(late.unit(), late.booking(), now, now + BookingWork.AHEAD_S)));
        all.removeIf(taking -> taking.booking() == but);
        return among(all, wanted, now, zone);
    }

    /** The same among what takes the units. */
    static List<Span> among(List<BookingRows.Taking> all, Span wanted, long now, ZoneId zone) {
        long least = roundedUp(now);
        NearestTimes times = new NearestTimes(all, wanted.until().getEpochSecond() - wanted.from().getEpochSecond());
        long from = wanted.from().getEpochSecond();
        TreeSet<Long> starts = new TreeSet<>(Comparator.comparingLong((Long start) -> Math.abs(start - from)).thenComparing(Comparator.naturalOrder()));
        starts.add(times.first(Math.max(from, least)));
        long last = times.last(from);
        if (last >= least) {
            starts.add(last);
        }
        starts.addAll(times.atThatHour(wanted.from(), least, zone));
        return starts.stream().filter(start -> start != from).map(start -> new Span(Instant.ofEpochSecond(start), Instant.ofEpochSecond(start + times.length))).toList();
    }

    private List<Long> atThatHour(Instant from, long least, ZoneId zone) {
        List<Long> found = new ArrayList<>();
        for (int day = 1; day <= DAYS && found.size() < AT_THAT_HOUR; day++) {
            long start = from.atZone(zone).plusDays(day).toEpochSecond();
            if (start >= least && free(start)) {
                found.add(start);
            }
        }
        return found;
    }

    private boolean free(long start) {
        return takings.stream().noneMatch(taking -> taking.from() < start + length && taking.until() > start);
    }

    /** The first quarter of an hour from a moment on, or that moment. */
    private long first(long from) {
        long start = from;
        for (BookingRows.Taking taking : takings.stream().sorted(Comparator.comparingLong(BookingRows.Taking::from)).toList()) {
            if (taking.from() >= start + length) {
                break;
            }
            if (taking.until() > start) {
                start = roundedUp(taking.until());
            }
        }
        return start;
    }

    /** The last quarter of an hour up to a moment, or that moment. */
    private long last(long from) {
        long start = from;
        for (BookingRows.Taking taking : takings.stream().sorted(Comparator.comparingLong(BookingRows.Taking::until).reversed()).toList()) {
            if (taking.until() <= start) {
                break;
            }
            if (taking.from() < start + length) {
                start = Math.floorDiv(taking.from() - length, QUARTER_S) * QUARTER_S;
            }
        }
        return start;
    }

    /** Every offset from UTC in use is a whole number of quarters, so this is one on every clock. */
    private static long roundedUp(long second) {
        return -Math.floorDiv(-second, QUARTER_S) * QUARTER_S;
    }
}
