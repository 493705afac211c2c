package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Body;
import pairwright.model.BodyShape;
import pairwright.model.Mount;
import pairwright.model.Point;
import pairwright.model.Position;
import pairwright.model.Range;
import pairwright.model.Side;

class MicAtTest {
    private static final Body MOUTH = new Body(BodyShape.HEAD, 0, null, 1.6);

    /** A point two metres forward, one to the left of a player at (3, 4). */
    @ParameterizedTest
    @CsvSource({"0, 2, 6", "90, 5, 5", "180, 4, 2", "270, 1, 3", "-90, 1, 3", "30, 3.134, 6.232"})
    void aPointOfAPlayerTurnsWithThePlayer(double facingDegrees, double xM, double yM) {
        Point place = InRoom.place(Rooms.seat("a", "violin", 3, 4, facingDegrees), new Point(2, 1, 0.7));
        assertEquals(xM, InRoom.xM(place), 0.001);
        assertEquals(yM, InRoom.yM(place), 0.001);
        assertEquals(0.7, place.upM(), 0);
    }

    /** Half a metre before a mouth at (3, 4): it looks back at the player, and an aim above 0 turns it to the left as it looks: against the clock on the plan. */
    @ParameterizedTest
    @CsvSource({"0, 0, 3, 4.5, 180", "0, 20, 3, 4.5, 160", "0, -20, 3, 4.5, 200", "90, 0, 3.5, 4, 270", "90, 25, 3.5, 4, 245", "270, 0, 2.5, 4, 90",
        "180, 0, 3, 3.5, 0", "180, -10, 3, 3.5, 10", "45, 90, 3.354, 4.354, 135"})
    void aMicrophoneIsBeforeItsSourceAndLooksAtIt(double facingDegrees, double aimDegrees, double xM, double yM, double headingDegrees) {
        Seat seat = Rooms.seat("a", "singing-voice", 3, 4, facingDegrees);
        Line.Spot spot = MicAt.of(seat, MOUTH, position(Side.FRONT, 0, null), 0.5).spot(seat, aimDegrees);
        assertEquals(xM, spot.xM(), 0.001);
        assertEquals(yM, spot.yM(), 0.001);
        assertEquals(1.6, spot.zM(), 1e-9);
        assertEquals(headingDegrees, spot.headingDegrees(), 1e-6);
        assertEquals(0, spot.upDegrees(), 1e-9);
    }

    @Test
    void aHigherMicrophoneLooksDown() {
        Seat seat = Rooms.seat("a", "singing-voice", 0, 0, 0);
        MicAt mic = MicAt.of(seat, MOUTH, position(Side.FRONT, 0, 1.9), 0.5);
        assertEquals(-36.87, mic.spot(seat, 0).upDegrees(), 0.01, "0.3 m above, 0.4 m before");
        assertEquals(0.4, mic.spot(seat, 0).yM(), 1e-9);
        assertEquals(0, mic.across().upM(), 0);
        assertEquals(90, mic.axis(0).apartDegrees(mic.across()), 1e-9);
        assertEquals(30, mic.axis(30).apartDegrees(mic.line()), 1e-6, "however steep, it is turned by as much as it is turned");
    }

    @Test
    void plumbAboveADrumAnAimTurnsToTheLeftHandOfThePlayer() {
        Seat seat = Rooms.seat("a", "snare-drum", 0, 0, 90);
        Body drum = new Body(BodyShape.DRUM, 90, null, 0.7);
        MicAt mic = MicAt.of(seat, drum, position(Side.ABOVE, 0, null), 0.2);
        assertEquals(0.9, mic.spot(seat, 0).zM(), 1e-9);
        assertEquals(-90, mic.spot(seat, 0).upDegrees(), 1e-6);
        Line.Spot turned = mic.spot(seat, 40);
        assertEquals(0, turned.headingDegrees(), 1e-6);
        assertEquals(-50, turned.upDegrees(), 1e-6);
    }

    @Test
    void ofALeadNothingIsKnownButThePlaceOfItsPlayer() {
        Seat seat = Rooms.seat("a", "bass-lead", 2, 2, 0);
        Line.Spot spot = MicAt.of(seat, null, position(Side.ON, 0, null), 0.1).spot(seat, 0);
        assertEquals(new Line.Spot(2, 2.1, 1, 180, 0), spot);
    }

    private static Position position(Side side, double offAxisDegrees, Double heightM) {
        Range any = new Range(0.1, 0.5, 2);
        return new Position("there", "There", side, any, new Range(offAxisDegrees, offAxisDegrees, offAxisDegrees), new Range(0, 0, 20), heightM, null, null,
                0, OctaveCurve.ZERO, "", Mount.STAND, false, false, List.of(), List.of(), false, false, List.of(), List.of());
    }
}
