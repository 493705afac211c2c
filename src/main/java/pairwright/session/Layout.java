package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.advice.Offer;
import pairwright.model.Catalogue;
import pairwright.session.allocation.Kept;
import pairwright.session.allocation.PairTerm;
import pairwright.session.allocation.Problem;

/**
 * A line-up with its offers and its gear, laid out for the search: for every seat its ways, best first, and what two seats are worth together.
 *
 * <p>The search is given the first few ways of each seat. Whether that was enough is proven afterwards: no plan with a way that was left out can have
 * more than the best of every seat, less what that way is behind the best of its own.
 */
final class Layout {
    private final List<AtSeat> seats;
    private final Resources resources;
    private final List<List<SeatChoices.Way>> ways = new ArrayList<>();
    private final List<PlanRules.Two> twos;
    private final Map<String, Integer> index = new HashMap<>();
    private final PlanRules rules;
    private final Map<String, Offer> setUp = new HashMap<>();

    Layout(LineUp lineUp, List<AtSeat> seats, Gear gear, Catalogue catalogue, PlanRules rules, Map<String, Picks.AtSeat> standing) {
        this.seats = seats;
        this.rules = rules;
        this.twos = PlanRules.twos(lineUp);
        Set<String> own = new HashSet<>();
        seats.forEach(at -> at.offers().all().forEach(offer -> offer.mics().stream().filter(mic -> mic.unit() != null).forEach(mic -> own.add(mic.unit()))));
        this.resources = new Resources(gear, own, type -> catalogue.mics().get(type).tier());
        for (AtSeat at : seats) {
            index.put(at.seat().id(), index.size());
            Picks.AtSeat picked = standing.get(at.seat().id());
            Offer same = picked == null ? null : at.picked(picked);
            if (same != null) {
                setUp.put(at.seat().id(), same);
            }
            SeatChoices choices = new SeatChoices(resources, at.source().body(), at.offers().all(), at.seat().must() ? null : Long.valueOf(rules.leftOutCentipoints(at.seat())),
                    range(at.seat().id()), offer -> offer == same);
            ways.add(choices.ways().stream().sorted(Comparator.comparingLong((SeatChoices.Way way) -> way.choice().centipoints()).reversed()).toList());
        }
    }

    private long range(String seat) {
        return twos.stream().filter(two -> two.first().equals(seat) || two.second().equals(seat))
                .mapToLong(two -> rules.mostTwoCentipoints(two.apart()) - rules.leastTwoCentipoints(two.apart())).sum();
    }

    Resources resources() {
        return resources;
    }

    List<AtSeat> seats() {
        return seats;
    }

    /** All ways of every seat, best first. */
    List<List<SeatChoices.Way>> ways() {
        return ways;
    }

    /** What is set up at a seat already; null for nothing, or nothing that can stay. */
    Offer setUp(String seat) {
        return setUp.get(seat);
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

    /**
     * The first ways of every seat, and those that stand already.
     *
     * @param most of each seat
     */
    List<List<SeatChoices.Way>> first(int most) {
        List<List<SeatChoices.Way>> first = new ArrayList<>();
        for (int seat = 0; seat < seats.size(); seat++) {
            Offer stands = setUp.get(seats.get(seat).seat().id());
            List<SeatChoices.Way> all = ways.get(seat);
            List<SeatChoices.Way> some = new ArrayList<>(all.subList(0, Math.min(most, all.size())));
            all.stream().skip(most).filter(way -> way.offer() == null || way.offer() == stands).forEach(some::add);
            first.add(some);
        }
        return first;
    }

    /** Of every seat those ways that can be in a plan worth that much or more, and those that stand already. */
    List<List<SeatChoices.Way>> within(long centipoints, long keptCentipoints) {
        long most = most() + keptCentipoints;
        List<List<SeatChoices.Way>> within = new ArrayList<>();
        for (int seat = 0; seat < seats.size(); seat++) {
            long best = ways.get(seat).get(0).choice().centipoints();
            Offer stands = setUp.get(seats.get(seat).seat().id());
            within.add(ways.get(seat).stream().filter(way -> most - (best - way.choice().centipoints()) >= centipoints || way.offer() != null && way.offer() == stands).toList());
        }
        return within;
    }

    /** More than any plan can have: the best of every seat, and the most that any two seats can be worth together. */
    private long most() {
        long most = ways.stream().mapToLong(of -> of.get(0).choice().centipoints()).sum();
        for (PlanRules.Two two : twos) {
            most += Math.max(0, rules.mostTwoCentipoints(two.apart()));
        }
        return most;
    }

    /**
     * The problem of some of the ways.
     *
     * @param keptCentipoints what it is worth to leave a seat as it is set up; 0 for a plan from nothing
     */
    Problem problem(List<List<SeatChoices.Way>> some, long keptCentipoints) {
        List<pairwright.session.allocation.Seat> all = new ArrayList<>();
        List<Kept> kept = new ArrayList<>();
        for (int seat = 0; seat < seats.size(); seat++) {
            Seat of = seats.get(seat).seat();
            all.add(new pairwright.session.allocation.Seat(of.id(), of.must(), some.get(seat).stream().map(SeatChoices.Way::choice).toList()));
            for (int way = 0; way < some.get(seat).size() && keptCentipoints > 0; way++) {
                Offer offer = some.get(seat).get(way).offer();
                if (offer != null && offer == setUp.get(of.id())) {
                    kept.add(new Kept(seat, way, keptCentipoints));
                }
            }
        }
        Map<String, Integer> channelPrices = new HashMap<>();
        resources.channels().banks().forEach(bank -> bank.channels().forEach(group -> channelPrices.put(group, Resources.CHANNEL_PRICE)));
        return new Problem(all, resources.caps(), resources.channels().banks(), pairs(some), kept, channelPrices);
    }

    private List<PairTerm> pairs(List<List<SeatChoices.Way>> some) {
        List<PairTerm> pairs = new ArrayList<>();
        for (PlanRules.Two two : twos) {
            int first = index.get(two.first());
            int second = index.get(two.second());
            List<Integer> ofFirst = served(some.get(first));
            List<Integer> ofSecond = served(some.get(second));
            long[][] points = rules.twoCentipoints(two.apart(), voices(some.get(first), ofFirst), voices(some.get(second), ofSecond));
            List<PairTerm.Together> together = new ArrayList<>();
            for (int i = 0; i < points.length; i++) {
                for (int j = 0; j < points[i].length; j++) {
                    if (points[i][j] != 0) {
                        together.add(new PairTerm.Together(ofFirst.get(i), ofSecond.get(j), points[i][j]));
                    }
                }
            }
            pairs.add(new PairTerm(first, second, together));
        }
        return pairs;
    }

    private static List<Integer> served(List<SeatChoices.Way> ways) {
        List<Integer> served = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            if (ways.get(i).offer() != null) {
                served.add(i);
            }
        }
        return served;
    }

    private static List<Voice> voices(List<SeatChoices.Way> ways, List<Integer> which) {
        return which.stream().map(way -> ways.get(way).offer()).map(offer -> Voice.of(offer.mics().get(0).micType().id(), offer.technique(),
                offer.mics().get(0).predicted().toneDb(), offer.mics().get(0).predicted().colourDb())).toList();
    }
}
