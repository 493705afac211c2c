package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import pairwright.drawing.Reader;

/** Times in what the locker says. */
class MomentsTest {
    private static final Instant NOW = Instant.parse("2027-03-10T09:00:00Z");
    private static final Moments UTC = new Moments(ZoneOffset.UTC, Reader.METRIC, NOW);
    private static final Moments VIENNA = new Moments(ZoneId.of("Europe/Vienna"), Reader.METRIC, NOW);

    @Test
    void aSentenceOfTheLockerHasItsTimesAsTheRestOfThePage() {
        assertEquals("Booked Ribbon 1 by Ada, Fri 5 Mar 2027, 09:30 to 16:00.", UTC.within("Booked Ribbon 1 by Ada, 2027-03-05 09:30 UTC to 2027-03-05 16:00 UTC."));
        assertEquals("Ben took out Ribbon 1 for booking 4 until tomorrow 18:00.", UTC.within("Ben took out Ribbon 1 for booking 4 until 2027-03-11 18:00 UTC."));
        assertEquals("today 10:00 to tomorrow 11:00; it was yesterday 10:00 to 11:00.",
                VIENNA.within("2027-03-10 10:00 to 2027-03-11 11:00; it was 2027-03-09 10:00 to 2027-03-09 11:00."), "by the clock of the program, where no zone is written");
        assertEquals("until today 10:00", VIENNA.within("until 2027-03-10 09:00 UTC"), "written while the program was in another zone");
        assertEquals("today 09:00:20", UTC.within("2027-03-10 09:00:20 UTC").replaceAll("\\h", " "));
    }

    @Test
    void whatOnlyLooksLikeATimeStays() {
        for (String says : new String[] {"Reel 2027-02-30 10:00", "Reel 2027-03-10 24:61", "no $1 time \\ at all", "2027-03-10"}) {
            assertEquals(says, UTC.within(says));
        }
    }
}
