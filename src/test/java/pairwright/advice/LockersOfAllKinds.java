package pairwright.advice;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Source;
import pairwright.model.Stock.Held;

/** Any source, and lockers nobody thought of. */
abstract class LockersOfAllKinds {
    @Provide
    Arbitrary<Source> sources() {
        return Arbitraries.of(List.copyOf(Asking.KNOWLEDGE.current().catalogue().sources().values()));
    }

    /** Small lockers with several of a type, mates, own responses, and a third of it out. */
    @Provide
    Arbitrary<List<Held>> lockers() {
        Arbitrary<String> types = Arbitraries.of(Asking.KNOWLEDGE.current().catalogue().mics().keySet());
        Arbitrary<Integer> how = Arbitraries.integers().between(0, 11);
        return Combinators.combine(types, how).as(Drawn::new).list().ofMinSize(1).ofMaxSize(12).map(LockersOfAllKinds::units);
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
