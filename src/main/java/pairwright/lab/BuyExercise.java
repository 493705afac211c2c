package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.advice.Offer;
import pairwright.model.HabitRank;
import pairwright.model.Naming;
import pairwright.session.SmallSession;

/** What to buy for sessions to come. What a purchase earns is by how much the best plans rise with it, against what could be had. */
final class BuyExercise implements Exercise {
    private static final String ONE = "one";
    private static final String PRICE = "price";
    private static final String BASKET = "basket";
    private static final String USELESS = "useless";
    private static final int PRICE_FROM = 2;
    private static final int BASKET_FROM = 3;
    /** What reaches no more than half of what could be had is no answer. */
    private static final double LEAST_SHARE = 0.5;

    private final Case drawn;
    private final int level;
    private final BuyProblem problem;
    private final Lab lab;
    private final int budget;
    private final List<Item.Opt> goods;

    BuyExercise(Case drawn, int level, BuyProblem problem, Lab lab) {
        this.drawn = drawn;
        this.level = level;
        this.problem = problem;
        this.lab = lab;
        this.budget = (int) drawn.number("budget");
        this.goods = Item.Opt.lettered(IntStream.range(0, problem.goods().size()).mapToObj(of -> problem.type(of).name()).toList());
    }

    @Override
    public Handout handout() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.OneOf(ONE, "You may have one of them, whatever it costs. With which do the best plans of " + all() + " rise most?", goods));
        if (level >= PRICE_FROM) {
            items.add(new Item.OneOf(PRICE, "With which do they rise most for its price?", goods));
        }
        if (level >= BASKET_FROM) {
            items.add(new Item.SomeOf(BASKET, "You have " + budget + " to spend. What do you buy?", goods, null));
        }
        items.add(new Item.SomeOf(USELESS, "Which of them, bought alone, raise nothing?", goods, null));
        List<Shown> shown = new ArrayList<>();
        shown.add(new Shown.Table("What the locker has", List.of("Microphone", "Units"), problem.owned().stream().map(type -> List.of(lab.type(type).name(), "1")).toList()));
        shown.add(new Shown.Table("What could be bought, one of each", List.of("Microphone", "Price"),
                IntStream.range(0, goods.size()).mapToObj(of -> List.of(goods.get(of).says(), String.valueOf(problem.price(of)))).toList()));
        for (int session = 0; session < problem.sessions().size(); session++) {
            shown.add(new Shown.FromAbove(session(session) + ": " + sources(session), problem.sessions().get(session).lineUp()));
        }
        return new Handout("Buy wisely", List.of(), List.of(RoundFloor.says(lab.room(drawn.one("room"))),
                problem.sessions().size() == 1 ? "A session is to come." : "Sessions are to come, at different times, so that each may use all there is.",
                "Everybody gets one microphone, and every channel does for any. Prices are price classes: the cheapest costs 1."), shown, items);
    }

    private String all() {
        return problem.sessions().size() == 1 ? "the session" : "all sessions together";
    }

    private static String session(int of) {
        return "Session " + (of + 1);
    }

    private String sources(int session) {
        return problem.sessions().get(session).lineUp().seats().stream().map(seat -> Naming.small(lab.source(seat.source()).name())).collect(Collectors.joining(", "));
    }

    private int best(IntToDoubleFunction worth) {
        return IntStream.range(0, goods.size()).boxed().max(Comparator.comparingDouble(worth::applyAsDouble)).orElseThrow();
    }

    /** What earns everything: as good, but for what is rounded away. */
    private List<String> accepted(IntToDoubleFunction worth) {
        double most = worth.applyAsDouble(best(worth));
        return IntStream.range(0, goods.size()).filter(of -> share(worth.applyAsDouble(of), most) > 0.98).mapToObj(of -> goods.get(of).id()).toList();
    }

    private static double share(double worth, double most) {
        return most <= 0 ? 0 : Math.max(0, (worth / most - LEAST_SHARE) / (1 - LEAST_SHARE));
    }

    private List<String> useless() {
        return IntStream.range(0, goods.size()).filter(of -> problem.gain(of) == 0).mapToObj(of -> goods.get(of).id()).toList();
    }

    private List<String> letters(List<Integer> some) {
        return some.stream().map(of -> goods.get(of).id()).toList();
    }

    @Override
    public Key key() {
        int one = best(problem::gain);
        Answer best = Answer.NOTHING.with(ONE, goods.get(one).id());
        List<Key.Entry> entries = new ArrayList<>();
        entries.add(new Key.Entry(ONE, goods.get(one).says(), accepted(problem::gain), why(one), rests(List.of(one))));
        if (level >= PRICE_FROM) {
            int cheap = best(problem::gainForPrice);
            best = best.with(PRICE, goods.get(cheap).id());
            entries.add(new Key.Entry(PRICE, goods.get(cheap).says(), accepted(problem::gainForPrice),
                    IntStream.range(0, goods.size()).mapToObj(of -> goods.get(of).says() + ": " + points(problem.gain(of)) + " for " + problem.price(of) + ".").toList(), rests(List.of(cheap))));
        }
        if (level >= BASKET_FROM) {
            List<Integer> basket = problem.bestBasket(budget);
            best = best.with(BASKET, letters(basket));
            entries.add(new Key.Entry(BASKET, named(basket), List.of(), List.of(points(problem.gain(basket)) + " more for " + problem.price(basket) + " of " + budget + "."), rests(basket)));
        }
        List<String> useless = useless();
        entries.add(new Key.Entry(USELESS, named(indexes(useless)), List.of(), List.of("Whoever would get it is served as well or better by what is there."), List.of()));
        return new Key(best.with(USELESS, useless), entries, List.of("What is cheap and serves two seats a little may gain less than what serves one seat much.",
                "What a purchase is worth depends on what is there already: the second of two good ones gains less than the first."));
    }

    private List<Integer> indexes(List<String> letters) {
        return IntStream.range(0, goods.size()).filter(of -> letters.contains(goods.get(of).id())).boxed().toList();
    }

    private String named(List<Integer> some) {
        return some.isEmpty() ? "nothing" : some.stream().map(of -> goods.get(of).says()).collect(Collectors.joining("; "));
    }

    /** Who gets it in a session that it raises; empty where it raises none. */
    private Optional<Offer> gets(int of, int session) {
        SmallSession.Seated after = problem.best(session, List.of(of));
        return after.centipoints() <= problem.best(session, List.of()).centipoints() ? Optional.empty()
                : after.offers().stream().filter(offer -> offer.mics().get(0).micType().id().equals(problem.goods().get(of))).findFirst();
    }

    /** For whom it is, in each session that it raises, and what speaks most for it there. */
    private List<String> why(int of) {
        List<String> why = new ArrayList<>();
        for (int session = 0; session < problem.sessions().size(); session++) {
            SmallSession.Seated after = problem.best(session, List.of(of));
            int here = session;
            gets(of, session).ifPresent(offer -> why.add(session(here) + " rises from " + points(problem.best(here, List.of()).centipoints()) + " to " + points(after.centipoints()) + ": it goes to "
                    + Naming.the(lab.source(problem.sessions().get(here).lineUp().seats().get(after.offers().indexOf(offer)).source()).name()) + ". "
                    + StrongestReason.of(offer).map(StrongestReason::says).orElse("")));
        }
        return why;
    }

    /** The rule that speaks most for a purchase; null for one that raises nothing. */
    private String rule(int of) {
        return IntStream.range(0, problem.sessions().size()).mapToObj(session -> gets(of, session)).flatMap(Optional::stream).flatMap(offer -> StrongestReason.of(offer).stream())
                .map(StrongestReason::rule).findFirst().orElse(null);
    }

    /** What decides: all that moves the score of whoever is served otherwise, before and after. */
    private List<String> rests(List<Integer> bought) {
        Set<String> rules = new LinkedHashSet<>();
        for (int session = 0; session < problem.sessions().size(); session++) {
            List<Offer> before = problem.best(session, List.of()).offers();
            List<Offer> after = problem.best(session, bought).offers();
            IntStream.range(0, before.size()).filter(seat -> before.get(seat) != after.get(seat))
                    .forEach(seat -> Stream.of(after.get(seat), before.get(seat)).forEach(offer -> offer.findings().stream().filter(finding -> finding.centipoints() != 0).forEach(finding -> rules.add(finding.rule().id()))));
        }
        return List.copyOf(rules);
    }

    private static String points(long centipoints) {
        return String.format(Locale.ROOT, "%.1f points", centipoints / 100.0);
    }

    @Override
    public Mark mark(Answer answer) {
        Mark.Sum sum = new Mark.Sum();
        one(answer.one(ONE), "One of them", problem::gain, 4, sum);
        if (level >= PRICE_FROM) {
            one(answer.one(PRICE), "For its price", problem::gainForPrice, 3, sum);
        }
        if (level >= BASKET_FROM) {
            basket(answer, sum);
        }
        List<String> right = useless();
        Set<String> given = new LinkedHashSet<>(answer.all(USELESS));
        Set<String> either = Stream.concat(right.stream(), given.stream()).collect(Collectors.toSet());
        sum.add("What raises nothing", 2.0 * given.stream().filter(right::contains).count() / either.size() - 1, 3, "These raise nothing: " + named(indexes(right)) + ".", null);
        return sum.mark();
    }

    private void one(String given, String name, IntToDoubleFunction worth, double of, Mark.Sum sum) {
        List<Integer> found = given == null ? List.of() : indexes(List.of(given));
        int most = best(worth);
        String says = found.isEmpty() ? "None of them was named." : found.get(0) == most ? "Nothing else does more. " + String.join(" ", why(most))
                : "It raises the plans by " + points(problem.gain(found.get(0))) + " for " + problem.price(found.get(0)) + "; " + goods.get(most).says() + " by " + points(problem.gain(most)) + " for "
                        + problem.price(most) + ". " + String.join(" ", why(most));
        sum.add(name, found.isEmpty() ? 0 : share(worth.applyAsDouble(found.get(0)), worth.applyAsDouble(most)), of, says.strip(), rule(most));
    }

    private void basket(Answer answer, Mark.Sum sum) {
        List<Integer> given = indexes(answer.all(BASKET));
        List<Integer> best = problem.bestBasket(budget);
        int price = problem.price(given);
        String says = given.isEmpty() ? "Nothing was bought." : price > budget ? "That costs " + price + ", and there is " + budget + "."
                : "That raises the plans by " + points(problem.gain(given)) + " for " + price + "; the most there is to have is " + points(problem.gain(best)) + ": " + named(best) + ".";
        sum.add("The budget", given.isEmpty() || price > budget ? 0 : share(problem.gain(given), problem.gain(best)), 5, says, rule(best.get(0)));
    }

    /** Buys what is reached for most often, whatever there is already, and thinks of all the rest that it may be good for something. */
    @Override
    public Answer usual() {
        List<Integer> popular = IntStream.range(0, goods.size()).boxed().sorted(Comparator.comparingLong((Integer of) -> -habits(problem.goods().get(of)))).toList();
        List<Integer> basket = new ArrayList<>();
        for (int of : popular) {
            if (problem.price(basket) + problem.price(of) <= budget) {
                basket.add(of);
            }
        }
        String first = goods.get(popular.get(0)).id();
        return Answer.NOTHING.with(ONE, first).with(PRICE, first).with(BASKET, letters(basket)).with(USELESS, goods.get(popular.get(popular.size() - 1)).id());
    }

    private long habits(String type) {
        return problem.sessions().stream().flatMap(session -> session.lineUp().seats().stream()).flatMap(seat -> lab.source(seat.source()).habits().stream())
                .filter(habit -> habit.rank() != HabitRank.AVOID && habit.micType().equals(type)).count();
    }

    @Override
    public List<Need> kit() {
        return List.of();
    }

    @Override
    public Set<String> restsOn() {
        Set<String> rests = new LinkedHashSet<>(rests(List.of(best(problem::gain))));
        rests.addAll(rests(List.of(best(problem::gainForPrice))));
        return rests;
    }
}
