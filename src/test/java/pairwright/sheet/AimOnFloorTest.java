package pairwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.OctaveCurve;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Catalogue;
import pairwright.model.Placement;
import pairwright.session.Between;
import pairwright.session.Floor;
import pairwright.session.Hears;
import pairwright.session.Line;
import pairwright.session.LineUp;
import pairwright.session.Plan;
import pairwright.session.Seat;
import pairwright.session.SmallPlan;

/** How a turn is told on a floor, by hand: the source is straight ahead up the plan, one neighbour to the right of that, one to the left. */
class AimOnFloorTest {
    private static final Catalogue CATALOGUE = KnowledgeStore.builtIn().current().catalogue();
    private static final LineUp LINE_UP = new LineUp("Three", new Floor(null, 10, 10, 4, 0.5), List.of(seat("own", null, "violin", 5, 6), seat("right", "Ines", "trumpet", 8, 5),
            seat("left", null, "drum-kit", 2, 5)), null, null, null, null, null, 1);
    /** Any microphone: only how it is turned is looked at. */
    private static final Placement MIC = SmallPlan.plan(1).lines().get(0).placement();

    private static Seat seat(String id, String player, String source, double xM, double yM) {
        return new Seat(id, player, source, xM, yM, 0, null, null, null, null, null, true, null, false);
    }

    private static Placement turned(double aimDegrees, Double nullDegrees, Double nullMissDegrees) {
        Placement mic = MIC;
        return new Placement(mic.micType(), mic.name(), mic.family(), mic.pattern(), mic.position(), mic.positionName(), mic.brings(), mic.mount(), mic.distanceM(), mic.heightM(),
                aimDegrees, nullDegrees, nullMissDegrees, mic.turnGainDb(), mic.sourceAngleDegrees(), mic.distanceRatio(), mic.standRatio(), mic.loadRatio(), mic.lowCornerHz(),
                mic.keepClearM(), mic.currentMa(), mic.phantom(), mic.pad(), mic.padDb(), mic.invertPolarity(), mic.channels(), mic.free(), mic.units(), mic.predicted(), mic.neighbours());
    }

    private static Line line(double aimDegrees, Double nullDegrees, Double nullMissDegrees) {
        return new Line(1, null, null, null, null, "own", "Violin", "violin", 1, turned(aimDegrees, nullDegrees, nullMissDegrees), new Line.Spot(5, 5, 1.5, -aimDegrees, 0), null, null, null,
                null, null, null, 0, false, false, 0, null, null, Between.NOTHING, List.of());
    }

    private static AimOnFloor floor(Line line, double rightDb, double leftDb) {
        List<Hears> bleed = Stream.of(hears("right", "trumpet", 90 + line.placement().aimDegrees(), rightDb), hears("left", "drum-kit", 90 - line.placement().aimDegrees(), leftDb)).toList();
        return new AimOnFloor(LINE_UP, new Plan(1, 0, true, 0, List.of(), List.of(), List.of(line), bleed, List.of(), List.of(), List.of(), new Plan.SetUp(null, null, 300), List.of(), List.of(), List.of()), CATALOGUE);
    }

    private static Hears hears(String seat, String source, double angleDegrees, double separationDb) {
        return new Hears(1, seat, source, 3, angleDegrees, 0, separationDb, OctaveCurve.flat(separationDb), 500, 20.0, separationDb, 0, separationDb);
    }

    @Test
    void anAimAboveZeroIsToTheLeftAsTheMicrophoneLooksAndNamedIsWhoIsHeardMost() {
        Line right = line(-20, null, null);
        assertEquals("20 degrees to its right, toward Ines", floor(right, 3, 9).turned(right));
        assertEquals("20 degrees to its right, away from the drum kit", floor(right, 9, 3).turned(right));
        Line left = line(15, null, null);
        assertEquals("15 degrees to its left, away from Ines", floor(left, 3, 9).turned(left));
        assertEquals("15 degrees to its left, toward the drum kit", floor(left, 9, 3).turned(left));
    }

    @Test
    void aNullIsOnWhoItComesNearAndThenTheTurnNeedsNoOther() {
        Line line = line(-20, 110.0, 0.5);
        AimOnFloor floor = floor(line, 9, 3);
        assertEquals("null to the drum kit", floor.nulled(line));
        assertEquals("20 degrees to its right", floor.turned(line));
        Line far = line(-20, 140.0, 30.0);
        assertTrue(floor(far, 9, 3).nulled(far).isEmpty(), "30 degrees off is on nobody");
    }
}
