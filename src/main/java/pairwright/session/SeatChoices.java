package pairwright.session;

import java.util.ArrayList;
import java.util.HashMap;
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
    private final Body body;
    private final Function<Offer, Map<String, Integer>> work;
    private final List<Way> ways = new ArrayList<>();
    private final Map<Demand, Long> best = new HashMap<>();

    /**
     * One choice and what is behind it.
     *
     * @param offer null for leaving the seat out
     * @param boosted whether an inline booster is in the line, for each microphone
     */
    record Way(Choice choice, Offer offer, List<Boolean> boosted) {
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
     * @param leftOutCentipoints what it is worth to leave the seat out; null where it must be served
     * @param rangeCentipoints how much more a seat beside another can make of one offer than of another that takes the same; 0 for a seat that is
     *     judged by itself
     * @param setUp offers that are looked at whatever they are worth, since they stand already
     * @param work what setting an offer up takes of the caps
     */
    SeatChoices(Resources resources, Body body, List<Offer> offers, Long leftOutCentipoints, long rangeCentipoints, Predicate<Offer> setUp,
            Function<Offer, Map<String, Integer>> work) {
        this.resources = resources;
        this.body = body;
        this.work = work;
        for (int i = 0; i < offers.size(); i++) {
            add(offers.get(i), i, rangeCentipoints, setUp.test(offers.get(i)));
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

    private void add(Offer offer, int number, long rangeCentipoints, boolean setUp) {
        List<Set<String>> stands = resources.standing(offer, body);
        if (stands == null) {
            return; // no stand here holds it
        }
        Map<String, Integer> work = this.work.apply(offer);
        int way = 0;
        for (Map<String, Integer> takes : resources.units().ways(offer)) {
            for (List<Boolean> boosted : boosts(offer)) {
                Map<String, Integer> all = new HashMap<>(takes);
                all.putAll(work);
                int boosters = (int) boosted.stream().filter(one -> one).count();
                if (boosters > 0) {
                    all.put(Resources.BOOSTERS, boosters);
                }
                List<Feed> feeds = feeds(offer, boosted);
                Demand demand = new Demand(all, feeds, stands);
                Long most = best.putIfAbsent(demand, offer.centipoints());
                if (setUp || most == null || rangeCentipoints > 0 && offer.centipoints() >= most - rangeCentipoints) {
                    ways.add(new Way(new Choice("offer " + number + "." + way, Choice.Use.FULL, offer.centipoints(), all, feeds, stands), offer, boosted));
                }
                way++;
            }
        }
    }

    /** Without boosters; and with one in each line that has none too much gain, where there are boosters for all of them. */
    private List<List<Boolean>> boosts(Offer offer) {
        List<Boolean> none = offer.mics().stream().map(mic -> false).toList();
        List<Boolean> low = offer.mics().stream().map(mic -> resources.wantsBooster(mic)).toList();
        return low.contains(true) ? List.of(none, low) : List.of(none);
    }

    private List<Feed> feeds(Offer offer, List<Boolean> boosted) {
        List<Feed> feeds = new ArrayList<>();
        for (int i = 0; i < offer.mics().size(); i++) {
            OfferedMic mic = offer.mics().get(i);
            for (int channel = 0; channel < mic.micType().channels(); channel++) {
                feeds.addAll(resources.feed(mic, boosted.get(i)));
            }
        }
        return feeds;
    }

    /** What phantom power is to a microphone. */
    static PhantomNeed phantom(MicType mic, boolean on) {
        return on ? PhantomNeed.NEEDED : mic.passiveRibbon() ? PhantomNeed.FORBIDDEN : PhantomNeed.ANY;
    }
}
