package pairwright.session.allocation;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The problem as the solver takes it. Each choice is a yes or no; what is maximised is {@code centipoints * 2^20 + tie}, where ties are a little of each choice's own, so that
 * among plans worth the same there is one that is meant.
 */
final class Formulation {
    static final int TIE_BITS = 20;

    /** Which choices may be chosen. */
    interface Allowed {
        boolean allows(int seat, int choice);
    }

    private final CpModel model = new CpModel();
    private final Problem problem;
    private final BoolVar[][] chosen;
    private final Map<Extra, IntVar> extras = new TreeMap<>();
    private final LinearExpr worth;
    private CapRows capRows;
    private ChannelRows channelRows;

    /** @param most how much the search may use of things beyond what there is */
    Formulation(Problem problem, Allowed allowed, Map<Extra, Integer> most) {
        this.problem = problem;
        chosen = new BoolVar[problem.seats().size()][];
        new TreeMap<>(most).forEach((extra, count) -> extras.put(extra, model.newIntVar(0, count, "extra " + extra.name())));
        addSeats(allowed);
        worth = addWorth();
        addTakes();
    }

    CpModel model() {
        return model;
    }

    /** By seat and choice; null where it may not be chosen. */
    BoolVar[][] chosen() {
        return chosen;
    }

    /** How much is used beyond what there is. */
    Map<Extra, IntVar> extras() {
        return extras;
    }

    /** What a plan is worth, with ties, as the solver counts it. */
    LinearExpr worth() {
        return worth;
    }

    /** How many of those seats get a choice of such a use. */
    LinearExpr count(Set<Integer> seats, Set<Choice.Use> uses) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int seat : new TreeSet<>(seats)) {
            for (int choice = 0; choice < chosen[seat].length; choice++) {
                if (chosen[seat][choice] != null && uses.contains(problem.seats().get(seat).choices().get(choice).use())) {
                    sum.add(chosen[seat][choice]);
                }
            }
        }
        return sum.build();
    }

    CapRows capRows() {
        return capRows;
    }

    ChannelRows channelRows() {
        return channelRows;
    }

    /** All that is taken of a cap; null where no choice that may be chosen can take of it. */
    LinearArgument taken(String cap) {
        return capRows.taken(cap);
    }

    /** How many of the channels of a group that can be had besides are used. */
    LinearExpr borrowedUsed(String group) {
        return channelRows.borrowedUsed(group);
    }

    /** A plan to begin from: what is set up, as far as it can still be. */
    void beginWith(Before before) {
        for (int seat = 0; seat < chosen.length; seat++) {
            Seat of = problem.seats().get(seat);
            for (int choice = 0; choice < chosen[seat].length; choice++) {
                if (chosen[seat][choice] != null && before.has(of.id(), of.choices().get(choice).id())) {
                    model.addHint(chosen[seat][choice], 1);
                }
            }
        }
    }

    /** A plan to begin from. */
    void beginWith(List<Integer> choices) {
        for (int seat = 0; seat < chosen.length; seat++) {
            for (int choice = 0; choice < chosen[seat].length; choice++) {
                if (chosen[seat][choice] != null) {
                    model.addHint(chosen[seat][choice], choice == choices.get(seat) ? 1 : 0);
                }
            }
        }
    }

    /** At least so many seats have another choice than these. */
    void differ(List<Integer> choices, int leastDifferent) {
        LinearExprBuilder same = LinearExpr.newBuilder();
        for (int seat = 0; seat < chosen.length; seat++) {
            if (chosen[seat][choices.get(seat)] != null) {
                same.add(chosen[seat][choices.get(seat)]);
            }
        }
        model.addLessOrEqual(same, chosen.length - leastDifferent);
    }

    private void addSeats(Allowed allowed) {
        for (int seat = 0; seat < chosen.length; seat++) {
            chosen[seat] = new BoolVar[problem.seats().get(seat).choices().size()];
            List<Literal> can = new ArrayList<>();
            for (int choice = 0; choice < chosen[seat].length; choice++) {
                if (allowed.allows(seat, choice)) {
                    chosen[seat][choice] = model.newBoolVar("x");
                    can.add(chosen[seat][choice]);
                }
            }
            model.addExactlyOne(can);
        }
    }

    private LinearExpr addWorth() {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int seat = 0; seat < chosen.length; seat++) {
            Seat of = problem.seats().get(seat);
            for (int choice = 0; choice < chosen[seat].length; choice++) {
                if (chosen[seat][choice] != null) {
                    sum.addTerm(chosen[seat][choice], (of.choices().get(choice).centipoints() << TIE_BITS) + tie(of, of.choices().get(choice), chosen.length));
                }
            }
        }
        problem.kept().stream().filter(kept -> chosen[kept.seat()][kept.choice()] != null)
                .forEach(kept -> sum.addTerm(chosen[kept.seat()][kept.choice()], kept.centipoints() << TIE_BITS));
        PairRows pairs = new PairRows(model, chosen);
        problem.pairs().forEach(pair -> pairs.add(pair, sum, 1L << TIE_BITS));
        return sum.build();
    }

    private void addTakes() {
        BankClasses banks = new BankClasses(problem);
        Map<String, LinearExprBuilder> taken = new TreeMap<>();
        Map<Set<String>, LinearExprBuilder> pooled = new LinkedHashMap<>();
        Map<FeedKind, LinearExprBuilder> wanted = new LinkedHashMap<>();
        for (int seat = 0; seat < chosen.length; seat++) {
            for (int choice = 0; choice < chosen[seat].length; choice++) {
                BoolVar x = chosen[seat][choice];
                if (x != null) {
                    Choice of = problem.seats().get(seat).choices().get(choice);
                    of.takes().forEach((cap, count) -> taken.computeIfAbsent(cap, any -> LinearExpr.newBuilder()).addTerm(x, count));
                    of.anyOf().forEach(anyOf -> pooled.computeIfAbsent(anyOf, any -> LinearExpr.newBuilder()).add(x));
                    of.feeds().forEach(feed -> wanted.computeIfAbsent(FeedKind.of(feed, banks), any -> LinearExpr.newBuilder()).add(x));
                }
            }
        }
        capRows = new CapRows(model, problem.caps(), taken, pooled, extras);
        channelRows = new ChannelRows(model, problem, banks, wanted, extras);
    }

    /** From 0 to less than 2^20 over the number of seats, by the names alone, so that no order of a list decides. */
    private static long tie(Seat seat, Choice choice, int seats) {
        return Long.remainderUnsigned(mixed(seat.id().hashCode() * 0x1_0000_01L ^ mixed(choice.id().hashCode())), (1L << TIE_BITS) / Math.max(1, seats));
    }

    private static long mixed(long bits) {
        long mixed = (bits ^ bits >>> 30) * 0xbf58476d1ce4e5b9L;
        mixed = (mixed ^ mixed >>> 27) * 0x94d049bb133111ebL;
        return mixed ^ mixed >>> 31;
    }
}
