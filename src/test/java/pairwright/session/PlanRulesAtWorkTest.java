package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.session.Sessions.at;
import static pairwright.session.Sessions.channel;
import static pairwright.session.Sessions.own;
import static pairwright.session.Sessions.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairwright.advice.HouseMemory;
import pairwright.advice.KnowledgeStore;
import pairwright.advice.Offers;
import pairwright.model.Setup;
import pairwright.model.Severity;
import pairwright.rules.RuleBase;
import pairwright.rules.RuleInfo;

/**
 * Every rule of a plan speaks in a session that is really planned, and is silent in one that differs in a single thing. What no line-up and no gear can
 * bring to speak is dead, however well its cases pass.
 */
class PlanRulesAtWorkTest {
    private static final KnowledgeStore KNOWLEDGE = KnowledgeStore.builtIn();
    private static final Planner PLANNER = new Planner(KNOWLEDGE::current, HouseMemory.NOTHING);

    private static final String CONDENSER = "small-condenser-cardioid";
    private static final String OMNI = "small-condenser-omni";
    private static final String FIGURE_8 = "small-condenser-figure-8";
    private static final String RIBBON = "long-ribbon";
    private static final String HANDHELD = "handheld-moving-coil";

    private static final Floor LIVE = new Floor(null, 8, 7, 3.5, 0.6);
    private static final Floor DRY = new Floor(null, 8, 7, 3.5, 0.1);
    private static final Floor HALL = new Floor(null, 20, 10, 3.5, 0.2);

    /** A rule, a session in which it speaks, and one much like it in which it does not. */
    private record AtWork(String rule, Sessions speaks, Sessions silent) {
        @Override
        public String toString() {
            return rule;
        }
    }

    private static Sessions live(Seat... seats) {
        return Sessions.of(LIVE, seats);
    }

    private static Sessions dry(Seat... seats) {
        return Sessions.of(DRY, seats);
    }

    private static Seat guitar(String micType) {
        return at("guitar", "nylon-guitar", 3, 3, 0, 1, micType);
    }

    private static Seat fiddle(String id, double xM, String micType) {
        return at(id, "violin", xM, 3, 0, 1, micType);
    }

    private static Seat trumpet(double xM, double yM, double facingDegrees) {
        return at("trumpet", "trumpet", xM, yM, facingDegrees, 1, CONDENSER);
    }

    private static Seat kit(double xM, int mics) {
        return at("kit", "drum-kit", xM, 3, 270, mics, CONDENSER);
    }

    private static Stream<AtWork> twoSeats() {
        Seat one = fiddle("one", 3, CONDENSER);
        Seat same = fiddle("two", 5, CONDENSER);
        Seat alike = fiddle("two", 5, "small-condenser-wide-cardioid");
        Seat dark = fiddle("two", 5, RIBBON);
        Seat wide = at("one", "soprano-saxophone", 3, 3, 0, 2, RIBBON, "wide-body-moving-coil");
        Seat narrow = at("two", "soprano-saxophone", 5, 3, 0, 1, RIBBON);
        Sessions nice = live(at("flute", "flute", 3, 3, 0, 1), Sessions.nice(at("oboe", "oboe", 5, 3, 0, 1)));
        return Stream.of(
                new AtWork("PLN-002", nice.units(unit("a", CONDENSER)), nice.units(unit("a", CONDENSER), unit("b", CONDENSER))),
                new AtWork("PLN-011", live(one, at("two", "double-bass", 5, 3, 0, 1, CONDENSER)).apart(), live(one, same).apart()),
                new AtWork("PLN-012", live(one, alike).apart(), live(one, same).apart()),
                new AtWork("PLN-013", live(one, same).apart(), live(one, alike).apart()),
                new AtWork("PLN-014", live(one, same).section(), live(one, dark).section()),
                new AtWork("PLN-015", live(one, dark).section(), live(one, same).section()),
                new AtWork("PLN-016", live(wide, narrow).section(), live(at("one", "soprano-saxophone", 3, 3, 0, 1, RIBBON), narrow).section()));
    }

    private static Stream<AtWork> power() {
        Sessions ribbon = live(guitar(RIBBON));
        Sessions box = live(at("bass", "bass-lead", 3, 3, 0, 1, "passive-di"), at("voice", "singing-voice", 5, 3, 0, 1, CONDENSER));
        Sessions two = live(fiddle("one", 3, CONDENSER), fiddle("two", 5, CONDENSER));
        return Stream.of(
                new AtWork("PLN-022", ribbon.channels(channel("a").onBank("A")), ribbon.channels(channel("a"))),
                new AtWork("PLN-024", box.channels(channel("a").onBank("A"), channel("b").onBank("A")), box.channels(channel("a"), channel("b"))),
                new AtWork("PLN-029", two.channels(channel("a").onBank("A").supply(7), channel("b").onBank("A").supply(7)),
                        two.channels(channel("a").onBank("A").supply(40), channel("b").onBank("A").supply(40))),
                new AtWork("PLN-030", ribbon.channels(channel("a").gain(45)).boosters(25), ribbon.channels(channel("a").gain(45))));
    }

    private static Stream<AtWork> boxesAndPads() {
        Sessions pickup = live(at("bass", "double-bass", 3, 3, 0, 1, "piezo-pickup")).units(unit("a", "piezo-pickup"), unit("b", "active-di"));
        Sessions bare = live(at("bass", "double-bass", 3, 3, 0, 1, "piezo-pickup")).units(unit("a", "piezo-pickup")).channels(channel("a").dead().input(1_000_000));
        Sessions loud = live(at("horn", "trumpet", 3, 3, 0, 1, "small-condenser-supercardioid"));
        Sessions padded = live(at("horn", "trumpet", 3, 3, 0, 1, "large-condenser-cardioid"));
        return Stream.of(
                new AtWork("PLN-031", pickup.channels(channel("a").input(1500)), bare),
                new AtWork("PLN-032", pickup.channels(channel("a").dead().input(1500)), pickup.channels(channel("a").input(1500))),
                new AtWork("PLN-033", bare, pickup.channels(channel("a").input(1500))),
                new AtWork("PLN-045", loud.channels(channel("a").least(45)), loud.channels(channel("a").least(45)).pad(40)),
                new AtWork("PLN-046", loud.channels(channel("a").least(40)), loud.channels(channel("a").least(45))),
                new AtWork("PLN-047", loud.channels(channel("a").least(45)), loud.channels(channel("a").least(40))),
                new AtWork("PLN-048", loud.channels(channel("a").least(45)).pad(20), loud.channels(channel("a").least(-10)).pad(20)),
                new AtWork("PLN-049", padded.channels(channel("a").least(30)), padded.channels(channel("a").least(-10))));
    }

    private static Stream<AtWork> gainAndGear() {
        Sessions quiet = live(guitar(RIBBON));
        Sessions kit = live(kit(3, 1));
        Sessions large = live(at("kit", "drum-kit", 3, 3, 270, 2, "large-condenser-multi-pattern", "low-source-moving-coil"));
        Gear.Stand low = new Gear.Stand("l", "l", StandKind.SHORT, null, null, null, null, 1.0);
        Sessions fiddle = live(fiddle("one", 3, CONDENSER));
        Sessions two = live(fiddle("one", 3, CONDENSER), at("two", "viola", 5, 3, 0, 1, CONDENSER));
        Sessions stereo = live(kit(3, 2));
        Sessions apart = live(at("sax", "soprano-saxophone", 3, 3, 0, 2, RIBBON, "wide-body-moving-coil"), at("voice", "singing-voice", 5, 3, 0, 1, CONDENSER));
        Seat kick = at("kick", "kick-drum", 3, 3, 0, 1, "boundary-half-omni");
        return Stream.of(
                new AtWork("PLN-041", quiet.channels(channel("a").gain(60)), quiet.channels(channel("a").gain(69))),
                new AtWork("PLN-042", quiet.channels(channel("a").gain(69)), quiet.channels(channel("a").gain(73))),
                new AtWork("PLN-043", live(Sessions.heard(kick, 116, 128)), live(kick)),
                new AtWork("PLN-044", quiet.channels(channel("a").input(1000)), quiet.channels(channel("a").input(2000))),
                new AtWork("PLN-053", kit.stands(new Gear.Stand("s", "s", StandKind.OVERHEAD, null, 1.5, null, null, 2.5)),
                        kit.stands(new Gear.Stand("s", "s", StandKind.OVERHEAD, 14.0, 1.5, 0.5, 3, 2.5))),
                new AtWork("PLN-058", large.stands(low, new Gear.Stand("s", "s", StandKind.OVERHEAD, 14.0, 1.5, 0.5, 3, 2.5)),
                        large.stands(low, new Gear.Stand("s", "s", StandKind.OVERHEAD, null, 1.5, null, null, 2.5))),
                new AtWork("PLN-054", stereo, kit),
                new AtWork("PLN-055", fiddle.units(own("a", CONDENSER, "Hums near the lamp", null)), fiddle.units(own("a", CONDENSER, null, null))),
                new AtWork("PLN-056", two.units(own("a", CONDENSER, null, "b"), own("b", CONDENSER, null, "a")), two.units(unit("a", CONDENSER), unit("b", CONDENSER))),
                new AtWork("PLN-061", stereo.channels(channel("a").onBank("A"), channel("b").onBank("B")),
                        stereo.channels(channel("a").onBank("A"), channel("b").onBank("A"))),
                new AtWork("PLN-062", apart.channels(channel("a").dead(), channel("b"), channel("c").dead()),
                        apart.channels(channel("a").dead(), channel("b").dead(), channel("c"))));
    }

    private static Stream<AtWork> bleed() {
        Seat turned = at("guitar", "nylon-guitar", 4, 3, 0, 1, FIGURE_8);
        Seat tenor = at("tenor", "tenor-saxophone", 6.5, 4.5, 270, 1, CONDENSER);
        Sessions aims = dry(turned, trumpet(1.5, 3.5, 90), tenor);
        Sessions straight = dry(turned, trumpet(1.5, 3.5, 0), tenor);
        Sessions pair = dry(at("guitar", "nylon-guitar", 2, 3, 270, 1, CONDENSER), trumpet(5, 3, 270));
        Seat flute = at("flute", "flute", 2, 3, 0, 1, OMNI);
        Seat[] five = {at("tenor", "tenor-saxophone", 4, 1, 225, 1, "hypercardioid-ribbon"), at("flute", "flute", 2, 4, 135, 1, "hypercardioid-ribbon"),
                at("cello", "cello", 4, 4, 180, 1, "small-condenser-supercardioid"), fiddle("fiddle", 7, CONDENSER).at(7, 4, 0),
                at("banjo", "banjo", 7, 6, 90, 1, "hypercardioid-ribbon")};
        return Stream.of(
                new AtWork("PLN-071", live(guitar(OMNI), kit(5, 1)), live(guitar(OMNI), at("other", "nylon-guitar", 5, 3, 270, 1, CONDENSER))),
                new AtWork("PLN-072", live(guitar(CONDENSER), at("fiddle", "violin", 5, 3, 270, 1, CONDENSER)),
                        dry(guitar(CONDENSER), at("fiddle", "violin", 7.5, 6.5, 45, 1, CONDENSER))),
                new AtWork("PLN-073", aims, straight),
                new AtWork("PLN-074", aims, straight),
                new AtWork("PLN-075", pair.screen(new Gobo("screen", 3.5, 1, 3.5, 5, 2)), pair),
                new AtWork("PLN-076", live(fiddle("one", 3, CONDENSER), fiddle("two", 5, CONDENSER)), dry(fiddle("one", 3, CONDENSER), fiddle("two", 5, CONDENSER))),
                new AtWork("PLN-077", dry(flute, at("kick", "kick-drum", 3.2, 3, 270, 1, CONDENSER)), dry(flute, at("snare", "snare-drum", 3.2, 3, 270, 1, CONDENSER))));
    }

    private static Stream<AtWork> arrivals() {
        Seat tom = at("tom", "rack-tom", 3, 3, 0, 2, "compact-drum-moving-coil");
        Seat roomy = at("amplifier", "driven-guitar-amplifier", 3, 3, 0, 2, HANDHELD, "large-condenser-multi-pattern");
        Seat flute = at("flute", "flute", 2, 3, 0, 1, OMNI);
        Floor large = new Floor(null, 12, 12, 5, 0.5);
        return Stream.of(
                new AtWork("PLN-081", live(at("tenor", "tenor-saxophone", 4, 4, 0, 2, "compact-ribbon", "wide-body-moving-coil")),
                        live(at("tenor", "tenor-saxophone", 4, 4, 0, 1, "compact-ribbon", "wide-body-moving-coil"))),
                new AtWork("PLN-082", live(Sessions.wanting(tom, "full")), live(at("tom", "floor-tom", 3, 3, 0, 2, HANDHELD, "low-source-moving-coil"))),
                new AtWork("PLN-083", Sessions.of(large, Sessions.wanting(roomy, "roomy")), Sessions.of(large, roomy)),
                new AtWork("PLN-084", live(Sessions.wanting(tom, "full")), live(at("tenor", "tenor-saxophone", 4, 4, 0, 2, "compact-ribbon", "wide-body-moving-coil"))),
                new AtWork("PLN-085", dry(guitar(CONDENSER), trumpet(5, 3, 270)), dry(guitar(CONDENSER), at("other", "nylon-guitar", 5, 3, 270, 1, CONDENSER))),
                new AtWork("PLN-086", dry(flute, at("kick", "kick-drum", 3.2, 3, 270, 1, CONDENSER)), dry(flute, at("kick", "kick-drum", 5, 3, 270, 1, CONDENSER))),
                new AtWork("PLN-087", live(guitar(OMNI), kit(5, 1)), live(guitar(OMNI), kit(7.5, 1))),
                new AtWork("PLN-088", Sessions.of(HALL, guitar(OMNI), kit(16, 1)), Sessions.of(HALL, guitar(OMNI), kit(8, 1))));
    }

    private static Stream<AtWork> whole() {
        Sessions valve = live(at("voice", "singing-voice", 3, 3, 0, 1, "large-valve-condenser", "large-condenser-cardioid"));
        Sessions fiddle = live(fiddle("one", 3, CONDENSER));
        Seat clavichord = at("clavichord", "clavichord", 3, 3, 0, 1, "large-condenser-cardioid");
        return Stream.of(
                new AtWork("PLN-091", live(guitar(CONDENSER), kit(5, 1)), live(guitar(CONDENSER), at("other", "nylon-guitar", 5, 3, 270, 1, CONDENSER))),
                new AtWork("PLN-092", live(fiddle("one", 3, CONDENSER), fiddle("two", 5, RIBBON)), live(fiddle("one", 3, CONDENSER), fiddle("two", 5, CONDENSER))),
                new AtWork("PLN-093", valve.units(unit("a", "large-valve-condenser")), valve.units(unit("a", "large-condenser-cardioid"))),
                new AtWork("PLN-094", fiddle.units(unit("a", CONDENSER)), fiddle.units(unit("a", CONDENSER), unit("b", CONDENSER))),
                new AtWork("PLN-095", fiddle.channels(channel("a")), fiddle.channels(channel("a"), channel("b"))),
                new AtWork("PLN-096", many(16), many(15)),
                new AtWork("PLN-097", live(at("voice", "singing-voice", 3, 3, 0, 1, "low-source-moving-coil")), live(at("voice", "singing-voice", 3, 3, 0, 1, "large-condenser-cardioid"))),
                new AtWork("PLN-098", live(clavichord, trumpet(5, 3, 270)), live(clavichord)));
    }

    private static Sessions many(int seats) {
        return Sessions.of(new Floor(null, 12, 12, 4, 0.4), IntStream.range(0, seats)
                .mapToObj(i -> at("clarinet-" + i, "clarinet", 1.5 + 3 * (i % 4), 1.5 + 3 * (i / 4), 0, 1, CONDENSER)).toArray(Seat[]::new));
    }

    private static Stream<AtWork> all() {
        return Stream.of(twoSeats(), power(), boxesAndPads(), gainAndGear(), bleed(), arrivals(), whole()).flatMap(some -> some);
    }

    @ParameterizedTest
    @MethodSource("all")
    void aRuleSpeaksInASessionAndNotInOneMuchLikeIt(AtWork at) {
        List<String> said = said(at.speaks());
        assertTrue(said.contains(at.rule()), () -> at.rule() + " is not among " + said);
        List<String> nearly = said(at.silent());
        assertFalse(nearly.contains(at.rule()), () -> at.rule() + " is among " + nearly);
    }

    private static List<String> said(Sessions session) {
        Planned planned = PLANNER.plan(session.lineUp(), session.gear(), step -> { });
        assertEquals(1, planned.plans().size(), () -> "no plan: " + planned.shortOf());
        Plan plan = planned.plans().get(0);
        List<Said> all = new ArrayList<>(plan.reasons());
        all.addAll(plan.cautions());
        plan.lines().forEach(line -> all.addAll(line.cautions()));
        plan.timing().forEach(arrival -> all.addAll(arrival.cautions()));
        // what costs an option most is told in the words of the rule that says so
        all.forEach(said -> assertFalse(said.says().matches(List.of("PLN-097", "PLN-098").contains(said.rule()) ? ".*\\{.*" : ".*(\\{| -\\d).*"), said.says()));
        return all.stream().map(Said::rule).sorted().toList();
    }

    /** What comes by a lead has no capsule that a hand could move, however little it is early. */
    @Test
    void aLeadThatIsALittleEarlyIsDelayedAndNotMoved() {
        Sessions keys = live(Sessions.wanting(at("keys", "keyboard-amplifier", 3, 3, 0, 2, HANDHELD, "passive-di"), "roomy"));
        Plan plan = PLANNER.plan(keys.lineUp(), keys.gear(), step -> { }).plans().get(0);
        Arrival arrival = plan.timing().get(0);
        assertTrue(arrival.delayMs() < 0.3, arrival.toString());
        assertEquals(List.of("PLN-081"), arrival.cautions().stream().map(Said::rule).toList());
        assertEquals(Arrival.Treat.ALIGN, arrival.treat());
    }

    /** Who must be there is in every plan there is: what it weighs that one of them is not stands in the price of doing without. */
    @Test
    void leavingOutWhomTheSessionCannotDoWithoutIsWeighedInTheWayOut() {
        Seat flute = at("flute", "flute", 3, 3, 0, 1);
        Seat oboe = at("oboe", "oboe", 5, 3, 0, 1);
        Sessions both = live(flute, oboe).units(unit("a", CONDENSER));
        Planned none = PLANNER.plan(both.lineUp(), both.gear(), step -> { });
        assertEquals(List.of(), none.plans());
        double without = none.waysOut().stream().filter(way -> way.says().equals("Leave out the oboe.")).mapToDouble(Planned.WayOut::score).findFirst().orElseThrow();
        Sessions nice = live(flute, Sessions.nice(oboe)).units(unit("a", CONDENSER));
        double nicely = PLANNER.plan(nice.lineUp(), nice.gear(), step -> { }).plans().get(0).score();
        assertEquals(rule("PLN-001").points() - rule("PLN-002").points(), without - nicely, 1e-9);
        assertTrue(without < nicely);
    }

    /** No search puts a ribbon on a live channel, so the rule that warns of one speaks of plans that somebody made by hand alone. */
    @Test
    void aRibbonOnALiveChannelIsFoundInAPlanByHandAndSearchedAwayFrom() {
        Seat seat = guitar(RIBBON);
        Sessions bank = live(seat, fiddle("one", 5, CONDENSER)).channels(channel("a").onBank("A"), channel("b").onBank("A"), channel("c").dead());
        assertFalse(said(bank).contains("PLN-034"));
        StoodPlan hand = new StoodPlan(bank.lineUp(), bank.gear().channels(), KNOWLEDGE.current());
        Offers stood = hand.stood(seat.id(), List.of(new Setup(null, List.of(new Setup.Put(RIBBON, null, "neck-join", 0.4, 0.0)))));
        List<StoodPlan.Put> put = List.of(new StoodPlan.Put(seat.id(), stood, stood.all().get(0), List.of("a")));
        Said live = hand.plan(put, List.of("b")).lines().get(0).cautions().stream().filter(said -> said.rule().equals("PLN-034")).findFirst().orElseThrow();
        assertEquals(Severity.CARE, live.severity());
        assertTrue(live.says().startsWith("Phantom power is on at a, and the long passive ribbon for the nylon guitar needs none"), live.says());
        assertFalse(hand.plan(put, List.of()).lines().get(0).cautions().stream().anyMatch(said -> said.rule().equals("PLN-034")));
    }

    private static RuleInfo rule(String id) {
        return rules().filter(rule -> rule.id().equals(id)).findFirst().orElseThrow();
    }

    private static Stream<RuleInfo> rules() {
        return RuleBase.builtIn().rules().stream().filter(RuleInfo::ofAPlan);
    }

    @Test
    void everyRuleOfAPlanIsSeenAtWork() {
        Set<String> seen = new TreeSet<>(List.of("PLN-001", "PLN-034"));
        all().forEach(at -> assertTrue(seen.add(at.rule()), at.rule() + " is here twice"));
        assertEquals(new TreeSet<>(rules().map(RuleInfo::id).toList()), seen, "a rule without a session in which it speaks: add one, or retire it");
    }
}
