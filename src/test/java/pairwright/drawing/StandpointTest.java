package pairwright.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Body;
import pairwright.model.BodyShape;
import pairwright.model.Mount;
import pairwright.model.Point;
import pairwright.model.Standpoint;
import pairwright.model.Position;
import pairwright.model.Range;
import pairwright.model.Side;
import pairwright.model.Spot;

/** Where microphones stand, against values worked by hand. */
class StandpointTest {
    private static final double A_MILLIMETRE = 0.001;

    /** The mic, from the middle of the sounding surface: forward, left and up (cos and sin of 30, 40 and 60 degrees are 0.866 and 0.5, 0.766 and 0.643). */
    @ParameterizedTest
    @CsvSource({
            // axis up, side, mount, off axis: forward, left, up
            "0, FRONT, STAND, 0, 1, 0, 0",
            "0, FRONT, STAND, 30, 0.866, -0.5, 0",
            "0, FRONT, BOOM, 30, 0.866, 0, 0.5",
            "0, ABOVE, BOOM, 30, 0.866, 0, 0.5",
            "0, BELOW, STAND, 60, 0.5, 0, -0.866",
            "0, LEFT, STAND, 60, 0.5, 0.866, 0",
            "0, RIGHT, STAND, 60, 0.5, -0.866, 0",
            "0, BESIDE, STAND, 90, 0, -1, 0",
            "0, BEHIND, STAND, 150, -0.866, -0.5, 0",
            "0, AROUND, STAND, 30, 0.866, -0.5, 0",
            "90, ABOVE, BOOM, 0, 0, 0, 1",
            "90, ABOVE, BOOM, 30, 0.5, 0, 0.866",
            "90, BELOW, STAND, 150, 0.5, 0, -0.866",
            "90, FRONT, STAND, 60, 0.866, 0, 0.5",
            "90, BEHIND, BOOM, 60, -0.866, 0, 0.5",
            "90, BESIDE, STAND, 90, 0, -1, 0",
            "50, ABOVE, BOOM, 40, 0, 0, 1",
            "-30, ABOVE, BOOM, 90, 0.5, 0, 0.866"})
    void theAngleIsTurnedTowardTheSide(double axisUpDegrees, Side side, Mount mount, double offAxisDegrees, double forwardM, double leftM, double upM) {
        Standpoint at = Standpoint.of(body(axisUpDegrees, null, 3), position(side, mount, offAxisDegrees, null, null, null), 1);
        thenAt(new Point(forwardM, leftM, 3 + upM), at.place());
        assertEquals(offAxisDegrees, at.offAxisDegrees(), 0.1);
    }

    @Test
    void anAxisThatIsTurnedBackwardSoundsBackward() {
        Standpoint at = Standpoint.of(body(0, 180.0, 1), position(Side.BEHIND, Mount.STAND, 0, null, null, null), 0.5);
        thenAt(new Point(-0.5, 0, 1), at.place());
    }

    @Test
    void aHeightThatIsGivenIsKeptByGoingRoundTheAxis() {
        // 1 m off, 60 degrees off a level axis, 0.5 m up: forward 0.5, and sideways what is left, sqrt(1 - 0.25 - 0.25)
        Standpoint at = Standpoint.of(body(0, null, 1), position(Side.FRONT, Mount.STAND, 60, 1.5, null, null), 1);
        thenAt(new Point(0.5, -0.707, 1.5), at.place());
        assertEquals(60, at.offAxisDegrees(), 0.1);
    }

    @Test
    void whereHeightAndAngleCannotBothBeDistanceAndHeightAreKept() {
        // a drum facing up: 2 m off, 1.2 m higher, so 1.6 m forward
        Standpoint at = Standpoint.of(body(90, null, 0.8), position(Side.FRONT, Mount.STAND, 30, 2.0, null, null), 2);
        thenAt(new Point(1.6, 0, 2), at.place());
        assertEquals(53.13, at.offAxisDegrees(), 0.1);
    }

    @Test
    void aHeightOutOfReachIsThatOfAnotherPartOfTheSource() {
        Standpoint at = Standpoint.of(body(90, null, 0.8), position(Side.FRONT, Mount.STAND, 90, 0.3, null, null), 0.25);
        thenAt(new Point(0, 0, 0.3), at.surface());
        thenAt(new Point(0.25, 0, 0.3), at.place());
    }

    @Test
    void aWayToTheFarHeadMovesTheSurface() {
        // the open bottom of a drum of 0.7 m, 0.15 m below it, straight down
        Standpoint at = Standpoint.of(body(90, null, 0.95), position(Side.BELOW, Mount.STAND, 180, null, 0.7, null), 0.15);
        thenAt(new Point(0, 0, 0.25), at.surface());
        thenAt(new Point(0, 0, 0.1), at.place());
    }

    @Test
    void aSpotIsWhereTheDistanceIsMeasuredFrom() {
        Standpoint at = Standpoint.of(body(0, null, 0.75), position(Side.FRONT, Mount.STAND, 0, null, null, new Spot(0.1, 0.2, 0.05)), 0.3);
        thenAt(new Point(0.4, 0.2, 0.8), at.place());
    }

    @Test
    void fromASpotToTheLeftTheAngleGoesOutward() {
        Standpoint at = Standpoint.of(body(0, null, 1), position(Side.FRONT, Mount.STAND, 30, null, null, new Spot(0, 0.2, 0)), 1);
        thenAt(new Point(0.866, 0.7, 1), at.place());
        Standpoint right = Standpoint.of(body(0, null, 1), position(Side.FRONT, Mount.STAND, 30, null, null, new Spot(0, -0.2, 0)), 1);
        thenAt(new Point(0.866, -0.7, 1), right.place());
    }

    @Test
    void theMiddleOfAPairIsOnTheCentreLine() {
        thenAt(new Point(0.866, 0, 1.5), Standpoint.ofPair(body(0, null, 1), position(Side.FRONT, Mount.STAND, 30, null, null, null), 1).place());
        // a height is kept: 0.6 m up of 1 m, 0.8 m forward
        thenAt(new Point(0.8, 0, 1.6), Standpoint.ofPair(body(0, null, 1), position(Side.FRONT, Mount.STAND, 60, 1.6, null, null), 1).place());
        thenAt(new Point(0.866, 0.5, 1), Standpoint.ofPair(body(0, null, 1), position(Side.LEFT, Mount.STAND, 30, null, null, null), 1).place());
    }

    @Test
    void nothingStandsUnderTheFloor() {
        Standpoint at = Standpoint.of(body(90, null, 0.2), position(Side.BELOW, Mount.STAND, 170, null, null, null), 0.4);
        assertTrue(at.place().upM() >= 0.0199, at.toString());
        assertEquals(0.4, at.place().minus(at.surface()).lengthM(), 1e-9);
    }

    @Test
    void bellowsAndTwoHeadsSoundAtEitherEnd() {
        Standpoint at = Standpoint.of(new Body(BodyShape.SQUEEZE_BOX, 0, null, 0.8), position(Side.RIGHT, Mount.STAND, 0, null, null, new Spot(0, -0.2, 0)), 0.4);
        thenAt(new Point(0, -0.6, 0.8), at.place());
    }

    @Test
    void mirroredItStandsOnTheOtherSideOfThePlayer() {
        Standpoint at = Standpoint.of(body(0, null, 1), position(Side.FRONT, Mount.STAND, 30, null, null, null), 1).mirrored();
        thenAt(new Point(0.866, 0.5, 1), at.place());
    }

    private static void thenAt(Point expected, Point found) {
        assertEquals(0, expected.minus(found).lengthM(), A_MILLIMETRE, "expected " + expected + ", found " + found);
    }

    private static Body body(double axisUpDegrees, Double axisTurnDegrees, double heightM) {
        return new Body(BodyShape.DRUM, axisUpDegrees, axisTurnDegrees, heightM);
    }

    private static Position position(Side side, Mount mount, double offAxisDegrees, Double heightM, Double pathM, Spot spot) {
        Range off = new Range(offAxisDegrees, offAxisDegrees, offAxisDegrees);
        return new Position("here", "Here", side, new Range(1, 1, 1), off, new Range(0, 0, 0), heightM, pathM, spot, 0, OctaveCurve.ZERO, "", mount, false, false, List.of(),
                List.of(), false, false, List.of(), List.of());
    }
}
