package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Moments as they are typed in a house in Vienna, where the clocks change on 28 March and 31 October 2027. */
class TypedMomentTest {
    private static final ZoneId VIENNA = ZoneId.of("Europe/Vienna");

    private static OffsetDateTime read(String text, boolean isEnd) {
        TypedMoment moment = TypedMoment.parse(text, VIENNA, isEnd);
        assertNull(moment.fault(), text);
        return moment.at();
    }

    @ParameterizedTest
    @CsvSource({"2027-03-01T10:00, 2027-03-01T10:00+01:00", "2027-03-01 10:00, 2027-03-01T10:00+01:00", "2027-07-01T10:00:30, 2027-07-01T10:00:30+02:00",
        "2027-03-01T10:00:00-05:00, 2027-03-01T10:00-05:00", "2027-03-01t10:00z, 2027-03-01T10:00Z", "2027-03-01T10:00:00 01:00, 2027-03-01T10:00+01:00",
        "2027-03-01, 2027-03-01T00:00+01:00", "9998-12-31T23:59, 9998-12-31T23:59+01:00"})
    void theClockOnTheWallIsMeantWhereNoOffsetIsSaid(String text, String meant) {
        assertEquals(OffsetDateTime.parse(meant), read(text, false));
    }

    @Test
    void aDayAloneAsAnEndLastsToItsEnd() {
        assertEquals(OffsetDateTime.parse("2027-03-02T00:00+01:00"), read("2027-03-01", true));
    }

    @Test
    void anHourTheClockLeavesOutIsTold() {
        TypedMoment moment = TypedMoment.parse("2027-03-28T02:30", VIENNA, false);
        assertNull(moment.at());
        assertTrue(moment.fault().contains("\"2027-03-28T02:30\" does not exist in Europe/Vienna: the clocks go forward then"), moment.fault());
        assertEquals(OffsetDateTime.parse("2027-03-28T03:00+02:00"), read("2027-03-28T03:00", false));
    }

    @Test
    void ofAnHourThatIsThereTwiceTheLongerTimeIsMeant() {
        assertEquals(OffsetDateTime.parse("2027-10-31T02:30+02:00"), read("2027-10-31T02:30", false));
        assertEquals(OffsetDateTime.parse("2027-10-31T02:30+01:00"), read("2027-10-31T02:30", true));
    }

    @ParameterizedTest
    @ValueSource(strings = {"soon", "10:00", "2027-02-30", "2027-03-01T24:30", "2027-03-01T10", "9999-01-01T10:00", "9999-12-31T23:59:59-18:00", "9998-12-31", "0001-01-01T00:00Z",
        "+12027-01-01T10:00", "2027-03-01T10:00+99:00", "1804289383", "--", "2027-03-01T10:00:00.1234567890Z"})
    void whatIsNoTimeIsSaidBackWithWhatToDo(String text) {
        TypedMoment moment = TypedMoment.parse(text, VIENNA, true);
        assertNull(moment.at(), text);
        assertTrue(moment.fault().contains("\"" + text + "\"") && moment.fault().matches(".*(Write it like|Give a year).*"), moment.fault());
    }
}
