package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Coverage.Served;
import pairwright.model.FromLocker;
import pairwright.model.Source;
import pairwright.model.Stock;
import pairwright.model.Stock.Held;

/** What must always hold of coverage, over lockers nobody thought of. */
class CoverageInvariantsTest {
    private static final int TRIES = 100;

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void oneUnitMoreNeverLowersAVerdictOrAScore(@ForAll("sources") Source source, @ForAll("lockers") List<Held> locker) {
        Served with = served(source, locker, FromLocker.OWNED);
        Served without = served(source, locker.subList(1, locker.size()), FromLocker.OWNED);
        assertFalse(without.verdict().above(with.verdict()), without + " without " + locker.get(0) + ", with it " + with);
        assertFalse(without.score() != null && (with.score() == null || with.score() < without.score()), without + ", with more " + with);
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void whatIsFreeNeverServesBetterThanWhatIsOwned(@ForAll("sources") Source source, @ForAll("lockers") List<Held> locker) {
        assertFalse(served(source, locker, FromLocker.FREE).verdict().above(served(source, locker, FromLocker.OWNED).verdict()), source.id());
    }

    @Property(tries = TRIES, shrinking = ShrinkingMode.OFF)
    void theScoreIsThatOfTheAnswer(@ForAll("sources") Source source, @ForAll("lockers") List<Held> locker) {
        for (FromLocker use : List.of(FromLocker.FREE, FromLocker.OWNED)) {
            assertEquals(CoverageTest.first(Stocks.advisor(Stocks.of(locker)).ask(CoverageTest.asked(source.id(), use))), served(source, locker, use).score(), source.id());
        }
    }

    private static Served served(Source source, List<Held> units, FromLocker use) {
        return new ServedFinder(Asking.KNOWLEDGE.current(), new Stock(true, units), use).of(source).served();
    }

    @Provide
    Arbitrary<Source> sources() {
        return Arbitraries.of(List.copyOf(Asking.KNOWLEDGE.current().catalogue().sources().values()));
    }

    /** Small lockers with several of a type, mates, own responses, and a third of it out. */
    @Provide
    Arbitrary<List<Held>> lockers() {
        Arbitrary<String> types = Arbitraries.of(Asking.KNOWLEDGE.current().catalogue().mics().keySet());
        Arbitrary<Integer> how = Arbitraries.integers().between(0, 11);
        return Combinators.combine(types, how).as(Drawn::new).list().ofMinSize(1).ofMaxSize(12).map(CoverageInvariantsTest::units);
    }

    private record Drawn(String type, int how) {
    }

    /** Of four ways each, drawn apart: one; one that is measured; two; two that are matched. A third of them is out. */
    private static List<Held> units(List<Drawn> drawn) {
        List<Held> units = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            Held one = Stocks.unit("u" + i + "a", drawn.get(i).type());
            Held other = Stocks.unit("u" + i + "b", drawn.get(i).type());
            List<Held> made = switch (drawn.get(i).how() % 4) {
                case 0 -> List.of(one);
                case 1 -> List.of(Stocks.measured(one, OctaveCurve.of(-2, 0, 0, 0, 0, 0, 1, 2, 3)));
                case 2 -> List.of(one, other);
                default -> List.of(Stocks.mated(one, other.id()), Stocks.mated(other, one.id()));
            };
            boolean out = drawn.get(i).how() < 4;
            made.forEach(unit -> units.add(out ? Stocks.out(unit) : unit));
        }
        return units;
    }
}
