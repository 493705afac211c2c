package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pairwright.locker.LockerCase.hour;
import static pairwright.locker.LockerCase.hours;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.Tuple;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import net.jqwik.api.lifecycle.AfterProperty;

/** Whatever is done one after the other, a locker is where {@link NaiveLocker} is. */
class RandomActsTest {
    private static final List<String> UNITS = List.of("a", "b", "c");
    private static final int[] FROM = {-1, 0, 1, 4, 23, 24, 30};

    private Path folder;
    private Database behind;
    private Locker locker;
    private final TurnedClock clock = new TurnedClock(LockerCase.NOON);

    @Property(tries = 120)
    void inAFileNoTwoEverHaveOneUnitAndAllIsAsItShouldBe(@ForAll("steps") List<Step> steps) throws IOException {
        if (locker == null) {
            folder = Files.createTempDirectory("random-acts");
            open(Place.in(folder));
        }
        tried(steps);
    }

    @Tag("postgresql")
    @AddLifecycleHook(Databases.OrSkipped.class)
    @Property(tries = 25)
    void soItIsOnAServer(@ForAll("steps") List<Step> steps) throws Exception {
        if (locker == null) {
            open(Databases.freshServer());
        }
        tried(steps);
    }

    private void open(Place place) {
        locker = Locker.open(place, Load.CATALOGUE, clock);
        behind = Database.open(place);
    }

    @AfterProperty
    void close() throws IOException {
        if (locker != null) {
            locker.close();
            behind.close();
        }
        if (folder != null) {
            LockerFile.delete(folder.resolve(Place.FILE));
            Files.delete(folder);
        }
    }

    private void tried(List<Step> steps) {
        NaiveLocker naive = emptied();
        List<String> done = new ArrayList<>();
        for (Step step : steps) {
            List<Boolean> both = step.on(naive, locker, clock);
            done.add(step + (both.contains(false) ? " refused" : ""));
            String after = String.join("\n", done);
            assertEquals(1, Math.max(1, both.stream().distinct().count()), () -> "the naive one and the locker disagree whether it may be done, " + both + ", after\n" + after);
            List<Booking> bookings = locker.bookings(hours(-500, 5000), null);
            assertNeverTwoAtOnce(bookings, after);
            assertEquals(naive.told(), told(bookings), after);
            assertEquals(naive.out(), new TreeSet<>(locker.out().stream().map(out -> out.unit().id()).toList()), after);
            assertEquals(naive.overdue(), new TreeSet<>(locker.out().stream().filter(Out::overdue).map(out -> out.unit().id()).toList()), after);
            for (int from : FROM) {
                for (int length : new int[] {1, 6}) {
                    Span span = hours(naive.now + from, naive.now + from + length);
                    assertEquals(naive.free(naive.now + from, naive.now + from + length),
                            new TreeSet<>(LockerCase.ids(locker.free(span, null))), () -> "free from " + from + " h for " + length + " h after\n" + after);
                }
            }
        }
    }

    /** By counting every hour, from what the locker itself says. */
    private static void assertNeverTwoAtOnce(List<Booking> bookings, String after) {
        Map<String, String> held = new HashMap<>();
        bookings.forEach(booking -> booking.lines().stream().filter(line -> !isEmpty(line)).forEach(line -> {
            for (Instant hour = line.span().from(); hour.isBefore(line.span().until()); hour = hour.plus(Duration.ofHours(1))) {
                String before = held.put(line.unit() + " at " + hour, booking.id());
                assertEquals(null, before, line.unit() + " is had by two at " + hour + " after\n" + after);
            }
        }));
    }

    /** One that came back in the second it left is shown as that second. */
    private static boolean isEmpty(Booking.Line line) {
        return line.span().until().equals(line.span().from().plusSeconds(1));
    }

    private static List<String> told(List<Booking> bookings) {
        return bookings.stream().sorted(Comparator.comparing(booking -> Integer.parseInt(booking.id())))
                .map(booking -> booking.id() + " " + booking.lines().stream().map(line -> line.unit() + "=" + part(line)).collect(Collectors.joining(", ", "{", "}"))).toList();
    }

    private static NaiveLocker.Part part(Booking.Line line) {
        return new NaiveLocker.Part(hoursTo(line.span().from()), hoursTo(isEmpty(line) ? line.span().from() : line.span().until()),
                line.takenAt() == null ? null : hoursTo(line.takenAt()), line.returnedAt() == null ? null : hoursTo(line.returnedAt()));
    }

    private static int hoursTo(Instant moment) {
        return (int) Duration.between(LockerCase.NOON, moment).toHours();
    }

    private NaiveLocker emptied() {
        behind.write(sql -> {
            for (String table : List.of("event_about", "event", "line", "booking", "unit")) {
                sql.run("DELETE FROM " + table);
            }
            return sql.run("UPDATE state SET next_booking = 1, revision = revision + 1, units_revision = units_revision + 1");
        });
        clock.turn(hour(0));
        NaiveLocker naive = new NaiveLocker();
        locker.change(Act.by("Wren"), changes -> {
            UNITS.forEach(unit -> changes.add(UnitDraft.mic(unit, "long-ribbon", unit)));
            return "";
        });
        UNITS.forEach(unit -> naive.units.put(unit, Condition.GOOD));
        return naive;
    }

    @Provide
    Arbitrary<List<Step>> steps() {
        Arbitrary<String> unit = Arbitraries.of(UNITS);
        Arbitrary<List<String>> some = unit.list().ofMinSize(1).ofMaxSize(3).uniqueElements();
        Arbitrary<List<String>> someOrNone = unit.list().ofMaxSize(3).uniqueElements();
        Arbitrary<Integer> in = Arbitraries.integers().between(-3, 30);
        Arbitrary<Integer> length = Arbitraries.integers().between(1, 9);
        Arbitrary<Integer> which = Arbitraries.integers().between(0, 5);
        return Arbitraries.<Step>frequencyOf(
                Tuple.of(5, Combinators.combine(some, in, length, Arbitraries.of(BookingKind.SESSION, BookingKind.SESSION, BookingKind.REPAIR)).as(Step.Book::new)),
                Tuple.of(4, Combinators.combine(which, someOrNone, in, length).as(Step.Alter::new)),
                Tuple.of(2, which.map(Step.Cancel::new)),
                Tuple.of(4, Combinators.combine(unit, Arbitraries.of(0, 0, 1, 5)).as(Step.TakeOut::new)),
                Tuple.of(3, unit.map(Step.BringBack::new)),
                Tuple.of(2, Combinators.combine(unit, Arbitraries.of(Condition.class)).as(Step.Find::new)),
                Tuple.of(4, Arbitraries.of(1, 1, 2, 5, 26).map(Step.Pass::new))).list().ofMinSize(1).ofMaxSize(30);
    }
}
