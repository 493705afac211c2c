package pairwright.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import pairwright.model.Coverage.Served;
import pairwright.model.FromLocker;
import pairwright.model.Source;
import pairwright.model.Stock;
import pairwright.model.Stock.Held;

/** What must always hold of coverage, over lockers nobody thought of. */
class CoverageInvariantsTest extends LockersOfAllKinds {
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
}
