package pairwright.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.catalogue.CatalogueStore;
import pairwright.locker.Act;
import pairwright.locker.DemoLocker;
import pairwright.locker.Locker;
import pairwright.locker.LockerFault;
import pairwright.locker.PhantomSwitch;
import pairwright.locker.Place;
import pairwright.locker.Span;
import pairwright.locker.StandData;
import pairwright.locker.UnitDraft;
import pairwright.model.Catalogue;
import pairwright.model.Stock;

/** What the barn of the demo has for a session. */
class GearOfTest {
    private static final Catalogue CATALOGUE = new CatalogueStore().builtIn();
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    @TempDir
    private Path folder;
    private Locker locker;

    @BeforeEach
    void open() {
        locker = Locker.open(Place.in(folder), () -> CATALOGUE, Clock.fixed(at(0, 8), ZoneOffset.UTC));
    }

    @AfterEach
    void close() {
        locker.close();
    }

    private static Instant at(int day, int hour) {
        return TODAY.plusDays(day).atTime(LocalTime.of(hour, 0)).toInstant(ZoneOffset.UTC);
    }

    private void demo() {
        DemoLocker.fill(locker, CATALOGUE, TODAY, ZoneOffset.UTC);
    }

    private static List<String> free(Gear gear) {
        return gear.stock().units().stream().filter(Stock.Held::free).map(Stock.Held::id).toList();
    }

    @Test
    void whatIsFreeForTheTimeIsThereAndNothingElse() {
        demo();
        Gear gear = GearOf.free(locker, new Span(at(4, 10), at(4, 18)), Set.of());
        assertEquals(22, gear.stock().units().size());
        assertEquals(Set.of("hand-3", "wide-body-1", "line-box-2"), gear.stock().units().stream().filter(unit -> !unit.free()).map(Stock.Held::id).collect(Collectors.toSet()));
        assertEquals(List.of("rack-1", "rack-2", "rack-3", "rack-4", "rack-5", "rack-6", "rack-7", "ribbon-channel-1", "ribbon-channel-2", "single-1", "single-2", "rack-8"),
                gear.channels().stream().map(Gear.Channel::id).toList(), "by label, and what is limited last");
        assertEquals(new Gear.Channel("rack-1", "Rack channel 1", "Rack 1 to 4", PhantomSwitch.BANK, 8.0, 66.0, 2400.0, -127.0, 40.0), gear.channels().get(0));
        assertEquals(PhantomSwitch.NONE, gear.channels().get(7).phantom());
        assertEquals(List.of(StandKind.BOOM, StandKind.BOOM, StandKind.BOOM, StandKind.SHORT, StandKind.STRAIGHT, StandKind.OVERHEAD), gear.stands().stream().map(Gear.Stand::kind).toList());
        assertEquals(List.of(new Gear.Booster("booster-1", "Booster 1", 25, 3, false), new Gear.Booster("booster-2", "Booster 2", 20, 4, true)), gear.boosters());
        assertEquals(List.of(10.0, 20.0), gear.pads().stream().map(Gear.LinePad::lossDb).toList());
    }

    @Test
    void theSessionsOwnBookingsDoNotStandInItsWay() {
        demo();
        Span firstDay = new Span(at(1, 10), at(1, 18));
        Gear others = GearOf.free(locker, firstDay, Set.of());
        assertEquals(false, free(others).contains("long-ribbon-1"));
        assertEquals(false, others.channels().stream().anyMatch(channel -> channel.id().equals("rack-1")));
        assertEquals(false, others.stands().stream().anyMatch(stand -> stand.id().equals("tall-boom-1")));
        String own = locker.bookings(firstDay, "long-ribbon-1").get(0).id();
        Gear gear = GearOf.free(locker, firstDay, Set.of(own));
        assertEquals(true, free(gear).containsAll(List.of("long-ribbon-1", "long-ribbon-2", "valve-1", "pencil-1")));
        assertEquals(12, gear.channels().size());
        assertEquals(6, gear.stands().size());
        assertEquals(false, free(gear).contains("wide-body-1"), "what somebody else has stays with them");
        assertEquals(false, free(GearOf.free(locker, new Span(at(1, 10), at(2, 18)), Set.of(own))).contains("long-ribbon-1"), "the second day is another booking");
    }

    @Test
    void whatIsOwnedIsAllThatIsInOrder() {
        demo();
        Gear gear = GearOf.owned(locker, new Span(at(1, 10), at(1, 18)));
        assertEquals(Set.of("hand-3"), gear.stock().units().stream().filter(unit -> !unit.free()).map(Stock.Held::id).collect(Collectors.toSet()));
        assertEquals(12, gear.channels().size());
    }

    @Test
    void ofWhatTheLockerNeverHeldNothingIsCounted() {
        locker.change(Act.by("Ada"), changes -> changes.add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1")).id());
        Gear gear = GearOf.free(locker, new Span(at(1, 10), at(1, 18)), Set.of());
        assertEquals(List.of("ribbon-1"), free(gear));
        assertNull(gear.channels());
        assertNull(gear.stands());
        assertEquals(List.of(), gear.boosters());
    }

    @Test
    void aLockerThatIsAwayIsSaidToBe() {
        demo();
        locker.close();
        Span span = new Span(at(1, 10), at(1, 18));
        assertThrows(LockerFault.Unreachable.class, () -> GearOf.free(locker, span, Set.of()));
        assertThrows(LockerFault.Unreachable.class, () -> GearOf.owned(locker, span));
    }

    @ParameterizedTest
    @CsvSource({", , , STRAIGHT", "3, 0, 1.8, STRAIGHT", "3, 0.8, 1.6, BOOM", "2.4, 0.5, 0.7, SHORT", "5, 0, 1.0, SHORT", "17.5, 2.2, 3.1, OVERHEAD", "17.5, 2.2, , BOOM", ", 2.2, 3.1, BOOM",
            "6.9, 2.2, 3.1, BOOM", "17.5, 1.1, 3.1, BOOM", "17.5, 2.2, 2.1, BOOM"})
    void aStandIsGoodForWhatItsMeasuresSay(Double massKg, Double reachM, Double heightM, StandKind kind) {
        assertEquals(kind, GearOf.kind(new StandData(massKg, reachM, 0.4, 3, heightM)));
    }
}
