package pairwright.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.locker.PhantomSwitch;
import pairwright.model.Catalogue;
import pairwright.model.Stock;
import pairwright.session.allocation.Bank;
import pairwright.session.allocation.Cap;
import pairwright.session.allocation.Channel;
import pairwright.session.allocation.Choice;
import pairwright.session.allocation.PairTerm;
import pairwright.session.allocation.PhantomNeed;
import pairwright.session.allocation.Pricing;
import pairwright.session.allocation.Problem;
import pairwright.session.allocation.Solution;

/**
 * A line-up with its offers and its gear, laid out for the search: for every seat its ways, best first, and what two seats are worth together.
 *
 * <p>The search is given few of the ways of each seat, see {@link Narrowed}: no plan with a way that is left aside can be as good as one that is known.
 */
final class Layout {
    private final List<AtSeat> seats;
    private final Resources resources;
    private final List<List<SeatChoices.Way>> ways = new ArrayList<>();
    private final List<List<SeatChoices.Way>> kinds = new ArrayList<>();
    private final List<PlanRules.Two> twos;
    private final Map<String, Integer> index = new HashMap<>();
    private final PlanRules rules;
    private final WaysKept kept;
    private final Map<String, Offer> setUp = new HashMap<>();
    private final Map<String, Picks.AtSeat> picked;
    private final SetUpWork work;
    private final Gear gear;
    private final Set<String> lostChannels;
    private final Catalogue catalogue;
    /** Made when it is asked for. */
    private Pricing pricing;
    private Map<String, String> left;

    Layout(LineUp lineUp, List<AtSeat> seats, Gear gear, Set<String> lostChannels, Catalogue catalogue, PlanRules rules, WaysKept kept, Map<String, Picks.AtSeat> standing) {
        this(lineUp, seats, gear, lostChannels, catalogue, rules, kept, standing, SetUpWork.fromNothing(lineUp.setUp(), catalogue.tasks()));
    }

    /**
     * @param kept what the seats could get in other layouts
     * @param work what setting up takes, and how much of it can be done
     */
    Layout(LineUp lineUp, List<AtSeat> seats, Gear gear, Set<String> lostChannels, Catalogue catalogue, PlanRules rules, WaysKept kept,
            Map<String, Picks.AtSeat> standing, SetUpWork work) {
        this.kept = kept;
        this.work = work;
        this.seats = seats;
        this.rules = rules;
        this.picked = standing;
        this.gear = gear;
        this.lostChannels = lostChannels;
        this.catalogue = catalogue;
        this.twos = PlanRules.twos(lineUp);
        Set<String> own = new HashSet<>();
        seats.forEach(at -> at.offers().all().forEach(offer -> offer.mics().stream().filter(mic -> mic.unit() != null).forEach(mic -> own.add(mic.unit()))));
        this.resources = new Resources(gear, lostChannels, own, catalogue);
        Courses courses = new Courses(resources, rules::tooStrongCentipoints);
        for (AtSeat at : seats) {
            index.put(at.seat().id(), index.size());
            SeatChoices choices = new SeatChoices(resources, courses, at, offer -> work.workS(at.seat().id(), offer));
            Long leftOutCentipoints = at.seat().must() ? null : Long.valueOf(rules.leftOutCentipoints(at.seat()));
            long rangeCentipoints = range(at.seat().id());
            SeatChoices.Found found = kept.of(at, resources.sorts(), rangeCentipoints, work.left(at.seat().id()),
                    (same, before) -> choices.found(leftOutCentipoints, rangeCentipoints, same, before));
            Picks.AtSeat picked = standing.get(at.seat().id());
            Offer same = picked == null || !isThere(picked, gear.stock()) ? null : at.picked(picked);
            if (same != null) {
                setUp.put(at.seat().id(), same);
                found = choices.with(found, same);
            }
            ways.add(found.ways());
            kinds.add(found.kinds());
        }
    }

    /** The same for everybody but one, without a channel. */
    Layout without(LineUp lineUp, AtSeat out, Gear.Channel channel) {
        List<AtSeat> others = seats.stream().filter(at -> at != out).toList();
        Set<String> lost = new HashSet<>(lostChannels);
        lost.add(channel.id());
        return new Layout(lineUp.without(List.of(out.seat().id())), others, gear, lost, catalogue, rules, kept, picked);
    }

    /** The same with other offers and other gear; nothing stands yet. */
    Layout with(LineUp lineUp, List<AtSeat> offered, Gear other) {
        return new Layout(lineUp, offered, other, lostChannels, catalogue, rules, kept, Map.of(), work);
    }

    Set<String> lostChannels() {
        return lostChannels;
    }

    Gear gear() {
        return gear;
    }

    /** Whether what was picked for a seat is not lost; what nobody named is not. */
    private static boolean isThere(Picks.AtSeat picked, Stock stock) {
        return stock == null || picked.mics().stream().map(Picks.Mic::unit).allMatch(id -> id == null || stock.units().stream().anyMatch(unit -> unit.id().equals(id)));
    }

    private long range(String seat) {
        return twos.stream().filter(two -> two.first().equals(seat) || two.second().equals(seat))
                .mapToLong(two -> rules.mostTwoCentipoints(two.apart()) - rules.leastTwoCentipoints(two.apart())).sum();
    }

    Resources resources() {
        return resources;
    }

    SetUpWork work() {
        return work;
    }

    List<AtSeat> seats() {
        return seats;
    }

    /** Whether any two seats are to be heard together. */
    boolean weighsTogether() {
        return !twos.isEmpty();
    }

    /** How many pairs of some ways are to be heard together. */
    long pairsOf(List<List<SeatChoices.Way>> some) {
        return twos.stream().mapToLong(two -> (long) some.get(index.get(two.first())).size() * some.get(index.get(two.second())).size()).sum();
    }

    /** What all who are to be heard together can be worth beside each other at the most, hundredths of a point. */
    long mostTogether() {
        return twos.stream().mapToLong(two -> Math.max(0, rules.mostTwoCentipoints(two.apart()))).sum();
    }

    /** All ways of every seat, best first. */
    List<List<SeatChoices.Way>> ways() {
        return ways;
    }

    /** The same, and at least one of every kind that there is, worth having or not. */
    List<List<SeatChoices.Way>> kinds() {
        return kinds;
    }

    /** Seats that nothing here can serve. */
    List<AtSeat> unserved() {
        List<AtSeat> without = new ArrayList<>();
        for (int i = 0; i < seats.size(); i++) {
            if (ways.get(i).isEmpty()) {
                without.add(seats.get(i));
            }
        }
        return without;
    }

    /** All ways, and as a way out that a seat is left out that must not be. */
    List<List<SeatChoices.Way>> withLeavingOut() {
        List<List<SeatChoices.Way>> all = new ArrayList<>();
        for (int seat = 0; seat < seats.size(); seat++) {
            List<SeatChoices.Way> of = new ArrayList<>(ways.get(seat));
            if (seats.get(seat).seat().must()) {
                of.add(SeatChoices.leftOut(rules.leftOutCentipoints(seats.get(seat).seat())));
            }
            all.add(of);
        }
        return all;
    }

    /**
     * The first ways of every seat, and those that stand already.
     *
     * @param most of each seat
     */
    List<List<SeatChoices.Way>> first(int most) {
        List<List<SeatChoices.Way>> first = new ArrayList<>();
        for (int seat = 0; seat < seats.size(); seat++) {
            int of = seat;
            List<SeatChoices.Way> all = ways.get(seat);
            List<SeatChoices.Way> some = new ArrayList<>(all.subList(0, Math.min(most, all.size())));
            all.stream().skip(most).filter(way -> way.offer() == null || stands(of, way)).forEach(some::add);
            first.add(some);
        }
        return first;
    }

    /** Whether a seat is set up so already. */
    boolean stands(int seat, SeatChoices.Way way) {
        return way.offer() != null && way.offer() == setUp.get(seats.get(seat).seat().id());
    }

    /** The ways to leave a seat as it is set up; leaving it out where it was. */
    List<SeatChoices.Way> standing(AtSeat at) {
        int seat = index.get(at.seat().id());
        boolean wasOut = !picked.containsKey(at.seat().id());
        return ways.get(seat).stream().filter(way -> wasOut ? way.offer() == null : stands(seat, way)).toList();
    }

    /** The problem of all ways, each seat by itself. */
    Problem alone() {
        return new Problem(IntStream.range(0, seats.size()).mapToObj(seat -> new pairwright.session.allocation.Seat(seats.get(seat).seat().id(), seats.get(seat).seat().must(),
                ways.get(seat).stream().map(SeatChoices.Way::choice).toList())).toList(), caps(), resources.channels().banks());
    }

    /** The same made ready for prices; what they prove holds for a search with more time as well. */
    Pricing pricing() {
        if (pricing == null) {
            pricing = new Pricing(work.within(alone(), SetUpWork.ANY_TIME_S));
        }
        return pricing;
    }

    /** Some of the ways of each seat made ready for prices. */
    Pricing pricing(List<List<SeatChoices.Way>> some) {
        return new Pricing(work.within(problem(some), SetUpWork.ANY_TIME_S));
    }

    /** The problem of some of the ways of each seat, what two of them are worth together counted for any two. */
    Problem problem(List<List<SeatChoices.Way>> some) {
        return problem(some, some);
    }

    /**
     * A problem no plan of which is worth less than in truth: what two ways are worth together counts for those of {@code exact}; any other way counts
     * with the most it can be worth beside anything. So a plan of ways of {@code exact} that is the best of this problem is the best of all, and nobody
     * had to weigh every way against every other.
     *
     * @param some of the ways of each seat
     * @param exact some of those
     */
    Problem problem(List<List<SeatChoices.Way>> some, List<List<SeatChoices.Way>> exact) {
        long[][] hopes = some.stream().map(of -> new long[of.size()]).toArray(long[][]::new);
        List<PairTerm> pairs = new PairTerms(twos, index, rules).of(some, exact, hopes);
        List<pairwright.session.allocation.Seat> all = new ArrayList<>();
        for (int seat = 0; seat < seats.size(); seat++) {
            Seat of = seats.get(seat).seat();
            List<Choice> choices = new ArrayList<>();
            for (int way = 0; way < some.get(seat).size(); way++) {
                choices.add(hoping(some.get(seat).get(way).choice(), hopes[seat][way]));
            }
            all.add(new pairwright.session.allocation.Seat(of.id(), of.must(), choices));
        }
        Map<String, Integer> channelPrices = new HashMap<>();
        resources.channels().banks().forEach(bank -> bank.channels().forEach(group -> channelPrices.put(group, resources.channelPrice())));
        return new Problem(all, caps(), resources.channels().banks(), pairs, List.of(), channelPrices);
    }

    private List<Cap> caps() {
        return Stream.concat(resources.caps().stream(), work.caps().stream()).toList();
    }

    private static Choice hoping(Choice choice, long centipoints) {
        return centipoints == 0 ? choice
                : new Choice(choice.id(), choice.use(), choice.centipoints() + centipoints, choice.takes(), choice.feeds(), choice.anyOf());
    }

    /** What is set up already: the problem and the plan of it that nobody had to search. */
    record SetUp(Problem problem, Solution plan) {
        Map<String, String> choices() {
            return problem.seats().stream().collect(Collectors.toMap(pairwright.session.allocation.Seat::id, seat -> seat.choices().get(0).id()));
        }
    }

    /** Whether a seat is left as it is by this way, on its channels: not only the same microphones at the same places. */
    boolean keeps(int seat, SeatChoices.Way way) {
        if (left == null) {
            left = setUp().choices();
        }
        return way.choice().id().equals(left.get(seats.get(seat).seat().id()));
    }

    /** What of the picks can stay, on the channels they are on; a seat on a channel that nobody knows is left open. */
    SetUp setUp() {
        List<pairwright.session.allocation.Seat> all = new ArrayList<>();
        List<List<Channel>> channels = new ArrayList<>();
        Set<Integer> live = new HashSet<>();
        for (int seat = 0; seat < seats.size(); seat++) {
            Picks.AtSeat pick = picked.get(seats.get(seat).seat().id());
            int of = seat;
            SeatChoices.Way way = pick == null ? null : ways.get(seat).stream().filter(one -> stands(of, one) && asSetUp(one, pick)).findFirst().orElse(null);
            List<Channel> on = way == null ? List.of() : channels(pick, way);
            if (way != null && on != null) {
                all.add(new pairwright.session.allocation.Seat(pick.seat(), true, List.of(way.choice())));
                channels.add(on);
                for (int feed = 0; feed < on.size(); feed++) {
                    Bank bank = resources.channels().banks().get(on.get(feed).bank());
                    if (bank.phantom() == PhantomSwitch.BANK && way.choice().feeds().get(feed).phantom() == PhantomNeed.NEEDED) {
                        live.add(on.get(feed).bank());
                    }
                }
            }
        }
        return new SetUp(new Problem(all, caps(), resources.channels().banks()), new Solution(all.stream().map(one -> 0).toList(), 0, 0, false, 0, false,
                channels, all.stream().map(one -> List.<String>of()).toList(), live));
    }

    /** Whether the same is in its lines, on channels that do for it. */
    private boolean asSetUp(SeatChoices.Way way, Picks.AtSeat pick) {
        for (int mic = 0; mic < way.courses().size(); mic++) {
            Course course = way.courses().get(mic);
            Picks.Mic set = pick.mics().get(mic);
            if (course.boosted() != (set.booster() != null) || course.padded() != (set.pad() != null) || set.box() == null != (course.box() == null) && resources.units().counted()) {
                return false;
            }
        }
        List<Channel> on = channels(pick, way);
        for (int feed = 0; on != null && feed < on.size(); feed++) {
            if (!way.choice().feeds().get(feed).groups().contains(resources.channels().groupAt(on.get(feed)))) {
                return false;
            }
        }
        return true;
    }

    /** Where its feeds are plugged; null where that is not known. */
    private List<Channel> channels(Picks.AtSeat pick, SeatChoices.Way way) {
        List<Channel> on = new ArrayList<>();
        pick.mics().stream().map(Picks.Mic::channel).filter(id -> id != null).map(resources.channels()::at).filter(at -> at != null).forEach(on::add);
        return on.size() == way.choice().feeds().size() ? on : null;
    }
}
