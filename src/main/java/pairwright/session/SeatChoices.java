package pairwright.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.Body;
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

    private final Resources resources;
    private final Courses courses;
    private final Body body;
    private final Function<Offer, Map<String, Integer>> work;
    private final boolean phantom;
    private final List<Way> ways = new ArrayList<>();
    private final Map<Demand, Long> best = new HashMap<>();
    private final Map<List<String>, Way> beaten = new LinkedHashMap<>();

    /**
     * One choice and what is behind it.
     *
     * @param offer null for leaving the seat out
     * @param courses from each microphone to its channels
     */
    record Way(Choice choice, Offer offer, List<Course> courses) {
        /** What sets it apart for whoever looks for another idea: its technique and its types, wherever they stand. */
        List<String> kind() {
            return offer == null ? List.of() : Stream.concat(Stream.of(offer.technique()), offer.mics().stream().map(mic -> mic.micType().id())).toList();
        }
    }

    private record Demand(Map<String, Integer> takes, List<Feed> feeds, List<Set<String>> anyOf) {
    }

    /**
     * @param body of the source; null where nobody noted it
     * @param offers best first
     * @param phantom whether the seat may have phantom power
     * @param leftOutCentipoints what it is worth to leave the seat out; null where it must be served
     * @param rangeCentipoints how much more a seat beside another can make of one offer than of another that takes the same; 0 for a seat that is
     *     judged by itself
     * @param setUp offers that are looked at whatever they are worth, since they stand already
     * @param work what setting an offer up takes of the caps
     */
    SeatChoices(Resources resources, Courses courses, Body body, List<Offer> offers, boolean phantom, Long leftOutCentipoints, long rangeCentipoints, Predicate<Offer> setUp,
            Function<Offer, Map<String, Integer>> work) {
        this.resources = resources;
        this.courses = courses;
        this.body = body;
        this.work = work;
        this.phantom = phantom;
        // a box of which there is none is reckoned with only where nothing else serves the seat, so that it is said to be short
        for (boolean borrowed = false; ; borrowed = true) {
            for (int i = 0; i < offers.size(); i++) {
                add(offers.get(i), i, rangeCentipoints, setUp.test(offers.get(i)), borrowed);
            }
            if (borrowed || !ways.isEmpty() || leftOutCentipoints != null) {
                break;
            }
        }
        if (leftOutCentipoints != null) {
            ways.add(leftOut(leftOutCentipoints));
        }
    }

    static Way leftOut(long centipoints) {
        return new Way(Choice.out(OUT, centipoints), null, List.of());
    }

    List<Way> ways() {
        return ways;
    }

    /** Of every kind the best of those that take no less than something better: none is in the best plan, but one may be what makes another plan. */
    Collection<Way> beaten() {
        return beaten.values();
    }

    private void add(Offer offer, int number, long rangeCentipoints, boolean setUp, boolean borrowed) {
        List<Set<String>> stands = resources.standing(offer, body);
        if (stands == null) {
            return; // no stand here holds it
        }
        Map<String, Integer> work = this.work.apply(offer);
        int way = 0;
        for (Map<String, Integer> takes : resources.units().ways(offer)) {
            for (List<Course> chosen : together(offer, borrowed)) {
                Map<String, Integer> all = new HashMap<>(takes);
                all.putAll(work);
                List<Set<String>> anyOf = new ArrayList<>(stands);
                List<Feed> feeds = new ArrayList<>();
                long centipoints = offer.centipoints();
                for (Course course : chosen) {
                    course.takes().forEach((cap, count) -> all.merge(cap, count, Integer::sum));
                    anyOf.addAll(course.pads());
                    feeds.addAll(course.feeds());
                    centipoints += course.centipoints();
                }
                long worth = centipoints;
                Long most = best.get(new Demand(all, feeds, anyOf));
                best.merge(new Demand(all, feeds, anyOf), worth, Math::max);
                Way one = new Way(new Choice("offer " + number + "." + way, Choice.Use.FULL, worth, all, feeds, anyOf), offer, chosen);
                if (setUp || most == null || worth > most || rangeCentipoints > 0 && worth >= most - rangeCentipoints) {
                    ways.add(one);
                } else {
                    beaten.merge(one.kind(), one, (before, after) -> after.choice().centipoints() > before.choice().centipoints() ? after : before);
                }
                way++;
            }
        }
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
