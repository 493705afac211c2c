package pairwright.session.allocation;

import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What one more of each thing is worth. Only a plan that uses the one more, and is better than the best without, is asked for, so that most things are soon known to be worth
 * nothing; those of which all are in use come first.
 */
final class OneMore {
    private final Problem problem;
    private final Search search;
    private final Search.Latitude latitude;
    private final Set<Integer> needful;
    private final Map<Extra, Integer> most;
    private final int served;
    private final Solution now;

    OneMore(Problem given, Limits limits) {
        Optional<Solution> best = new Search(given, limits).best(List.of(), 0);
        problem = best.isPresent() ? given : Needful.canBeLeftOut(given);
        needful = Needful.seats(given);
        search = new Search(problem, limits);
        most = Extra.most(problem);
        latitude = best.isPresent() ? Search.Latitude.NONE : new Search.Latitude(needful, false);
        if (best.isPresent()) {
            now = best.get();
            served = needful.size();
        } else {
            Formulation formulation = search.formulated(latitude, Map.of());
            LinearExpr count = formulation.count(needful, Search.SERVED);
            served = (int) search.most(formulation, count).orElseThrow().values().value(count);
            formulation.model().addEquality(count, served);
            now = search.bestOf(formulation, latitude).orElseThrow();
        }
    }

    List<Gain> gains(Progress progress) {
        Map<Extra, Integer> used = used();
        List<Extra> asked = new ArrayList<>(most.keySet());
        asked.removeIf(extra -> extra.kind() == Shortage.Kind.CURRENT);
        asked.sort(Comparator.comparing((Extra extra) -> extra.there(problem) - used.getOrDefault(extra, 0)).thenComparing(extra -> extra));
        List<Gain> gains = new ArrayList<>();
        for (Extra extra : asked) {
            if (progress.isStopped()) {
                break;
            }
            gains.add(gain(extra));
            progress.known(gains.get(gains.size() - 1), gains.size(), asked.size());
        }
        return gains;
    }

    private Gain gain(Extra extra) {
        if (most.get(extra) <= extra.there(problem)) {
            return new Gain(extra.kind(), extra.name(), 0, 0, true);
        }
        try {
            if (served < needful.size()) {
                Formulation formulation = with(extra);
                LinearExpr count = formulation.count(needful, Search.SERVED);
                formulation.model().addGreaterThan(count, served);
                Optional<Solver.Run> run = search.most(formulation, count);
                if (run.isPresent()) {
                    long now = run.get().values().value(count);
                    formulation.model().addEquality(count, now);
                    return better(extra, (int) now - served, run.get().proven(), search.most(formulation, formulation.worth()).orElseThrow(), formulation);
                }
            }
            Formulation formulation = with(extra);
            formulation.model().addEquality(formulation.count(needful, Search.SERVED), served);
            formulation.model().addGreaterOrEqual(formulation.worth(), (now.centipoints() + 1) << Formulation.TIE_BITS);
            return search.most(formulation, formulation.worth()).map(run -> better(extra, 0, true, run, formulation)).orElse(new Gain(extra.kind(), extra.name(), 0, 0, now.proven()));
        } catch (NotDecided unknown) {
            return new Gain(extra.kind(), extra.name(), 0, 0, false);
        }
    }

    private Gain better(Extra extra, int moreServed, boolean proven, Solver.Run run, Formulation formulation) {
        long worth = Math.floorDiv(run.values().value(formulation.worth()), 1L << Formulation.TIE_BITS);
        return new Gain(extra.kind(), extra.name(), moreServed, worth - now.centipoints(), proven && run.proven() && now.proven());
    }

    /** One more, and all of them are used: without the one more there is nothing better. */
    private Formulation with(Extra extra) {
        Formulation formulation = search.formulated(latitude, Map.of(extra, 1));
        if (extra.kind() == Shortage.Kind.CAP) {
            LinearArgument taken = formulation.taken(extra.name());
            if (taken != null) {
                formulation.model().addGreaterThan(taken, extra.there(problem));
            }
        } else {
            formulation.model().addEquality(formulation.borrowedUsed(extra.name()), 1);
        }
        return formulation;
    }

    /** How much of each thing is in use now. */
    private Map<Extra, Integer> used() {
        Map<Extra, Integer> used = new HashMap<>();
        for (int seat = 0; seat < now.choices().size(); seat++) {
            problem.seats().get(seat).choices().get(now.choices().get(seat)).takes().forEach((cap, count) -> used.merge(new Extra(Shortage.Kind.CAP, cap), count, Integer::sum));
            now.served().get(seat).forEach(cap -> used.merge(new Extra(Shortage.Kind.CAP, cap), 1, Integer::sum));
            now.channels().get(seat).forEach(at -> used.merge(new Extra(Shortage.Kind.CHANNELS, problem.banks().get(at.bank()).channels().get(at.channel())), 1, Integer::sum));
        }
        return used;
    }
}
