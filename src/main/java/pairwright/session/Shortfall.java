package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pairwright.advice.Knowledge;
import pairwright.model.MicType;
import pairwright.model.Stock;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.Choice;
import pairwright.session.allocation.NotDecided;
import pairwright.session.allocation.Shortage;

/** Why a line-up cannot be served, and what would help, in words: nothing is offered that was not planned with. */
final class Shortfall {
    private static final Shortage UNKNOWN = new Shortage(0, 0, false, List.of(), List.of());

    private final LineUp lineUp;
    private final Layout layout;
    private final Knowledge now;
    private final Allocator allocator;
    private final Judging judging;
    private final Stock whole;
    private final Lost lost;
    private final SeatNames names;

    /**
     * @param whole units with those that were lost; null where they are not counted
     * @param lost what was
     */
    Shortfall(LineUp lineUp, Layout layout, Knowledge now, Allocator allocator, Judging judging, Stock whole, Lost lost) {
        this.lineUp = lineUp;
        this.layout = layout;
        this.now = now;
        this.allocator = allocator;
        this.judging = judging;
        this.whole = whole;
        this.lost = lost;
        this.names = SeatNames.of(lineUp);
    }

    Planned planned() {
        boolean all = layout.unserved().isEmpty();
        Shortage shortage = all ? allocator.shortage(layout.problem(layout.withLeavingOut())) : UNKNOWN;
        TimeOut time = new TimeOut(layout, allocator);
        OptionalInt neededS = all ? time.neededS(shortage) : OptionalInt.empty();
        boolean wide = !borrows(shortage) && neededS.isEmpty();
        Borrowable more = wide || !lost.units().isEmpty() ? new Borrowable(lineUp, layout, layout.gear(), whole, judging, now) : null;
        Shortage wider = wide ? searched(more, cap -> true, true) : UNKNOWN;
        Told told = wider.waysOut().isEmpty() ? new Told(shortage, new ShortfallWords(lineUp, layout, now), waiting(shortage))
                : new Told(wider, new ShortfallWords(lineUp, more.layout(), now), waiting(wider));
        List<Planned.Short> shortOf = new ArrayList<>(borrows(wider) ? List.of() : told.lacks());
        neededS.ifPresent(workS -> shortOf.add(time.shortOf(workS)));
        if (shortOf.isEmpty()) {
            shortOf.addAll(together(told));
        }
        List<Planned.WayOut> waysOut = new ArrayList<>(told.shortage().waysOut().stream().filter(Shortfall::servesAnybody).map(told.words()::wayOut).toList());
        if (more != null) {
            more.layout().unserved().forEach(at -> waysOut.add(new Planned.WayOut("drop",
                    "Nothing in the catalogue stands for " + names.of(at.seat().id()) + " under its limits: loosen them, or leave it out.", 1, 0)));
        }
        neededS.ifPresent(workS -> waysOut.addAll(time.waysOut(workS)));
        waysOut.addAll(InstrumentInputs.waysOut(lineUp, layout, allocator));
        waysOut.sort(Comparator.comparingDouble(Planned.WayOut::pricePoints).thenComparing(Planned.WayOut::says));
        sameAgain(more).ifPresent(first -> {
            waysOut.removeIf(way -> way.says().equals(first.says()));
            waysOut.add(0, first);
        });
        return new Planned(List.of(), shortOf, waysOut, List.of(), List.of(), now.rules().version(), now.catalogue().version());
    }

    /** What was searched, in words, and who waits. */
    private record Told(Shortage shortage, ShortfallWords words, List<String> waiting) {
        /** Each thing of which enough alone would do. */
        List<Planned.Short> lacks() {
            return shortage.lacks().stream().filter(lack -> !SetUpWork.isCap(lack.name())).map(lack -> words.shortOf(lack, waiting)).toList();
        }
    }

    /** To borrow what was lost, where that alone does. */
    private Optional<Planned.WayOut> sameAgain(Borrowable more) {
        Set<String> types = lostTypes();
        return types.isEmpty() ? Optional.empty() : searched(more, cap -> types.contains(UnitPool.micType(cap)), false).waysOut().stream()
                .filter(way -> way.means() == Shortage.Means.BORROW).findFirst().map(new ShortfallWords(lineUp, more.layout(), now)::wayOut);
    }

    private static boolean borrows(Shortage shortage) {
        return shortage.waysOut().stream().anyMatch(way -> way.means() == Shortage.Means.BORROW);
    }

    /** Nobody comes for a session with nobody. */
    private static boolean servesAnybody(Shortage.WayOut way) {
        for (int seat = 0; seat < way.plan().choices().size(); seat++) {
            if (way.problem().seats().get(seat).choices().get(way.plan().choices().get(seat)).use() != Choice.Use.OUT) {
                return true;
            }
        }
        return false;
    }

    /** What could not be decided is not told. */
    private Shortage searched(Borrowable more, Predicate<String> caps, boolean channels) {
        try {
            return allocator.shortage(more.problem(caps, channels));
        } catch (NotDecided open) {
            return UNKNOWN;
        }
    }

    private Set<String> lostTypes() {
        return whole == null ? Set.of() : whole.units().stream().filter(unit -> lost.units().contains(unit.id())).map(Stock.Held::micType).filter(Objects::nonNull).collect(Collectors.toSet());
    }

    /** All that the cheapest way out borrows, where no thing alone would do. */
    private List<Planned.Short> together(Told told) {
        Shortage shortage = told.shortage();
        List<Planned.Short> borrowed = shortage.waysOut().stream().filter(way -> way.means() == Shortage.Means.BORROW).findFirst().map(way -> told.words().shortOf(way, told.waiting())).orElse(List.of());
        if (!borrowed.isEmpty()) {
            return borrowed;
        }
        if (!layout.unserved().isEmpty()) {
            return layout.unserved().stream().map(at -> new Planned.Short((InstrumentInputs.byLead(at) ? "line boxes that suit " : "microphones, and what holds them, that suit ")
                    + names.of(at.seat().id()), 1, 0, List.of(at.seat().id()))).toList();
        }
        return List.of(new Planned.Short("several things at once: sources that must be served", shortage.must(), shortage.canServe(), told.waiting()));
    }

    /** Who has nothing at all; else who is left out where as few are as can be. */
    private List<String> waiting(Shortage shortage) {
        return !layout.unserved().isEmpty() ? layout.unserved().stream().map(at -> at.seat().id()).toList()
                : shortage.waysOut().stream().filter(way -> way.means() == Shortage.Means.DROP).findFirst()
                        .map(way -> way.seats().stream().sorted().map(seat -> lineUp.seats().get(seat).id()).toList()).orElse(List.of());
    }
}
