package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.api.Test;
import pairwright.model.Confidence;
import pairwright.model.Lead;

/** How long leads have to be. */
class LeadsTest {
    private static final LineUp LINE_UP = SmallPlan.lineUp();
    private static final Plan PLAN = SmallPlan.plan(1);
    private static final Lead USUAL = Rooms.CATALOGUE.leads().get(Lead.MICROPHONE);

    private static LineUp with(Floor.Patch patch) {
        Floor floor = LINE_UP.floor();
        return new LineUp("Small", new Floor(floor.room(), floor.widthM(), floor.depthM(), floor.heightM(), floor.reverbTimeS(), patch), LINE_UP.seats(), null, null, null, null, null, 1);
    }

    private static Lead lead(double slackM, double slackShare, Double... lengthsM) {
        return new Lead(Lead.MICROPHONE, "Lead", "A lead.", List.of(lengthsM), slackM, slackShare, Confidence.LOW, List.of());
    }

    /** In a room 8 m wide and 6 m deep, by hand. */
    @ParameterizedTest(name = "from {0}, {1} to {2}, {3}: {4} m, {5}")
    @CsvSource({
        "4, 1, 0, 3, 8, 'down to the lower wall, 4 along it, 3 up the left one'",
        "7, 3, 0, 3, 15, 'half round the room, whichever way'",
        "2, 5, 6, 5, 6, 'up to the wall, along, and down'",
        "1, 1, 8, 3, 11, 'of two walls as near the one that is the shorter way'",
        "1, 3, 0.5, 3, 0.5, 'no farther than the wall, so straight'",
        "4, 1, 4, 3, 4, 'a box in the middle of the room is reached from a wall as well'",
        "0, 3, 0, 3, 0, 'where it is already'"})
    void itLiesAlongTheWallsAndNotAcrossTheFloor(double fromXM, double fromYM, double toXM, double toYM, double lengthM, String why) {
        LeadWay way = new LeadWay(new Floor(null, 8, 6, 3, 0.4));
        assertEquals(lengthM, way.lengthM(fromXM, fromYM, toXM, toYM), 1e-9, why);
    }

    @Property(tries = 300)
    void noWayIsShorterThanStraightOrLongerThanHalfRoundTheRoomAndToItsWalls(@ForAll @DoubleRange(min = 0, max = 8) double fromXM, @ForAll @DoubleRange(min = 0, max = 6) double fromYM,
            @ForAll @DoubleRange(min = 0, max = 8) double toXM, @ForAll @DoubleRange(min = 0, max = 6) double toYM) {
        double lengthM = new LeadWay(new Floor(null, 8, 6, 3, 0.4)).lengthM(fromXM, fromYM, toXM, toYM);
        assertTrue(lengthM >= Math.hypot(toXM - fromXM, toYM - fromYM) - 1e-9, "" + lengthM);
        assertTrue(lengthM <= 14 + 3 + 3 + 1e-9, "" + lengthM);
    }

    @Test
    void aLeadIsTheWayTheHeightAndTheSlackRoundedUp() {
        Line line = PLAN.lines().stream().filter(one -> one.spot() != null).findFirst().orElseThrow();
        Floor.Patch patch = new Floor.Patch(0, 3.5);
        Leads.Run run = Leads.of(with(patch), PLAN, lead(2, 0.25, 5.0, 10.0, 20.0)).runs().get(line.number() - 1);
        double wayM = new LeadWay(LINE_UP.floor()).lengthM(line.spot().xM(), line.spot().yM(), 0, 3.5);
        assertEquals(wayM, run.wayM());
        assertEquals(line.spot().zM(), run.heightM());
        assertEquals((wayM + line.spot().zM()) * 1.25 + 2, run.neededM(), 1e-9);
        assertEquals(1, run.lengthsM().size());
        assertTrue(run.lengthsM().get(0) >= run.neededM(), run.toString());
    }

    @Test
    void beyondTheLongestSeveralAreJoined() {
        Leads.Run run = Leads.of(with(new Floor.Patch(0, 3.5)), PLAN, lead(30, 0, 3.0, 10.0)).runs().get(0);
        assertTrue(run.lengthsM().size() > 3, run.toString());
        assertTrue(run.lengthsM().stream().mapToDouble(Double::doubleValue).sum() >= run.neededM());
        assertTrue(run.lengthsM().stream().limit(3).allMatch(lengthM -> lengthM == 10), run.toString());
    }

    @Test
    void everyChannelIsCountedOnceAmongTheLengths() {
        Leads leads = Leads.of(LINE_UP, PLAN, USUAL);
        int channels = PLAN.lines().stream().mapToInt(line -> line.placement().channels()).sum();
        assertEquals(channels, leads.runs().stream().mapToInt(Leads.Run::leads).sum());
        assertEquals(leads.runs().stream().mapToInt(run -> run.leads() * run.lengthsM().size()).sum(), leads.counts().stream().mapToInt(Leads.Count::count).sum());
        assertTrue(leads.counts().stream().allMatch(count -> USUAL.lengthsM().contains(count.lengthM())), leads.counts().toString());
    }

    @Test
    void whereNobodySaidWhereTheBoxIsTheWallThatTakesLeastIsAssumed() {
        Leads assumed = Leads.of(LINE_UP, PLAN, USUAL);
        double leastM = neededM(assumed);
        for (double[] middle : new double[][] {{0, 3.5}, {10, 3.5}, {5, 7}, {5, 0}}) {
            Leads said = Leads.of(with(new Floor.Patch(middle[0], middle[1])), PLAN, USUAL);
            assertNull(said.box().assumed());
            assertTrue(neededM(said) >= leastM - 1e-9, assumed.box() + " takes more than " + said.box());
        }
        assertEquals("lower", assumed.box().assumed(), assumed.toString());
    }

    private static double neededM(Leads leads) {
        return leads.runs().stream().mapToDouble(run -> run.leads() * run.neededM()).sum();
    }
}
