package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Answer;
import pairwright.model.Coverage;
import pairwright.model.Coverage.Served;
import pairwright.model.Coverage.Verdict;
import pairwright.model.FromLocker;
import pairwright.model.Option;
import pairwright.model.Request;
import pairwright.model.Signal;
import pairwright.model.Stock;
import pairwright.model.Stock.Held;

/** How well a locker serves the sources of the catalogue, held against what is answered. */
class CoverageTest {
    /** A small project room: a matched pair, one with a response of its own, some out, one in repair, one lost. */
    private static final List<Held> ROOM = List.of(
            Stocks.mated(Stocks.unit("s1", "small-condenser-cardioid"), "s2"), Stocks.mated(Stocks.unit("s2", "small-condenser-cardioid"), "s1"),
            Stocks.unit("h1", "handheld-moving-coil"), Stocks.unit("h2", "handheld-moving-coil"), Stocks.out(Stocks.unit("h3", "handheld-moving-coil")),
            Stocks.measured(Stocks.unit("c1", "large-condenser-cardioid"), OctaveCurve.of(-3, 0, 0, 0, 0, 0, 1, 2, 1)), Stocks.unit("d1", "active-di"),
            Stocks.out(Stocks.unit("r1", "long-ribbon"), new Stock.Out("in-repair", null, null, null)),
            Stocks.out(Stocks.unit("b1", "boundary-half-omni"), new Stock.Out("lost", null, null, null)));

    static Request asked(String source, FromLocker use) {
        return new Request(null, source, null, null, null, null, null, null, null, null, null, null, null, null).at(null, null, use);
    }

    static Coverage covered(List<Held> units, FromLocker use) {
        try (CoverageDesk desk = new CoverageDesk(Asking.KNOWLEDGE::current)) {
            CoverageDesk.State state = desk.state(new Stock(true, units), use);
            while (state.coverage() == null) {
                Thread.sleep(20);
                state = desk.state(new Stock(true, units), use);
            }
            assertEquals(state.of(), state.done());
            return state.coverage();
        } catch (InterruptedException stopped) {
            throw new AssertionError(stopped);
        }
    }

    private static Map<String, Served> bySource(Coverage coverage) {
        return coverage.sources().stream().collect(Collectors.toMap(Served::source, Function.identity()));
    }

    static Double first(Answer answer) {
        return answer.options().isEmpty() ? null : Double.valueOf(answer.options().get(0).score());
    }

    @Test
    void everyScoreIsThatOfTheAnswer() {
        List<Held> usable = ROOM.stream().filter(unit -> ServedFinder.counts(unit, FromLocker.OWNED)).toList();
        assertEquals(7, usable.size(), "what is in repair and what is lost does not count");
        Map<String, Served> owned = bySource(covered(ROOM, FromLocker.OWNED));
        Map<String, Served> free = bySource(covered(ROOM, FromLocker.FREE));
        assertEquals(Asking.KNOWLEDGE.current().catalogue().sources().keySet(), owned.keySet());
        List<String> differ = new ArrayList<>();
        for (String source : owned.keySet()) {
            Answer any = Asking.ADVISOR.ask(asked(source, FromLocker.ANY));
            Answer ofOwned = Stocks.advisor(Stocks.of(usable)).ask(asked(source, FromLocker.OWNED));
            Answer ofFree = Stocks.advisor(Stocks.of(ROOM)).ask(asked(source, FromLocker.FREE));
            differ(source + " owned", ofOwned, owned.get(source).score(), owned.get(source).with(), differ);
            differ(source + " free", ofFree, free.get(source).score(), free.get(source).with(), differ);
            differ(source + " any", any, owned.get(source).bestScore(), owned.get(source).bestWith(), differ);
        }
        assertEquals(List.of(), differ);
    }

    private static void differ(String where, Answer answer, Double score, Coverage.Used used, List<String> differ) {
        if (!java.util.Objects.equals(first(answer), score)) {
            differ.add(where + ": " + first(answer) + " is answered, " + score + " shown");
        } else if (used != null) {
            Option option = answer.options().get(0);
            List<String> types = used.mics().stream().flatMap(needed -> java.util.Collections.nCopies(needed.count(), needed.micType()).stream()).sorted().toList();
            List<String> answered = option.mics().stream().map(mic -> mic.micType()).sorted().toList();
            if (!types.equals(answered) || !used.technique().equals(option.technique())) {
                differ.add(where + ": " + answered + " is answered, " + types + " shown");
            }
        }
    }

    @Test
    void whatWouldHelpComesTrueOnceItIsThere() {
        Coverage before = covered(ROOM, FromLocker.OWNED);
        assertFalse(before.helps().isEmpty());
        for (Coverage.Help help : before.helps().subList(0, 2)) {
            List<Held> more = new ArrayList<>(ROOM);
            more.add(Stocks.mated(Stocks.unit("n1", help.micType()), help.units() == 2 ? "n2" : null));
            if (help.units() == 2) {
                more.add(Stocks.mated(Stocks.unit("n2", help.micType()), "n1"));
            }
            Map<String, Served> after = bySource(covered(more, FromLocker.OWNED));
            Set<String> raised = before.sources().stream().filter(one -> after.get(one.source()).verdict().above(one.verdict())).map(Served::source)
                    .collect(Collectors.toSet());
            assertEquals(raised, help.raises().stream().map(Coverage.Raised::source).collect(Collectors.toSet()), help.name());
            help.raises().forEach(one -> assertEquals(after.get(one.source()).verdict(), one.to(), one.name()));
            double gain = before.sources().stream().mapToDouble(one -> gain(one.score(), after.get(one.source()).score())).sum();
            assertEquals(gain, help.gainPoints(), 0.006, help.name());
        }
    }

    private static double gain(Double before, Double after) {
        return after == null ? 0 : before == null ? after : after - before;
    }

    @Test
    void whatIsMissingComesTrueOnceItIsThere() {
        List<Served> lacking = covered(ROOM, FromLocker.OWNED).sources().stream().filter(one -> one.missing() != null).toList();
        assertTrue(lacking.size() > 10, lacking.size() + " could be served better");
        List<Held> usable = ROOM.stream().filter(unit -> ServedFinder.counts(unit, FromLocker.OWNED)).toList();
        for (int i = 0; i < lacking.size(); i += 4) {
            Coverage.Missing missing = lacking.get(i).missing();
            List<Held> more = new ArrayList<>(usable);
            more.add(Stocks.mated(Stocks.unit("n1", missing.micType()), missing.units() == 2 ? "n2" : null));
            if (missing.units() == 2) {
                more.add(Stocks.mated(Stocks.unit("n2", missing.micType()), "n1"));
            }
            assertEquals(missing.score(), first(Stocks.advisor(Stocks.of(more)).ask(asked(lacking.get(i).source(), FromLocker.OWNED))), lacking.get(i).name());
        }
    }

    @Test
    void anEmptyLockerServesNothingAndSaysWhatToBringInFirst() {
        Coverage coverage = covered(List.of(), FromLocker.OWNED);
        for (Served one : coverage.sources()) {
            assertEquals(Verdict.NOT_AT_ALL, one.verdict(), one.name());
            assertNull(one.score(), one.name());
            assertNotNull(one.bestScore(), one.name());
            assertTrue(one.missing().says().contains("none in the locker"), one.missing().says());
        }
        assertTrue(coverage.helps().get(0).raises().size() > 40, coverage.helps().get(0).toString());
    }

    @Test
    void aLockerOfLineBoxesServesLeadsAndNothingThatIsHeardThroughTheAir() {
        var sources = Asking.KNOWLEDGE.current().catalogue().sources();
        List<Served> all = covered(List.of(Stocks.unit("d1", "active-di"), Stocks.unit("d2", "active-di")), FromLocker.FREE).sources();
        for (Served one : all) {
            if (one.score() != null) {
                assertTrue(one.with().mics().stream().allMatch(mic -> mic.micType().equals("active-di")), one.name());
            }
            if (sources.get(one.source()).signal() == Signal.ACOUSTIC && sources.get(one.source()).positions().stream().noneMatch(at -> at.id().contains("pickup"))) {
                assertTrue(one.verdict() != Verdict.WELL || one.with() != null, one.name());
            }
        }
        assertTrue(all.stream().anyMatch(one -> one.verdict() == Verdict.WELL), "a bass lead is served well by an active line box");
        assertTrue(all.stream().filter(one -> one.verdict() == Verdict.NOT_AT_ALL).count() > 100);
    }

    @Test
    void theWholeCatalogueTwiceServesEverythingWell() {
        List<Held> two = new ArrayList<>(Stocks.twoOfEach(true).at(null, null).units());
        assertEquals(List.of(), covered(two, FromLocker.OWNED).sources().stream().filter(one -> one.verdict() != Verdict.WELL).map(Served::source).toList());
    }

    @Test
    void hundredsOfUnitsAreServedAsTheirAnswersSayAndCostNoMore() {
        List<Held> many = new ArrayList<>();
        for (String type : List.of("small-condenser-cardioid", "handheld-moving-coil", "long-ribbon")) {
            for (int i = 0; i < 200; i++) {
                Held unit = Stocks.unit(type + "-" + (999 - i), type);
                unit = i % 9 == 4 ? Stocks.measured(unit, OctaveCurve.of(-i / 50.0, 0, 0, 0, 0, 0, 1, 2, i / 60.0)) : unit;
                unit = i / 2 == 70 ? Stocks.mated(unit, type + "-" + (999 - (i ^ 1))) : unit;
                many.add(i % 3 == 0 && i / 2 != 70 ? Stocks.out(unit) : unit);
            }
        }
        assertTrue(FewUnits.of(many, Held::free).size() < 45);
        ServedFinder finder = new ServedFinder(Asking.KNOWLEDGE.current(), new Stock(true, many), FromLocker.FREE);
        for (String source : List.of("drum-kit", "violin", "trombone", "grand-piano", "singing-voice", "snare-drum")) {
            assertEquals(first(Stocks.advisor(Stocks.of(many)).ask(asked(source, FromLocker.FREE))),
                    finder.of(Asking.KNOWLEDGE.current().catalogue().sources().get(source)).served().score(), source);
        }
    }

    @Test
    void oneStateOfThingsIsWorkedOutOnce() throws InterruptedException {
        try (CoverageDesk desk = new CoverageDesk(Asking.KNOWLEDGE::current)) {
            Stock stock = new Stock(true, List.of(Stocks.unit("h1", "handheld-moving-coil")));
            CoverageDesk.State first = desk.state(stock, FromLocker.OWNED);
            assertNull(first.coverage(), "nobody waits for it");
            while (first.coverage() == null) {
                Thread.sleep(20);
                first = desk.state(stock, FromLocker.OWNED);
            }
            Stock out = new Stock(true, List.of(Stocks.out(Stocks.unit("h1", "handheld-moving-coil"))));
            assertSame(first.coverage(), desk.state(out, FromLocker.OWNED).coverage(), "who has it does not matter for what is owned");
            assertNull(desk.state(out, FromLocker.FREE).coverage());
        }
    }
}
