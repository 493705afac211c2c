package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Answer;
import pairwright.model.FromLocker;
import pairwright.model.Given;
import pairwright.model.Option;
import pairwright.model.Placement;
import pairwright.model.Request;
import pairwright.model.Stock.Held;

/** What must always hold of an answer from a locker, over lockers and questions nobody thought of. */
class LockerInvariantsTest {
    private static final int TRIES = 120;

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void anOptionTakesNoUnitTwiceAndNoneThatIsNotFree(@ForAll("requests") Request request, @ForAll("lockers") List<Held> locker) {
        Map<String, Held> units = new HashMap<>();
        locker.forEach(unit -> units.put(unit.id(), unit));
        for (Option option : Stocks.advisor(Stocks.of(locker)).ask(request).options()) {
            Set<String> taken = new HashSet<>();
            for (Placement mic : option.mics()) {
                assertEquals(1, mic.units().size(), option.techniqueName());
                Given given = mic.units().get(0);
                assertTrue(taken.add(given.id()), given.id() + " twice in " + option.techniqueName());
                assertTrue(units.get(given.id()).free(), given.id() + " is out");
                assertEquals(mic.micType(), units.get(given.id()).micType());
                assertEquals(locker.stream().filter(unit -> unit.free() && unit.micType().equals(mic.micType())).count(), mic.free().longValue());
            }
        }
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void aUnitThatIsFreedNeverLowersTheBestScore(@ForAll("requests") Request request, @ForAll("lockers") List<Held> locker, @ForAll int which) {
        List<Held> out = locker.stream().filter(unit -> !unit.free()).toList();
        if (out.isEmpty()) {
            return;
        }
        Held freed = out.get(Math.floorMod(which, out.size()));
        List<Held> more = new ArrayList<>(locker);
        more.set(more.indexOf(freed), Stocks.out(freed, null));
        double before = best(Stocks.advisor(Stocks.of(locker)).ask(request));
        double after = best(Stocks.advisor(Stocks.of(more)).ask(request));
        assertTrue(after >= before, before + " without " + freed.id() + ", " + after + " with it");
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void whatIsOutAndBetterComesTrueOnceItIsBack(@ForAll("requests") Request request, @ForAll("lockers") List<Held> locker) {
        Answer answer = Stocks.advisor(Stocks.of(locker)).ask(request);
        for (Answer.Missed missed : answer.out()) {
            List<Held> back = locker.stream().map(unit -> unit.micType().equals(missed.micType()) ? Stocks.out(unit, null) : unit).toList();
            assertEquals(missed.score(), best(Stocks.advisor(Stocks.of(back)).ask(request)), 1e-9, missed.says());
            assertTrue(missed.betterPoints() > 0, missed.says());
        }
    }

    @Property(tries = 40, shrinking = ShrinkingMode.OFF)
    void theWholeCatalogueIsAnsweredAsIfThereWereNoLocker(@ForAll("requests") Request request, @ForAll("lockers") List<Held> locker) {
        Answer without = Asking.ADVISOR.ask(request);
        Answer any = Stocks.advisor(Stocks.of(locker)).ask(request.at(null, null, FromLocker.ANY));
        assertEquals(without.options(), any.options());
        assertNull(any.stock());
        assertNull(any.out());
    }

    private static double best(Answer answer) {
        return answer.options().isEmpty() ? Double.NEGATIVE_INFINITY : answer.options().get(0).score();
    }

    /** Small lockers with several of a type, mates, own responses, and about half of it out. */
    @Provide
    Arbitrary<List<Held>> lockers() {
        Arbitrary<String> types = Arbitraries.of(Asking.KNOWLEDGE.current().catalogue().mics().keySet());
        Arbitrary<Held> units = Combinators.combine(types, Arbitraries.of(true, false), Arbitraries.integers().between(0, 5),
                Arbitraries.doubles().between(-4, 4)).as((type, out, own, db) -> {
                    Held unit = Stocks.unit("", type);
                    Held measured = own == 0 ? Stocks.measured(unit, OctaveCurve.of(-db, 0, 0, 0, 0, 0, db, db, db)) : unit;
                    return out ? Stocks.out(measured) : measured;
                });
        Arbitrary<List<Held>> one = units.list().ofMinSize(1).ofMaxSize(14);
        return Combinators.combine(one, Arbitraries.integers().between(0, 3)).as(LockerInvariantsTest::numbered);
    }

    /** Each twice as often as drawn, so that pairs can be made; some of them matched. */
    private static List<Held> numbered(List<Held> drawn, int matchedOf) {
        List<Held> all = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            Held one = drawn.get(i);
            Held twin = drawn.get((i * 7 + 3) % drawn.size()).free() ? Stocks.out(one, null) : one;
            boolean matched = i % 4 < matchedOf;
            String first = "u" + i + "a";
            String second = "u" + i + "b";
            all.add(renamed(one, first, matched ? second : null));
            all.add(renamed(twin, second, matched ? first : null));
        }
        return all;
    }

    private static Held renamed(Held unit, String id, String mate) {
        return new Held(id, unit.micType(), id, unit.tag(), unit.storedAt(), unit.note(), mate, unit.ownResponseDb(), unit.out());
    }

    @Provide
    Arbitrary<Request> requests() {
        var catalogue = Asking.KNOWLEDGE.current().catalogue();
        return Combinators.combine(Arbitraries.of(catalogue.sources().keySet()), Arbitraries.of(catalogue.rooms().keySet()).injectNull(0.3),
                Arbitraries.of(catalogue.characters().keySet()).list().ofMaxSize(1), Arbitraries.of("stereo", "mono", "live").list().ofMaxSize(1))
                .as((source, room, character, circumstances) -> new Request(null, source, null, null, room, character, null, null, circumstances, null,
                        null, null, null, null));
    }
}
