package pairwright.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import pairwright.session.allocation.Choice;
import pairwright.session.allocation.Problem;
import pairwright.session.allocation.Seat;

/**
 * Sees that a change can be done in the time there is. What has to be patched anew is known only once a plan is there: what that takes is charged to the set-up
 * that brought it about, and the plan is to be looked for again.
 */
final class InTime {
    private final SetUpWork work;
    /** What a choice takes beside what it seemed to, in seconds, by seat and choice. */
    private final Map<List<String>, Integer> besides = new HashMap<>();

    InTime(SetUpWork work) {
        this.work = work;
    }

    /** The problem with all that is known by now. */
    Problem known(Problem problem) {
        if (besides.isEmpty()) {
            return problem;
        }
        List<Seat> seats = problem.seats().stream().map(seat -> new Seat(seat.id(), seat.must(), seat.choices().stream().map(choice -> known(seat.id(), choice)).toList())).toList();
        return new Problem(seats, problem.caps(), problem.banks(), problem.pairs(), problem.kept(), problem.channelPrices());
    }

    private Choice known(String seat, Choice choice) {
        Integer more = besides.get(List.of(seat, choice.id()));
        if (more == null) {
            return choice;
        }
        Map<String, Integer> takes = new HashMap<>(choice.takes());
        takes.merge(SetUpWork.CAP, more, Integer::sum);
        return new Choice(choice.id(), choice.use(), choice.centipoints(), takes, choice.feeds(), choice.anyOf());
    }

    /** Whether it can be done in time; where not, that is known from now on. */
    boolean holds(Change change, List<AtSeat> seats, List<SeatChoices.Way> ways) {
        if (work.overS(change.pressingS()) == 0) {
            return true;
        }
        List<Integer> changed = new ArrayList<>();
        for (int seat = 0; seat < ways.size(); seat++) {
            if (ways.get(seat).offer() != null && work.workS(ways.get(seat)) > 0) {
                changed.add(seat);
            }
        }
        // whoever is changed for more than it seemed, else whoever is changed at all, else whoever is touched
        int blamed = changed.stream().filter(seat -> unforeseenS(change, seats.get(seat), ways.get(seat)) > 0).findFirst()
                .or(() -> changed.stream().findFirst())
                .orElseGet(() -> IntStream.range(0, ways.size()).filter(seat -> unforeseenS(change, seats.get(seat), ways.get(seat)) > 0).findFirst().orElse(0));
        int reckonedS = work.workS(ways) + besides(seats, ways);
        besides.merge(List.of(seats.get(blamed).seat().id(), ways.get(blamed).choice().id()), (int) Math.ceil(change.pressingS()) - reckonedS, Integer::sum);
        return false;
    }

    private int besides(List<AtSeat> seats, List<SeatChoices.Way> ways) {
        int sum = 0;
        for (int seat = 0; seat < ways.size(); seat++) {
            sum += besides.getOrDefault(List.of(seats.get(seat).seat().id(), ways.get(seat).choice().id()), 0);
        }
        return sum;
    }

    private double unforeseenS(Change change, AtSeat at, SeatChoices.Way way) {
        return change.steps().stream().filter(step -> at.seat().id().equals(step.seat()) && !step.kind().equals(Steps.STRIKE)).mapToDouble(Change.Step::timeS).sum() - work.workS(way);
    }
}
