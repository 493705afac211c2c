package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pairwright.session.Rooms.CATALOGUE;
import static pairwright.session.Rooms.inTheOpen;
import static pairwright.session.Rooms.seat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Pattern;

class HearingWordsTest {
    private static final LineUp LINE_UP = inTheOpen(seat("t", "tenor-saxophone", 10, 10, 0), seat("k", "drum-kit", 12, 11, 270));
    private static final HearingWords WORDS = HearingWords.of(LINE_UP);

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "9.2 | 0 | 0 | | 9.2 | 0 | 9.2 | Line 3 hears the drum kit 9 dB under the tenor saxophone, most of it around 250 Hz.",
        "9.2 | 0 | 0 | 20 | 9.2 | 25 | 14 | Line 3 hears the drum kit 9 dB under the tenor saxophone, most of it around 250 Hz; turned 25 degrees to the left of its own source it would be 14 dB under.",
        "9.2 | 10 | 0 | 20 | 9.2 | -25 | 14 | Line 3 hears the drum kit 9 dB under the tenor saxophone, most of it around 250 Hz; turned 25 degrees to the right of its own source it would be 14 dB under.",
        "14 | 25 | 0 | 30 | 9.2 | 25 | 14 | Line 3 hears the drum kit 14 dB under the tenor saxophone, most of it around 250 Hz; straight at its own source it would be 9 dB under.",
        "9.2 | 0 | 0 | 11 | 9.2 | 0 | 9.2 | Line 3 hears the drum kit 9 dB under the tenor saxophone, most of it around 250 Hz; most of that comes by way of the room, and no turn gets it lower than 11 dB under.",
        "9.2 | 0 | 0 | 9.4 | 9.2 | 0 | 9.2 | Line 3 hears the drum kit 9 dB under the tenor saxophone, most of it around 250 Hz; most of that comes by way of the room, and no turn gets it lower.",
        "0.3 | 0 | 0 | | 0.3 | 0 | 0.3 | Line 3 hears the drum kit as loud as the tenor saxophone, most of it around 250 Hz.",
        "-4 | 0 | 6.4 | | -4 | 0 | -4 | Line 3 hears the drum kit 4 dB over the tenor saxophone, most of it around 250 Hz; a gobo between takes 6 dB of what comes straight."})
    void aLineSaysWhatItHearsAndWhatATurnWouldDo(double separationDb, double aimDegrees, double screenDb, Double roomAllowsDb, double straightDb,
            double betterAimDegrees, double betterDb, String expected) {
        Line line = Lines.line(LINE_UP, 3, "t", "long-ribbon", Pattern.FIGURE_8, "in-front", 1, aimDegrees);
        Hears hears = new Hears(3, "k", "drum-kit", 2, 40, screenDb, separationDb, OctaveCurve.ZERO, 250, roomAllowsDb, straightDb, betterAimDegrees, betterDb);
        assertEquals(expected, WORDS.of(line, hears));
    }

    @Test
    void theLoudestOfTheOthersComesFirst() {
        LineUp three = inTheOpen(seat("t", "tenor-saxophone", 10, 10, 0), seat("v", "nylon-guitar", 15, 18, 0), seat("k", "drum-kit", 12, 11, 270));
        Line line = Lines.line(three, 1, "t", "long-ribbon", Pattern.FIGURE_8, "in-front", 1, 0);
        List<Hears> heard = Hearing.of(three, CATALOGUE).of(List.of(line));
        List<String> says = HearingWords.of(three).of(line, heard, 1);
        assertEquals(1, says.size());
        assertEquals("Line 1 hears the drum kit", says.get(0).substring(0, 25));
        assertEquals(2, HearingWords.of(three).of(line, heard, 5).size());
    }

    @Test
    void whoIsNamedTwiceIsToldApartByWhatTheyPlay() {
        LineUp twice = inTheOpen(called("t", "trumpet", "Al", 10, 10), called("p", "upright-piano", "al", 13, 10), called("b", "double-bass", "Bo", 16, 10));
        SeatNames names = SeatNames.of(twice);
        assertEquals(List.of("Al (trumpet)", "al (upright piano)", "Bo"), List.of(names.of("t"), names.of("p"), names.of("b")));
    }

    private static Seat called(String id, String source, String player, double xM, double yM) {
        return new Seat(id, player, source, xM, yM, 0, null, null, null, null, null, true, null, false);
    }

    @Test
    void whatAllTheOthersAreTogetherIsSaidOfThem() {
        LineUp three = inTheOpen(seat("t", "tenor-saxophone", 10, 10, 0), seat("v", "nylon-guitar", 15, 18, 0), seat("k", "drum-kit", 12, 11, 270));
        Line line = Lines.line(three, 1, "t", 1, "long-ribbon", Pattern.FIGURE_8, "in-front", 1, 0, false, 15.8);
        List<String> says = HearingWords.of(three).of(line, Hearing.of(three, CATALOGUE).of(List.of(line)), 5);
        assertEquals("The others together are 16 dB under the tenor saxophone.", says.get(2));
    }
}
