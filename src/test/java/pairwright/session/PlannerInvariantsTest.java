package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import pairwright.locker.PhantomSwitch;
import pairwright.model.Stock;

/** What must hold of every plan, whatever of the gear is there. */
class PlannerInvariantsTest {
    private static final LineUp LINE_UP = new LineUp("Some of them", Sextet.LINE_UP.floor(), Sextet.LINE_UP.seats().stream().map(PlannerInvariantsTest::nice).toList(),
            Sextet.LINE_UP.gobos(), List.of(List.of("fiddle", "tenor")), null, null, null, 1);

    private final Planner planner = Sextet.planner();

    /** Nobody must be served, so that there is a plan with any gear. */
    private static Seat nice(Seat seat) {
        return new Seat(seat.id(), seat.player(), seat.source(), seat.xM(), seat.yM(), seat.facingDegrees(), seat.ways(), seat.dynamics(), seat.character(),
                seat.circumstances(), seat.limits(), false, seat.heard(), seat.fixed());
    }

    private Plan plan(Gear gear) {
        return planner.plan(LINE_UP, gear, step -> { }).plans().get(0);
    }

    /** About two thirds of everything; what is missing of the microphones is out. */
    private static Gear some(Random random) {
        Gear all = Sextet.GEAR;
        return new Gear(new Stock(true, all.stock().units().stream().map(unit -> random.nextInt(3) == 0 ? out(unit, true) : unit).toList()), part(all.channels(), random),
                part(all.stands(), random), part(all.boosters(), random), part(all.pads(), random));
    }

    private static <T> List<T> part(List<T> all, Random random) {
        return all.stream().filter(one -> random.nextInt(3) > 0).toList();
    }

    private static Stock.Held out(Stock.Held unit, boolean out) {
        return new Stock.Held(unit.id(), unit.micType(), unit.label(), unit.tag(), unit.storedAt(), unit.note(), unit.pairMate(), unit.ownResponseDb(),
                out ? new Stock.Out("session", null, null, null) : null);
    }

    @Property(tries = 10)
    void aPlanTakesOnlyWhatIsThere(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Gear gear = some(new Random(seed));
        Plan plan = plan(gear);
        Set<String> free = gear.stock().units().stream().filter(Stock.Held::free).map(Stock.Held::id).collect(Collectors.toSet());
        Map<String, Gear.Channel> channels = gear.channels().stream().collect(Collectors.toMap(Gear.Channel::id, one -> one));
        Set<String> stands = gear.stands().stream().map(Gear.Stand::id).collect(Collectors.toSet());
        Set<String> pads = gear.pads().stream().map(Gear.LinePad::id).collect(Collectors.toSet());
        Set<String> taken = new HashSet<>();
        Map<String, Double> drawnMa = new HashMap<>();
        for (Line line : plan.lines()) {
            assertTrue(free.contains(line.unit().id()), line.unit().id() + " is not free");
            assertTrue(taken.add(line.unit().id()) && taken.add("channel " + line.channel()), line.name() + " takes what is taken");
            assertTrue(!line.between().boxed() || free.contains(line.between().box().unit()) && taken.add(line.between().box().unit()), line.name() + " has a box that is not there");
            assertTrue(line.between().boxed() || line.between().instrument() || !Rooms.CATALOGUE.mics().get(line.placement().micType()).wantsBox(), line.name() + " has no box");
            assertTrue(line.between().pad() == null || pads.contains(line.between().pad()) && taken.add("pad " + line.between().pad()), line.name() + " has a pad that is not there");
            assertTrue(line.between().pad() == null || !line.phantomWanted() || gear.pads().stream().anyMatch(pad -> pad.id().equals(line.between().pad()) && pad.passes()),
                    line.name() + " has a pad that stops its power");
            Gear.Channel channel = channels.get(line.channel());
            assertTrue(channel != null, line.channel() + " is not there");
            assertFalse(line.phantomWanted() && (!line.phantom() || channel.phantom() == PhantomSwitch.NONE), line.name() + " has no phantom power");
            assertFalse(line.phantom() && line.booster() == null && Rooms.CATALOGUE.mics().get(line.placement().micType()).passiveRibbon(), line.name() + " is a ribbon on a live channel");
            assertFalse(line.cautions().stream().anyMatch(said -> said.rule().equals("PLN-034")), line.name() + " is called a ribbon on a live channel");
            if (line.phantomWanted()) {
                drawnMa.merge(channel.phantom() == PhantomSwitch.BANK ? channel.bank() : channel.id(), line.currentMa(), Double::sum);
            }
            assertTrue(line.stand() == null || stands.contains(line.stand()) && (line.sharesStandWith() != null || taken.add("stand " + line.stand())), line.name() + " has no stand");
        }
        drawnMa.forEach((supply, ma) -> channels.values().stream().filter(one -> supply.equals(one.phantom() == PhantomSwitch.BANK ? one.bank() : one.id()))
                .forEach(one -> assertTrue(one.supplyMa() == null || ma <= one.supplyMa(), supply + " gives less than " + ma)));
        assertEquals(LINE_UP.seats().size(), plan.served().size() + plan.leftOut().size());
    }

    @Property(tries = 10)
    void freeingAUnitNeverLowersAPlan(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        Gear gear = some(random);
        List<Stock.Held> units = new ArrayList<>(gear.stock().units());
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < units.size(); i++) {
            if (!units.get(i).free()) {
                out.add(i);
            }
        }
        if (out.isEmpty()) {
            return;
        }
        Plan before = plan(gear);
        int freed = out.get(random.nextInt(out.size()));
        units.set(freed, out(units.get(freed), false));
        Plan after = plan(new Gear(new Stock(true, units), gear.channels(), gear.stands(), gear.boosters(), gear.pads()));
        assertTrue(before.proven() && after.proven(), "both are proven");
        assertTrue(after.score() >= before.score(), units.get(freed).id() + " was freed, and " + before.score() + " became " + after.score());
    }
}
