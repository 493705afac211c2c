package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.FirstOrder;
import pairwright.acoustics.Level;
import pairwright.acoustics.Octaves;
import pairwright.acoustics.Room;
import pairwright.acoustics.Weighting;
import pairwright.model.Heard;
import pairwright.model.Limits;
import pairwright.model.Neighbour;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Question;
import pairwright.model.Source;
import pairwright.rules.Placed;

/** What is heard of the neighbours, against the same worked out band by band with acoustics alone. */
class BleedTest {
    private static final String VOICE = "singing-voice";
    private static final Source KIT = Asking.KNOWLEDGE.current().catalogue().sources().get("drum-kit");

    @Test
    void everyOctaveIsTheDirectSoundAndTheRoomAsThePatternTakesThem() {
        Workshop workshop = Workshop.of(VOICE, Limits.NONE, new Neighbour("drum-kit", 3, 110));
        Placed placed = cardioid(workshop);
        Heard heard = bleed(workshop.scene()).heard(Placements.pattern(placed), 0, placed.predicted().typicalDbSpl()).get(0);
        double absorptionM2 = workshop.scene().absorptionM2();
        for (int band = 0; band < Octaves.COUNT; band++) {
            double coefficient = Placements.pattern(placed).coefficient().at(band);
            double kitAtOneMetreDbSpl = KIT.level().typicalDbSpl() + KIT.spectrumDb().at(band) - Level.sumIncoherentDb(KIT.spectrumDb().toArray());
            double straight = Level.withCentreOffsetDbSpl(kitAtOneMetreDbSpl, 3, KIT.level().centreOffsetM()) + FirstOrder.responseDb(coefficient, 110, -22);
            double room = Room.reverberantPickupDb(kitAtOneMetreDbSpl + 10.992 - KIT.directivityIndexDb().at(band), absorptionM2,
                    FirstOrder.directivityIndexDb(coefficient));
            double own = placed.predicted().typicalDbSpl() + workshop.scene().spectrumDb().at(band)
                    - Level.sumIncoherentDb(workshop.scene().spectrumDb().toArray());
            assertEquals(own - Level.sumIncoherentDb(straight, room), heard.octavesDb().at(band), 0.01, "band " + band);
        }
    }

    @Test
    void theWholeIsTheAWeightedSumOfTheOctaves() {
        Workshop workshop = Workshop.of(VOICE, Limits.NONE, new Neighbour("drum-kit", 2, 150));
        Placed placed = cardioid(workshop);
        Heard heard = bleed(workshop.scene()).heard(Placements.pattern(placed), 0, placed.predicted().typicalDbSpl()).get(0);
        double[] own = IntStream.range(0, Octaves.COUNT).mapToDouble(band -> workshop.scene().spectrumDb().at(band)
                + Weighting.octaveWeightingDb().at(band)).toArray();
        double[] kit = IntStream.range(0, Octaves.COUNT).mapToDouble(band -> own[band] - heard.octavesDb().at(band)).toArray();
        assertEquals(Level.sumIncoherentDb(own) - Level.sumIncoherentDb(kit), heard.separationDb(), 1e-9);
        assertEquals(heard.separationDb(), placed.predicted().separationDb(), 1e-9, "one neighbour alone is all there is");
    }

    @Property(tries = 40)
    void noTurnGetsMoreThanTheRoomAllows(@ForAll @DoubleRange(min = 0.5, max = 8) double distanceM, @ForAll @DoubleRange(min = 0, max = 180) double angleDegrees,
            @ForAll @DoubleRange(min = -90, max = 90) double aimDegrees) {
        Workshop workshop = Workshop.of(VOICE, Limits.NONE, new Neighbour("drum-kit", distanceM, angleDegrees));
        Bleed bleed = bleed(workshop.scene());
        for (PatternData pattern : patterns(workshop)) {
            Heard heard = bleed.heard(pattern, aimDegrees, 90).get(0);
            assertTrue(heard.separationDb() <= heard.roomAllowsDb(), heard::toString);
        }
    }

    @Test
    void inTheOpenAirOnlyTheStraightSoundIsThere() {
        Scene scene = Scene.of(new Question("", VOICE, List.of(), List.of(), "open-air", List.of(), Limits.NONE,
                List.of(new Neighbour("drum-kit", 3, 180)), List.of(), List.of(), 3, null, null), Asking.KNOWLEDGE.current().catalogue());
        Placed placed = Placements.of(scene).stream().filter(one -> one.pattern() == Pattern.CARDIOID && one.aimDegrees() == 0).findFirst().orElseThrow();
        assertNull(bleed(scene).heard(Placements.pattern(placed), 0, 90).get(0).roomAllowsDb());
    }

    @Test
    void theBestTurnIsBetterThanStraightAndThanItsNeighbours() {
        Workshop workshop = Workshop.of("snare-drum", Limits.NONE, new Neighbour("hi-hat", 0.5, 130));
        Bleed bleed = bleed(workshop.scene());
        List<Double> turns = new ArrayList<>();
        for (PatternData pattern : patterns(workshop)) {
            Double turn = bleed.bestTurnDegrees(pattern, 40);
            if (turn != null) {
                turns.add(turn);
                double there = bleed.separationDb(pattern, turn, 100);
                assertTrue(there >= bleed.separationDb(pattern, 0, 100) + 1);
                for (double other = -40; other <= 40; other++) {
                    assertTrue(there >= bleed.separationDb(pattern, other, 100), pattern + " at " + other);
                }
            }
        }
        assertFalse(turns.isEmpty());
    }

    @Property(tries = 60)
    void theTurnFoundIsTheFirstBestOfAllTurnsTriedOneByOne(@ForAll @Size(min = 1, max = 6) List<@DoubleRange(min = 0, max = 180) Double> anglesDegrees,
            @ForAll @DoubleRange(min = -1, max = 1) double aside, @ForAll @DoubleRange(min = 0.4, max = 9) double distanceM, @ForAll boolean seated, @ForAll boolean outside) {
        Workshop workshop = Workshop.of(VOICE, Limits.NONE, new Neighbour("drum-kit", distanceM, 90));
        Reaching kit = workshop.scene().others().get(0);
        List<Reaching> who = anglesDegrees.stream().map(angle -> new Reaching(kit.seat(), KIT, distanceM, angle, aside * Math.sin(Math.toRadians(angle)),
                kit.directOctavesDbSpl().plus(angle / 10), outside ? null : kit.reverberantOctavesDbSpl(), 0)).toList();
        Bleed bleed = new Bleed(workshop.scene().spectrumDb(), seated, who);
        int step = seated ? 5 : 1;
        for (PatternData pattern : patterns(workshop)) {
            double wide = firstBest(bleed, pattern, 0, step, 40);
            double best = firstBest(bleed, pattern, wide, 1, step - 1);
            boolean worth = bleed.separationDb(pattern, best, 0) - bleed.separationDb(pattern, 0, 0) >= 1;
            assertEquals(worth && best != 0 ? Double.valueOf(best) : null, bleed.bestTurnDegrees(pattern, 40), pattern::toString);
        }
    }

    private static double firstBest(Bleed bleed, PatternData pattern, double aboutDegrees, int step, int farthest) {
        double best = aboutDegrees;
        for (int off = step; off <= farthest; off += step) {
            for (double turn : new double[] {aboutDegrees + off, aboutDegrees - off}) {
                if (Math.abs(turn) <= 40 && bleed.separationDb(pattern, turn, 0) > bleed.separationDb(pattern, best, 0)) {
                    best = turn;
                }
            }
        }
        return best;
    }

    @Test
    void aNullGainsInTheOpenAirWhatItTakesOffTheDirectSoundAndLittleFarOffInAChurch() {
        assertEquals(22, turnGainDb("open-air", 2), 0.5, "as deep as a real null is");
        double near = turnGainDb("church", 0.5);
        double far = turnGainDb("church", 8);
        assertTrue(near > 10, near + " dB near");
        assertTrue(far < 3, far + " dB far");
    }

    /** A figure-8 edge-on to a trumpet. */
    private static double turnGainDb(String room, double distanceM) {
        Scene scene = Scene.of(new Question("", VOICE, List.of(), List.of(), room, List.of(), Limits.NONE,
                List.of(new Neighbour("trumpet", distanceM, 90)), List.of(), List.of(), 3, null, null), Asking.KNOWLEDGE.current().catalogue());
        Placed placed = Placements.of(scene).stream().filter(one -> one.pattern() == Pattern.FIGURE_8 && one.aimDegrees() == 0
                && one.mic().id().equals("small-condenser-figure-8")).findFirst().orElseThrow();
        assertEquals(bleed(scene).turnGainDb(Placements.pattern(placed), 0), placed.turnGainDb(), 0);
        return placed.turnGainDb();
    }

    @Test
    void anOmniIsNotTurned() {
        Workshop workshop = Workshop.of("snare-drum", Limits.NONE, new Neighbour("hi-hat", 0.5, 130));
        assertTrue(workshop.placed().stream().filter(one -> one.pattern() == Pattern.OMNI).allMatch(one -> one.aimDegrees() == one.position().aimDegrees().low()));
    }

    /** At any place: the neighbours of a question are the same everywhere. */
    private static Bleed bleed(Scene scene) {
        return new Bleed(scene, scene.others());
    }

    private static Placed cardioid(Workshop workshop) {
        return workshop.placed().stream().filter(one -> one.pattern() == Pattern.CARDIOID && one.aimDegrees() == 0
                && one.predicted().separationDb() != null).findFirst().orElseThrow();
    }

    private static List<PatternData> patterns(Workshop workshop) {
        return workshop.placed().stream().filter(one -> one.predicted().separationDb() != null).map(Placements::pattern).distinct().toList();
    }
}
