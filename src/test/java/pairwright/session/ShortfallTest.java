package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import pairwright.locker.PhantomSwitch;
import pairwright.model.HabitRank;
import pairwright.model.Limits;
import pairwright.model.MicType;
import pairwright.model.Stock;

/** Where there is no plan: what is short is named, and every way out that is offered, carried out, gives one. */
class ShortfallTest {
    private static final Planner PLANNER = Sextet.planner();
    private static final Pattern THING = Pattern.compile("(\\d+) × ([^;.]+?)(?: like ([^;.]+))?(?:, large enough)?(?=;|\\.$)");

    private static Seat seat(String id, String source, double xM, boolean must) {
        return new Seat(id, null, source, xM, 3, 0, null, null, null, null, new Limits(1, null, null, null, null, null, null, null), must, null, false);
    }

    private static LineUp lineUp(Seat... seats) {
        return new LineUp(null, new Floor(null, 10, 8, 3.5, 0.5), List.of(seats), null, null, null, null, null, 1);
    }

    private static LineUp trumpet() {
        return lineUp(seat("trumpet", "trumpet", 4, true));
    }

    private static Stock stock(String... types) {
        List<Stock.Held> units = new ArrayList<>();
        for (String type : types) {
            units.add(new Stock.Held(type + "-" + units.size(), type, type + " " + units.size(), null, null, null, null, null, null));
        }
        return new Stock(true, units);
    }

    private static Gear.Channel channel(String id) {
        return new Gear.Channel(id, "Channel " + id, null, PhantomSwitch.CHANNEL, null, 60.0, null, null, null);
    }

    private static Gear.Stand boom(String id) {
        return new Gear.Stand(id, "Boom " + id, StandKind.BOOM, null, null, null, null, null);
    }

    private static Planned planned(LineUp lineUp, Gear gear) {
        return PLANNER.plan(lineUp, gear, step -> { });
    }

    private static List<String> resources(Planned planned) {
        return planned.shortOf().stream().map(Planned.Short::resource).toList();
    }

    /** The gear with all that a way out says is to be borrowed. */
    private static Gear borrowing(Gear gear, String says) {
        List<Stock.Held> units = new ArrayList<>(gear.stock() == null ? List.of() : gear.stock().units());
        List<Gear.Channel> channels = new ArrayList<>(gear.channels() == null ? List.of() : gear.channels());
        List<Gear.Stand> stands = new ArrayList<>(gear.stands() == null ? List.of() : gear.stands());
        Matcher thing = THING.matcher(says);
        int things = 0;
        while (thing.find()) {
            for (int i = 0; i < Integer.parseInt(thing.group(1)); i++) {
                String id = "borrowed-" + things++;
                String like = thing.group(3);
                if (thing.group(2).startsWith("preamplifier channel")) {
                    channels.add(like == null ? channel(id) : channels.stream().filter(one -> one.label().equals(like)).map(one -> new Gear.Channel(id, id, null, PhantomSwitch.CHANNEL,
                            one.leastGainDb(), one.mostGainDb(), one.inputOhm(), one.noiseDbu(), null)).findFirst().orElseThrow());
                } else if (thing.group(2).endsWith(" stand")) {
                    StandKind kind = List.of(StandKind.values()).stream().filter(one -> thing.group(2).equals(one.id() + " stand")).findFirst().orElseThrow();
                    stands.add(like == null ? new Gear.Stand(id, id, kind, null, null, null, null, null) : stands.stream().filter(one -> one.label().equals(like))
                            .map(one -> new Gear.Stand(id, id, kind, one.massKg(), one.reachM(), one.footRadiusM(), one.legs(), one.heightM())).findFirst().orElseThrow());
                } else {
                    MicType type = Sextet.KNOWLEDGE.current().catalogue().mics().values().stream().filter(mic -> mic.name().equals(thing.group(2))).findFirst()
                            .orElseThrow(() -> new AssertionError("nothing is called " + thing.group(2)));
                    units.add(new Stock.Held(id, type.id(), id, null, null, null, null, null, null));
                }
            }
        }
        assertTrue(things > 0, says);
        return new Gear(gear.stock() == null ? null : new Stock(true, units), gear.channels() == null ? null : channels, gear.stands() == null ? null : stands, gear.boosters(), gear.pads());
    }

    /** Each that borrows gives a plan; each that leaves somebody out leaves somebody. */
    private static void everyWayOutIsTrue(LineUp lineUp, Gear gear, Planned none) {
        assertTrue(none.plans().isEmpty());
        assertFalse(none.shortOf().isEmpty());
        for (Planned.WayOut way : none.waysOut()) {
            if (way.kind().equals("borrow")) {
                Planned then = planned(lineUp, borrowing(gear, way.says()));
                assertFalse(then.plans().isEmpty(), () -> way.says() + " Then: " + then.shortOf());
            } else if (way.kind().equals("drop")) {
                List<String> left = lineUp.seats().stream().map(Seat::id).filter(id -> !way.says().contains(SeatNames.of(lineUp).of(id))).toList();
                assertFalse(left.isEmpty(), way.says());
                assertFalse(planned(lineUp.without(lineUp.seats().stream().map(Seat::id).filter(id -> !left.contains(id)).toList()), gear).plans().isEmpty(), way.says());
            }
        }
    }

    @Test
    void whereAStandIsShortAStandIsNamed() {
        Gear gear = new Gear(stock("handheld-moving-coil"), null, List.of(), null, null);
        Planned none = planned(trumpet(), gear);
        assertEquals(List.of(new Planned.Short("boom stand", 1, 0, List.of("trumpet"))), none.shortOf());
        assertEquals("Borrow 1 × boom stand.", none.waysOut().get(0).says());
        everyWayOutIsTrue(trumpet(), gear, none);
    }

    @Test
    void whereSeveralThingsAreShortAllOfThemAreNamedTogether() {
        Gear gear = new Gear(stock("active-di"), List.of(), List.of(), null, null);
        Planned none = planned(trumpet(), gear);
        assertEquals(3, none.shortOf().size(), none.shortOf().toString());
        assertTrue(resources(none).contains("boom stand") && resources(none).stream().anyMatch(one -> one.startsWith("preamplifier channel")), none.shortOf().toString());
        everyWayOutIsTrue(trumpet(), gear, none);
        int price = Sextet.KNOWLEDGE.current().catalogue().mics().values().stream().filter(mic -> none.waysOut().get(0).says().contains(mic.name())).mapToInt(MicType::tier).max().orElseThrow();
        assertEquals(1, price, "a cheap one does: " + none.waysOut().get(0).says());
    }

    @Test
    void whereAllChannelsAreMissingChannelsAreBorrowedAndNobodyIsAskedToLeaveAll() {
        LineUp three = lineUp(seat("a", "trumpet", 2, true), seat("b", "violin", 5, true), seat("c", "double-bass", 8, true));
        Gear gear = new Gear(stock("handheld-moving-coil", "small-condenser-cardioid", "small-condenser-cardioid", "long-ribbon"), List.of(), null, null, null);
        Planned none = planned(three, gear);
        assertTrue(none.waysOut().get(0).says().matches("Borrow 3 × preamplifier channel.*\\."), none.waysOut().toString());
        assertTrue(none.waysOut().stream().noneMatch(way -> way.kind().equals("drop")), none.waysOut().toString());
        everyWayOutIsTrue(three, gear, none);
    }

    @Test
    void afterALossWhatWasLostIsOfferedFirstAndItIsSaidWhoWaits() {
        LineUp two = lineUp(seat("horn", "trumpet", 2, true), seat("fiddle", "violin", 6, true));
        Gear gear = new Gear(stock("long-ribbon", "small-condenser-cardioid"), null, null, null, null);
        Plan plan = planned(two, gear).plans().get(0);
        for (Line line : plan.lines()) {
            Lost lost = new Lost(List.of(line.unit().id()), null, null);
            Planned none = PLANNER.shortAgain(two, gear, Picks.of(plan), lost, step -> { });
            assertEquals("Borrow 1 × " + Sextet.KNOWLEDGE.current().catalogue().mics().get(line.placement().micType()).name() + ".", none.waysOut().get(0).says());
            assertTrue(none.shortOf().stream().allMatch(one -> !one.seats().isEmpty()), none.shortOf().toString());
            everyWayOutIsTrue(two, gear.without(lost), none);
        }
    }

    @Test
    void whoeverLosesEveryMicrophoneIsToldWhatIsShort() {
        LineUp two = lineUp(seat("horn", "trumpet", 2, true), seat("fiddle", "violin", 6, true));
        Gear gear = new Gear(stock("long-ribbon", "small-condenser-cardioid"), null, null, null, null);
        Planned none = PLANNER.shortAgain(two, gear, Picks.of(planned(two, gear).plans().get(0)), new Lost(gear.stock().units().stream().map(Stock.Held::id).toList(), null, null), step -> { });
        assertFalse(none.shortOf().isEmpty());
        none.shortOf().forEach(one -> assertEquals(List.of("horn", "fiddle"), one.seats()));
        assertFalse(none.waysOut().isEmpty());
    }

    @Test
    void thePageOfAChangeThatCannotBeSaysWhatIsShortAndAWayOut() {
        Gear gear = new Gear(stock("long-ribbon"), null, null, null, null);
        Picks before = Picks.of(planned(trumpet(), gear).plans().get(0));
        Lost lost = new Lost(List.of("long-ribbon-0"), null, null);
        try (PlanDesk desk = PlanDesk.of(Sextet.KNOWLEDGE::current, () -> 0, PLANNER)) {
            String says = assertThrows(IllegalStateException.class, () -> {
                while (desk.again(trumpet(), gear, before, lost, 5) == null) {
                    Thread.onSpinWait();
                }
            }).getMessage();
            assertTrue(says.contains("Short: Long passive ribbon, figure-8 (1 needed, 0 there). Borrow 1 × Long passive ribbon, figure-8."), says);
        }
    }

    @Test
    void whatTheTradeAvoidsAtASourceIsNotBorrowedForIt() {
        for (String source : List.of("trumpet", "violin", "double-bass", "kick-drum", "flute")) {
            LineUp one = lineUp(seat("it", source, 4, true));
            Planned none = planned(one, new Gear(stock("active-di"), null, null, null, null));
            List<String> avoided = Sextet.KNOWLEDGE.current().catalogue().sources().get(source).habits().stream().filter(habit -> habit.rank() == HabitRank.AVOID && habit.positions().isEmpty()
                    && habit.patterns().isEmpty() && habit.withinM() == null && habit.beyondM() == null).map(habit -> Sextet.KNOWLEDGE.current().catalogue().mics().get(habit.micType()).name()).toList();
            assertFalse(none.waysOut().isEmpty(), source);
            none.waysOut().forEach(way -> assertTrue(avoided.stream().noneMatch(name -> way.says().contains("× " + name)), source + ": " + way.says()));
        }
    }

    @Property(tries = 25, shrinking = ShrinkingMode.OFF)
    void everyWayOutCarriedOutGivesAPlan(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        List<String> sources = List.of("trumpet", "violin", "double-bass", "singing-voice", "cajon", "bass-lead");
        List<String> types = List.of("handheld-moving-coil", "small-condenser-cardioid", "long-ribbon", "active-di", "compact-ribbon");
        List<Seat> seats = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            seats.add(seat("seat-" + i, sources.get(random.nextInt(sources.size())), 1.5 + 2.5 * i, random.nextInt(4) > 0));
        }
        LineUp lineUp = lineUp(seats.toArray(Seat[]::new));
        Gear gear = new Gear(stock(types.stream().filter(type -> random.nextInt(3) == 0).toArray(String[]::new)),
                random.nextBoolean() ? null : List.of(channel("1")).subList(0, random.nextInt(2)),
                random.nextBoolean() ? null : List.of(boom("1"), boom("2")).subList(0, random.nextInt(3)), null, null);
        Planned planned = planned(lineUp, gear);
        if (planned.plans().isEmpty()) {
            everyWayOutIsTrue(lineUp, gear, planned);
        }
    }
}
