package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The checks of the long runs find what they are there to find. */
class OverlapsTest {
    private static final Instant NOON = Instant.parse("2031-03-01T12:00:00Z");

    @Test
    void twoWhoShareASecondAreFound() {
        assertEquals(List.of("barn-1 is in bookings 1 and 2 at 2031-03-01T12:00:09Z"),
                Overlaps.of(List.of(booking("2", 9, 20, "barn-1"), booking("1", 0, 10, "barn-1"))));
    }

    @Test
    void oneAfterTheOtherIsNone() {
        assertEquals(List.of(), Overlaps.of(List.of(booking("1", 0, 10, "barn-1"), booking("2", 10, 20, "barn-1"), booking("3", 5, 15, "barn-2"))));
    }

    @Test
    void aLineTooFewAndALostBookingAreFound() {
        BookingDraft draft = Load.draft(List.of("barn-1", "barn-2", "barn-3"), NOON, NOON.plusSeconds(10), "x");
        assertEquals(List.of("booking 1 has 2 lines of 3", "booking 7 was acknowledged and is not there"),
                Load.faults(List.of(booking("1", 0, 10, "barn-1", "barn-2")), Map.of("7", draft)));
    }

    @Test
    void anotherTimeThanAskedForIsFound() {
        BookingDraft draft = Load.draft(List.of("barn-1", "barn-2", "barn-3"), NOON, NOON.plusSeconds(11), "x");
        assertEquals(1, Load.faults(List.of(booking("1", 0, 10, "barn-1", "barn-2", "barn-3")), Map.of("1", draft)).size());
    }

    private static Booking booking(String id, int fromS, int untilS, String... units) {
        Span span = new Span(NOON.plusSeconds(fromS), NOON.plusSeconds(untilS));
        return new Booking(id, List.of(units).stream().map(unit -> new Booking.Line(unit, span, null, null, null, unit)).toList(),
                span, BookingKind.SESSION, "x", "Wren", null, 1);
    }
}
