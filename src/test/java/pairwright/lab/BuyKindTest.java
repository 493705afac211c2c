package pairwright.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import pairwright.advice.KnowledgeStore;

/** What to buy. */
class BuyKindTest {
    private static final Lab LAB = new Lab(KnowledgeStore.builtIn().current(), null);

    private static List<Variant> some(int level, int many) {
        return new Variants(new BuyKind(), Variants.Purpose.CLASS, "buy", level, LAB).some(many);
    }

    private static BuyProblem problem(Case drawn) {
        List<String> types = new ArrayList<>(drawn.all("owned"));
        types.addAll(drawn.all("goods"));
        BuyProblem problem = new BuyProblem(drawn, types, LAB);
        problem.offer(drawn.all("owned"), drawn.all("goods"));
        return problem;
    }

    private static double planned(BuyProblem problem, List<String> types) {
        Map<String, Integer> units = new TreeMap<>();
        types.forEach(type -> units.merge(type, 1, Integer::sum));
        return problem.sessions().stream().mapToDouble(session -> session.planned(units).orElseThrow().score()).sum();
    }

    @Test
    void whatAPurchaseGainsIsWhatThePlannersPlansGain() {
        for (int level : new int[] {2, 4}) {
            BuyProblem problem = problem(some(level, 1).get(0).drawn());
            double before = planned(problem, problem.owned());
            for (int of = 0; of < problem.goods().size(); of++) {
                List<String> with = new ArrayList<>(problem.owned());
                with.add(problem.goods().get(of));
                assertEquals(planned(problem, with) - before, problem.gain(of) / 100.0, 1e-9, problem.goods().get(of));
            }
        }
    }

    @Test
    void noBasketWithinTheBudgetGainsMoreThanTheKey() {
        for (Variant variant : some(4, 3)) {
            BuyProblem problem = problem(variant.drawn());
            int budget = (int) variant.drawn().number("budget");
            long best = problem.gain(problem.bestBasket(budget));
            Draw draw = Draw.named("baskets");
            for (int i = 0; i < 200; i++) {
                List<Integer> basket = new ArrayList<>();
                for (int of = 0; of < problem.goods().size(); of++) {
                    if (draw.share() < 0.5) {
                        basket.add(of);
                    }
                }
                assertTrue(problem.price(basket) > budget || problem.gain(basket) <= best, basket + " of " + variant.drawn());
            }
        }
    }

    @Test
    void whatCostsMoreThanThereIsEarnsNothing() {
        Exercise exercise = some(3, 1).get(0).exercise();
        Item.SomeOf basket = (Item.SomeOf) exercise.handout().items().stream().filter(item -> item.id().equals("basket")).findFirst().orElseThrow();
        Mark mark = exercise.mark(exercise.key().best().with("basket", basket.options().stream().map(Item.Opt::id).toList()));
        Check budget = mark.checks().stream().filter(check -> check.name().equals("The budget")).findFirst().orElseThrow();
        assertEquals(0, budget.points());
        assertTrue(budget.says().startsWith("That costs "), budget.says());
        assertEquals(mark.of() - budget.of(), mark.mark());
    }

    @Test
    void theSameCaseMakesTheSameExercise() {
        Variant one = some(3, 1).get(0);
        Exercise again = new BuyKind().of(one.drawn(), 3, LAB);
        assertEquals(one.exercise().handout(), again.handout());
        assertEquals(one.exercise().key(), again.key());
    }
}
