package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import pairwright.advice.HouseMemory;
import pairwright.model.Limits;
import pairwright.model.Stock;
import pairwright.session.allocation.Allocator;

/** What is suggested to buy is worth exactly what is said: it is bought here, and planned anew by the planner itself. */
class PurchasesTest {
    /** One microphone each. */
    private static final LineUp SMALL = only(1, "fiddle", "bass", "voice");
    /** Up to two each. */
    private static final LineUp OTHER = only(2, "tenor", "guitar");

    private static LineUp only(int mics, String... seats) {
        return Sextet.LINE_UP.seated(Sextet.LINE_UP.seats().stream().filter(seat -> List.of(seats).contains(seat.id())).map(seat -> new Seat(seat.id(), null, seat.source(),
                seat.xM(), seat.yM(), seat.facingDegrees(), null, null, null, null, new Limits(mics, null, null, null, null, null, null, null), true, null, false)).toList());
    }

    private static Gear gear(Predicate<Stock.Held> kept) {
        return with(new Stock(true, Sextet.GEAR.stock().units().stream().filter(Stock.Held::free).filter(kept).toList()));
    }

    private static Gear with(Stock stock) {
        return new Gear(stock, Sextet.GEAR.channels(), Sextet.GEAR.stands(), Sextet.GEAR.boosters(), Sextet.GEAR.pads());
    }

    private static Purchased buy(Gear gear, int budget, int mostTier, LineUp... lineUps) {
        List<Purchases.Session> sessions = new ArrayList<>();
        for (LineUp lineUp : lineUps) {
            sessions.add(new Purchases.Session("session-" + (sessions.size() + 1), lineUp));
        }
        return Purchases.of(new Purchases.Wish(sessions, gear, budget, mostTier), Sextet.KNOWLEDGE.current(), HouseMemory.NOTHING, step -> { });
    }

    @Test
    void aSessionThatIsNotDecidedIsLeftOutByNameAndTheOthersAreServed() {
        Gear gear = gear(unit -> true);
        List<Purchases.Session> both = List.of(new Purchases.Session("small", SMALL), new Purchases.Session("hard", OTHER));
        Allocator usual = new Allocator();
        Allocator hurried = new Allocator(new pairwright.session.allocation.Limits(0, Duration.ZERO));
        Purchased purchased = Purchases.of(new Purchases.Wish(both, gear, 5, 5), Sextet.KNOWLEDGE.current(), HouseMemory.NOTHING, step -> { },
                session -> session.id().equals("hard") ? hurried : usual);
        assertEquals(List.of("hard"), purchased.unserved().stream().map(Purchased.Unserved::session).toList());
        assertTrue(purchased.unserved().get(0).why().contains("no plan was found in the time there is"), purchased.unserved().get(0).why());
        assertFalse(purchased.proven());
        Purchased alone = buy(gear, 5, 5, SMALL);
        assertEquals(alone.steps().stream().map(Purchased.Step::micType).toList(), purchased.steps().stream().map(Purchased.Step::micType).toList());
        assertEquals(points(alone.after()).get(0), points(purchased.after()).get(0));
    }

    /** What the planner gives for each; null where it gives no plan. */
    private static List<Double> planned(Gear gear, LineUp... lineUps) {
        List<Double> scores = new ArrayList<>();
        Planner planner = Sextet.planner();
        for (LineUp lineUp : lineUps) {
            LineUp one = new LineUp(lineUp.name(), lineUp.floor(), lineUp.seats(), lineUp.gobos(), lineUp.contrast(), lineUp.keep(), null, null, 1);
            List<Plan> plans = planner.plan(one, gear, step -> { }).plans();
            scores.add(plans.isEmpty() ? null : plans.get(0).score());
        }
        return scores;
    }

    private static Stock add(Stock stock, Purchased.Step step, int number) {
        List<Stock.Held> units = new ArrayList<>(stock.units());
        for (int i = 1; i <= step.units(); i++) {
            units.add(new Stock.Held("own-" + number + "-" + i, step.micType(), "Own " + number + i, null, null, null, step.units() == 1 ? null : "own-" + number + "-" + (3 - i), null, null));
        }
        return new Stock(true, units);
    }

    private static List<Double> points(List<Purchased.Served> served) {
        return served.stream().map(Purchased.Served::points).toList();
    }

    private static double sum(List<Double> points) {
        return points.stream().filter(one -> one != null).mapToLong(one -> Math.round(one * 100)).sum() / 100.0;
    }

    @Test
    void everyPurchaseIsWorthExactlyWhatIsSaidOnceItIsThere() {
        Gear gear = gear(unit -> true);
        Purchased purchased = buy(gear, 5, 5, SMALL, OTHER);
        assertEquals(planned(gear, SMALL, OTHER), points(purchased.before()));
        assertFalse(purchased.steps().isEmpty(), "the locker of the demo leaves something to be wished for");
        Stock stock = gear.stock();
        double before = sum(points(purchased.before()));
        int spent = 0;
        for (Purchased.Step step : purchased.steps()) {
            stock = add(stock, step, spent);
            spent += step.price();
            List<Double> now = planned(with(stock), SMALL, OTHER);
            assertEquals(step.points(), sum(now), step.micType());
            assertEquals(step.gainPoints(), (Math.round(step.points() * 100) - Math.round(before * 100)) / 100.0, step.micType());
            assertTrue(step.gainPoints() > 0, step.micType());
            assertEquals(spent, step.spent());
            before = step.points();
        }
        assertTrue(spent <= 5);
        assertEquals(planned(with(stock), SMALL, OTHER), points(purchased.after()));
        assertTrue(purchased.proven());
    }

    @Test
    void theFirstPurchaseGainsMostForItsPriceOfAllThereAre() {
        LineUp one = only(1, "bass");
        List<String> best = Sextet.planner().plan(one, gear(unit -> true), step -> { }).plans().get(0).lines().stream().map(line -> line.placement().micType()).toList();
        Gear gear = gear(unit -> !best.contains(unit.micType()));
        Purchased.Step first = buy(gear, 3, 3, one).steps().get(0);
        double before = sum(planned(gear, one));
        for (Goods goods : Goods.all(Sextet.KNOWLEDGE.current().catalogue(), 3)) {
            if (goods.price() <= 3) {
                double gain = sum(planned(with(Goods.with(gear.stock(), List.of(goods))), one)) - before;
                assertTrue(gain / goods.price() <= first.gainPoints() / first.price() + 1e-9, goods.units() + " " + goods.micType().id() + " gains " + gain);
            }
        }
    }

    @Test
    void firstEverySessionIsServedAsCheaplyAsCanBe() {
        Gear nothing = with(new Stock(true, List.of()));
        Purchased purchased = buy(nothing, 3, 5, SMALL);
        assertEquals(Collections.singletonList(null), points(purchased.before()));
        assertEquals(List.of(), purchased.unserved());
        List<Purchased.Step> serving = purchased.steps().stream().filter(step -> step.phase() == Purchased.Phase.SERVE).toList();
        assertEquals(3, serving.size(), "three players, each with one of the cheapest");
        assertEquals(3, serving.get(2).spent());
        assertEquals(List.of(0, 0, 1), serving.stream().map(Purchased.Step::served).toList());
        assertTrue(purchased.cheapest());
        Stock stock = new Stock(true, List.of());
        for (Purchased.Step step : serving) {
            stock = add(stock, step, stock.units().size());
        }
        assertEquals(points(purchased.after()), planned(with(stock), SMALL));
    }

    @Test
    void aBudgetThatServesNobodyIsSaidAndNotSpentInVain() {
        Purchased purchased = buy(with(new Stock(true, List.of())), 2, 5, SMALL);
        assertEquals(List.of(), purchased.steps());
        assertEquals(1, purchased.unserved().size());
        assertTrue(purchased.unserved().get(0).why().contains("costs 3"), purchased.unserved().get(0).why());
    }

    @Test
    void whereMicrophonesAreNotWhatIsShortItIsSaid() {
        Gear dumb = new Gear(gear(unit -> true).stock(), List.of(), Sextet.GEAR.stands(), null, null);
        Purchased purchased = buy(dumb, 5, 5, SMALL);
        assertEquals(List.of(), purchased.steps());
        assertTrue(purchased.unserved().get(0).why().contains("what else is short"), purchased.unserved().toString());
    }

    @Test
    void whatNoPlanTakesIsTold() {
        Purchased purchased = buy(gear(unit -> true), 0, 5, SMALL);
        assertEquals(List.of(), purchased.steps());
        List<String> never = purchased.idle().stream().filter(idle -> idle.used() == 0).map(Purchased.Idle::micType).toList();
        assertEquals(points(purchased.before()), planned(gear(unit -> !never.contains(unit.micType())), SMALL), "without them the plan is as good");
        for (Purchased.Idle idle : purchased.idle()) {
            assertEquals(gear(unit -> true).stock().units().stream().filter(unit -> unit.micType().equals(idle.micType())).count(), idle.owned());
            assertEquals(idle.used() == 0 ? idle.owned() : 0, idle.labels().size());
        }
        assertFalse(purchased.idle().isEmpty(), "three players do not need the whole locker");
    }

    @Test
    void theSameWishIsAnsweredTheSameAndCanBeGivenUp() {
        Purchased once = buy(gear(unit -> true), 2, 2, SMALL);
        assertEquals(once, buy(gear(unit -> true), 2, 2, SMALL));
        assertThrows(CancellationException.class, () -> Purchases.of(new Purchases.Wish(List.of(new Purchases.Session("one", SMALL)), gear(unit -> true), 2, 2),
                Sextet.KNOWLEDGE.current(), HouseMemory.NOTHING, step -> {
                    throw new CancellationException();
                }));
    }
}
