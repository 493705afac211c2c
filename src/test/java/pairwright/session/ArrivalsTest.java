package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Rooms.CATALOGUE;
import static pairwright.session.Rooms.inTheOpen;
import static pairwright.session.Rooms.lineUp;
import static pairwright.session.Rooms.seat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.acoustics.Delay;
import pairwright.model.Option;
import pairwright.model.Pattern;
import pairwright.model.Together;

class ArrivalsTest {
    private static final String CARDIOID = "small-condenser-cardioid";
    private static final String OMNI = "small-condenser-omni";

    /** Two voices that face each other, their omnis 0.45 m before them, 2.1 m from mouth to mouth. */
    @Test
    void bleedComesLaterByTheLongerWayAndRipplesByItsLevel() {
        LineUp two = inTheOpen(seat("v", "singing-voice", 10, 10, 0), seat("w", "singing-voice", 10, 12.1, 180));
        List<Arrival> all = Arrivals.of(two, CATALOGUE).of(List.of(), List.of(omni(two, 1, "v"), omni(two, 2, "w")));
        assertEquals(2, all.size());
        Arrival first = all.get(0);
        // 1.65 m to the other microphone, 0.45 m to the own: 1.2 m
        assertEquals(1.2, first.pathM(), 1e-9);
        assertEquals(3.499, first.delayMs(), 0.001);
        assertEquals(168, first.samples(48_000), 0.1, "1.2 / 343 x 48000");
        assertEquals(142.9, first.firstNullHz(), 0.05, "343 / 2.4");
        assertEquals(3.667, first.distanceRatio(), 0.001);
        double apartDb = 20 * Math.log10((1.65 + 0.062) / (0.45 + 0.062));
        assertEquals(apartDb, first.levelDifferenceDb(), 0.25, "from behind even an omni hears a little less of the top");
        assertEquals(Delay.rippleDb(first.levelDifferenceDb()), first.rippleDb(), 1e-9);
        assertEquals(List.of(1, 2), first.lines());
        assertEquals("v", first.seat());
        assertEquals(List.of(2, 1), all.get(1).lines(), "and the other way round");
        assertFalse(first.own());
        assertFalse(first.inverted());
    }

    @Test
    void threeToOneLeavesSixDecibelsOfRippleBetweenEqualSourcesAndOmnis() {
        double farM = 3 * (0.45 + 0.062) - 0.062;
        LineUp two = inTheOpen(seat("v", "singing-voice", 10, 10, 0), seat("w", "singing-voice", 10, 10 + 0.45 + farM, 180));
        Arrival first = Arrivals.of(two, CATALOGUE).of(List.of(), List.of(omni(two, 1, "v"), omni(two, 2, "w"))).get(0);
        assertEquals(6.02, first.rippleDb(), 0.2);
        assertEquals(9.54, first.levelDifferenceDb(), 0.25);
    }

    @Test
    void bleedThatMakesNoRippleIsNotTold() {
        LineUp far = inTheOpen(seat("v", "singing-voice", 5, 10, 270), seat("w", "singing-voice", 30, 10, 90));
        assertEquals(List.of(), Arrivals.of(far, CATALOGUE).of(List.of(), List.of(omni(far, 1, "v"), omni(far, 2, "w"))));
    }

    @Test
    void onlyWhatComesStraightMakesAComb() {
        Seat voice = seat("v", "singing-voice", 5, 5, 0);
        Seat other = seat("w", "singing-voice", 5, 8, 180);
        LineUp dry = lineUp(new Floor(null, 10, 14, 6, 0.3), List.of(), voice, other);
        LineUp live = lineUp(new Floor(null, 10, 14, 6, 4), List.of(), voice, other);
        assertEquals(Arrivals.of(dry, CATALOGUE).of(List.of(), List.of(omni(dry, 1, "v"), omni(dry, 2, "w"))),
                Arrivals.of(live, CATALOGUE).of(List.of(), List.of(omni(live, 1, "v"), omni(live, 2, "w"))));
    }

    @Test
    void aPairOfASeatHasTheNumbersOfItsOption() {
        LineUp one = inTheOpen(seat("s", "snare-drum", 10, 10, 0));
        Line top = Lines.line(one, 1, "s", 1, "handheld-moving-coil", Pattern.CARDIOID, first("snare-drum", false), 0.05, 0, false);
        Line bottom = Lines.line(one, 2, "s", 2, CARDIOID, Pattern.CARDIOID, first("snare-drum", true), 0.1, 0, true);
        Together together = new Together(0.2, 2500.0, 3, 15.3, 4, 2, null, 90, 0);
        Arrival arrival = Arrivals.of(one, CATALOGUE).of(List.of(served("s", "top-and-bottom", together)), List.of(top, bottom)).get(0);
        assertTrue(arrival.own());
        assertTrue(arrival.inverted(), "the lower head moves the other way");
        assertEquals(0.2, arrival.delayMs());
        assertEquals(0.0686, arrival.pathM(), 1e-4);
        assertEquals(15.3, arrival.rippleDb());
        assertEquals(3, arrival.levelDifferenceDb());
        assertEquals(Arrival.Treat.ALIGN, arrival.treat());
        Arrival swapped = Arrivals.of(one, CATALOGUE).of(List.of(served("s", "top-and-bottom", together)),
                List.of(Lines.line(one, 1, "s", 1, CARDIOID, Pattern.CARDIOID, first("snare-drum", false), 0.2, 0, false), bottom)).get(0);
        assertEquals(List.of(2, 1), swapped.lines(), "the nearer first");
        assertEquals(-3, swapped.levelDifferenceDb());
    }

    @ParameterizedTest
    @CsvSource({"spaced-pair, 0, LEAVE", "coincident-pair, 0, LEAVE", "mid-side, 0, LEAVE", "near-and-far, 3, ALIGN", "two-spots, 0.3, ALIGN", "contrast-on-one-spot, 0, LEAVE"})
    void whatIsMeantToDifferIsLeftAndWhatIsToSoundAsOneIsAligned(String technique, double delayMs, Arrival.Treat expected) {
        LineUp one = inTheOpen(seat("t", "tenor-saxophone", 10, 10, 0));
        List<Line> two = List.of(Lines.line(one, 1, "t", 1, OMNI, Pattern.OMNI, "in-front", 1, 0, false), Lines.line(one, 2, "t", 2, OMNI, Pattern.OMNI, "in-front", 1, 0, false));
        Together together = new Together(delayMs, delayMs == 0 ? null : Double.valueOf(500 / delayMs), 0, 40, 0, 1, null, 20, 0);
        Arrival arrival = Arrivals.of(one, CATALOGUE).of(List.of(served("t", technique, together)), two).get(0);
        assertEquals(expected, arrival.treat());
        assertEquals(delayMs == 0, arrival.firstNullHz() == null);
    }

    @Test
    void theSideOfAMidSidePairIsComparedWithNobody() {
        LineUp two = inTheOpen(seat("v", "singing-voice", 10, 10, 0), seat("w", "singing-voice", 11.2, 10.8, 270));
        Line mid = omni(two, 1, "v");
        Line side = Lines.line(two, 2, "v", 2, "long-ribbon", Pattern.FIGURE_8, "forearm", 0.45, 90, false);
        Line other = omni(two, 3, "w");
        List<Arrival> all = Arrivals.of(two, CATALOGUE).of(List.of(), List.of(mid, side, other));
        assertEquals(Arrivals.of(two, CATALOGUE).of(List.of(), List.of(mid, other)), all, "what it hears beside is what it is for");
        assertFalse(all.isEmpty());
        assertFalse(Arrivals.of(two, CATALOGUE).of(List.of(), List.of(mid, Lines.line(two, 2, "v", 2, "long-ribbon", Pattern.FIGURE_8, "forearm", 0.45, 0, false), other)).stream()
                .noneMatch(arrival -> arrival.lines().contains(2)), "one that looks ahead is");
    }

    @Test
    void anInvertedChannelHasItsNeighbourUpsideDown() {
        LineUp two = inTheOpen(seat("v", "singing-voice", 10, 10, 0), seat("w", "singing-voice", 10, 12.1, 180));
        Line inverted = Lines.line(two, 2, "w", 1, OMNI, Pattern.OMNI, "forearm", 0.45, 0, true);
        assertTrue(Arrivals.of(two, CATALOGUE).of(List.of(), List.of(omni(two, 1, "v"), inverted)).stream().allMatch(Arrival::inverted));
    }

    @Test
    void ofManyTheStrongestAreToldAndNoMoreThanCanBeRead() {
        List<Seat> seats = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            seats.add(seat("v" + i, "singing-voice", 3 + 1.1 * i, 5 + i % 2, 0));
        }
        LineUp many = inTheOpen(seats.toArray(Seat[]::new));
        List<Line> lines = new ArrayList<>();
        for (Seat seat : seats) {
            lines.add(omni(many, lines.size() + 1, seat.id()));
        }
        List<Arrival> all = Arrivals.of(many, CATALOGUE).of(List.of(), lines);
        assertEquals(Arrivals.MOST_BETWEEN_SEATS, all.size());
        for (int i = 1; i < all.size(); i++) {
            assertTrue(all.get(i).rippleDb() <= all.get(i - 1).rippleDb());
        }
        assertTrue(all.get(all.size() - 1).rippleDb() >= Arrivals.LEAST_RIPPLE_DB);
        assertEquals(all, Arrivals.of(many, CATALOGUE).of(List.of(), lines));
    }

    @Test
    void ofAWireThereIsNoWayToGo() {
        LineUp two = inTheOpen(seat("b", "double-bass", 10, 10, 0), seat("v", "nylon-guitar", 10, 11.5, 180));
        Line wire = Lines.line(two, 1, "b", "piezo-pickup", Pattern.CONTACT, "pickup", 0.001, 0);
        Line guitar = Lines.line(two, 2, "v", OMNI, Pattern.OMNI, "front", 0.75, 0);
        List<Arrival> all = Arrivals.of(two, CATALOGUE).of(List.of(), List.of(wire, guitar));
        assertEquals(1, all.size(), "the contact hears nobody");
        assertEquals(List.of(1, 2), all.get(0).lines());
        double awayM = Hearing.of(two, CATALOGUE).of(List.of(guitar)).get(0).distanceM();
        assertEquals(awayM, all.get(0).pathM(), 1e-9);
        assertNull(wire.placement().predicted().typicalDbSpl());
    }

    private static Line omni(LineUp lineUp, int number, String seat) {
        return Lines.line(lineUp, number, seat, OMNI, Pattern.OMNI, "forearm", 0.45, 0);
    }

    private static String first(String source, boolean opposite) {
        return CATALOGUE.sources().get(source).positions().stream().filter(position -> position.opposite() == opposite).findFirst().orElseThrow().id();
    }

    private static Plan.Served served(String seat, String technique, Together together) {
        return new Plan.Served(seat, new Option(1, 0, technique, technique, List.of(), together, List.of(), List.of(), null));
    }
}
