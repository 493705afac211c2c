package pairwright.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import pairwright.advice.KnowledgeStore;
import pairwright.model.MicType;

/** Plans with faults in them. */
class FaultsKindTest {
    private static final Lab LAB = new Lab(KnowledgeStore.builtIn().current(), null);
    private static final String RIBBONS = LAB.catalogue().mics().values().stream().filter(MicType::passiveRibbon).map(MicType::id).collect(Collectors.joining("|"));
    private static final int[] FAULTS = {1, 2, 2, 3, 3};

    private static List<Variant> some(int level, int many) {
        return new Variants(new FaultsKind(), Variants.Purpose.CLASS, "faults", level, LAB).some(many);
    }

    private static String nothing(Item.OneOf item) {
        return item.options().get(item.options().size() - 1).id();
    }

    private static List<Item.OneOf> setUps(Exercise exercise) {
        List<Item.OneOf> items = new ArrayList<>();
        exercise.handout().items().forEach(item -> {
            if (item instanceof Item.OneOf one && one.id().startsWith("set-up-")) {
                items.add(one);
            }
        });
        return items;
    }

    @Test
    void thereAreAsManyFaultsAsTheLevelSaysAndAlwaysSomethingSound() {
        for (int level = 1; level <= KindInfo.LEVELS; level++) {
            for (Variant variant : some(level, 4)) {
                Exercise exercise = variant.exercise();
                Answer best = exercise.key().best();
                long faulty = setUps(exercise).stream().filter(item -> !nothing(item).equals(best.one(item.id()))).count();
                assertEquals(FAULTS[level - 1], faulty, exercise.key().toString());
                assertTrue(faulty < setUps(exercise).size());
            }
        }
    }

    @Test
    void aMissedDangerHoldsTheMarkDownHoweverMuchElseIsRight() {
        int dangers = 0;
        for (Variant variant : some(4, 12)) {
            Exercise exercise = variant.exercise();
            Answer best = exercise.key().best();
            if (!best.all("danger").isEmpty()) {
                dangers++;
                Answer missed = best.with("danger", List.of());
                String first = exercise.handout().items().get(best.all("danger").get(0).charAt(0) - 'a').id();
                missed = missed.with(first, nothing(setUps(exercise).stream().filter(item -> item.id().equals(first)).findFirst().orElseThrow()));
                Mark mark = exercise.mark(missed);
                assertTrue(mark.share() <= 0.4 + 1e-9, mark.toString());
                assertEquals(exercise.mark(missed.with("danger", best.all("danger"))).capped() == null, exercise.mark(missed.with("danger", best.all("danger"))).share() > 0.4);
            }
        }
        assertTrue(dangers > 0, "no danger among all of them");
    }

    /** Whoever reads that nothing is wrong with it learns what ruins a ribbon. */
    @Test
    void aRibbonOnALiveChannelIsAFaultAndIsAskedFor() {
        int asked = 0;
        for (Variant variant : some(5, 30)) {
            int live = variant.drawn().all("channels").indexOf(FaultsPlan.On.LIVE.name());
            if (live >= 0 && variant.drawn().all("setUps").get(live).split(" \\+")[0].matches(".*\\b(" + RIBBONS + ")\\b.*")) {
                Key.Entry entry = variant.exercise().key().items().stream().filter(item -> item.item().equals("set-up-" + (live + 1))).findFirst().orElseThrow();
                assertTrue(entry.rests().contains("PLN-034"), entry.toString());
                asked += entry.right().equals(LAB.rules().rule("PLN-034").claim()) ? 1 : 0;
            }
        }
        assertTrue(asked > 0, "no ribbon on a live channel among all of them");
    }

    /** What is done about it is what a rule of arrivals says, whatever the rule of thumb. */
    @Test
    void whatComesLateIsTreatedAsTheRuleSaysThatItsKeyNames() {
        Set<String> treats = new HashSet<>();
        for (Variant variant : some(4, 12)) {
            for (Key.Entry entry : variant.exercise().key().items()) {
                if (entry.item().startsWith("delay-")) {
                    String treat = LAB.rules().rule(entry.rests().get(0)).treat();
                    treats.add(treat);
                    assertEquals(Map.of("align", "a", "leave", "b", "watch", "c").get(treat), entry.accepted().get(0), entry.toString());
                    assertTrue(variant.exercise().restsOn().contains(entry.rests().get(0)));
                    Mark missed = variant.exercise().mark(variant.exercise().key().best().with(entry.item(), entry.accepted().get(0).equals("a") ? "b" : "a"));
                    assertEquals(missed.of() - 1, missed.mark(), missed.toString());
                }
            }
        }
        assertTrue(treats.size() >= 2, treats.toString());
    }

    @Test
    void aFalseAlarmCostsWhatLeavingItAloneEarns() {
        for (Variant variant : some(1, 4)) {
            Exercise exercise = variant.exercise();
            Answer best = exercise.key().best();
            Item.OneOf sound = setUps(exercise).stream().filter(item -> nothing(item).equals(best.one(item.id()))).findFirst().orElseThrow();
            Mark alarmed = exercise.mark(best.with(sound.id(), sound.options().get(0).id()));
            assertEquals(alarmed.of() - 2, alarmed.mark());
            assertTrue(alarmed.checks().stream().anyMatch(check -> check.says().startsWith("A false alarm.")), alarmed.toString());
        }
    }

    @Test
    void theSameCaseMakesTheSameExercise() {
        Variant one = some(5, 1).get(0);
        Exercise again = new FaultsKind().of(one.drawn(), 5, LAB);
        assertEquals(one.exercise().handout(), again.handout());
        assertEquals(one.exercise().key(), again.key());
    }
}
