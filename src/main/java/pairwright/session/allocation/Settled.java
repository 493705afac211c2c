package pairwright.session.allocation;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Where what was chosen comes from: how many feeds of a kind go to which channels, which of several caps serves. As few banks as can be are live; among
 * what is left, one way is meant, which does not depend on how the choices were found. It is sought for a while only.
 */
final class Settled {
    private static final long LIVE = 1L << 40;
    /** Work after which the way that was found with the choices will do: where supplies are short, the one that is meant may be hard to find. */
    private static final double ENOUGH = 0.05;

    /** @param count above 0 */
    record Feeds(FeedKind kind, int bankClass, String group, int count) {
    }

    private final BankClasses banks;
    private final List<Feeds> feeds = new ArrayList<>();
    private final List<Integer> live = new ArrayList<>();
    private final Map<Set<String>, Map<String, Integer>> pools = new LinkedHashMap<>();

    /**
     * @param choices for each seat
     * @param found in which they were found, with nothing to be had besides what there is
     * @param first what was found, of which the way is taken where the one that is meant is not found soon
     */
    Settled(Problem problem, List<Choice> choices, Solver solver, Formulation found, Solver.Run first) {
        banks = new BankClasses(problem);
        CpModel model = new CpModel();
        Map<String, LinearExprBuilder> taken = new TreeMap<>();
        Map<Set<String>, LinearExprBuilder> pooled = new LinkedHashMap<>();
        Map<FeedKind, LinearExprBuilder> wanted = new LinkedHashMap<>();
        for (Choice choice : choices) {
            choice.takes().forEach((cap, count) -> taken.computeIfAbsent(cap, any -> LinearExpr.newBuilder()).add(count));
            choice.anyOf().forEach(anyOf -> pooled.computeIfAbsent(anyOf, any -> LinearExpr.newBuilder()).add(1));
            choice.feeds().forEach(feed -> wanted.computeIfAbsent(FeedKind.of(feed, banks), any -> LinearExpr.newBuilder()).add(1));
        }
        CapRows caps = new CapRows(model, problem.caps(), taken, pooled, Map.of());
        ChannelRows channels = new ChannelRows(model, problem, banks, wanted, Map.of());
        LinearExprBuilder cost = LinearExpr.newBuilder();
        channels.live().stream().filter(count -> count != null).forEach(count -> cost.addTerm(count, LIVE));
        int rank = 1;
        for (ChannelRows.Flow flow : channels.flows()) {
            cost.addTerm(flow.count(), rank(rank++));
        }
        for (CapRows.Flow flow : caps.flows()) {
            cost.addTerm(flow.count(), rank(rank++));
        }
        model.minimize(cost);
        Solver.Run run = solver.run(model, ENOUGH);
        if (run.found()) {
            read(channels, caps, run);
        } else {
            read(found.channelRows(), found.capRows(), first);
        }
    }

    private void read(ChannelRows channels, CapRows caps, Solver.Run run) {
        for (ChannelRows.Flow flow : channels.flows()) {
            int count = (int) run.values().value(flow.count());
            if (count > 0) {
                feeds.add(new Feeds(flow.kind(), flow.bankClass(), flow.group(), count));
            }
        }
        channels.live().forEach(count -> live.add(count == null ? 0 : (int) run.values().value(count)));
        for (CapRows.Flow flow : caps.flows()) {
            pools.computeIfAbsent(flow.anyOf(), any -> new TreeMap<>()).put(flow.cap(), (int) run.values().value(flow.count()));
        }
    }

    BankClasses banks() {
        return banks;
    }

    List<Feeds> feeds() {
        return feeds;
    }

    /** How many banks of each class are live; 0 where they have not one switch. */
    List<Integer> live() {
        return live;
    }

    /** Which cap serves each entry of each choice, in the order of the seats. */
    List<List<String>> served(List<Choice> choices) {
        List<List<String>> served = new ArrayList<>();
        for (Choice choice : choices) {
            List<String> of = new ArrayList<>();
            for (Set<String> anyOf : choice.anyOf()) {
                String cap = pools.get(anyOf).entrySet().stream().filter(left -> left.getValue() > 0).findFirst().orElseThrow().getKey();
                pools.get(anyOf).merge(cap, -1, Integer::sum);
                of.add(cap);
            }
            served.add(of);
        }
        return served;
    }

    /** Grows, so that what comes first is preferred, and unevenly, so that hardly two ways are alike. */
    private static long rank(long place) {
        return place * 4096 + place * place * 2_654_435_761L % 4093;
    }
}
