package pairwright.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import pairwright.advice.Offer;
import pairwright.advice.OfferedMic;
import pairwright.model.Stock;
import pairwright.model.Task;
import pairwright.session.allocation.Cap;
import pairwright.session.allocation.Problem;

/**
 * The work of setting up, as the search reckons with it: what a seat takes in seconds of one pair of hands, by the same tasks as the steps of a change.
 * From nothing that is exact. Of a change it is as long as what stands stays on its channels and units: what the search patches otherwise is seen afterwards.
 */
final class SetUpWork {
    static final String CAP = "seconds of set-up work";
    /** More than any plan takes. */
    static final int ANY_TIME_S = 1_000_000;
    /** Another unit or channel than the one that was there, whichever. */
    private static final String ANOTHER = "";

    private final SetUpTime time;
    private final Map<String, Task> tasks;
    private final Map<String, Picks.AtSeat> standing;
    private final Set<String> units;
    private final Set<String> channels;
    /** Set aside before anything is planned: the wait with phantom power off, wherever something stands. */
    private final int heldS;

    private SetUpWork(SetUpTime time, Map<String, Task> tasks, Map<String, Picks.AtSeat> standing, Set<String> units, Set<String> channels, int heldS) {
        this.time = time;
        this.tasks = tasks;
        this.standing = standing;
        this.units = units;
        this.channels = channels;
        this.heldS = heldS;
    }

    /** @param time null for as long as it takes */
    static SetUpWork fromNothing(SetUpTime time, Map<String, Task> tasks) {
        return new SetUpWork(time, tasks, Map.of(), Set.of(), Set.of(), 0);
    }

    /**
     * What is left to be done where something stands. What is only taken away can wait, and takes nothing of the time.
     *
     * @param left who is still there
     * @param rest what is still there
     * @param before what stands
     */
    static SetUpWork since(LineUp left, Map<String, Task> tasks, Gear rest, Picks before, Lost lost) {
        Map<String, Picks.AtSeat> standing = new HashMap<>();
        before.seats().forEach(seat -> standing.put(seat.seat(), seat));
        Set<String> units = rest.stock() == null ? null : rest.stock().units().stream().filter(Stock.Held::free).map(Stock.Held::id).collect(Collectors.toSet());
        Set<String> channels = rest.channels() == null ? null : rest.channels().stream().map(Gear.Channel::id).collect(Collectors.toCollection(HashSet::new));
        if (channels != null) {
            lost.channels().forEach(channels::remove);
        }
        return new SetUpWork(left.setUp() == null ? null : left.setUp().less(lost.minutes()), tasks, standing, units, channels, timeS(tasks, Steps.POWER_DOWN));
    }

    /** Null for as long as it takes. */
    SetUpTime time() {
        return time;
    }

    /** What a plan takes from nothing; where something stands that is measured against no limit. */
    Plan.SetUp of(List<Line> lines) {
        SetUpTime limit = heldS > 0 ? null : time;
        return new Plan.SetUp(limit == null ? null : limit.minutes(), limit == null ? null : limit.hands(), lines.size() * tasks.get(Steps.SET_UP).timeS().typical());
    }

    /** What all that is chosen takes. */
    int workS(List<SeatChoices.Way> ways) {
        return heldS + ways.stream().mapToInt(this::workS).sum();
    }

    /** What one seat takes, as it seems. */
    int workS(SeatChoices.Way way) {
        return way.choice().takes().getOrDefault(CAP, 0);
    }

    /**
     * All that the work at one seat follows from, beside the offer.
     *
     * @param was what stands; null for nothing
     * @param units of it that are still there, ANOTHER for each that is not, null for each where they are not counted
     * @param channels likewise
     */
    private record Left(Picks.AtSeat was, List<String> units, List<String> channels) {
    }

    /** What is equal for as long as the same work is left at a seat, whatever is offered; null where there is no limit. */
    Object left(String seat) {
        Picks.AtSeat was = standing.get(seat);
        List<Picks.Mic> mics = was == null ? List.of() : was.mics();
        return time == null ? null : new Left(was, mics.stream().map(mic -> still(units, mic.unit())).toList(), mics.stream().map(mic -> still(channels, mic.channel())).toList());
    }

    /** What setting an offer up at a seat takes, seconds of one pair of hands; 0 where there is no limit. */
    int workS(String seat, Offer offer) {
        if (time == null) {
            return 0;
        }
        Picks.AtSeat was = standing.get(seat);
        List<Picks.Mic> before = was == null ? List.of() : was.mics();
        return Steps.tasks(before, lines(offer, before)).stream().filter(task -> !task.equals(Steps.STRIKE)).mapToInt(task -> timeS(tasks, task)).sum();
    }

    private static int timeS(Map<String, Task> tasks, String task) {
        return (int) Math.ceil(tasks.get(task).timeS().typical());
    }

    private List<Picks.Mic> lines(Offer offer, List<Picks.Mic> before) {
        List<Picks.Mic> lines = new ArrayList<>();
        for (OfferedMic mic : offer.mics()) {
            for (int half = 0; half < mic.micType().channels(); half++) {
                Picks.Mic was = lines.size() < before.size() ? before.get(lines.size()) : null;
                lines.add(new Picks.Mic(mic.micType().id(), mic.pattern(), mic.position().id(), mic.distanceM(), mic.aimDegrees(),
                        was == null ? null : unit(mic, was), was == null ? null : still(channels, was.channel()), null, null, null, null));
            }
        }
        return lines;
    }

    private String unit(OfferedMic mic, Picks.Mic was) {
        boolean may = mic.unit() != null ? mic.unit().equals(was.unit()) : mic.units().isEmpty() || mic.units().contains(was.unit());
        return may ? still(units, was.unit()) : ANOTHER;
    }

    /** Null where such things are not counted. */
    private static String still(Set<String> there, String id) {
        return there == null ? null : there.contains(Objects.requireNonNullElse(id, ANOTHER)) ? id : ANOTHER;
    }

    List<Cap> caps() {
        return time == null ? List.of() : List.of(new Cap(CAP, Math.max(0, time.workS() - heldS), 0));
    }

    static boolean isCap(String name) {
        return CAP.equals(name);
    }

    /** What of the time is set aside before anything is planned, seconds of one pair of hands. */
    int heldS() {
        return heldS;
    }

    /** By how much work takes longer than there is; 0 where it does not. */
    int overS(double workS) {
        return time == null ? 0 : (int) Math.max(0, Math.ceil(workS - time.workS()));
    }

    /** A problem with another amount of work that can be done; what is set aside of it is still to be taken off. */
    Problem within(Problem problem, int workS) {
        return time == null ? problem : new Problem(problem.seats(), problem.caps().stream().map(cap -> isCap(cap.name()) ? new Cap(CAP, Math.max(0, workS - heldS), cap.price()) : cap).toList(),
                problem.banks(), problem.pairs(), problem.kept(), problem.channelPrices());
    }

    /** The most that any plan of some ways takes, seconds of one pair of hands. */
    int mostS(List<List<SeatChoices.Way>> ways) {
        return heldS + ways.stream().mapToInt(of -> of.stream().mapToInt(this::workS).max().orElse(0)).sum();
    }
}
