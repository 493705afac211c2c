package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.locker.LockerCase.hour;
import static pairwright.locker.LockerCase.hours;
import static pairwright.locker.LockerCase.ids;

import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import pairwright.model.Stock;

/** What is free, how everything stands, and how much of each type is used. */
interface FreeCases extends LockerCase {
    @Test
    default void freeIsWhatIsGoodOrLimitedAndNotBooked() {
        books(1, 2, "low-1", "boom-1");
        puts("pencil-1", Condition.IN_REPAIR);
        puts("pencil-2", Condition.LIMITED);
        assertEquals(List.of("pencil-2", "ribbon-2"), freeIds(1, 2));
        assertEquals(List.of("boom-1", "pencil-2", "ribbon-2", "low-1"), freeIds(0, 1));
        assertEquals(List.of("boom-1", "pencil-2", "ribbon-2", "low-1"), freeIds(2, 3));
        assertEquals(List.of("pencil-2", "ribbon-2"), freeIds(0, 9));
        assertEquals(List.of("ribbon-2"), ids(locker().free(hours(1, 2), "compact-ribbon")));
        assertEquals(List.of(), locker().free(hours(1, 2), "no-such-type"));
        assertEquals(freeIds(1, 2), ids(other().free(hours(1, 2), null)));
    }

    @Test
    default void standingSaysWhatIsInTheWayAndWhenItIsFreeForAsLong() {
        String first = books(1, 2, "low-1");
        books(2.5, 4, "low-1");
        Standing standing = standing("low-1", 1.5, 2.5);
        assertEquals(first, standing.booking().id());
        assertEquals(hour(4), standing.freeFrom(), "half an hour between two is too short for an hour");
        assertEquals(hour(2), standing("low-1", 1.5, 2).freeFrom());
        assertEquals(false, standing.free());
        Standing free = standing("pencil-1", 1, 2);
        assertTrue(free.free());
        assertNull(free.booking());
        assertEquals(hour(1), free.freeFrom());
        puts("pencil-1", Condition.LOST);
        assertNull(standing("pencil-1", 1, 2).freeFrom());
        assertEquals(false, standing("pencil-1", 1, 2).free());
        assertEquals(ids(locker().units()), locker().standing(hours(0, 1)).stream().map(each -> each.unit().id()).toList());
    }

    @Test
    default void standingAndFreeSayTheSame() {
        books(1, 3, "low-1");
        lends("pencil-1", 2);
        puts("pencil-2", Condition.IN_REPAIR);
        turnTo(2.5);
        for (int from = 0; from < 40; from++) {
            Span span = hours(from, from + 1.0);
            assertEquals(ids(locker().free(span, null)), locker().standing(span).stream().filter(Standing::free).map(each -> each.unit().id()).toList());
        }
    }

    private void lends(String unit, double until) {
        does(changes -> changes.takeOut(unit, "Bo", hour(until)).id());
    }

    @Test
    default void theStockOfAQuestionHoldsEveryMicrophoneGoodOnesFirst() {
        puts("pencil-1", Condition.LIMITED);
        puts("pencil-2", Condition.LOST);
        books(0, 2, "low-1");
        Stock stock = locker().stock(hours(0, 1));
        assertEquals(List.of("ribbon-2", "low-1", "pencil-1", "pencil-2"), stock.units().stream().map(Stock.Held::id).toList());
        Stock.Held low = stock.units().get(1);
        assertEquals("ribbon-2", low.pairMate());
        assertEquals(new Stock.Out("session", "take one", "Ida", hour(2).atOffset(ZoneOffset.UTC)), low.out());
        assertTrue(stock.units().get(0).free() && stock.units().get(2).free());
        assertEquals("as found", stock.units().get(2).note());
        assertEquals(new Stock.Out("lost", null, null, null), stock.units().get(3).out());
        does(changes -> {
            changes.units().forEach(unit -> {
                if (!unit.id().equals("low-1") && unit.kind() == UnitKind.MIC) {
                    changes.remove(unit.id(), null);
                }
            });
            return "";
        });
        assertEquals(1, locker().stock(hours(0, 1)).units().size());
        turnTo(3);
        does(changes -> {
            changes.remove("low-1", null);
            return "";
        });
        assertNull(locker().stock(hours(0, 1)), "a locker with no microphone");
    }

    @Test
    default void aMonthShowsHowManyOfATypeWereTakenOnEachDay() {
        ZoneId east = ZoneId.of("+02:00");
        puts("pencil-2", Condition.LOST);
        books(9.5, 10.5, "low-1");
        books(10.5, 34, "low-1");
        books(9, 10, "ribbon-2", "boom-1");
        Use use = locker().use(YearMonth.of(2031, 3), east);
        assertEquals(YearMonth.of(2031, 3), use.month());
        Use.OfType ribbons = use.types().get(0);
        assertEquals("compact-ribbon", ribbons.micType());
        assertEquals(2, ribbons.units());
        assertEquals(31, ribbons.taken().size());
        assertEquals(List.of(2, 1, 0, 0), ribbons.taken().subList(0, 4), "22:00 UTC is midnight there, and who ends then was not there that day");
        assertEquals(new Use.OfType("small-condenser-cardioid", 1, ribbons.taken().stream().map(day -> 0).toList()), use.types().get(1));
        assertEquals(2, use.types().size());
        assertEquals(List.of(0, 2, 1), locker().use(YearMonth.of(2031, 3), ZoneId.of("+03:00")).types().get(0).taken().subList(0, 3));
        assertEquals(0, locker().use(YearMonth.of(2031, 4), east).types().get(0).taken().stream().mapToInt(Integer::intValue).sum());
    }

    @Test
    default void whatIsSeenIsOneMomentEvenBesideAnotherProgram() {
        does(changes -> changes.add(UnitDraft.mic("x-1", "long-ribbon", "X 1")).id());
        assertEquals(6, other().units().size());
        other().change(Act.by("Bo"), changes -> changes.alter("x-1", changes.unit("x-1").draft().in(Condition.LOST, null), null).id());
        assertEquals(Condition.LOST, locker().unit("x-1").orElseThrow().condition());
        assertEquals(false, freeIds(0, 1).contains("x-1"));
    }
}
