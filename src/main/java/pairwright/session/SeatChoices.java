package pairwright.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.MicType;
import pairwright.session.allocation.Choice;
import pairwright.session.allocation.Feed;
import pairwright.session.allocation.PhantomNeed;

/**
 * What one seat can get: of all offers that take the same of the gear, the one that is worth most; and where the seat is to be told from another or to
 * sound like it, those as well that may be worth more beside it.
 */
final class SeatChoices {
    private static final String OUT = "nothing";

    private static final Comparator<Way> BEST = Comparator.comparingLong((Way way) -> way.choice().centipoints()).reversed();

    private final Resources resources;
    private final Courses courses;
    private final AtSeat at;
    private final ToIntFunction<Offer> workS;
    private final boolean phantom;

    /**
     * One choice and what is behind it.
     *
     * @param offer null for leaving the seat out
     * @param courses from each microphone to its channels
     */
    record Way(Choice choice, Offer offer, List<Course> courses) {
        /** Of what tells the ways of a seat apart: all else of it takes long to go through. */
        @Override
        public int hashCode() {
            return choice.id().hashCode();
        }

        /** What sets it apart for whoever looks for another idea: its technique and its types, wherever they stand. */
        List<String> kind() {
            return offer == null ? List.of() : Stream.concat(Stream.of(offer.technique()), offer.mics().stream().map(mic -> mic.micType().id())).toList();
        }
    }

    private record Demand(Map<String, Integer> takes, List<Feed> feeds, List<Set<String>> anyOf) {
    }

    /**
     * All that is worth looking at, best first.
     *
     * @param ways for the best plan
     * @param kinds those, and of every kind the best of those that take no less than something better: none is in the best plan, but one may be what makes another plan
     * @param byOffer all ways of each offer
     */
    record Found(List<Way> ways, List<Way> kinds, List<Served> byOffer) {
        static final Found NOTHING = new Found(List.of(), List.of(), List.of());
    }

    /**
     * All ways of an offer.
     *
     * @param workS of setting it up, seconds of one pair of hands; 0 where that is not limited
     */
    private record Served(int workS, List<Way> ways) {
    }

    /** @param workS what setting an offer up takes, seconds of one pair of hands; 0 where that is not limited */
    SeatChoices(Resources resources, Courses courses, AtSeat at, ToIntFunction<Offer> workS) {
        this.resources = resources;
        this.courses = courses;
        this.at = at;
        this.workS = workS;
        this.phantom = !Boolean.FALSE.equals(at.seat().limits().phantom());
    }

    static Way leftOut(long centipoints) {
        return new Way(Choice.out(OUT, centipoints), null, List.of());
    }

    /**
     * What the seat can get.
     *
     * @param leftOutCentipoints what it is worth to leave the seat out; null where it must be served
     * @param rangeCentipoints how much more a seat beside another can make of one offer than of another that takes the same; 0 for a seat that is
     *     judged by itself
     * @param same whether the gear serves an offer as it was found before
     */
    Found found(Long leftOutCentipoints, long rangeCentipoints, Predicate<Offer> same, Found before) {
        List<Way> ways = new ArrayList<>();
        List<Served> byOffer = new ArrayList<>();
        Map<List<String>, Way> beaten = new LinkedHashMap<>();
        // a box of which there is none is reckoned with only where nothing else serves the seat, so that it is said to be short
        for (boolean borrowed = false; ; borrowed = true) {
            Map<Demand, Long> best = new HashMap<>();
            byOffer.clear();
            for (int i = 0; i < at.offers().all().size(); i++) {
                Offer offer = at.offers().all().get(i);
                int workS = this.workS.applyAsInt(offer);
                byOffer.add(!borrowed && same.test(offer) && before.byOffer().get(i).workS() == workS ? before.byOffer().get(i) : new Served(workS, of(offer, i, workS, borrowed)));
                for (Way way : byOffer.get(i).ways()) {
                    Choice choice = way.choice();
                    Demand demand = new Demand(choice.takes(), choice.feeds(), choice.anyOf());
                    Long most = best.get(demand);
                    if (most == null || choice.centipoints() > most || rangeCentipoints > 0 && choice.centipoints() >= most - rangeCentipoints) {
                        ways.add(way);
                    } else {
                        beaten.merge(way.kind(), way, (one, other) -> other.choice().centipoints() > one.choice().centipoints() ? other : one);
                    }
                    if (most == null || choice.centipoints() > most) {
                        best.put(demand, choice.centipoints());
                    }
                }
            }
            if (borrowed || !ways.isEmpty() || leftOutCentipoints != null) {
                break;
            }
        }
        if (leftOutCentipoints != null) {
            ways.add(leftOut(leftOutCentipoints));
        }
        return new Found(ways.stream().sorted(BEST).toList(), Stream.concat(ways.stream(), beaten.values().stream()).sorted(BEST).toList(), List.copyOf(byOffer));
    }

    /**
     * The same with all ways of an offer, whatever they are worth, since it stands already.
     *
     * @param setUp one of those of the seat
     */
    Found with(Found found, Offer setUp) {
        Set<String> there = found.ways().stream().map(way -> way.choice().id()).collect(Collectors.toSet());
        List<Way> more = found.byOffer().get(IntStream.range(0, at.offers().all().size()).filter(i -> at.offers().all().get(i) == setUp).findFirst().orElseThrow()).ways().stream()
                .filter(way -> !there.contains(way.choice().id())).toList();
        return more.isEmpty() ? found : new Found(Stream.concat(found.ways().stream(), more.stream()).sorted(BEST).toList(),
                Stream.concat(found.kinds().stream(), more.stream()).sorted(BEST).toList(), found.byOffer());
    }

    /** Empty where nothing here holds it or no unit is there. */
    private List<Way> of(Offer offer, int number, int workS, boolean borrowed) {
        List<Set<String>> stands = resources.standing(offer, at.source().body());
        if (stands == null) {
            return List.of();
        }
        List<Way> ways = new ArrayList<>();
        for (Map<String, Integer> takes : resources.units().ways(offer)) {
            for (List<Course> chosen : together(offer, borrowed)) {
                Map<String, Integer> all = new HashMap<>(takes);
                if (workS > 0) {
                    all.put(SetUpWork.CAP, workS);
                }
                List<Set<String>> anyOf = new ArrayList<>(stands);
                List<Feed> feeds = new ArrayList<>();
                long centipoints = offer.centipoints();
                for (Course course : chosen) {
                    course.takes().forEach((cap, count) -> all.merge(cap, count, Integer::sum));
                    anyOf.addAll(course.pads());
                    feeds.addAll(course.feeds());
                    centipoints += course.centipoints();
                }
                ways.add(new Way(new Choice("offer " + number + "." + ways.size(), Choice.Use.FULL, centipoints, all, feeds, anyOf), offer, chosen));
            }
        }
        return ways;
    }

    /** A course for each microphone; boosters in every line that wants one, or in none. */
    private List<List<Course>> together(Offer offer, boolean borrowed) {
        List<List<Course>> together = new ArrayList<>(List.of(List.of()));
        for (OfferedMic mic : offer.mics()) {
            List<Course> of = courses.of(mic, phantom, borrowed);
            together = together.stream().flatMap(before -> of.stream().map(course -> Stream.concat(before.stream(), Stream.of(course)).toList())).toList();
        }
        return together.stream().filter(chosen -> allBoosted(offer, chosen)).toList();
    }

    private boolean allBoosted(Offer offer, List<Course> chosen) {
        boolean any = chosen.stream().anyMatch(Course::boosted);
        for (int mic = 0; any && mic < chosen.size(); mic++) {
            if (!chosen.get(mic).boosted() && resources.wantsBooster(offer.mics().get(mic))) {
                return false;
            }
        }
        return true;
    }

    /** What phantom power is to a microphone. */
    static PhantomNeed phantom(MicType mic, boolean on) {
        return on ? PhantomNeed.NEEDED : mic.passiveRibbon() ? PhantomNeed.FORBIDDEN : PhantomNeed.ANY;
    }
}
