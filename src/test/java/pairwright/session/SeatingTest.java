package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;

class SeatingTest {
    private static final Catalogue CATALOGUE = new CatalogueStore().builtIn();
    private static final Floor LIVE_ROOM = new Floor(null, 6, 8, 3.2, 0.5);

    private static Seating.Told told(String id, String source, Double xM, Double yM, Double facingDegrees) {
        return new Seating.Told(new Seat(id, null, source, xM == null ? 0 : xM, yM == null ? 0 : yM, facingDegrees == null ? 0 : facingDegrees, null, null, null, null, null, true, null, false),
                xM != null, facingDegrees != null);
    }

    private static Seating.Told open(String source) {
        return told(source, source, null, null, null);
    }

    private static double apartM(Seat one, Seat other) {
        return Math.hypot(one.xM() - other.xM(), one.yM() - other.yM());
    }

    @Test
    void theLoudestSitAtTheEndsAndTheSoftestInTheMiddle() {
        Seating seating = Seating.of(LIVE_ROOM, List.of(open("drum-kit"), open("nylon-guitar"), open("singing-voice"), open("cello"), open("trumpet")), CATALOGUE);
        List<Seat> across = new ArrayList<>(seating.seats());
        across.sort((one, other) -> Double.compare(one.xM(), other.xM()));
        List<String> names = across.stream().map(Seat::source).toList();
        assertEquals(List.of("drum-kit", "trumpet"), List.of(names.get(0), names.get(4)).stream().sorted().toList(), names.toString());
        assertEquals("nylon-guitar", names.get(2), names.toString());
        assertTrue(seating.fits());
    }

    @Test
    void everybodyLooksAtTheMiddleOfTheArc() {
        Seating seating = Seating.of(LIVE_ROOM, List.of(open("trumpet"), open("nylon-guitar"), open("drum-kit")), CATALOGUE);
        double middleYM = seating.seats().stream().mapToDouble(Seat::yM).min().orElseThrow();
        for (Seat seat : seating.seats()) {
            double angle = Math.toRadians(seat.facingDegrees());
            double stepM = Math.hypot(3 - seat.xM(), middleYM - seat.yM());
            assertEquals(3, seat.xM() + stepM * Math.sin(angle), 0.05, seat.toString());
            assertEquals(middleYM, seat.yM() + stepM * Math.cos(angle), 0.05, seat.toString());
        }
    }

    @Test
    void whatWasSaidStaysAndNobodyIsPutOnTopOfIt() {
        Seating.Told piano = told("piano", "grand-piano", 3.0, 6.0, 180.0);
        Seating.Told voice = told("voice", "singing-voice", 1.0, 1.0, null);
        Seating seating = Seating.of(LIVE_ROOM, List.of(piano, open("trumpet"), voice, open("double-bass"), open("flute")), CATALOGUE);
        assertEquals(piano.seat(), seating.seats().get(0));
        assertEquals(List.of(1.0, 1.0), List.of(seating.seats().get(2).xM(), seating.seats().get(2).yM()));
        for (int i : new int[] {1, 3, 4}) {
            assertTrue(apartM(seating.seats().get(0), seating.seats().get(i)) >= 0.9 && apartM(seating.seats().get(2), seating.seats().get(i)) >= 0.9, seating.seats().toString());
        }
        assertEquals(List.of("Nobody said where trumpet, double bass and flute are: put on an arc, the loudest at its ends, looking at its middle. Say xM and yM where you know better.",
                "Nobody said where voice looks: at the middle of the band. Say facingDegrees where you know better."), seating.assumed());
    }

    @Test
    void nothingIsAssumedWhereAllWasSaid() {
        List<Seating.Told> told = List.of(told("a", "flute", 1.0, 1.0, 0.0), told("b", "oboe", 4.0, 1.0, 0.0));
        Seating seating = Seating.of(LIVE_ROOM, told, CATALOGUE);
        assertEquals(told.stream().map(Seating.Told::seat).toList(), seating.seats());
        assertEquals(List.of(), seating.assumed());
    }

    @Test
    void oneAloneInABoothStandsInIt() {
        Seating seating = Seating.of(new Floor("vocal-booth", 2, 2.5, 2.3, 0.2), List.of(open("singing-voice")), CATALOGUE);
        assertTrue(seating.fits());
        assertEquals(1, seating.seats().get(0).xM(), 0.01);
        assertTrue(seating.seats().get(0).yM() > 0.5 && seating.seats().get(0).yM() < 2, seating.seats().toString());
    }

    @Test
    void aCupboardHoldsNoOrchestra() {
        List<Seating.Told> many = java.util.stream.IntStream.range(0, 40).mapToObj(i -> told("v" + i, "violin", null, null, null)).toList();
        assertFalse(Seating.of(new Floor(null, 2, 2, 2, 0.2), many, CATALOGUE).fits());
        assertTrue(Seating.of(new Floor(null, 14, 12, 6, 1), many, CATALOGUE).fits());
    }

    @Property(tries = 400)
    void whoeverFitsIsWithinTheWallsAndApartAndAlwaysInTheSamePlace(@ForAll @DoubleRange(min = 1, max = 30) double widthM, @ForAll @DoubleRange(min = 1, max = 30) double depthM,
            @ForAll @IntRange(min = 1, max = 30) int count, @ForAll @IntRange(min = 0, max = 3) int placed) {
        Floor floor = new Floor(null, widthM, depthM, 3, 0.5);
        List<Seating.Told> told = new ArrayList<>();
        for (int i = 0; i < placed; i++) {
            told.add(told("p" + i, "cello", widthM * (i + 1) / 4, depthM * (i + 1) / 4, 0.0));
        }
        for (int i = 0; i < count; i++) {
            told.add(told("o" + i, i % 2 == 0 ? "trumpet" : "nylon-guitar", null, null, null));
        }
        Seating seating = Seating.of(floor, told, CATALOGUE);
        assertEquals(seating, Seating.of(floor, told, CATALOGUE));
        assertEquals(told.stream().map(one -> one.seat().id()).toList(), seating.seats().stream().map(Seat::id).toList());
        if (seating.fits()) {
            for (int i = placed; i < seating.seats().size(); i++) {
                Seat seat = seating.seats().get(i);
                assertTrue(floor.holds(seat.xM(), seat.yM()), seat.toString());
                for (int j = placed; j < i; j++) {
                    assertTrue(apartM(seat, seating.seats().get(j)) >= Seating.LEAST_APART_M - 0.03, seat + " and " + seating.seats().get(j));
                }
            }
        }
    }
}
