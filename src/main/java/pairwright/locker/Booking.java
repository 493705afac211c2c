package pairwright.locker;

import java.time.Instant;
import java.util.List;

/**
 * Units that are somebody's for a time.
 *
 * @param id a number, short enough to be said aloud
 * @param lines one for each unit, in the order they were named
 * @param span the time as it was booked
 * @param kind what for
 * @param forWhat the session, class, borrower or workshop; may be empty
 * @param by who answers for it
 * @param note what else to know; null for nothing
 * @param version rises with every change, from 1
 */
public record Booking(String id, List<Line> lines, Span span, BookingKind kind, String forWhat, String by, String note, long version) {
    public Booking {
        lines = List.copyOf(lines);
    }

    /** Ids of its units. */
    public List<String> units() {
        return lines.stream().map(Line::unit).toList();
    }

    /**
     * One unit of a booking.
     *
     * @param unit id
     * @param span the time it is taken: as booked, but ends when it came back early
     * @param takenAt when it left its place; null while it has not
     * @param takenBy who took it; null while nobody has
     * @param returnedAt when it came back; null while it has not
     * @param label what is written on the unit, or was when it left the locker for good
     */
    public record Line(String unit, Span span, Instant takenAt, String takenBy, Instant returnedAt, String label) {
        /** Whether somebody has it at this moment. */
        public boolean isOut() {
            return takenAt != null && returnedAt == null;
        }
    }
}
