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
import java.util.TreeSet;
import java.util.stream.Collectors;

/** No more of a cap is taken than there is; what may come from one of several comes from one of them. */
final class CapRows {
    static final int MANY = 10_000;

    /** @param count how many of those that may come from any of a set come from this one */
    record Flow(Set<String> anyOf, String cap, IntVar count) {
    }

    private final List<Flow> flows = new ArrayList<>();
    private final Map<String, LinearExprBuilder> taken;

    /**
     * @param taken by cap, what is taken of it and of no other
     * @param pooled by set of caps, how many are taken of any of them
     * @param extras how many can be had besides
     */
    CapRows(CpModel model, List<Cap> caps, Map<String, LinearExprBuilder> taken, Map<Set<String>, ? extends LinearArgument> pooled, Map<Extra, IntVar> extras) {
        this.taken = taken;
        Map<String, Cap> byName = caps.stream().collect(Collectors.toMap(Cap::name, cap -> cap));
        pooled.forEach((anyOf, count) -> {
            LinearExprBuilder sum = LinearExpr.newBuilder();
            for (String cap : new TreeSet<>(anyOf)) {
                Flow flow = new Flow(anyOf, cap, model.newIntVar(0, extras.containsKey(extra(cap)) ? MANY : byName.get(cap).there(), "pool " + flows.size()));
                flows.add(flow);
                sum.add(flow.count());
                taken.computeIfAbsent(cap, any -> LinearExpr.newBuilder()).add(flow.count());
            }
            model.addEquality(sum, count);
        });
        for (Cap cap : caps) {
            LinearExprBuilder sum = taken.get(cap.name());
            IntVar more = extras.get(extra(cap.name()));
            if (sum != null && more == null) {
                model.addLessOrEqual(sum, cap.there());
            } else if (sum != null) {
                model.addLessOrEqual(sum, LinearExpr.affine(more, 1, cap.there()));
            }
        }
    }

    private static Extra extra(String cap) {
        return new Extra(Shortage.Kind.CAP, cap);
    }

    List<Flow> flows() {
        return flows;
    }

    /** All that is taken of a cap; null where nothing can be. */
    LinearArgument taken(String cap) {
        return taken.get(cap);
    }
}
