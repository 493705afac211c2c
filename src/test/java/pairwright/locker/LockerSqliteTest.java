package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Catalogue;

class LockerSqliteTest {
    private static final Instant NOON = Instant.parse("2026-11-30T12:00:00Z");
    private static final Clock CLOCK = Clock.fixed(NOON, ZoneOffset.UTC);

    @TempDir
    Path folder;
    private Locker locker;

    @BeforeEach
    void open() {
        Catalogue catalogue = new CatalogueStore().builtIn();
        locker = Locker.open(Place.in(folder), () -> catalogue, CLOCK);
        locker.change(Act.by("Ida"), changes -> {
            changes.add(UnitDraft.mic("low-1", "compact-ribbon", "Ribbon 10"));
            changes.add(UnitDraft.mic(null, "compact-ribbon", "Ribbon 2").matchedWith("low-1"));
            return "";
        });
    }

    @AfterEach
    void close() {
        locker.close();
    }

    private static BookingDraft from(int hours, int until, String... units) {
        return new BookingDraft(List.of(units), NOON.plusSeconds(hours * 3600L), NOON.plusSeconds(until * 3600L), null, "take one", "Ida", null);
    }

    @Test
    void whatIsBookedIsNotFreeAndIsNeverBookedTwice() {
        locker.change(Act.by("Ida"), changes -> changes.book(from(0, 2, "low-1", "ribbon-2")).id());
        Span now = new Span(NOON, NOON.plusSeconds(60));
        assertEquals(List.of(), locker.free(now, null));
        assertThrows(LockerFault.Taken.class, () -> locker.change(Act.by("Bo"), changes -> changes.book(from(1, 3, "ribbon-2")).id()));
        assertEquals(1, locker.bookings(now, null).size());
        assertEquals(NOON.plusSeconds(7200), locker.standing(now).get(0).freeFrom());
        assertEquals("low-1", locker.stock(now).units().get(0).pairMate());
    }

    @Test
    void whatComesBackEarlyIsFreeAtOnce() {
        locker.change(Act.by("Ida"), changes -> changes.book(from(0, 2, "low-1")).id());
        locker.change(Act.by("Ida"), changes -> changes.takeOut("Ribbon 10", null, null).id());
        assertEquals(1, locker.out().size());
        locker.change(Act.by("Ida"), changes -> changes.bringBack("LOW-1").id());
        assertEquals(List.of("ribbon-2", "low-1"), locker.free(new Span(NOON, NOON.plusSeconds(60)), "compact-ribbon").stream().map(Unit::id).toList());
        assertEquals(4, locker.history("low-1", null, 10).size());
    }

    @Test
    void anActThatIsSentTwiceIsDoneOnce() {
        Act act = new Act("Ida", "k-1", "book low-1");
        Outcome first = locker.change(act, changes -> changes.book(from(0, 2, "low-1")).id());
        assertEquals(new Outcome(first.text(), true), locker.change(act, changes -> changes.book(from(0, 2, "low-1")).id()));
        assertThrows(LockerFault.KeyUsedOtherwise.class, () -> locker.change(new Act("Ida", "k-1", "other"), changes -> ""));
        long before = locker.revision();
        locker.change(Act.by("Ida"), changes -> {
            changes.cancel(first.text(), 1L);
            return "";
        });
        assertTrue(locker.revision() > before);
        assertTrue(locker.booking(first.text()).isEmpty());
    }

    @Test
    void everyFaultOfAUnitIsToldAtOnce() {
        LockerFault.Unusable fault = assertThrows(LockerFault.Unusable.class, () -> locker.change(Act.by("Ida"), changes ->
                changes.add(UnitDraft.mic("A B", "compact-ribon", "x\u0000").in(Condition.LIMITED, null)).id()));
        assertEquals(List.of("/micType", "/id", "/label", "/note"), fault.faults().stream().map(pairwright.model.Fault::at).toList());
    }

    @Test
    void aBookingIsBookedAnewInOneStep() {
        String id = locker.change(Act.by("Ida"), changes -> changes.book(from(0, 2, "low-1")).id()).text();
        locker.change(Act.by("Ida"), changes -> changes.alter(id, from(1, 4, "ribbon-2", "low-1"), 1L).id());
        Booking booking = locker.booking(id).orElseThrow();
        assertEquals(List.of("ribbon-2", "low-1"), booking.units());
        assertEquals(2, booking.version());
        assertThrows(LockerFault.Changed.class, () -> locker.change(Act.by("Ida"), changes -> changes.alter(id, from(1, 5), 1L).id()));
    }
}
