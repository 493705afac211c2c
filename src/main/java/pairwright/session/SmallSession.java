package pairwright.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.advice.HouseMemory;
import pairwright.advice.Knowledge;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.locker.PhantomSwitch;
import pairwright.model.Catalogue;
import pairwright.model.Stock;
import pairwright.session.allocation.Allocator;
import pairwright.session.allocation.PhantomNeed;

/**
 * A session of few seats with one microphone each, planned again and again with other units, or by hand. What can be put in front of whom is judged once; with so few ways every plan
 * is counted through, which takes less time than to set a solver up. Not safe to share between threads.
 */
public final class SmallSession {
    public static final int MOST_SEATS = 6;
    /** With so much gain either way no channel is too weak or too hot. */
    private static final double LEAST_GAIN_DB = -40;
    private static final double MOST_GAIN_DB = 100;

    private final LineUp lineUp;
    private final Sockets sockets;
    private final Knowledge now;
    private final PlanRules rules;
    private final WaysKept kept = new WaysKept();
    private final List<AtSeat> seats;
    private final List<List<Offer>> ways;
    private final List<int[]> twos = new ArrayList<>();
    private final List<Boolean> apart = new ArrayList<>();
    private final Map<Offer, Voice> voices = new HashMap<>();
    /** What the seats from one on are worth at the most, and all that sound beside each other. */
    private final long[] mostLeft;
    private final long mostTogether;

    /**
     * What microphones are plugged into.
     *
     * @param switched channels whose phantom power is on or off for all of them
     * @param without channels that have none
     */
    public record Sockets(int switched, int without) {
        private List<Gear.Channel> channels() {
            return IntStream.rangeClosed(1, switched + without).mapToObj(number -> new Gear.Channel("channel-" + number, "channel " + number, number <= switched ? "stage box" : null,
                    number <= switched ? PhantomSwitch.BANK : PhantomSwitch.NONE, LEAST_GAIN_DB, MOST_GAIN_DB, null, null, null)).toList();
        }

        /** Whether it works only with phantom power. */
        public static boolean wantsPower(OfferedMic mic) {
            return need(mic) == PhantomNeed.NEEDED;
        }

        /** Whether phantom power may ruin it. */
        public static boolean suffersPower(OfferedMic mic) {
            return need(mic) == PhantomNeed.FORBIDDEN;
        }

        /** Whether all of them can be plugged in at once, none without the power it needs and none on power that ruins it. */
        public boolean take(List<OfferedMic> mics) {
            int powered = (int) mics.stream().filter(Sockets::wantsPower).count();
            int ruined = (int) mics.stream().filter(Sockets::suffersPower).count();
            return mics.size() <= switched + without && powered <= switched && (powered == 0 || ruined <= without);
        }
    }

    /**
     * What each seat gets.
     *
     * @param offers in the order of the line-up
     * @param centipoints what the plan is worth, in hundredths of a point
     */
    public record Seated(List<Offer> offers, long centipoints) {
        public Seated {
            offers = List.copyOf(offers);
        }
    }

    /**
     * A session.
     *
     * @param lineUp of at most {@value #MOST_SEATS} seats that must all be served, limited to one microphone each
     * @param micTypes that may be put up
     * @param sockets null where channels are not counted
     * @throws IllegalArgumentException for more seats
     */
    public SmallSession(LineUp lineUp, Set<String> micTypes, Sockets sockets, Knowledge now) {
        if (lineUp.seats().size() > MOST_SEATS) {
            throw new IllegalArgumentException("A small session has at most " + MOST_SEATS + " seats, not " + lineUp.seats().size());
        }
        this.lineUp = lineUp;
        this.sockets = sockets;
        this.now = now;
        this.rules = new PlanRules(now.rules(), now.catalogue());
        Stock all = stock(micTypes.stream().collect(Collectors.toMap(type -> type, type -> lineUp.seats().size(), (one, other) -> one, TreeMap::new)));
        this.seats = new Judging(HouseMemory.NOTHING).of(lineUp, now, all, new ChannelPool(channels(), Set.of()), step -> { });
        this.ways = layout(all).ways().stream().map(of -> of.stream().map(SeatChoices.Way::offer).toList()).toList();
        List<String> ids = lineUp.seats().stream().map(Seat::id).toList();
        PlanRules.twos(lineUp).forEach(two -> {
            twos.add(new int[] {ids.indexOf(two.first()), ids.indexOf(two.second())});
            apart.add(two.apart());
        });
        this.mostTogether = apart.stream().mapToLong(rules::mostTwoCentipoints).map(most -> Math.max(0, most)).sum();
        this.mostLeft = new long[ways.size() + 1];
        for (int seat = ways.size() - 1; seat >= 0; seat--) {
            mostLeft[seat] = mostLeft[seat + 1] + ways.get(seat).stream().mapToLong(Offer::centipoints).max().orElse(0);
        }
    }

    private List<Gear.Channel> channels() {
        return sockets == null ? null : sockets.channels();
    }

    private Layout layout(Stock stock) {
        return new Layout(lineUp, seats, new Gear(stock, channels(), null, null, null), Set.of(), now.catalogue(), rules, kept, Map.of());
    }

    /** Units of each type, called as it and numbered. */
    private Stock stock(Map<String, Integer> units) {
        Catalogue catalogue = now.catalogue();
        List<Stock.Held> held = new ArrayList<>();
        units.forEach((type, count) -> IntStream.rangeClosed(1, count).forEach(number -> held.add(new Stock.Held(type + "-" + number, type,
                catalogue.mics().get(type).name() + (count == 1 ? "" : " " + number), null, null, null, null, null, null))));
        return new Stock(true, held);
    }

    /** What is to be minded of one of its plans. */
    public Telling telling(Plan plan) {
        return Telling.of(plan, lineUp, now.rules().rules());
    }

    public LineUp lineUp() {
        return lineUp;
    }

    public Sockets sockets() {
        return sockets;
    }

    private static PhantomNeed need(OfferedMic mic) {
        return SeatChoices.phantom(mic.micType(), mic.phantom());
    }

    /**
     * The best a seat can do with a type at a place; empty where it cannot be put up there, or a rule forbids it.
     *
     * @param seat its place in the line-up, from 0
     * @param position id; null for any place
     */
    public Optional<Offer> best(int seat, String micType, String position) {
        return offers(seat, micType, position).findFirst();
    }

    /** What a plan is worth by its seats and by how they sound beside each other, in hundredths of a point; nothing is asked of what there is. */
    public long centipoints(List<Offer> offers) {
        long sum = offers.stream().mapToLong(Offer::centipoints).sum();
        for (int i = 0; i < twos.size(); i++) {
            sum += rules.twoCentipoints(apart.get(i), voice(offers.get(twos.get(i)[0])), voice(offers.get(twos.get(i)[1])));
        }
        return sum;
    }

    /**
     * The most that can be made of some types.
     *
     * @param micTypes by seat, ids
     * @param at a seat of which the place is settled as well, from 0; -1 for none
     * @param position id of that place
     * @return hundredths of a point; empty where one of them cannot be put up
     */
    public OptionalLong most(List<String> micTypes, int at, String position) {
        List<List<Offer>> open = new ArrayList<>();
        for (int seat = 0; seat < micTypes.size(); seat++) {
            int of = seat;
            boolean beside = twos.stream().anyMatch(two -> two[0] == of || two[1] == of);
            String type = micTypes.get(seat);
            // who is to be told from another may do better with what is not the best by itself
            boolean any = seat == at && beside;
            List<Offer> some = new ArrayList<>(offers(seat, type, seat == at ? position : null).limit(any ? Integer.MAX_VALUE : 1).toList());
            if (beside && !any) {
                ways.get(seat).stream().filter(offer -> offer.mics().get(0).micType().id().equals(type) && !some.contains(offer)).forEach(some::add);
            }
            if (some.isEmpty()) {
                return OptionalLong.empty();
            }
            open.add(some);
        }
        return most(open, new ArrayList<>());
    }

    private OptionalLong most(List<List<Offer>> open, List<Offer> chosen) {
        if (chosen.size() == open.size()) {
            return OptionalLong.of(centipoints(chosen));
        }
        long most = Long.MIN_VALUE;
        for (Offer offer : open.get(chosen.size())) {
            chosen.add(offer);
            most = Math.max(most, most(open, chosen).orElseThrow());
            chosen.remove(chosen.size() - 1);
        }
        return OptionalLong.of(most);
    }

    private Stream<Offer> offers(int seat, String micType, String position) {
        return seats.get(seat).offers().all().stream().filter(offer -> offer.mics().size() == 1).filter(offer -> offer.mics().get(0).micType().id().equals(micType))
                .filter(offer -> position == null || offer.mics().get(0).position().id().equals(position));
    }

    private Voice voice(Offer offer) {
        return voices.computeIfAbsent(offer, any -> {
            OfferedMic mic = any.mics().get(0);
            return Voice.of(mic.micType().id(), any.technique(), mic.predicted().toneDb(), mic.predicted().colourDb());
        });
    }

    /**
     * What the rules say of a microphone on one of the switched channels because their phantom power is on: what they say of it there with the power off as well is left out.
     *
     * @param seat its place in the line-up, from 0
     * @param offer that seat's
     */
    public List<Said> saidUnderPower(int seat, Offer offer) {
        StoodPlan hand = new StoodPlan(lineUp, sockets.channels(), now);
        String channel = sockets.channels().get(0).id();
        List<StoodPlan.Put> put = List.of(new StoodPlan.Put(lineUp.seats().get(seat).id(), seats.get(seat).offers(), offer, List.of(channel)));
        Set<String> anyway = hand.plan(put, List.of()).lines().get(0).cautions().stream().map(Said::rule).collect(Collectors.toSet());
        return hand.plan(put, List.of(channel)).lines().get(0).cautions().stream().filter(said -> !anyway.contains(said.rule())).toList();
    }

    /**
     * The plan that is worth most.
     *
     * @param units how many there are of each type
     * @return empty where not every seat can be served
     */
    public Optional<Seated> best(Map<String, Integer> units) {
        Counting counting = new Counting(new HashMap<>(units));
        counting.from(0, 0);
        return Optional.ofNullable(counting.best);
    }

    /** Goes through all plans, seat by seat, the best ways first, but for those that cannot be worth more than one that was found. */
    private final class Counting {
        private final Map<String, Integer> left;
        private final List<Offer> chosen = new ArrayList<>();
        private Seated best;

        Counting(Map<String, Integer> left) {
            this.left = left;
        }

        void from(int seat, long centipoints) {
            if (best != null && centipoints + mostLeft[seat] + mostTogether <= best.centipoints()) {
                return;
            }
            if (seat == ways.size()) {
                long all = centipoints(chosen);
                if ((best == null || all > best.centipoints()) && (sockets == null || sockets.take(chosen.stream().map(offer -> offer.mics().get(0)).toList()))) {
                    best = new Seated(chosen, all);
                }
                return;
            }
            for (Offer offer : ways.get(seat)) {
                String type = offer.mics().get(0).micType().id();
                if (left.getOrDefault(type, 0) > 0) {
                    left.merge(type, -1, Integer::sum);
                    chosen.add(offer);
                    from(seat + 1, centipoints + offer.centipoints());
                    chosen.remove(seat);
                    left.merge(type, 1, Integer::sum);
                }
            }
        }
    }

    /**
     * The same as the planner finds it, with its lines, and with what the rules say of it.
     *
     * @return empty where not every seat can be served
     * @throws pairwright.session.allocation.NoSolver where the solver cannot be loaded on this machine
     */
    public Optional<Plan> planned(Map<String, Integer> units) {
        Stock stock = stock(units);
        Layout layout = layout(stock);
        return BestPlan.of(layout, new Allocator()).map(found -> {
            PlanMaker.Draft draft = new PlanMaker(lineUp, layout.seats(), layout.resources(), Map.of()).draft(found.ways(), found.solution());
            return new PlanJudge(lineUp, new Gear(stock, channels(), null, null, null), layout, rules, now).plan(1, draft, found.solution(), found.solution().proven(),
                    found.solution().boundCentipoints());
        });
    }
}
