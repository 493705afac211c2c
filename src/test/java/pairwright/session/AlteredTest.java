package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Rooms.CATALOGUE;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Catalogue;
import pairwright.model.HeardBefore;
import pairwright.model.Question;
import pairwright.model.Range;
import pairwright.model.Room;
import pairwright.model.Source;

class AlteredTest {
    private static final Source TENOR = CATALOGUE.sources().get("tenor-saxophone");

    /** The catalogue has 91 and 111 dB. */
    @ParameterizedTest
    @CsvSource({", , 91, 111", "95, , 95, 115", "95, 112, 95, 112", ", 105, 91, 105", "88, , 88, 108", ", 85, 85, 85"})
    void whatWasNotedOfALevelStandsAboveTheCatalogue(Double typical, Double peak, double expectedTypical, double expectedPeak) {
        Source heard = altered(new HeardBefore(typical, peak, null, null, null, null));
        assertEquals(expectedTypical, heard.level().typicalDbSpl(), 1e-9);
        assertEquals(expectedPeak, heard.level().peakDbSpl(), 1e-9);
        assertEquals(TENOR.level().centreOffsetM(), heard.level().centreOffsetM());
    }

    @Test
    void aToneThatWasNotedIsPutOnTheSpectrum() {
        Source heard = altered(new HeardBefore(null, null, OctaveCurve.of(0, 0, 0, 0, 0, 4, 2, 0, 0), null, null, null));
        assertEquals(OctaveCurve.of(-43, -16, -7, -3, -5, 0, -11, -23, -37), heard.spectrumDb());
    }

    @Test
    void anotherTuningMovesTheRangeOfItsNotes() {
        assertEquals(new Range(73, 260, 660), altered(new HeardBefore(null, null, null, 73.0, null, null)).fundamentalHz());
        assertEquals(new Range(300, 300, 660), altered(new HeardBefore(null, null, null, 300.0, null, null)).fundamentalHz());
        assertEquals(new Range(104, 200, 200), altered(new HeardBefore(null, null, null, null, 200.0, null)).fundamentalHz());
    }

    @Test
    void whatIsNotedOfOnePlayerChangesNoOther() {
        Seat heard = heard(new HeardBefore(95.0, null, null, null, null, null));
        Seat other = Rooms.seat("u", "tenor-saxophone", 4, 1, 0);
        LineUp lineUp = Rooms.lineUp(Rooms.BARN, List.of(), heard, other);
        assertEquals(95, Altered.of(CATALOGUE, lineUp, heard).sources().get("tenor-saxophone").level().typicalDbSpl());
        assertSame(TENOR, Altered.of(CATALOGUE, lineUp, other).sources().get("tenor-saxophone"));
        assertEquals(91, CATALOGUE.sources().get("tenor-saxophone").level().typicalDbSpl());
    }

    @Test
    void theRoomIsThatOfTheFloorAndAsQuietAsTheNamedOne() {
        Seat seat = Rooms.seat("t", "tenor-saxophone", 1, 1, 0);
        Room barn = Altered.of(CATALOGUE, Rooms.lineUp(Rooms.BARN, List.of(), seat), seat).rooms().get(Altered.ROOM);
        Room named = CATALOGUE.rooms().get("barn");
        assertEquals(10 * 14 * 6, barn.volumeM3(), 1e-9);
        assertEquals(1.1, barn.reverbTimeS());
        assertEquals(named.noiseDba(), barn.noiseDba());
        assertEquals(named.kind(), barn.kind());
        assertEquals(named.name(), barn.name());
        Room unnamed = Altered.of(CATALOGUE, Rooms.lineUp(new Floor(null, 5, 4, 3, 0.4), List.of(), seat), seat).rooms().get(Altered.ROOM);
        assertEquals(CATALOGUE.rooms().get("medium-live-room").noiseDba(), unnamed.noiseDba());
        assertEquals(60, unnamed.volumeM3(), 1e-9);
        assertFalse(CATALOGUE.rooms().containsKey(Altered.ROOM));
        assertTrue(Altered.of(CATALOGUE, Rooms.inTheOpen(seat), seat).rooms().get(Altered.ROOM).outdoors());
    }

    @Test
    void aSourceOrARoomThatIsNotThereIsRefusedByName() {
        Seat seat = Rooms.seat("t", "tenor-saxofone", 1, 1, 0);
        Seat known = Rooms.seat("t", "tenor-saxophone", 1, 1, 0);
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Altered.source(CATALOGUE, seat)).getMessage().contains("tenor-saxofone"));
        LineUp lineUp = Rooms.lineUp(new Floor("cellar", 5, 4, 3, 0.4), List.of(), known);
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Altered.of(CATALOGUE, lineUp, known)).getMessage().contains("cellar"));
    }

    @Test
    void aQuestionForASeatAsksInTheRoomOfTheSessionAndNamesNoNeighbour() {
        Seat seat = new Seat("t", null, "tenor-saxophone", 1, 1, 0, List.of("overblown", "lid-open"), List.of(), List.of("warm"), List.of("live"), null, true, null, false);
        LineUp lineUp = Rooms.lineUp(Rooms.BARN, List.of(), seat, Rooms.seat("v", "singing-voice", 3, 3, 0));
        Catalogue altered = Altered.of(CATALOGUE, lineUp, seat);
        Question question = SeatQuestion.of(seat, altered);
        assertEquals("tenor-saxophone", question.source());
        assertEquals(List.of("overblown"), question.ways());
        assertEquals(List.of("warm"), question.character());
        assertEquals(Altered.ROOM, question.room());
        assertEquals(List.of(), question.neighbours());
        assertEquals(List.of("live"), question.circumstances());
    }

    private static Source altered(HeardBefore heard) {
        Seat seat = heard(heard);
        return Altered.of(CATALOGUE, Rooms.lineUp(Rooms.BARN, List.of(), seat), seat).sources().get("tenor-saxophone");
    }

    private static Seat heard(HeardBefore heard) {
        return new Seat("t", null, "tenor-saxophone", 1, 1, 0, null, null, null, null, null, true, heard, false);
    }
}
