package pairwright.locker;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.advice.Advisor;
import pairwright.advice.KnowledgeStore;
import pairwright.model.Answer;
import pairwright.model.FromLocker;
import pairwright.model.Request;
import pairwright.model.Stock;

class DemoLockerTest {
    private static final KnowledgeStore KNOWLEDGE = KnowledgeStore.builtIn();
    private static final ZoneId ZONE = ZoneId.of("Europe/Oslo");
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 30);
    private static final Instant NOW = at(0, 11);

    @TempDir
    Path folder;
    private Locker locker;

    private static Instant at(int day, int hour) {
        return TODAY.plusDays(day).atTime(hour, 0).atZone(ZONE).toInstant();
    }

    private String fill(LocalDate today) {
        return DemoLocker.fill(locker, KNOWLEDGE.current().catalogue(), today, ZONE);
    }

    @BeforeEach
    void open() {
        locker = Locker.open(Place.in(folder), () -> KNOWLEDGE.current().catalogue(), Clock.fixed(NOW, ZONE));
    }

    @AfterEach
    void close() {
        locker.close();
    }

    @Test
    void itHoldsABarnFullOfThings() {
        assertEquals("The demo locker of an invented barn: 44 units and 10 bookings around 2026-11-30.", fill(TODAY));
        Map<UnitKind, Long> kinds = locker.units().stream().collect(Collectors.groupingBy(Unit::kind, Collectors.counting()));
        assertEquals(Map.of(UnitKind.MIC, 22L, UnitKind.CHANNEL, 12L, UnitKind.PAD, 2L, UnitKind.BOOSTER, 2L, UnitKind.STAND, 6L), kinds);
        assertEquals(44, locker.units().stream().map(Unit::tag).distinct().count());
        assertTrue(locker.units().stream().noneMatch(unit -> unit.storedAt() == null));
        assertEquals(1, locker.units().stream().filter(unit -> !unit.response().isEmpty()).count());
        assertEquals(Set.of(Condition.GOOD, Condition.LIMITED, Condition.IN_REPAIR), locker.units().stream().map(Unit::condition).collect(Collectors.toSet()));
        Stock stock = locker.stock(new Span(at(30, 10), at(30, 12)));
        assertEquals(6, stock.units().stream().filter(unit -> unit.pairMate() != null).count());
        assertEquals(Set.of("hand-3"), stock.units().stream().filter(unit -> !unit.free()).map(Stock.Held::id).collect(Collectors.toSet()));
    }

    @Test
    void somethingIsOutAndSomethingOverdueFromTheFirstMoment() {
        fill(TODAY);
        assertEquals(List.of("open-pencil-1", "open-pencil-2"), locker.out().stream().filter(Out::overdue).map(out -> out.unit().id()).sorted().toList());
        assertEquals(List.of("line-box-2", "wide-body-1"), locker.out().stream().filter(out -> !out.overdue()).map(out -> out.unit().id()).sorted().toList());
        assertTrue(locker.bookings(new Span(at(1, 0), at(2, 0)), "valve-1").get(0).forWhat().contains("sextet"));
        assertFalse(locker.free(new Span(at(1, 12), at(1, 13)), "small-condenser-cardioid").stream().anyMatch(unit -> unit.id().equals("pencil-1")));
    }

    @Test
    void itGoesOnlyIntoAnEmptyLocker() {
        fill(TODAY);
        long revision = locker.revision();
        LockerFault.Unusable refused = assertThrows(LockerFault.Unusable.class, () -> fill(TODAY));
        assertTrue(refused.getMessage().contains("holds 44 units already"), refused.getMessage());
        assertEquals(revision, locker.revision());
    }

    @ParameterizedTest
    @CsvSource({"2026-03-29", "2026-10-25", "2028-02-29", "2026-03-31", "2026-01-01"})
    void anyDayWillDo(LocalDate day) {
        assertTrue(fill(day).contains("10 bookings"));
    }

    @ParameterizedTest
    @CsvSource({"snare-drum", "singing-voice", "grand-piano", "double-bass"})
    void itAnswersForWhatASextetBrings(String source) {
        fill(TODAY);
        OffsetDateTime from = at(30, 10).atZone(ZONE).toOffsetDateTime();
        Request request = new Request(null, source, null, null, null, null, null, null, null, null, null, null, null, null);
        Advisor advisor = new Advisor(KNOWLEDGE::current, (begin, end) -> locker.stock(new Span(begin.toInstant(), end.toInstant())));
        Answer answer = advisor.ask(request.at(from, from.plusHours(4), FromLocker.FREE));
        assertEquals(3, answer.options().size());
        double best = new Advisor(KNOWLEDGE::current).ask(request).options().get(0).score();
        assertTrue(answer.options().get(0).score() >= best - 1, answer.options().get(0).score() + " of " + best);
    }
}
