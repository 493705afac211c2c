package pairwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MomentTextTest {
    private final MomentText text = new MomentText(Clock.fixed(Instant.parse("2027-03-01T09:30:00Z"), ZoneId.of("Europe/Vienna")));

    @ParameterizedTest
    @CsvSource({"2027-03-01T10:00,2027-03-01T09:00:00Z", "2027-03-01 10:00,2027-03-01T09:00:00Z", "2027-07-01t10:00:30,2027-07-01T08:00:30Z",
            "2027-03-01T10:00Z,2027-03-01T10:00:00Z", "2027-03-01T10:00-05:00,2027-03-01T15:00:00Z", "10:00,2027-03-01T09:00:00Z", "9:05,2027-03-01T08:05:00Z",
            "2027-03-01,2027-02-28T23:00:00Z", "2027-10-31T02:30+01:00,2027-10-31T01:30:00Z"})
    void itIsReadByTheClockOfThisMachineUnlessSaidOtherwise(String typed, String moment) {
        assertEquals(Instant.parse(moment), text.read(typed, false));
    }

    @Test
    void aDayAsAnEndIsTakenToItsEnd() {
        assertEquals(Instant.parse("2027-03-01T23:00:00Z"), text.read("2027-03-01", true));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "tomorrow", "2027-13-01", "2027-02-30", "2027-03-01T25:00", "24:00", "1.3.2027", "2027-03-01T10", "2027-03-01T10:00+1", "99:99"})
    void anythingElseIsSaidBackWithHowToWriteIt(String typed) {
        String says = assertThrows(IllegalArgumentException.class, () -> text.read(typed, false)).getMessage();
        assertTrue(says.startsWith("\"" + typed + "\" is") && says.contains("2027-03-01T10:00"), says);
    }

    @Test
    void anHourThatIsNotThereOrThereTwiceIsAskedFor() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> text.read("2027-03-28T02:30", false)).getMessage().contains("does not exist in Europe/Vienna"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> text.read("2027-10-31T02:30", false)).getMessage().endsWith("2027-10-31T02:30+02:00 or 2027-10-31T02:30+01:00"));
    }
}
