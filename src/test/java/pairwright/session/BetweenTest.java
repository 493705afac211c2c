package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pairwright.locker.PhantomSwitch;
import pairwright.model.Limits;
import pairwright.model.Stock;

/** What is put between a microphone and its channel: line boxes and pads. */
class BetweenTest {
    private static final Planner PLANNER = Sextet.planner();
    private static final String PICKUP = "piezo-pickup";

    private static Seat seat(String id, String source, double xM, String only, boolean must) {
        return new Seat(id, null, source, xM, 4, 0, null, null, null, null, new Limits(1, null, null, null, null, null, only == null ? null : List.of(only), null), must, null, false);
    }

    private static LineUp lineUp(Seat... seats) {
        return new LineUp("Some", new Floor("barn", 9, 12, 5.5, 0.9), List.of(seats), null, null, null, null, null, 1);
    }

    private static Stock stock(String... types) {
        List<Stock.Held> units = new ArrayList<>();
        for (String type : types) {
            units.add(new Stock.Held(type + "-" + units.size(), type, "The " + type + " " + units.size(), null, "Shelf", null, null, null, null));
        }
        return new Stock(true, units);
    }

    private static Gear.Channel channel(String id, PhantomSwitch phantom, double leastGainDb, double inputOhm) {
        return new Gear.Channel(id, "Channel " + id, null, phantom, leastGainDb, 65.0, inputOhm, -128.0, 10.0);
    }

    private static Gear gear(Stock stock, List<Gear.Channel> channels, Gear.LinePad... pads) {
        return new Gear(stock, channels, null, null, List.of(pads));
    }

    private static Plan plan(LineUp lineUp, Gear gear) {
        return PLANNER.plan(lineUp, gear, step -> { }).plans().get(0);
    }

    private static final List<Gear.Channel> TWO = List.of(channel("1", PhantomSwitch.CHANNEL, 8, 1500), channel("2", PhantomSwitch.CHANNEL, 8, 1500));

    @Test
    void aBarePickupTakesALineBoxOnPhantomPower() {
        Line line = plan(lineUp(seat("bass", "double-bass", 3, PICKUP, true)), gear(stock(PICKUP, "active-di"), TWO)).lines().get(0);
        assertEquals("active-di-1", line.between().box().unit());
        assertEquals(Between.BoxPower.PHANTOM, line.between().box().power());
        assertTrue(line.between().boxed());
        assertTrue(line.phantom() && line.phantomWanted());
        assertEquals(5, line.currentMa(), "what the box draws");
        assertTrue(line.cautions().stream().anyMatch(said -> said.rule().equals("PLN-031") && said.says().contains("The active-di 1")), line.cautions().toString());
    }

    @Test
    void withoutPhantomPowerTheBoxRunsOnItsCellAndSaysSo() {
        List<Gear.Channel> dead = List.of(channel("1", PhantomSwitch.NONE, 8, 1500));
        Line line = plan(lineUp(seat("bass", "double-bass", 3, PICKUP, true)), gear(stock(PICKUP, "active-di"), dead)).lines().get(0);
        assertEquals(Between.BoxPower.BATTERY, line.between().box().power());
        assertFalse(line.phantomWanted());
        assertTrue(line.cautions().stream().anyMatch(said -> said.rule().equals("PLN-032")), line.cautions().toString());
    }

    @Test
    void aTransformerIsNoBoxForABarePickup() {
        Planned none = PLANNER.plan(lineUp(seat("bass", "double-bass", 3, PICKUP, true)), gear(stock(PICKUP, "passive-di"), TWO), step -> { });
        assertEquals(List.of(new Planned.Short("Active DI", 1, 0, List.of("bass"))), none.shortOf());
        assertTrue(none.waysOut().stream().anyMatch(way -> way.says().equals("Borrow 1 × Active DI.")), none.waysOut().toString());
        assertTrue(none.waysOut().stream().noneMatch(way -> way.kind().equals("drop")), "nobody comes for a session with nobody: " + none.waysOut());
    }

    @Test
    void oneBoxDoesForOneOfTwo() {
        Planned none = PLANNER.plan(lineUp(seat("bass", "double-bass", 3, PICKUP, true), seat("lead", "bass-lead", 6, "active-di", true)), gear(stock(PICKUP, "active-di"), TWO), step -> { });
        assertTrue(none.plans().isEmpty());
        assertEquals(List.of(new Planned.Short("Active DI", 2, 1, none.shortOf().get(0).seats())), none.shortOf());
        Plan two = plan(lineUp(seat("bass", "double-bass", 3, PICKUP, true), seat("lead", "bass-lead", 6, "active-di", true)), gear(stock(PICKUP, "active-di", "active-di"), TWO));
        assertEquals(Set.of("active-di-1", "active-di-2"), two.lines().stream().map(line -> line.between().box().unit()).collect(Collectors.toSet()));
        assertEquals(new Plan.Count("line boxes", 2, 2), two.counts().stream().filter(count -> count.of().equals("line boxes")).findFirst().orElseThrow());
    }

    @Test
    void anInstrumentInputNeedsNoBox() {
        List<Gear.Channel> one = List.of(channel("mic", PhantomSwitch.CHANNEL, 8, 1500), channel("instrument", PhantomSwitch.NONE, 8, 1_000_000));
        Line line = plan(lineUp(seat("bass", "double-bass", 3, PICKUP, true)), gear(stock(PICKUP), one)).lines().get(0);
        assertNull(line.between().box());
        assertTrue(line.between().instrument());
        assertEquals("instrument", line.channel());
        assertTrue(line.cautions().stream().anyMatch(said -> said.rule().equals("PLN-033")), line.cautions().toString());
    }

    @Test
    void whereNothingIsCountedAPickupHasABoxAllTheSame() {
        Line line = plan(lineUp(seat("bass", "double-bass", 3, PICKUP, true)), Gear.ANYTHING).lines().get(0);
        assertEquals("active-di", line.between().box().micType());
        assertNull(line.between().box().unit());
    }

    @Test
    void aLineBoxAtTheEndOfALeadIsItsOwnBox() {
        Line line = plan(lineUp(seat("keys", "keyboard-lead", 3, "passive-di", true)), gear(stock("passive-di"), TWO)).lines().get(0);
        assertEquals("passive-di-0", line.between().box().unit());
        assertTrue(line.between().box().itself());
        assertEquals(Between.BoxPower.NONE, line.between().box().power());
        assertFalse(line.between().boxed());
    }

    @Test
    void aMicrophoneHasNoBox() {
        assertNull(plan(lineUp(seat("voice", "singing-voice", 3, "handheld-moving-coil", true)), gear(stock("handheld-moving-coil"), TWO)).lines().get(0).between().box());
    }

    @Test
    void whereALeadHasNoBoxAnInstrumentInputIsAWayOut() {
        List<Gear.Channel> one = List.of(channel("mic", PhantomSwitch.CHANNEL, 8, 1500), channel("instrument", PhantomSwitch.NONE, 8, 1_000_000));
        LineUp two = lineUp(seat("lead", "bass-lead", 3, null, true), seat("voice", "singing-voice", 6, "handheld-moving-coil", true));
        Planned none = PLANNER.plan(two, gear(stock("handheld-moving-coil"), one), step -> { });
        assertEquals(List.of(new Planned.Short("Active DI", 1, 0, List.of("lead"))), none.shortOf());
        Planned.WayOut input = none.waysOut().stream().filter(way -> way.kind().equals("input")).findFirst().orElseThrow(() -> new AssertionError(none.waysOut().toString()));
        assertTrue(input.says().startsWith("Put the bass lead straight into the instrument input of Channel instrument"), input.says());
        double alone = plan(lineUp(seat("voice", "singing-voice", 6, "handheld-moving-coil", true)), gear(stock("handheld-moving-coil"), one.subList(0, 1))).score();
        assertTrue(Math.abs(alone - input.score()) < 5, alone + " and " + input.score());
    }

    /** It needs phantom power and has no pad of its own. */
    private static final String STRONG = "active-ribbon";
    private static final LineUp LOUD = lineUp(seat("horn", "trumpet", 3, STRONG, true));
    private static final double HIGH_DB = over(LOUD, STRONG, 30);
    private static final List<Gear.Channel> HIGH = List.of(channel("1", PhantomSwitch.CHANNEL, HIGH_DB, 1500));

    /** The lowest gain of a channel for which the peaks of a microphone, where it stands best, are too strong by so much. */
    private static double over(LineUp lineUp, String type, double overDb) {
        Line line = plan(lineUp, gear(stock(type), List.of(channel("any", PhantomSwitch.CHANNEL, -60, 1500)))).lines().get(0);
        return 22 - 6 - line.placement().predicted().outputPeakDbu() + overDb;
    }

    @Test
    void aStrongMicrophoneGetsThePadThatPassesPhantomPower() {
        Gear gear = gear(stock(STRONG), HIGH, new Gear.LinePad("unknown", "Unknown", 35, null), new Gear.LinePad("stops", "Stops", 35, false),
                new Gear.LinePad("strong", "Strong", 60, true), new Gear.LinePad("passes", "Passes", 35, true));
        Plan plan = plan(LOUD, gear);
        Line line = plan.lines().get(0);
        assertEquals("passes", line.between().pad(), "the weakest that does");
        assertEquals(35, line.between().padLossDb());
        assertEquals(0, line.between().overDb());
        assertTrue(line.gainDb() >= line.placement().predicted().gainDb() + 10, "what the pad takes the preamplifier gives");
        assertTrue(line.cautions().stream().anyMatch(said -> said.rule().equals("PLN-048")), line.cautions().toString());
        assertEquals(new Plan.Count("pads in a line", 1, 4), plan.counts().stream().filter(count -> count.of().equals("pads in a line")).findFirst().orElseThrow());
        assertEquals(Picks.of(plan), Picks.of(PLANNER.rebuilt(LOUD, gear, Picks.of(plan))));
    }

    @Test
    void withoutSuchAPadItIsSaidAndCosts() {
        Plan with = plan(LOUD, gear(stock(STRONG), HIGH, new Gear.LinePad("passes", "Passes", 60, true)));
        Plan without = plan(LOUD, gear(stock(STRONG), HIGH, new Gear.LinePad("unknown", "Unknown", 60, null)));
        Line line = without.lines().get(0);
        assertNull(line.between().pad());
        assertTrue(line.between().overDb() > 0);
        assertTrue(line.cautions().stream().anyMatch(said -> said.rule().equals("PLN-045")), line.cautions().toString());
        assertTrue(without.reasons().stream().anyMatch(said -> said.points() < 0 && said.lines().equals(List.of(1))), without.reasons().toString());
        assertTrue(without.score() < with.score(), without.score() + " and " + with.score());
        assertEquals(new Plan.Count("pads in a line", 1, 1), without.counts().stream().filter(count -> count.of().equals("pads in a line")).findFirst().orElseThrow());
    }

    @Test
    void aPadOfItsOwnIsSwitchedInFirst() {
        LineUp own = lineUp(seat("horn", "trumpet", 3, "small-condenser-omni", true));
        Line line = plan(own, gear(stock("small-condenser-omni"), List.of(channel("1", PhantomSwitch.CHANNEL, over(own, "small-condenser-omni", 8), 1500)),
                new Gear.LinePad("passes", "Passes", 20, true))).lines().get(0);
        assertNull(line.between().pad());
        assertTrue(line.between().ownPadDb() > line.placement().padDb(), line.between().toString());
        assertEquals(0, line.between().overDb());
        assertTrue(line.cautions().stream().anyMatch(said -> said.rule().equals("PLN-049")), line.cautions().toString());
    }

    @Test
    void aChannelThatGoesLowEnoughIsTakenBeforeAPad() {
        List<Gear.Channel> both = List.of(channel("high", PhantomSwitch.CHANNEL, HIGH_DB, 1500), channel("low", PhantomSwitch.CHANNEL, -60, 1500));
        Line line = plan(LOUD, gear(stock(STRONG), both)).lines().get(0);
        assertEquals("low", line.channel());
        assertEquals(0, line.between().overDb());
    }

    @Test
    void ofTwoStrongOnesOnePadGoesToOne() {
        LineUp two = lineUp(seat("horn", "trumpet", 3, STRONG, true), seat("slide", "trombone", 6, STRONG, true));
        List<Gear.Channel> high = List.of(channel("1", PhantomSwitch.CHANNEL, HIGH_DB, 1500), channel("2", PhantomSwitch.CHANNEL, HIGH_DB, 1500));
        Plan plan = plan(two, gear(stock(STRONG, STRONG), high, new Gear.LinePad("p", "P", 60, true)));
        assertEquals(1, plan.lines().stream().filter(line -> line.between().pad() != null).count());
        assertEquals(1, plan.lines().stream().filter(line -> line.between().overDb() > 0).count());
        assertEquals(new Plan.Count("pads in a line", 2, 1), plan.counts().stream().filter(count -> count.of().equals("pads in a line")).findFirst().orElseThrow());
    }
}
