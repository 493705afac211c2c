package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
        ShortfallWords words = new ShortfallWords(lineUp, layout, now);
        TimeOut time = new TimeOut(layout, allocator);
        OptionalInt neededS = all ? time.neededS(shortage) : OptionalInt.empty();
        Borrowable more = (borrows(shortage) || neededS.isPresent()) && lost.units().isEmpty() ? null : new Borrowable(lineUp, layout, layout.gear(), whole, judging, now);
        boolean wide = false;
        List<Planned.WayOut> first = new ArrayList<>();
        if (more != null) {
            ShortfallWords of = new ShortfallWords(lineUp, more.layout(), now);
            Set<String> types = lostTypes();
            if (!types.isEmpty()) {
                searched(more, cap -> types.contains(UnitPool.micType(cap)), false).waysOut().stream().filter(way -> way.means() == Shortage.Means.BORROW).limit(1)
                        .forEach(way -> first.add(of.wayOut(way)));
            }
            if (!borrows(shortage) && neededS.isEmpty()) {
                Shortage wider = searched(more, cap -> true, true);
                wide = borrows(wider);
                shortage = wider.waysOut().isEmpty() ? shortage : wider;
                words = of;
            }
        }
        ShortfallWords in = words;
        List<String> waiting = waiting(shortage);
        List<Planned.WayOut> waysOut = new ArrayList<>(shortage.waysOut().stream().filter(Shortfall::servesAnybody).map(in::wayOut).toList());
        (more == null ? Stream.<AtSeat>of() : more.layout().unserved().stream()).forEach(at -> waysOut.add(new Planned.WayOut("drop",
                "Nothing in the catalogue stands for " + names.of(at.seat().id()) + " under its limits: loosen them, or leave it out.", 1, 0)));
        neededS.ifPresent(workS -> waysOut.addAll(time.waysOut(workS)));
        waysOut.addAll(InstrumentInputs.waysOut(lineUp, layout, allocator));
        waysOut.removeIf(way -> first.stream().anyMatch(one -> one.says().equals(way.says())));
        waysOut.sort(Comparator.comparingDouble(Planned.WayOut::pricePoints).thenComparing(Planned.WayOut::says));
        waysOut.addAll(0, first);
        List<Planned.Short> shortOf = new ArrayList<>();
        if (!wide) {
            shortage.lacks().stream().filter(lack -> !SetUpWork.isCap(lack.name())).map(lack -> in.shortOf(lack, waiting)).forEach(shortOf::add);
        }
        neededS.ifPresent(workS -> shortOf.add(time.shortOf(workS)));
        if (shortOf.isEmpty()) {
            shortOf.addAll(together(shortage, in, waiting));
        }
        return new Planned(List.of(), shortOf, waysOut, List.of(), List.of(), now.rules().version(), now.catalogue().version());
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
    private List<Planned.Short> together(Shortage shortage, ShortfallWords words, List<String> waiting) {
        List<Planned.Short> borrowed = shortage.waysOut().stream().filter(way -> way.means() == Shortage.Means.BORROW).findFirst().map(way -> words.shortOf(way, waiting)).orElse(List.of());
        if (!borrowed.isEmpty()) {
            return borrowed;
        }
        if (!layout.unserved().isEmpty()) {
            return layout.unserved().stream().map(at -> new Planned.Short((InstrumentInputs.byLead(at) ? "line boxes that suit " : "microphones, and what holds them, that suit ")
                    + names.of(at.seat().id()), 1, 0, List.of(at.seat().id()))).toList();
        }
        return List.of(new Planned.Short("several things at once: sources that must be served", shortage.must(), shortage.canServe(), waiting));
    }

    /** Who has nothing at all; else who is left out where as few are as can be. */
    private List<String> waiting(Shortage shortage) {
        return !layout.unserved().isEmpty() ? layout.unserved().stream().map(at -> at.seat().id()).toList()
                : shortage.waysOut().stream().filter(way -> way.means() == Shortage.Means.DROP).findFirst()
                        .map(way -> way.seats().stream().sorted().map(seat -> lineUp.seats().get(seat).id()).toList()).orElse(List.of());
    }
}
