package pairwright.session.allocation;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Seats that a plan has to serve: those that must be served, and those that cannot be left out. */
final class Needful {
    private Needful() {
    }

    static Set<Integer> seats(Problem problem) {
        Set<Integer> needful = new TreeSet<>();
        for (int seat = 0; seat < problem.seats().size(); seat++) {
            if (problem.seats().get(seat).must() || !canBeLeftOut(problem.seats().get(seat))) {
                needful.add(seat);
            }
        }
        return needful;
    }

    /** The problem with a choice of nothing at the end of each seat that has none. */
    static Problem canBeLeftOut(Problem problem) {
        return new Problem(problem.seats().stream().map(seat -> canBeLeftOut(seat) ? seat : new Seat(seat.id(), seat.must(), withOut(seat.choices()))).toList(),
                problem.caps(), problem.banks(), problem.pairs(), problem.kept(), problem.channelPrices());
    }

    private static boolean canBeLeftOut(Seat seat) {
        return seat.choices().stream().anyMatch(choice -> choice.use() == Choice.Use.OUT);
    }

    private static List<Choice> withOut(List<Choice> choices) {
        List<Choice> all = new ArrayList<>(choices);
        all.add(Choice.out("left out", 0));
        return all;
    }
}
