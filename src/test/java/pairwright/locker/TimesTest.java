package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What touches a time is found by indexes that tell short bookings from long ones: what they find is compared with looking at each booking. */
class TimesTest {
    private static final Instant START = Instant.parse("2031-03-01T08:00:00Z");
    private static final long WEEK_S = 7 * 86_400;
    /** To the second around where short becomes long, and far from it. */
    private static final List<Long> LENGTHS_S = List.of(1L, 3600L, 86_400L, WEEK_S - 1, WEEK_S, WEEK_S + 1, 2 * WEEK_S, 50 * WEEK_S);
    private static final int BOOKINGS = 120;
    private static final int LOOKS = 60;
    private static final int DAYS = 1_400;

    @TempDir
    Path folder;

    @Test
    void whatTouchesATimeIsFoundInAFile() throws Exception {
        isFound(Place.in(folder));
    }

    @Test
    void whatTouchesATimeIsFoundOnAServer() throws Exception {
        isFound(Databases.freshServer());
    }

    @Test
    void noLookAtATimeGoesThroughEveryBooking() {
        Place place = Place.in(folder);
        Locker.open(place, Load.CATALOGUE, Clock.systemUTC()).close();
        try (Database database = Database.open(place)) {
            for (String query : List.of(BookingRows.TOUCHING, BookingRows.TAKINGS, BookingRows.OVERDUE, BookingRows.OF_UNIT, Availability.FREE_FROM + "?)")) {
                List<String> plan = database.read(sql -> sql.all("EXPLAIN QUERY PLAN " + query, row -> row.getString("detail")));
                assertTrue(plan.stream().anyMatch(step -> step.startsWith("SEARCH")), plan::toString);
                assertFalse(plan.stream().anyMatch(step -> step.startsWith("SCAN")), () -> query + " is done so: " + plan);
            }
        }
    }

    private static void isFound(Place place) {
        Random random = new Random(8);
        try (Locker locker = Locker.open(place, Load.CATALOGUE, Clock.systemUTC())) {
            Load.fill(locker);
            List<Booking> all = booked(locker, random);
            assertTrue(all.size() > BOOKINGS / 3, "most were in the way of each other");
            for (int look = 0; look < LOOKS; look++) {
                Booking near = all.get(random.nextInt(all.size()));
                // often just before, at or after an end of one of them
                Instant from = (random.nextBoolean() ? near.span().from() : near.span().until()).plusSeconds(random.nextInt(3) - 1);
                Span span = new Span(from, from.plusSeconds(LENGTHS_S.get(random.nextInt(LENGTHS_S.size() - 1))));
                assertFound(locker, all, random.nextBoolean() ? span : new Span(from.minusSeconds(3600), from));
            }
        }
    }

    private static List<Booking> booked(Locker locker, Random random) {
        for (int number = 0; number < BOOKINGS; number++) {
            Instant from = START.plusSeconds(random.nextInt(DAYS * 86_400));
            BookingDraft draft = Load.draft(Load.three(random).subList(0, 1 + number % 2), from,
                    from.plusSeconds(LENGTHS_S.get(Math.min(random.nextInt(LENGTHS_S.size()), random.nextInt(LENGTHS_S.size())))), "number " + number);
            try {
                Load.book(locker, "number " + number, draft);
            } catch (LockerFault.Taken taken) {
                // one less
            }
        }
        return Load.UNITS.stream().flatMap(unit -> locker.bookings(new Span(Instant.EPOCH, START.plusSeconds(6L * 365 * 86_400)), unit).stream()).distinct()
                .sorted(Comparator.comparing((Booking booking) -> booking.span().from()).thenComparing(booking -> Long.parseLong(booking.id()))).toList();
    }

    private static void assertFound(Locker locker, List<Booking> all, Span span) {
        List<Booking> touching = all.stream().filter(booking -> booking.span().touches(span)).toList();
        assertEquals(touching, locker.bookings(span, null));
        List<String> free = new ArrayList<>();
        for (Standing standing : locker.standing(span)) {
            List<Booking> its = all.stream().filter(booking -> booking.units().contains(standing.unit().id())).toList();
            assertEquals(its.stream().filter(booking -> booking.span().touches(span)).findFirst().orElse(null), standing.booking());
            assertEquals(freeFrom(its, span), standing.freeFrom(), () -> standing.unit().id() + " for " + span + " among " + its);
            if (standing.free()) {
                free.add(standing.unit().id());
            }
        }
        assertEquals(free, locker.free(span, null).stream().map(Unit::id).toList());
    }

    /** Tried at the beginning and at every end after it. */
    private static Instant freeFrom(List<Booking> its, Span span) {
        long length = span.until().getEpochSecond() - span.from().getEpochSecond();
        List<Instant> tries = new ArrayList<>(List.of(span.from()));
        its.stream().map(booking -> booking.span().until()).filter(end -> end.isAfter(span.from())).sorted().forEach(tries::add);
        return tries.stream().filter(start -> its.stream().noneMatch(booking -> booking.span().touches(new Span(start, start.plusSeconds(length))))).findFirst().orElseThrow();
    }
}
