package pairwright.lab;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pairwright.model.Habit;
import pairwright.model.HabitRank;
import pairwright.model.MicType;
import pairwright.model.Room;
import pairwright.model.Source;

/** A locker with holes, sessions to come and a budget: what to buy. */
final class BuyKind implements Kind {
    private static final KindInfo INFO = new KindInfo("buy", "Buy wisely",
            "See what a locker lacks for the sessions to come, and spend where the plans gain most.",
            "What a microphone costs today, how one make differs from another, and what else it may be good for in years to come.",
            List.of("One session, one purchase", "One session, one purchase and its price", "Two sessions and a budget", "Two sessions, more to choose from", "Two larger sessions, more to choose from"),
            List.of(10, 12, 20, 20, 25), false);
    private static final int[] SESSIONS = {1, 1, 2, 2, 2};
    private static final int[] SEATS = {3, 3, 3, 3, 4};
    private static final int[] GOODS = {4, 5, 5, 6, 6};
    private static final double RING_M = 2.2;
    private static final int ATTEMPTS = 30;
    /** With less nobody could say beforehand that it is worth its price. */
    private static final long LEAST_GAIN_CENTIPOINTS = 150;
    /** With a lead of less one could argue for another. */
    private static final long LEAD_CENTIPOINTS = 50;

    @Override
    public KindInfo info() {
        return INFO;
    }

    @Override
    public Optional<Case> draw(Draw draw, int level, Lab lab) {
        Room room = draw.one(RoundFloor.rooms(lab));
        Case drawn = Case.empty().with("room", room.id());
        List<Source> sources = draw.some(SESSIONS[level - 1] * SEATS[level - 1], RoundFloor.sources(lab, room));
        for (int session = 1; session <= SESSIONS[level - 1]; session++) {
            drawn = drawn.with("sources-" + session, sources.subList((session - 1) * SEATS[level - 1], session * SEATS[level - 1]).stream().map(Source::id).toList())
                    .with("places-" + session, RoundFloor.places(draw, room, SEATS[level - 1], RING_M));
        }
        List<String> types = types(draw, sources, GOODS[level - 1] + SEATS[level - 1], lab);
        BuyProblem problem = new BuyProblem(drawn, types, lab);
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            List<String> goods = draw.some(GOODS[level - 1], types);
            List<String> owned = types.stream().filter(type -> !goods.contains(type)).toList();
            problem.offer(owned, goods);
            int budget = budget(draw, problem);
            if (problem.served() && clear(problem, budget)) {
                Case found = drawn.with("owned", owned).with("goods", goods).with("budget", budget);
                lab.worked(found, problem);
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    /** Half of them such as the trade reaches for at one of the sources. */
    private static List<String> types(Draw draw, List<Source> sources, int many, Lab lab) {
        List<String> all = RoundFloor.types(lab).stream().map(MicType::id).toList();
        List<String> usual = sources.stream().flatMap(source -> source.habits().stream()).filter(habit -> habit.rank() == HabitRank.FIRST).map(Habit::micType).distinct().filter(all::contains).toList();
        return Stream.concat(draw.some(many / 2, usual).stream(), draw.shuffled(all).stream()).distinct().limit(many).toList();
    }

    /** Enough for two or three of them, never for all. */
    private static int budget(Draw draw, BuyProblem problem) {
        List<Integer> prices = IntStream.range(0, problem.goods().size()).map(problem::price).sorted().boxed().toList();
        int least = prices.get(prices.size() - 1);
        int most = prices.stream().mapToInt(one -> one).sum() - prices.get(0);
        return draw.between(least, Math.max(least, (least + most) / 2));
    }

    /** Whether one leads, in gain and for its price, and some of them raise nothing. */
    private static boolean clear(BuyProblem problem, int budget) {
        List<Long> gains = IntStream.range(0, problem.goods().size()).mapToObj(problem::gain).sorted(Comparator.reverseOrder()).toList();
        List<Double> forPrice = IntStream.range(0, problem.goods().size()).mapToObj(problem::gainForPrice).sorted(Comparator.reverseOrder()).toList();
        return gains.get(0) >= LEAST_GAIN_CENTIPOINTS && gains.get(0) - gains.get(1) >= LEAD_CENTIPOINTS && forPrice.get(0) - forPrice.get(1) >= LEAD_CENTIPOINTS / 2.0
                && gains.get(gains.size() / 2) <= gains.get(0) / 2 && gains.get(gains.size() - 1) == 0 && problem.bestBasket(budget).size() > 1;
    }

    @Override
    public Exercise of(Case drawn, int level, Lab lab) {
        return new BuyExercise(drawn, level, lab.worked(drawn, BuyProblem.class, () -> problem(drawn, lab)), lab);
    }

    private static BuyProblem problem(Case drawn, Lab lab) {
        List<String> types = new ArrayList<>(drawn.all("owned"));
        types.addAll(drawn.all("goods"));
        BuyProblem problem = new BuyProblem(drawn, types.stream().map(type -> lab.type(type).id()).toList(), lab);
        problem.offer(drawn.all("owned"), drawn.all("goods"));
        return problem;
    }
}
