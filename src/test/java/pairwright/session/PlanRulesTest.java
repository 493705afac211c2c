package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Stock;
import pairwright.rules.RuleBase;

class PlanRulesTest {
    private static final RuleBase RULES = RuleBase.builtIn();
    private static final OctaveCurve SOURCE_DB = OctaveCurve.of(-20, -6, 0, 0, -2, -4, -8, -14, -22);
    private static final OctaveCurve FLAT_DB = OctaveCurve.ZERO;
    private static final OctaveCurve DARK_DB = OctaveCurve.of(4, 4, 2, 0, 0, -4, -8, -10, -12);

    private final PlanRules rules = new PlanRules(RULES, Rooms.CATALOGUE);

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
                    assertEquals(new PlanRules(RULES, Rooms.CATALOGUE).twoCentipoints(apart, voices.get(i), voices.get(j)), table[i][j], i + " and " + j);
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
    void aSeatIsCalledByItsPlayerOrItsSourceAndByItsIdAsWellWhereASourceSitsThereTwice() {
        SeatNames names = SeatNames.of(lineUp(null, null, seat("one", "Ana", "trumpet", true), seat("trumpet-2", null, "trumpet", true),
                seat("third", null, "tenor-saxophone", true), seat("left-fiddle", null, "violin", true), seat("right-fiddle", null, "violin", true)));
        assertEquals(List.of("Ana", "the trumpet", "the tenor saxophone", "the violin (left-fiddle)", "the violin (right-fiddle)", "unknown"),
                List.of("one", "trumpet-2", "third", "left-fiddle", "right-fiddle", "unknown").stream().map(names::of).toList());
    }

    private static final Seat TENOR = Rooms.seat("tenor", "tenor-saxophone", 2, 2, 0);
    private static final Seat VOICE = Rooms.seat("voice", "singing-voice", 5, 2, 0);
    private static final Seat KIT = Rooms.seat("kit", "drum-kit", 8, 2, 0);
    private static final String TENOR_PLACE = Rooms.CATALOGUE.sources().get("tenor-saxophone").positions().get(0).id();
    private static final String VOICE_PLACE = Rooms.CATALOGUE.sources().get("singing-voice").positions().get(0).id();
    private static final PlanByHand.Odd USUAL = PlanByHand.Odd.NOTHING;

    private Plan judged(PlanByHand made, LineUp lineUp, Gear gear) {
        return rules.judged(made.plan(), lineUp, gear, Rooms.CATALOGUE);
    }

    private static LineUp barn(Seat... seats) {
        return Rooms.lineUp(Rooms.BARN, List.of(), seats);
    }

    private static List<String> ids(List<Said> said) {
        return said.stream().map(Said::rule).toList();
    }

    private static Said said(List<Said> all, String rule) {
        return all.stream().filter(one -> one.rule().equals(rule)).findFirst().orElseThrow(() -> new AssertionError(rule + " is not in " + ids(all)));
    }

    private static PlanByHand.Odd phantom(boolean on) {
        return new PlanByHand.Odd(null, null, on, null, null, null, null, null);
    }

    @Test
    void aRibbonOnABankThatIsOffIsOneSwitchAwayFromHarmAndIsWarnedOfBesideItsLine() {
        Plan plan = judged(new PlanByHand().serve(TENOR, "single", phantom(false), "long-ribbon@" + TENOR_PLACE)
                .serve(VOICE, "single", USUAL, "small-condenser-cardioid@" + VOICE_PLACE), barn(TENOR, VOICE), PlanByHand.gear(8, null));
        Said ribbon = said(plan.lines().get(0).cautions(), "PLN-022");
        assertEquals(List.of("tenor"), ribbon.seats());
        assertEquals(List.of(1), ribbon.lines());
        assertTrue(ribbon.says().startsWith("Input 1 is off and shall stay off, for the long passive ribbon of the tenor saxophone hangs there"), ribbon.says());
        assertEquals(0, ribbon.points());
        assertEquals(List.of(), ids(plan.lines().get(1).cautions()));
        assertTrue(ids(plan.cautions()).contains("PLN-092"), ids(plan.cautions()).toString());
    }

    @Test
    void gainIsHeldAgainstWhatTheChannelHas() {
        PlanByHand.Odd quiet = new PlanByHand.Odd(null, null, null, 66.5, null, null, null, null);
        Plan plan = judged(new PlanByHand().serve(VOICE, "single", quiet, "handheld-moving-coil@" + VOICE_PLACE), barn(VOICE), PlanByHand.gear(8, null));
        Said gain = said(plan.lines().get(0).cautions(), "PLN-041");
        assertEquals(List.of("gainDb 66.5", "missingGainDb 6.5"), gain.values().stream().map(one -> one.name() + " " + one.value()).toList());
        PlanByHand.Odd unknown = new PlanByHand.Odd("elsewhere", "other", null, 66.5, null, null, null, null);
        assertEquals(List.of(), ids(judged(new PlanByHand().serve(VOICE, "single", unknown, "handheld-moving-coil@" + VOICE_PLACE), barn(VOICE),
                PlanByHand.gear(8, null)).lines().get(0).cautions()));
    }

    @Test
    void aStandNobodyWeighedAbovePeopleIsADangerAndComesBeforeWhatIsOnlyNoted() {
        PlanByHand.Odd noted = new PlanByHand.Odd(null, null, null, null, null, "Hums near the lamp", null, null);
        Plan plan = judged(new PlanByHand().serve(KIT, "single", noted, "large-condenser-cardioid@overhead")
                .serve(TENOR, "single", noted, "large-condenser-cardioid@" + TENOR_PLACE), barn(KIT, TENOR), PlanByHand.gear(8, null));
        assertEquals(List.of("PLN-053", "PLN-055"), ids(plan.lines().get(0).cautions()), "gravest first");
        assertEquals(pairwright.model.Severity.DANGER, plan.lines().get(0).cautions().get(0).severity());
        assertEquals(List.of("PLN-055"), ids(plan.lines().get(1).cautions()));
    }

    @Test
    void whatALineHearsStandsBesideItAndOnlyItsLoudestNeighbourIsWorthATurn() {
        PlanByHand.Odd highPass = new PlanByHand.Odd(null, null, null, null, null, null, 100.0, null);
        Plan plan = judged(new PlanByHand().serve(TENOR, "single", highPass, "small-condenser-cardioid@" + TENOR_PLACE)
                .hears(1, "kit", 9, 4, 16).hears(1, "voice", 20, 12, 24), barn(TENOR, VOICE, KIT), PlanByHand.gear(8, null));
        List<Said> cautions = plan.lines().get(0).cautions();
        assertEquals(List.of("PLN-073", "PLN-077"), ids(cautions));
        assertEquals(List.of("tenor", "kit"), cautions.get(0).seats());
        assertTrue(cautions.get(0).says().contains("hears the drum kit 5 dB less"), cautions.get(0).says());
    }

    @Test
    void theRulesSayWhatToDoAboutADelayAndWhatNoneSpeaksOfStaysAsItWas() {
        PlanByHand made = new PlanByHand().serve(KIT, "near-and-far", USUAL, "small-condenser-cardioid@overhead", "small-condenser-cardioid@room")
                .serve(VOICE, "two-spots", USUAL, "small-condenser-cardioid@" + VOICE_PLACE, "long-ribbon@" + VOICE_PLACE)
                .arrives("kit", true, 8, 9, 6, Arrival.Treat.ALIGN, 1, 2)
                .arrives("voice", true, 0.8, 12, 2, Arrival.Treat.LEAVE, 3, 4)
                .arrives("kit", false, 9, 8, 4, Arrival.Treat.LEAVE, 1, 3)
                .arrives("kit", false, 9, 4, 4, Arrival.Treat.WATCH, 1, 4);
        Plan plan = judged(made, barn(KIT, VOICE), PlanByHand.gear(8, null));
        assertEquals(List.of(Arrival.Treat.LEAVE, Arrival.Treat.ALIGN, Arrival.Treat.WATCH, Arrival.Treat.WATCH), plan.timing().stream().map(Arrival::treat).toList());
        assertEquals(List.of(List.of("PLN-083"), List.of("PLN-081"), List.of("PLN-085"), List.of()), plan.timing().stream().map(one -> ids(one.cautions())).toList());
        assertEquals(List.of(3, 4), plan.timing().get(1).cautions().get(0).lines());
    }

    @Test
    void aMatchedPairThatIsPartedIsToldOnce() {
        List<Stock.Held> units = List.of(held("a", "b", null), held("b", "a", null), held("c", null, null));
        PlanByHand made = new PlanByHand().serve(TENOR, "single", unit("a"), "small-condenser-cardioid@" + TENOR_PLACE)
                .serve(VOICE, "single", unit("b"), "small-condenser-cardioid@" + VOICE_PLACE);
        Plan plan = judged(made, barn(TENOR, VOICE), PlanByHand.gear(8, units));
        assertEquals("A for the tenor saxophone was matched with another unit, which goes to the singing voice",
                said(plan.lines().get(0).cautions(), "PLN-056").says().replaceFirst("\\. .*", ""));
        assertEquals(List.of(), ids(plan.lines().get(1).cautions()));
        assertTrue(!ids(plan.cautions()).contains("PLN-094"), "a third unit of the type is left");
        Plan last = judged(made, barn(TENOR, VOICE), PlanByHand.gear(8, units.subList(0, 2)));
        assertTrue(said(last.cautions(), "PLN-094").says().startsWith("No other unit of the type is left for the tenor saxophone and the singing voice."));
    }

    private static Stock.Held held(String id, String mate, Stock.Out out) {
        return new Stock.Held(id, "small-condenser-cardioid", id, null, null, null, mate, null, out);
    }

    private static PlanByHand.Odd unit(String id) {
        return new PlanByHand.Odd(null, null, null, null, null, null, null, id);
    }

    @Test
    void aSupplyIsHeldAgainstWhatIsDrawnAndItsLinesAreNamed() {
        PlanByHand made = new PlanByHand().serve(TENOR, "single", USUAL, "small-condenser-cardioid@" + TENOR_PLACE);
        Said little = said(judged(made.supply("the interface", 36, 40.0), barn(TENOR), PlanByHand.gear(8, null)).cautions(), "PLN-029");
        assertEquals(List.of(1), little.lines());
        assertTrue(little.says().startsWith("The interface may be drawn 36 mA of its 40 mA"), little.says());
    }

    @Test
    void theReasonsOfAPlanAddUpToWhatTheSearchWasTold() {
        Seat shaker = seat("shaker", null, "shaker", false);
        LineUp lineUp = lineUp(List.of(List.of("tenor", "voice")), List.of(), TENOR, VOICE, shaker);
        Plan plan = judged(new PlanByHand().serve(TENOR, "single", USUAL, "long-ribbon@" + TENOR_PLACE)
                .serve(VOICE, "single", USUAL, "small-condenser-cardioid@" + VOICE_PLACE).without(shaker), lineUp, PlanByHand.gear(8, null));
        long told = rules.leftOutCentipoints(shaker)
                + rules.twoCentipoints(true, Voice.of(plan.served().get(0).option()), Voice.of(plan.served().get(1).option()));
        assertEquals(told, Math.round(plan.reasons().stream().mapToDouble(Said::points).sum() * 100));
        assertTrue(ids(plan.reasons()).contains("PLN-002") && plan.reasons().size() == 2, ids(plan.reasons()).toString());
        assertTrue(said(plan.reasons(), "PLN-002").says().contains("the shaker"));
    }

    @Test
    void theLoudestSeatIsTheOneAmongTheOthersAndALeadIsHeardByNobody() {
        Seat near = Rooms.seat("near", "singing-voice", 20, 21, 0);
        Seat trumpet = Rooms.seat("trumpet", "trumpet", 20, 20, 0);
        Loudest loudest = Loudest.of(Rooms.inTheOpen(trumpet, near, Rooms.seat("far", "singing-voice", 30, 20, 0)), Rooms.CATALOGUE);
        assertEquals("near", loudest.seat());
        var source = Rooms.CATALOGUE.sources().get("trumpet");
        double oneMetreDba = source.level().typicalDbSpl() + pairwright.acoustics.Weighting.aWeightedOffsetDb(source.spectrumDb());
        assertEquals(oneMetreDba, loudest.exposureDba(), 0.3, "the voice ten metres off adds next to nothing");
        assertTrue(loudest.allowedHours() < 24);
        assertEquals(null, Loudest.of(Rooms.inTheOpen(near), Rooms.CATALOGUE));
    }
}
