package pairwright.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import pairwright.advice.Knowledge;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.locker.PhantomSwitch;
import pairwright.model.Habit;
import pairwright.model.HabitRank;
import pairwright.model.Stock;
import pairwright.session.allocation.Bank;
import pairwright.session.allocation.Cap;
import pairwright.session.allocation.Problem;

/**
 * A line-up with what could be had beside what there is: a channel, a stand for a boom and one for above heads, what was lost and, where a seat has nothing else, units of
 * any type. None of it is there, all of it has a price: whatever is borrowed in a plan of it makes that plan possible.
 */
final class Borrowable {
    /** As most preamplifiers are. */
    static final Gear.Channel CHANNEL = new Gear.Channel("to borrow", "Borrowed channel", null, PhantomSwitch.CHANNEL, null, 60.0, null, null, null);
    private static final List<Gear.Stand> STANDS = List.of(new Gear.Stand("to borrow boom", "Borrowed boom stand", StandKind.BOOM, null, null, null, null, null),
            new Gear.Stand("to borrow overhead", "Borrowed overhead stand", StandKind.OVERHEAD, null, null, null, null, null));

    private final Layout real;
    private final Layout layout;
    /** Ids of seats that have something only by a unit of a type that is not owned. */
    private final Set<String> foreign = new HashSet<>();

    /**
     * @param real with what there is
     * @param gear what there is
     * @param whole units with those that were lost; null where they are not counted
     */
    Borrowable(LineUp lineUp, Layout real, Gear gear, Stock whole, Judging judging, Knowledge now) {
        this.real = real;
        Gear more = new Gear(whole, joined(gear.channels(), List.of(CHANNEL)), joined(gear.stands(), STANDS), gear.boosters(), gear.pads());
        ChannelPool channels = new ChannelPool(more.channels(), real.lostChannels());
        Layout owned = real.with(lineUp, judging.of(lineUp, now, whole, channels, step -> { }), more);
        if (whole == null || owned.unserved().isEmpty()) {
            this.layout = owned;
            return;
        }
        owned.unserved().forEach(at -> foreign.add(at.seat().id()));
        Stock everything = Goods.with(whole, Goods.all(now.catalogue(), Purchases.Wish.DEAREST).stream().filter(goods -> goods.units() == 2).toList());
        List<AtSeat> any = judging.of(lineUp, now, everything, channels, step -> { });
        List<AtSeat> seats = new ArrayList<>();
        for (int seat = 0; seat < any.size(); seat++) {
            seats.add(foreign.contains(any.get(seat).seat().id()) ? any.get(seat) : owned.seats().get(seat));
        }
        this.layout = real.with(lineUp, seats, new Gear(everything, more.channels(), more.stands(), more.boosters(), more.pads()));
    }

    private static <T> List<T> joined(List<T> there, List<T> more) {
        if (there == null) {
            return null;
        }
        List<T> both = new ArrayList<>(there);
        both.addAll(more);
        return both;
    }

    Layout layout() {
        return layout;
    }

    /** Whether it is one of those that could be borrowed, and not there. */
    static boolean has(Gear.Stand stand) {
        return STANDS.contains(stand);
    }

    private static boolean avoided(AtSeat at, OfferedMic mic) {
        return at.source().habits().stream().anyMatch(habit -> habit.rank() == HabitRank.AVOID && habit.micType().equals(mic.micType().id()) && isThere(habit, mic));
    }

    private static boolean isThere(Habit habit, OfferedMic mic) {
        return (habit.positions().isEmpty() || habit.positions().contains(mic.position().id())) && (habit.patterns().isEmpty() || habit.patterns().contains(mic.pattern()))
                && (habit.withinM() == null || mic.distanceM() <= habit.withinM()) && (habit.beyondM() == null || mic.distanceM() >= habit.beyondM());
    }

    /**
     * What is to be searched for what is short.
     *
     * @param caps which of them may be borrowed, by name
     * @param channels whether channels may be
     */
    Problem problem(Predicate<String> caps, boolean channels) {
        Problem all = layout.problem(few());
        Map<String, Integer> there = new HashMap<>();
        real.resources().caps().forEach(cap -> there.put(cap.name(), cap.there()));
        List<Cap> counted = all.caps().stream().map(cap -> SetUpWork.isCap(cap.name()) ? cap : new Cap(cap.name(), there.getOrDefault(cap.name(), 0), caps.test(cap.name()) ? price(cap) : 0)).toList();
        // the borrowed channel stands last, in a bank of its own
        List<Bank> banks = real.resources().channels().counted() ? all.banks().subList(0, all.banks().size() - 1) : all.banks();
        return new Problem(all.seats(), counted, banks, all.pairs(), List.of(), channels ? all.channelPrices() : Map.of());
    }

    /** A stand for above heads does for a boom as well, but is the dearer one. */
    private int price(Cap cap) {
        Stands.Class stand = layout.resources().stand(cap.name());
        return stand != null && stand.like().kind() == StandKind.OVERHEAD ? cap.price() + 1 : cap.price();
    }

    /** For a seat that has nothing yet only what the trade does not avoid there, if there is such; where any type may be borrowed one microphone, if one can serve it. */
    private List<List<SeatChoices.Way>> few() {
        Set<String> waiting = real.unserved().stream().map(at -> at.seat().id()).collect(Collectors.toSet());
        List<List<SeatChoices.Way>> few = new ArrayList<>();
        for (int seat = 0; seat < layout.seats().size(); seat++) {
            AtSeat at = layout.seats().get(seat);
            List<SeatChoices.Way> ways = layout.withLeavingOut().get(seat);
            if (waiting.contains(at.seat().id())) {
                ways = preferably(ways, offer -> offer.mics().stream().noneMatch(mic -> avoided(at, mic)));
            }
            few.add(foreign.contains(at.seat().id()) ? preferably(ways, offer -> offer.mics().size() == 1) : ways);
        }
        return few;
    }

    private static List<SeatChoices.Way> preferably(List<SeatChoices.Way> ways, Predicate<Offer> good) {
        return ways.stream().noneMatch(way -> way.offer() != null && good.test(way.offer())) ? ways
                : ways.stream().filter(way -> way.offer() == null || good.test(way.offer())).toList();
    }
}
