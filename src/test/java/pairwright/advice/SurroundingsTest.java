package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Catalogue;
import pairwright.model.Heard;
import pairwright.model.Limits;
import pairwright.model.Neighbour;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Placement;
import pairwright.model.Question;
import pairwright.model.Source;
import pairwright.rules.Placed;

/** Others who reach a microphone by where it stands. */
class SurroundingsTest {
    private static final Catalogue CATALOGUE = Asking.KNOWLEDGE.current().catalogue();
    private static final String VOICE = "singing-voice";

    @ParameterizedTest
    @CsvSource({
        "90, 1, 0, 90",
        "90, 1, 30, 60",
        "90, 1, -30, 120",
        "90, -1, 30, 120",
        "60, 0, 0, 60",
        "90, 0, 40, 90",
        "180, 0, 30, 150",
        "180, 0, -30, 150",
        "0, 0, 25, 25",
        "120, -0.8660254037844387, 90, 150",
        // half across, half up: the arc of cos 45 sin 30
        "90, 0.7071067811865476, 30, 69.2951889453646",
    })
    void aTurnBringsWhatLiesAcrossNearerOrFartherAndLeavesWhatLiesAbove(double angleDegrees, double acrossShare, double aimDegrees, double offDegrees) {
        assertEquals(offDegrees, reaching("kit", "drum-kit", angleDegrees, acrossShare, 80).offAxisDegrees(aimDegrees), 1e-9);
    }

    @Property(tries = 200)
    void inThePlaneOfTheTurnTheTwoWaysToReckonAgree(@ForAll @DoubleRange(max = 180) double angleDegrees, @ForAll @DoubleRange(min = -90, max = 90) double aimDegrees) {
        double across = Reaching.acrossShare(angleDegrees);
        double apart = reaching("kit", "drum-kit", angleDegrees, across, 80).offAxisDegrees(aimDegrees);
        double nearly = reaching("kit", "drum-kit", angleDegrees, across * (1 - 1e-12), 80).offAxisDegrees(aimDegrees);
        assertEquals(apart, nearly, 1e-4);
    }

    @Test
    void wholeDecibelsComeBackWholeFromTheirOctaves() {
        assertEquals(84.5, reaching("kit", "drum-kit", 90, 0, 84.5).directDbSpl(), 0);
        assertEquals(87.5, reaching("kit", "drum-kit", 90, 0, 84.5).louder(3, 1.2).directDbSpl(), 0);
    }

    @Test
    void theNeighboursOfAQuestionGiveTheSameWhereverTheyAreToldToStand() {
        Question question = question(VOICE, new Neighbour("drum-kit", 3, 110), new Neighbour("trumpet", 2, 150));
        Scene plain = Scene.of(question, CATALOGUE);
        Scene seated = Scene.of(question, CATALOGUE, Supply.EVERYTHING, HouseMemory.NOTHING, (position, distanceM) -> List.copyOf(new ArrayList<>(plain.others())));
        assertEquals(plain.setting(), seated.setting());
        List<Placed> one = Placements.of(plain);
        for (Placed other : Placements.of(seated)) {
            Placed same = one.stream().filter(placed -> placed.mic() == other.mic() && placed.pattern() == other.pattern() && placed.position() == other.position()
                    && placed.distanceM() == other.distanceM() && placed.aimDegrees() == other.aimDegrees()).findFirst().orElse(null);
            if (same != null) { // a turn may be found a degree beside
                assertEquals(same.predicted(), other.predicted());
                assertEquals(same.nullMissDegrees(), other.nullMissDegrees(), 0);
            }
        }
        assertEquals(one.stream().filter(placed -> placed.aimDegrees() == placed.position().aimDegrees().low()).count(),
                Placements.of(seated).stream().filter(placed -> placed.aimDegrees() == placed.position().aimDegrees().low()).count());
    }

    @Test
    void eachPlaceIsJudgedByWhoIsLoudestThere() {
        Surroundings byDistance = (position, distanceM) -> List.of(reaching("kit", "drum-kit", 120, 0, distanceM < 0.2 ? 95 : 60), reaching("horn", "trumpet", 170, 0, 80));
        Scene scene = Scene.of(question(VOICE), CATALOGUE, Supply.EVERYTHING, HouseMemory.NOTHING, byDistance);
        assertEquals(2, scene.setting().neighbours());
        assertEquals(95, scene.setting().loudestNeighbourDbSpl(), 0, "of the usual places where it is loudest");
        assertEquals(120, scene.setting().loudestNeighbourDegrees(), 0);
        List<Placed> open = Placements.of(scene).stream().filter(placed -> !Predictor.wired(placed.position())).toList();
        open.forEach(placed -> {
            assertEquals(placed.distanceM() < 0.2 ? 95 : 80, placed.loudestNeighbourDbSpl(), 0);
            assertEquals(placed.distanceM() < 0.2 ? 120 : 170, placed.loudestNeighbourDegrees(), 0);
        });
        assertTrue(open.stream().anyMatch(placed -> placed.distanceM() < 0.2) && open.stream().anyMatch(placed -> placed.distanceM() >= 0.2));
    }

    @Test
    void aMicrophoneTurnsAwayToWhicheverSideIsBetter() {
        assertTrue(turns(0.9).stream().allMatch(degrees -> degrees < 0), "what lies on the side it turns to by an aim above 0: " + turns(0.9));
        assertTrue(turns(-0.9).stream().allMatch(degrees -> degrees > 0), "and on the other: " + turns(-0.9));
        assertEquals(turns(0.9), turns(-0.9).stream().map(degrees -> -degrees).toList());
        assertEquals(List.of(), turns(0), "straight up no turn gets away");
    }

    /** The best turns of all patterns, for a trumpet at right angles that lies across by so much. */
    private static List<Double> turns(double acrossShare) {
        Scene scene = Scene.of(question(VOICE), CATALOGUE, Supply.EVERYTHING, HouseMemory.NOTHING, (position, distanceM) -> List.of(reaching("horn", "trumpet", 90, acrossShare, 90)));
        Bleed bleed = new Bleed(scene, scene.others());
        return CATALOGUE.mics().values().stream().flatMap(mic -> mic.patterns().stream())
                .filter(pattern -> pattern.pattern() == Pattern.CARDIOID || pattern.pattern() == Pattern.SUPERCARDIOID)
                .map(pattern -> bleed.bestTurnDegrees(pattern, 30)).filter(turn -> turn != null).toList();
    }

    @Property(tries = 30)
    void aTurnThatIsFoundInWideStepsIsWorthThatOfEveryDegree(@ForAll @DoubleRange(max = 180) double oneDegrees, @ForAll @DoubleRange(max = 180) double otherDegrees,
            @ForAll @DoubleRange(min = -1, max = 1) double oneSide, @ForAll @DoubleRange(min = -1, max = 1) double otherSide, @ForAll @DoubleRange(min = 70, max = 100) double otherDbSpl) {
        List<Reaching> both = List.of(reaching("horn", "trumpet", oneDegrees, oneSide * Math.sin(Math.toRadians(oneDegrees)), 85),
                reaching("kit", "drum-kit", otherDegrees, otherSide * Math.sin(Math.toRadians(otherDegrees)), otherDbSpl));
        Scene scene = Scene.of(question(VOICE), CATALOGUE, Supply.EVERYTHING, HouseMemory.NOTHING, (position, distanceM) -> both);
        Bleed bleed = new Bleed(scene, both);
        for (PatternData pattern : CATALOGUE.mics().values().stream().flatMap(mic -> mic.patterns().stream()).filter(Placements::turns).toList()) {
            Double turn = bleed.bestTurnDegrees(pattern, 30);
            double found = bleed.separationDb(pattern, turn == null ? 0 : turn, 90);
            double best = found;
            for (int degrees = -30; degrees <= 30; degrees++) {
                best = Math.max(best, bleed.separationDb(pattern, degrees, 90));
            }
            assertTrue(found >= best - (turn == null ? 1 : 0.5), pattern.pattern() + " found " + turn + ", " + found + " of " + best + " dB");
        }
    }

    @Test
    void anOptionTellsEachSeatOfTwoOfAKind() {
        Surroundings two = (position, distanceM) -> List.of(reaching("left horn", "trumpet", 100, -0.9, 80), reaching("right horn", "trumpet", 100, 0.9, 84));
        Offers offers = Offers.of(question(VOICE), CATALOGUE, Asking.KNOWLEDGE.current().rules(), null, two);
        Placement mic = offers.all().stream().filter(offer -> offer.mics().get(0).predicted().separationDb() != null).findFirst().orElseThrow().option().mics().get(0);
        assertEquals(List.of("left horn", "right horn"), mic.neighbours().stream().map(Heard::seat).toList());
        assertNotEquals(mic.neighbours().get(0).separationDb(), mic.neighbours().get(1).separationDb());
        Placement plain = Asking.ask(VOICE, null, List.of(), Limits.NONE, List.of(new Neighbour("trumpet", 2, 100))).options().get(0).mics().get(0);
        assertNull(plain.neighbours().get(0).seat());
    }

    @Test
    void whereNobodyArrivesNothingIsHeard() {
        Surroundings nearOnly = (position, distanceM) -> distanceM < 0.2 ? List.of(reaching("horn", "trumpet", 100, 0, 80)) : List.of();
        Scene scene = Scene.of(question(VOICE), CATALOGUE, Supply.EVERYTHING, HouseMemory.NOTHING, nearOnly);
        for (Placed placed : Placements.of(scene)) {
            assertEquals(placed.distanceM() < 0.2 && placed.predicted().typicalDbSpl() != null, placed.predicted().separationDb() != null, placed.position().id());
        }
        assertFalse(Scene.of(question(VOICE), CATALOGUE, Supply.EVERYTHING, HouseMemory.NOTHING, Surroundings.NOBODY).setting().neighbours() > 0);
    }

    static Question question(String source, Neighbour... neighbours) {
        return new Question("", source, List.of(), List.of(), null, List.of(), Limits.NONE, List.of(neighbours), List.of(), List.of(), 3, null, null);
    }

    static Reaching reaching(String seat, String source, double angleDegrees, double acrossShare, double dbSpl) {
        Source other = CATALOGUE.sources().get(source);
        OctaveCurve direct = Scene.octavesDbSpl(dbSpl, other.spectrumDb());
        return new Reaching(seat, other, 2, angleDegrees, acrossShare, direct, direct.plus(-12), 0);
    }
}
