package pairwright.session.allocation;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Why there is no plan, and the ways out. Prices are weighed against nothing but prices: each question is asked apart, so that no weight has to be guessed. */
final class Shortages {
    private static final int LACKS = 5;
    private static final int OF_A_KIND = 3;

    private final Limits limits;
    private final Problem given;
    private final Problem problem;
    /** For all that is only counted: what two seats are worth together is in nobody's way there. */
    private final Search counting;
    private final Set<Integer> needful;

    Shortages(Problem given, Limits limits) {
        this.limits = limits;
        this.given = given;
        problem = Needful.canBeLeftOut(given);
        needful = Needful.seats(given);
        counting = new Search(problem.apart(), limits);
    }

    Shortage shortage() {
        Search.Latitude out = new Search.Latitude(needful, false);
        Formulation all = counting.formulated(out, Map.of());
        all.beginWith(nobody());
        LinearExpr count = all.count(needful, Search.SERVED);
        Solver.Run run = counting.most(all, count).orElseThrow();
        int served = (int) run.values().value(count);
        if (served == needful.size()) {
            return new Shortage(served, served, true, List.of(), List.of());
        }
        List<Shortage.WayOut> waysOut = new ArrayList<>(borrowing());
        waysOut.addAll(dropping(out, served));
        waysOut.addAll(sharing());
        return new Shortage(needful.size(), served, run.proven(), lacks(), waysOut);
    }

    /** Each thing of which enough alone would do, one after the other. */
    private List<Shortage.Lack> lacks() {
        Formulation formulation = counting.formulated(asGiven(false), Extra.most(problem));
        LinearExprBuilder sum = LinearExpr.newBuilder();
        Map<Extra, Literal> used = new TreeMap<>();
        formulation.extras().forEach((extra, count) -> {
            sum.add(count);
            used.put(extra, formulation.model().newBoolVar("used"));
            formulation.model().addEquality(count, 0).onlyEnforceIf(used.get(extra).not());
        });
        formulation.model().addAtMostOne(used.values());
        List<Shortage.Lack> lacks = new ArrayList<>();
        while (lacks.size() < LACKS) {
            Optional<Solver.Run> run = least(formulation, sum.build());
            if (run.isEmpty()) {
                break;
            }
            borrowed(formulation, run.get()).forEach((extra, more) -> {
                lacks.add(new Shortage.Lack(extra.kind(), extra.name(), extra.there(problem) + more, extra.there(problem)));
                formulation.model().addBoolOr(new Literal[] {used.get(extra).not()});
            });
        }
        return lacks;
    }

    /** The cheapest things to borrow, then the cheapest without the whole of those, and so on. */
    private List<Shortage.WayOut> borrowing() {
        Map<Extra, Integer> toBeHad = Extra.most(problem);
        toBeHad.keySet().removeIf(extra -> extra.price(problem) == 0);
        Formulation formulation = counting.formulated(asGiven(false), toBeHad);
        LinearExprBuilder prices = LinearExpr.newBuilder();
        formulation.extras().forEach((extra, count) -> prices.addTerm(count, extra.price(problem)));
        List<Shortage.WayOut> ways = new ArrayList<>();
        for (int way = 0; way < OF_A_KIND; way++) {
            Optional<Solver.Run> run = least(formulation, prices.build());
            if (run.isEmpty()) {
                break;
            }
            Map<Extra, Integer> borrowed = borrowed(formulation, run.get());
            Problem with = Extra.with(given, borrowed);
            known(() -> new Stepwise(with, limits, Search.Latitude.NONE, any -> { }).best()).ifPresent(plan -> ways.add(new Shortage.WayOut(Shortage.Means.BORROW, named(borrowed, Shortage.Kind.CAP),
                    named(borrowed, Shortage.Kind.CHANNELS), borrowed.entrySet().stream().mapToInt(one -> one.getKey().price(problem) * one.getValue()).sum(), Set.of(), with, plan)));
            fewerOfOne(formulation, borrowed);
        }
        return ways;
    }

    /** As many are served as can be; which are not differs from way to way. */
    private List<Shortage.WayOut> dropping(Search.Latitude out, int served) {
        return ways(formulation -> formulation.model().addEquality(formulation.count(needful, Search.SERVED), served), out, Shortage.Means.DROP, Choice.Use.OUT);
    }

    /** As few get less than was asked for as can be. */
    private List<Shortage.WayOut> sharing() {
        Formulation formulation = counting.formulated(asGiven(true), Map.of());
        LinearExpr count = formulation.count(all(), EnumSet.of(Choice.Use.FEWER));
        Optional<Solver.Run> run = least(formulation, count);
        if (run.isEmpty()) {
            return List.of();
        }
        long fewest = run.get().values().value(count);
        return ways(best -> best.model().addEquality(best.count(all(), EnumSet.of(Choice.Use.FEWER)), fewest), asGiven(true), Shortage.Means.SHARE, Choice.Use.FEWER);
    }

    private List<Shortage.WayOut> ways(Consumer<Formulation> condition, Search.Latitude latitude, Shortage.Means means, Choice.Use use) {
        List<Shortage.WayOut> ways = new ArrayList<>();
        Consumer<Formulation> others = condition;
        while (ways.size() < OF_A_KIND) {
            Consumer<Formulation> asked = others;
            Optional<Solution> plan = known(() -> new Stepwise(problem, limits, latitude, asked).best());
            if (plan.isEmpty()) {
                break;
            }
            Set<Integer> seats = Search.withUse(problem, plan.get(), use);
            seats.retainAll(use == Choice.Use.OUT ? needful : seats);
            ways.add(new Shortage.WayOut(means, Map.of(), Map.of(), 0, seats, problem, plan.get()));
            others = asked.andThen(formulation -> formulation.model().addLessThan(formulation.count(seats, EnumSet.of(use)), seats.size()));
        }
        return ways;
    }

    /** Of one of the things at least, less is borrowed. */
    private static void fewerOfOne(Formulation formulation, Map<Extra, Integer> borrowed) {
        List<Literal> fewer = new ArrayList<>();
        borrowed.forEach((extra, count) -> {
            Literal of = formulation.model().newBoolVar("fewer");
            formulation.model().addLessThan(formulation.extras().get(extra), count).onlyEnforceIf(of);
            fewer.add(of);
        });
        formulation.model().addBoolOr(fewer);
    }

    private static Map<Extra, Integer> borrowed(Formulation formulation, Solver.Run run) {
        Map<Extra, Integer> borrowed = new TreeMap<>();
        for (Map.Entry<Extra, IntVar> extra : formulation.extras().entrySet()) {
            int count = (int) run.values().value(extra.getValue());
            if (count > 0) {
                borrowed.put(extra.getKey(), count);
            }
        }
        return borrowed;
    }

    private static Map<String, Integer> named(Map<Extra, Integer> borrowed, Shortage.Kind kind) {
        return borrowed.entrySet().stream().filter(one -> one.getKey().kind() == kind).collect(Collectors.toMap(one -> one.getKey().name(), Map.Entry::getValue));
    }

    private Optional<Solver.Run> least(Formulation formulation, LinearExpr of) {
        return known(() -> counting.least(formulation, of));
    }

    /** What could not be decided is not told. */
    private static <T> Optional<T> known(Supplier<Optional<T>> search) {
        try {
            return search.get();
        } catch (NotDecided unknown) {
            return Optional.empty();
        }
    }

    /** The plan there always is: everybody is left out who can be. */
    private List<Integer> nobody() {
        return problem.seats().stream().map(seat -> IntStream.range(0, seat.choices().size()).filter(choice -> seat.choices().get(choice).use() == Choice.Use.OUT).findFirst().orElseThrow()).toList();
    }

    private Set<Integer> all() {
        return IntStream.range(0, problem.seats().size()).boxed().collect(Collectors.toSet());
    }

    /** Nobody is left out who could not be in the problem as it was given. */
    private static Search.Latitude asGiven(boolean fewer) {
        return new Search.Latitude(Set.of(), fewer);
    }
}
