package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Rooms.CATALOGUE;
import static pairwright.session.Rooms.lineUp;
import static pairwright.session.Rooms.seat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MoveTermsTest {
    private static final Floor HALL = new Floor(null, 20, 20, 6, 1);
    /** Three in an arc, of whom the first faces the other two. */
    private static final LineUp ARC = lineUp(HALL, List.of(), seat("v", "violin", 10, 5, 0), seat("c", "cello", 8, 8, 150), seat("f", "flute", 12, 8, 210));
    private static final Seat VIOLIN = ARC.seats().get(0);

    private static MoveTerms terms(LineUp lineUp) {
        return new MoveTerms(lineUp, Players.of(lineUp, CATALOGUE), CATALOGUE);
    }

    @ParameterizedTest
    @CsvSource({"0, 3", "1, 3.5", "2.8, 4.4", "8, 7"})
    void aLongerMoveMustGainMore(double wayM, double leastDb) {
        assertEquals(leastDb, terms(ARC).leastGainDb(wayM), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"59, true", "-59, true", "61, false", "-61, false", "180, false"})
    void nobodyIsTurnedAwayFromTheOthers(double turnDegrees, boolean agreed) {
        assertEquals(agreed, terms(ARC).agreeable(VIOLIN.at(VIOLIN.xM(), VIOLIN.yM(), InRoom.turned(turnDegrees))));
    }

    @Test
    void whoSitsInACornerIsNotGivenTheirBack() {
        assertFalse(terms(ARC).agreeable(VIOLIN.at(8.5, 3, 210)));
        assertTrue(terms(ARC).agreeable(VIOLIN.at(8.5, 3, 30)));
    }

    @Test
    void whoLooksElsewhereAlreadyMayGoOnButNotFarther() {
        LineUp away = ARC.seated(List.of(VIOLIN.at(10, 5, 90), ARC.seats().get(1), ARC.seats().get(2)));
        assertTrue(terms(away).agreeable(VIOLIN.at(10, 5, 80)));
        assertFalse(terms(away).agreeable(VIOLIN.at(10, 5, 100)));
    }

    @Test
    void nobodyIsBroughtSoFarThatTheyPlayLate() {
        double mostM = 0.024 * 343;
        LineUp near = lineUp(HALL, List.of(), seat("v", "violin", 10, 8, 0), seat("c", "cello", 10, 12, 180));
        assertTrue(terms(near).agreeable(VIOLIN.at(10, 12 - mostM + 0.05, 0)));
        assertFalse(terms(near).agreeable(VIOLIN.at(10, 12 - mostM - 0.05, 0)));
        LineUp far = lineUp(HALL, List.of(), seat("v", "violin", 10, 2, 0), seat("c", "cello", 10, 12, 180));
        assertTrue(terms(far).agreeable(VIOLIN.at(11, 3, 0)), "nearer than they were");
        assertFalse(terms(far).agreeable(VIOLIN.at(10, 1.5, 0)));
    }

    @Test
    void aSectionStaysTogether() {
        LineUp section = new LineUp(null, HALL, ARC.seats(), List.of(), List.of(), List.of(List.of("v", "f")), null, null, 1);
        Seat flute = ARC.seats().get(2);
        double wasM = Math.hypot(2, 3);
        assertTrue(terms(section).agreeable(flute.at(10 + wasM - 0.05, 5, 280)));
        assertFalse(terms(section).agreeable(flute.at(10 + wasM + 0.05, 5, 280)));
        assertTrue(terms(ARC).agreeable(flute.at(10 + wasM + 0.05, 5, 280)), "of no section it may");
    }
}
