package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Catalogue;

/** Times at which units that are taken can be had. */
class NearestTimesTest {
    private static final long NOW = Instant.parse("2031-03-01T12:00:20Z").getEpochSecond();
    private static final long MINUTE = 60;
    private static final long QUARTER = 15 * MINUTE;
    private static final Catalogue CATALOGUE = KnowledgeStore.builtIn().current().catalogue();

    /** Against every quarter of an hour there is, tried one after the other. */
    @Property(tries = 400)
    void noQuarterThatIsNearerWouldDo(@ForAll @Size(max = 12) List<@IntRange(min = -60, max = 600) Integer> begins, @ForAll @IntRange(min = 1, max = 90) int minutes,
            @ForAll @IntRange(min = 0, max = 400) int wanted, @ForAll @LongRange(min = 1, max = 5000) long seconds) {
        List<BookingRows.Taking> takings = new ArrayList<>();
        for (int at = 0; at < begins.size(); at++) {
            long from = NOW + begins.get(at) * MINUTE;
            takings.add(new BookingRows.Taking("unit-" + at % 3, at, from, from + seconds));
        }
        long start = NOW + 40 + wanted * MINUTE;
        long length = minutes * MINUTE;
        List<Span> near = NearestTimes.among(takings, new Span(Instant.ofEpochSecond(start), Instant.ofEpochSecond(start + length)), NOW, ZoneOffset.UTC);
        near.forEach(span -> assertTrue(free(takings, span.from().getEpochSecond(), length) && span.from().getEpochSecond() >= NOW, span.toString()));
        near.forEach(span -> assertTrue(span.from().getEpochSecond() % QUARTER == 0 || (span.from().getEpochSecond() - start) % (24 * 3600) == 0, span + " is on a quarter of an hour"));
        near.forEach(span -> assertEquals(length, span.until().getEpochSecond() - span.from().getEpochSecond()));
        if (!free(takings, start, length)) {
            long after = LongStream.iterate((start + QUARTER - 1) / QUARTER * QUARTER, at -> at + QUARTER).filter(at -> free(takings, at, length)).findFirst().orElseThrow();
            assertTrue(near.stream().anyMatch(span -> span.from().getEpochSecond() == after), "the first after it, " + Instant.ofEpochSecond(after) + ", in " + near);
            LongStream.iterate(start / QUARTER * QUARTER, at -> at >= NOW, at -> at - QUARTER).filter(at -> free(takings, at, length)).findFirst().ifPresent(before ->
                    assertTrue(near.stream().anyMatch(span -> span.from().getEpochSecond() == before), "the last before it, " + Instant.ofEpochSecond(before) + ", in " + near));
        }
        List<Long> away = near.stream().map(span -> Math.abs(span.from().getEpochSecond() - start)).toList();
        assertEquals(away.stream().sorted().toList(), away, "nearest first");
        assertFalse(away.contains(0L), "what is wanted is not told again");
    }

    private static boolean free(List<BookingRows.Taking> takings, long start, long length) {
        return takings.stream().noneMatch(taking -> taking.from() < start + length && taking.until() > start);
    }

    @Test
    void whatIsToldCanBeBookedAndAnOverdueUnitIsNotPromisedWithinTheDay(@TempDir Path folder) throws Exception {
        Instant then = Instant.ofEpochSecond(NOW).minusSeconds(4 * 3600);
        ZoneId zone = ZoneId.of("Europe/Vienna");
        try (Locker before = Locker.open(Place.in(Files.createDirectories(folder)), () -> CATALOGUE, Clock.fixed(then, zone))) {
            before.change(Act.by("Ada"), changes -> {
                changes.add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1"));
                changes.add(UnitDraft.mic("ribbon-2", "long-ribbon", "Ribbon 2"));
                changes.takeOut("ribbon-1", "Cleo", then.plusSeconds(3600));
                changes.book(new BookingDraft(List.of("ribbon-2"), then.plusSeconds(40 * 3600), then.plusSeconds(44 * 3600), BookingKind.SESSION, "", "Ben", null));
                return "";
            });
            Locker locker = before.at(Clock.fixed(Instant.ofEpochSecond(NOW), zone));
            Span wanted = new Span(Instant.ofEpochSecond(NOW + 3600), Instant.ofEpochSecond(NOW + 7 * 3600));
            List<Span> near = locker.nearest(List.of("ribbon-1", "ribbon-2"), wanted, null);
            assertFalse(near.isEmpty());
            for (Span span : near) {
                assertFalse(span.from().isBefore(Instant.ofEpochSecond(NOW + 24 * 3600)), span.toString());
                Outcome booked = locker.change(Act.by("Ada"), changes -> changes.book(new BookingDraft(List.of("ribbon-1", "ribbon-2"), span.from(), span.until(),
                        BookingKind.SESSION, "", "Ada", null)).id());
                locker.change(Act.by("Ada"), changes -> {
                    changes.cancel(booked.text(), null);
                    return "";
                });
            }
            String own = locker.change(Act.by("Ada"), changes -> changes.book(new BookingDraft(List.of("ribbon-2"), wanted.from(), wanted.until(), BookingKind.SESSION, "", "Ada",
                    null)).id()).text();
            Span longer = new Span(wanted.from().plusSeconds(60), wanted.until());
            assertTrue(locker.nearest(List.of("ribbon-2"), longer, own).stream().allMatch(span -> span.from().isAfter(longer.from())), "its own booking is not in its way");
        }
    }

    @Test
    void theFirstOfManyBookingsAreThoseThatBeginFirst(@TempDir Path folder) {
        try (Locker locker = Locker.open(Place.in(folder), () -> CATALOGUE, Clock.fixed(Instant.ofEpochSecond(NOW), ZoneOffset.UTC))) {
            Instant from = Instant.ofEpochSecond(NOW);
            locker.change(Act.by("Ada"), changes -> {
                changes.add(UnitDraft.mic("ribbon-1", "long-ribbon", "Ribbon 1"));
                changes.add(UnitDraft.mic("ribbon-2", "long-ribbon", "Ribbon 2"));
                for (int at = 9; at >= 0; at--) {
                    changes.book(new BookingDraft(List.of("ribbon-" + (1 + at % 2)), from.plusSeconds(at * 60), from.plusSeconds(at * 60 + 60), BookingKind.SESSION, "take " + at, "Ada", null));
                }
                return "";
            });
            Span all = new Span(from, from.plusSeconds(3600));
            assertEquals(List.of("take 0", "take 1", "take 2"), locker.bookings(all, null, 3).stream().map(Booking::forWhat).toList());
            assertEquals(List.of("take 1", "take 3"), locker.bookings(all, "ribbon-2", 2).stream().map(Booking::forWhat).toList());
            assertEquals(locker.bookings(all, null), locker.bookings(all, null, 100));
            assertEquals(10, locker.count(all));
            ListMark third = ListMark.after(locker.bookings(all, null, 3).get(2));
            assertEquals(List.of("take 3", "take 4"), locker.bookings(all, null, third, 2).stream().map(Booking::forWhat).toList());
            assertEquals(List.of("take 3", "take 5", "take 7", "take 9"), locker.bookings(all, "ribbon-2", third, 9).stream().map(Booking::forWhat).toList());
            assertEquals(third, ListMark.of(third.text()).orElseThrow());
        }
    }
}
