package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import pairwright.advice.Knowledge;
import pairwright.locker.Locker;
import pairwright.model.Stock;

/** What can be had where what was wanted cannot; each of them was tried. */
final class Instead {
    private final Kinds kinds;
    private final Locker locker;
    private final Supplier<Knowledge> knowledge;

    Instead(Kinds kinds, Locker locker, Supplier<Knowledge> knowledge) {
        this.kinds = kinds;
        this.locker = locker;
        this.knowledge = knowledge;
    }

    List<Fits> of(DoesNotFit refused) {
        Wanted wanted = refused.wanted();
        Stock stock = locker.stock(MadeSet.span(wanted, locker.now()));
        List<Fits> instead = new ArrayList<>();
        if (refused.benches() > 0) {
            instead.add(new Fits(wanted.kind(), wanted.level(), refused.benches(), "The same for " + benches(refused.benches())));
        }
        // the nearest level is nearest to what was meant; of two as near the easier one needs less
        IntStream.rangeClosed(1, KindInfo.LEVELS).filter(level -> level != wanted.level()).boxed()
                .sorted(Comparator.<Integer>comparingInt(level -> Math.abs(level - wanted.level())).thenComparingInt(level -> level))
                .filter(level -> fits(wanted, wanted.kind(), level, stock)).findFirst()
                .ifPresent(level -> instead.add(new Fits(wanted.kind(), level, wanted.benches(), "Level " + level + " for " + benches(wanted.benches()))));
        kinds.all().stream().map(Kind::info).filter(info -> info.handsOn() && !info.id().equals(wanted.kind()))
                .filter(info -> fits(wanted, info.id(), wanted.level(), stock)).findFirst()
                .ifPresent(info -> instead.add(new Fits(info.id(), wanted.level(), wanted.benches(), "\"" + info.name() + "\" for " + benches(wanted.benches()))));
        kinds.all().stream().map(Kind::info).filter(info -> !info.handsOn() && !info.id().equals(wanted.kind())).findFirst()
                .filter(info -> fits(wanted, info.id(), wanted.level(), stock))
                .ifPresent(info -> instead.add(new Fits(info.id(), wanted.level(), wanted.benches(), "\"" + info.name() + "\", which needs nothing out of the locker, for "
                        + benches(wanted.benches()))));
        return instead;
    }

    private boolean fits(Wanted wanted, String kind, int level, Stock stock) {
        Wanted other = new Wanted(kind, wanted.seed(), level, wanted.benches(), wanted.from(), wanted.until(), wanted.opensAt());
        return Knowledge.answered(knowledge, now -> {
            MadeSet made = new MadeSet(kinds.kind(kind).orElseThrow(), now);
            return made.benches(made.drawn(other, stock), stock).chosen().size() == wanted.benches();
        });
    }

    private static String benches(int number) {
        return number + (number == 1 ? " bench" : " benches");
    }
}
