package pairwright.http;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;
import pairwright.locker.Span;

/** The time that is meant where it was not said in full. */
class LockerAtHandTest {
    private static final Instant NOW = Instant.parse("2027-03-01T12:00:00Z");
    private static final OffsetDateTime TWO = OffsetDateTime.parse("2027-03-01T15:00:00+01:00");

    private static Span hours(String from, String until) {
        return new Span(Instant.parse("2027-03-01T" + from + ":00:00Z"), Instant.parse("2027-03-01T" + until + ":00:00Z"));
    }

    @Test
    void withoutATimeItIsNowAndFourHours() {
        assertEquals(hours("12", "16"), LockerAtHand.span(null, null, NOW));
    }

    @Test
    void withoutAnEndItIsFourHours() {
        assertEquals(hours("14", "18"), LockerAtHand.span(TWO, null, NOW));
    }

    @Test
    void withoutAStartItIsFromNowOn() {
        assertEquals(hours("12", "14"), LockerAtHand.span(null, TWO, NOW));
    }

    @Test
    void anEndThatIsOverHasTheUsualLengthBeforeIt() {
        assertEquals(hours("10", "14"), LockerAtHand.span(null, TWO, Instant.parse("2027-03-02T00:00:00Z")));
    }
}
