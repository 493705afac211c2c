package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pairwright.drawing.Reader;
import pairwright.locker.Role;
import pairwright.locker.Span;

/** Times of a booking as they are typed where the clock is turned. */
class BookingTimesTest {
    private static final ZoneId VIENNA = ZoneId.of("Europe/Vienna");
    private static final AtLocker AT = new AtLocker(null, null, null, new Visit("/locker/bookings/new", Map.of(), Reader.METRIC), Role.ENGINEER,
            Clock.fixed(Instant.parse("2027-03-10T09:20:30Z"), VIENNA));

    @Test
    void aTimeOfDayThatTheClockLeavesOutIsToldAtItsField() {
        BookingTimes times = BookingTimes.read(AT, "2027-03-28T01:30", "2027-03-28T02:30", null);
        assertEquals(Instant.parse("2027-03-28T00:30:00Z"), times.from());
        assertNull(times.until());
        assertNull(times.span());
        assertEquals("/until", times.faults().get(0).at());
        assertTrue(times.faults().get(0).says().contains("the clocks go forward"), times.faults().toString());
    }

    @Test
    void aTimeOfDayThatComesTwiceMeansTheLongerTimeAndSaysSo() {
        BookingTimes times = BookingTimes.read(AT, "2027-10-31T02:15", "2027-10-31T02:45", null);
        assertEquals(new Span(Instant.parse("2027-10-31T00:15:00Z"), Instant.parse("2027-10-31T01:45:00Z")), times.span());
        assertEquals(List.of("02:15 comes twice on Sun 31 Oct 2027, as the clock is set back. Meant is the first, UTC+02:00. For the other one write 2027-10-31T02:15+01:00.",
                "02:45 comes twice on Sun 31 Oct 2027, as the clock is set back. Meant is the second, UTC+01:00. For the other one write 2027-10-31T02:45+02:00."), times.notes());
        BookingTimes said = BookingTimes.read(AT, "2027-10-31T02:15+01:00", "2027-10-31T02:45+01:00", null);
        assertEquals(new Span(Instant.parse("2027-10-31T01:15:00Z"), Instant.parse("2027-10-31T01:45:00Z")), said.span());
        assertEquals(List.of(), said.notes(), "whoever says which is told nothing");
        assertEquals("2027-10-31T02:15+01:00", BookingTimes.field(VIENNA, "2027-10-31T02:15+01:00", false), "and keeps what was said");
    }

    @Test
    void whatWasNotTouchedMeansTheVerySameMoment() {
        Span present = new Span(Instant.parse("2027-10-31T01:15:07Z"), Instant.parse("2027-10-31T09:00:00Z"));
        BookingTimes times = BookingTimes.read(AT, BookingTimes.field(VIENNA, present.from()), BookingTimes.field(VIENNA, present.until()), present);
        assertEquals(present, times.span());
        assertEquals("2027-10-31T02:15:07", BookingTimes.field(VIENNA, present.from()));
    }

    @Test
    void anAddressBeginsWithTheNextFullHourOfTheClockOnTheWall() {
        AtLocker kolkata = new AtLocker(null, null, null, AT.visit(), Role.ENGINEER, Clock.fixed(AT.now(), ZoneId.of("Asia/Kolkata")));
        assertEquals("2027-03-10T11:00", BookingTyped.asked(AT).from());
        assertEquals("2027-03-10T15:00", BookingTyped.asked(AT).until());
        assertEquals("2027-03-10T15:00", BookingTyped.asked(kolkata).from(), "9:20 there is 14:50");
        AtLocker asked = new AtLocker(null, null, null, new Visit("/locker/bookings/new", Map.of("from", List.of("2027-03-10 23:00"), "unit", List.of("a", "b", "a")), Reader.METRIC),
                Role.ENGINEER, AT.clock());
        assertEquals("2027-03-11T03:00", BookingTyped.asked(asked).until());
        assertEquals(List.of("a", "b"), BookingTyped.asked(asked).units());
    }

    @Test
    void whatIsOverOrHasBegunIsSaid() {
        assertEquals(List.of("This time is over. Booking it writes down what was."), BookingTimes.read(AT, "2027-03-09T10:00", "2027-03-09T11:00", null).notes());
        assertEquals(List.of("This time has begun already."), BookingTimes.read(AT, "2027-03-09T10:00", "2027-03-12T11:00", null).notes());
        assertEquals("is today 10:00, not after today 11:00. Let it end after it begins",
                BookingTimes.read(AT, "2027-03-10T11:00", "2027-03-10T10:00", null).turned(AT.moments()).get(0).says());
    }
}
