package pairwright.session.allocation;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToLongFunction;
import pairwright.locker.PhantomSwitch;

/** How many feeds of each kind are served by each group of channels of each class of banks, and how many banks of a class are live. */
final class ChannelRows {
    /** @param bankClass index; that of one beyond the last stands for borrowed channels */
    record Flow(FeedKind kind, int bankClass, String group, IntVar count) {
    }

    private final CpModel model;
    private final List<BankClasses.BankClass> classes;
    private final List<Flow> flows = new ArrayList<>();
    /** How many banks of each class are live; null where they have not one switch. */
    private final List<IntVar> live = new ArrayList<>();

    /**
     * @param wanted how many feeds there are of each kind
     * @param extras channels with a switch of their own, and current, that can be had besides
     */
    ChannelRows(CpModel model, Problem problem, BankClasses banks, Map<FeedKind, ? extends LinearArgument> wanted, Map<Extra, IntVar> extras) {
        this.model = model;
        this.classes = banks.all();
        for (int index = 0; index < classes.size(); index++) {
            BankClasses.BankClass one = classes.get(index);
            for (FeedKind kind : wanted.keySet()) {
                for (Map.Entry<String, Integer> group : one.channels().entrySet()) {
                    if (one.serves(kind, group.getKey())) {
                        flow(kind, index, group.getKey(), group.getValue() * one.times());
                    }
                }
            }
            live.add(one.phantom() == PhantomSwitch.BANK ? model.newIntVar(0, one.times(), "live " + index) : null);
            addBank(index, one, extras.get(new Extra(Shortage.Kind.CURRENT, problem.banks().get(one.members().get(0)).name())));
            if (index > 0 && one.isTwinOf(classes.get(index - 1)) && extras.keySet().stream().noneMatch(extra -> extra.kind() == Shortage.Kind.CURRENT)) {
                addTwins(index - 1, index);
            }
        }
        extras.forEach((extra, count) -> {
            if (extra.kind() == Shortage.Kind.CHANNELS) {
                addBorrowed(extra.name(), wanted.keySet(), count);
            }
        });
        wanted.forEach((kind, count) -> model.addEquality(sum(flow -> flow.kind().equals(kind) ? 1 : 0), count));
    }

    private void addBorrowed(String group, Set<FeedKind> kinds, IntVar count) {
        kinds.stream().filter(kind -> kind.groups().contains(group)).forEach(kind -> flow(kind, classes.size(), group, CapRows.MANY));
        model.addLessOrEqual(borrowedUsed(group), count);
    }

    List<Flow> flows() {
        return flows;
    }

    List<IntVar> live() {
        return live;
    }

    /** How many channels of a group are used that can be had besides. */
    LinearExpr borrowedUsed(String group) {
        return sum(flow -> isIn(flow, classes.size(), group) ? 1 : 0);
    }

    private void flow(FeedKind kind, int bankClass, String group, int most) {
        flows.add(new Flow(kind, bankClass, group, model.newIntVar(0, most, "flow " + flows.size())));
    }

    private void addBank(int index, BankClasses.BankClass one, IntVar extraTenthMa) {
        one.channels().forEach((group, count) -> {
            model.addLessOrEqual(sum(flow -> isIn(flow, index, group) ? 1 : 0), (long) count * one.times());
            if (live.get(index) != null) {
                model.addLessOrEqual(sum(flow -> isIn(flow, index, group) && flow.kind().phantom() == PhantomNeed.NEEDED ? 1 : 0), LinearExpr.term(live.get(index), count));
                model.addLessOrEqual(sum(flow -> isIn(flow, index, group) && flow.kind().phantom() == PhantomNeed.FORBIDDEN ? 1 : 0),
                        LinearExpr.affine(live.get(index), -count, (long) count * one.times()));
            }
        });
        if (one.supplyTenthMa() != null) {
            model.addLessOrEqual(drawn(index), extraTenthMa == null ? LinearExpr.constant(one.supplyTenthMa()) : LinearExpr.affine(extraTenthMa, 1, one.supplyTenthMa()));
        }
    }

    /** Of two banks that are the same, the first is live before the second and gives no less. */
    private void addTwins(int first, int second) {
        if (live.get(first) != null) {
            model.addGreaterOrEqual(live.get(first), live.get(second));
        }
        model.addGreaterOrEqual(drawn(first), drawn(second));
    }

    private LinearExpr drawn(int index) {
        return sum(flow -> flow.bankClass() == index ? flow.kind().drawTenthMa() : 0);
    }

    private static boolean isIn(Flow flow, int index, String group) {
        return flow.bankClass() == index && flow.group().equals(group);
    }

    private LinearExpr sum(ToLongFunction<Flow> weight) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (Flow flow : flows) {
            long times = weight.applyAsLong(flow);
            if (times != 0) {
                sum.addTerm(flow.count(), times);
            }
        }
        return sum.build();
    }
}
