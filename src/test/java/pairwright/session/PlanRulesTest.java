package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.OctaveCurve;
import pairwright.rules.RuleBase;

class PlanRulesTest {
    private static final RuleBase RULES = RuleBase.builtIn();
    private static final OctaveCurve SOURCE_DB = OctaveCurve.of(-20, -6, 0, 0, -2, -4, -8, -14, -22);
    private static final OctaveCurve FLAT_DB = OctaveCurve.ZERO;
    private static final OctaveCurve DARK_DB = OctaveCurve.of(4, 4, 2, 0, 0, -4, -8, -10, -12);

    private final PlanRules rules = new PlanRules(RULES);

    private static Voice voice(String micType, String technique, OctaveCurve colourDb) {
        return Voice.of(micType, technique, SOURCE_DB.plus(colourDb), colourDb);
    }

    private static Seat seat(String id, String player, String source, boolean must) {
        return new Seat(id, player, source, 1, 1, 0, null, null, null, null, null, must, null, false);
    }

    private static LineUp lineUp(List<List<String>> contrast, List<List<String>> keep, Seat... seats) {
        return new LineUp(null, new Floor(null, 8, 6, 3, 0.5), List.of(seats), null, contrast, keep, null, null, 1);
    }

    @Test
    void leavingOutAMustHaveCostsMoreThanLeavingOutWhatWouldBeNice() {
        long nice = rules.leftOutCentipoints(seat("shaker", null, "shaker", false));
        long must = rules.leftOutCentipoints(seat("singer", "Ana", "singing-voice", true));
        assertTrue(nice < 0 && must < 2 * nice, nice + " and " + must);
    }

    @Test
    void twoWhoShallBeToldApartGainByADarkAndABrightOneAndLoseByOneTypeForBoth() {
        Voice bright = voice("small-condenser-cardioid", "single", FLAT_DB);
        Voice dark = voice("long-ribbon", "single", DARK_DB);
        assertTrue(rules.twoCentipoints(true, bright, dark) > 0);
        assertTrue(rules.twoCentipoints(true, bright, bright) < 0);
        assertTrue(rules.twoCentipoints(true, bright, voice("other-condenser", "single", FLAT_DB)) < 0);
    }

    @Test
    void aSectionGainsByOneTypeAndLosesByTwoColoursAndByTwoWays() {
        Voice bright = voice("small-condenser-cardioid", "single", FLAT_DB);
        Voice dark = voice("long-ribbon", "single", DARK_DB);
        assertEquals(300, rules.twoCentipoints(false, bright, bright));
        assertTrue(rules.twoCentipoints(false, bright, dark) < 0);
        assertTrue(rules.twoCentipoints(false, bright, voice("small-condenser-cardioid", "xy", FLAT_DB)) < rules.twoCentipoints(false, bright, bright));
    }

    /** An instrument that differs by itself needs no other microphone; a section is not blamed for its instruments. */
    @Test
    void twoWhoShallDifferAreJudgedByWhatIsRecordedAndASectionByWhatIsAdded() {
        Voice low = Voice.of("small-condenser-cardioid", "single", OctaveCurve.of(0, 0, -4, -10, -16, -22, -28, -34, -40), FLAT_DB);
        Voice high = Voice.of("small-condenser-cardioid", "single", OctaveCurve.of(-40, -34, -20, -8, 0, 0, -4, -8, -14), FLAT_DB);
        assertEquals(300, rules.twoCentipoints(true, low, high));
        assertEquals(300, rules.twoCentipoints(false, low, high));
    }

    @Test
    void aTableOfOptionsSaysWhatEachTwoSayByThemselves() {
        List<Voice> voices = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            voices.add(voice("type-" + i % 5, i % 4 == 0 ? "xy" : "single", DARK_DB.scaled(i / 12.0)));
        }
        for (boolean apart : new boolean[] {true, false}) {
            long[][] table = rules.twoCentipoints(apart, voices, voices);
            for (int i = 0; i < voices.size(); i++) {
                for (int j = 0; j < voices.size(); j++) {
                    assertEquals(new PlanRules(RULES).twoCentipoints(apart, voices.get(i), voices.get(j)), table[i][j], i + " and " + j);
                    assertEquals(table[j][i], table[i][j]);
                }
            }
        }
    }

    @Test
    void aSectionOfThreeCountsAsTwoNeighboursAndAContrastAsItself() {
        assertEquals(List.of(new PlanRules.Two("a", "b", true), new PlanRules.Two("c", "d", false), new PlanRules.Two("d", "e", false)),
                PlanRules.twos(lineUp(List.of(List.of("a", "b")), List.of(List.of("c", "d", "e")), seat("a", null, "trumpet", true))));
    }

    @Test
    void aSeatIsCalledByItsPlayerOrItsSourceOrByItsIdWhereASourceSitsThereTwice() {
        SeatNames names = SeatNames.of(lineUp(null, null, seat("one", "Ana", "trumpet", true), seat("trumpet-2", null, "trumpet", true),
                seat("third", null, "tenor-saxophone", true), seat("left-fiddle", null, "violin", true), seat("right-fiddle", null, "violin", true)));
        assertEquals(List.of("Ana", "the trumpet", "the tenor saxophone", "the left fiddle", "the right fiddle", "unknown"),
                List.of("one", "trumpet-2", "third", "left-fiddle", "right-fiddle", "unknown").stream().map(names::of).toList());
    }
}
