package pairwright.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pairwright.advice.Knowledge;
import pairwright.advice.Offer;
import pairwright.advice.Offers;
import pairwright.model.Catalogue;
import pairwright.model.Question;
import pairwright.model.Setup;
import pairwright.session.allocation.Channel;
import pairwright.session.allocation.Choice;
import pairwright.session.allocation.Solution;

/**
 * Plans that somebody made by hand, whether or not a search would have them so: judged by the same rules. Units, stands, boosters, boxes and pads are not
 * counted; channels are those that are named. Not safe to share between threads.
 */
public final class StoodPlan {
    private final LineUp lineUp;
    private final Gear gear;
    private final Knowledge now;
    private final PlanRules rules;

    /**
     * @param lineUp without faults, see {@link LineUpCheck}
     * @param channels there are
     */
    public StoodPlan(LineUp lineUp, List<Gear.Channel> channels, Knowledge now) {
        this.lineUp = lineUp;
        this.gear = new Gear(null, channels, null, null, null);
        this.now = now;
        this.rules = new PlanRules(now.rules(), now.catalogue());
    }

    /**
     * What is put in front of a seat.
     *
     * @param seat id
     * @param of where the offer is from
     * @param offer one of them
     * @param channels ids, one for each channel that the offer takes
     */
    public record Put(String seat, Offers of, Offer offer, List<String> channels) {
        public Put {
            channels = List.copyOf(channels);
        }
    }

    /**
     * Set-ups at a seat, judged where it is and beside whom, in the order given.
     *
     * @throws pairwright.advice.UnusableQuestion for a set-up that cannot be
     */
    public Offers stood(String seat, List<Setup> setups) {
        return Offers.stood(question(seat), catalogue(seat), now, surroundings(seat), setups);
    }

    private Seat seat(String id) {
        return lineUp.seat(id).orElseThrow(() -> new IllegalArgumentException("there is no seat \"" + id + "\""));
    }

    private Catalogue catalogue(String seat) {
        return Altered.of(now.catalogue(), lineUp, seat(seat));
    }

    private Question question(String seat) {
        return SeatQuestion.of(seat(seat), catalogue(seat));
    }

    private FloorSurroundings surroundings(String seat) {
        return FloorSurroundings.of(lineUp, seat(seat), now.catalogue());
    }

    /**
     * All of it as a plan, with what the rules say; how long it takes and what it uses up is left out.
     *
     * @param all in the order of the line-up
     * @param live ids of channels on which phantom power is on, wanted or not; where it is wanted it is taken to be on
     * @throws IllegalArgumentException for a channel that there is not
     */
    public Plan plan(List<Put> all, Collection<String> live) {
        Resources resources = new Resources(gear, Set.of(), Set.of(), now.catalogue());
        List<AtSeat> seats = new ArrayList<>();
        List<SeatChoices.Way> ways = new ArrayList<>();
        List<List<Channel>> channels = new ArrayList<>();
        Map<String, Picks.AtSeat> standing = new HashMap<>();
        for (Put put : all) {
            seats.add(new AtSeat(seat(put.seat()), catalogue(put.seat()), surroundings(put.seat()), put.of()));
            ways.add(new SeatChoices.Way(new Choice("by hand", Choice.Use.FULL, put.offer().centipoints(), Map.of(), List.of(), List.of()), put.offer(),
                    put.offer().mics().stream().map(mic -> new Course(false, null, null, false, false, Map.of(), List.of(), List.of(), 0)).toList()));
            channels.add(put.channels().stream().map(id -> at(resources, id)).toList());
            // what stands stays on the channels that are named
            standing.put(put.seat(), new Picks.AtSeat(put.seat(), put.offer().technique(), put.offer().mics().stream().map(mic -> new Picks.Mic(mic.micType().id(), mic.pattern(),
                    mic.position().id(), mic.distanceM(), mic.aimDegrees(), null, null, null, null, null, null)).toList()));
        }
        Set<Integer> liveBanks = new HashSet<>();
        live.forEach(id -> liveBanks.add(at(resources, id).bank()));
        PlanMaker.Draft draft = new PlanMaker(lineUp, seats, resources, standing).draft(ways,
                new Solution(ways.stream().map(way -> 0).toList(), 0, 0, false, 0, false, channels, ways.stream().map(way -> List.<String>of()).toList(), liveBanks));
        Plan plan = new Plan(1, 0, false, 0, draft.served(), draft.leftOut(), draft.lines(), Hearing.of(lineUp, now.catalogue()).of(draft.lines()),
                Arrivals.of(lineUp, now.catalogue()).of(draft.served(), draft.lines()), List.of(), List.of(),
                SetUpWork.fromNothing(null, now.catalogue().tasks()).of(draft.lines()), List.of(), List.of(), List.of());
        return rules.judged(plan, lineUp, gear, now.catalogue());
    }

    private static Channel at(Resources resources, String id) {
        Channel at = resources.channels().at(id);
        if (at == null) {
            throw new IllegalArgumentException("there is no channel \"" + id + "\"");
        }
        return at;
    }
}
