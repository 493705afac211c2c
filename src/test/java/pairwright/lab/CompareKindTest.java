package pairwright.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pairwright.advice.KnowledgeStore;

/** A comparison says nothing of who is who, and begins with what to mind. */
class CompareKindTest {
    private static final KnowledgeStore STORE = KnowledgeStore.builtIn();
    private static final Lab LAB = new Lab(STORE.current(), null);
    private static final Kind KIND = new CompareKind();

    private static List<Variant> some(Lab lab, int level, int many) {
        return new Variants(KIND, Variants.Purpose.CLASS, "compare", level, lab).some(many);
    }

    @Test
    void whoIsAIsNotReadFromTheSheet() {
        for (Variant variant : some(LAB, 2, 8)) {
            Exercise one = KIND.of(variant.drawn().with("a", "1"), 2, LAB);
            Exercise other = KIND.of(variant.drawn().with("a", "2"), 2, LAB);
            assertEquals(one.handout(), other.handout());
            assertEquals(one.kit(), other.kit());
            assertNotEquals(one.key().best(), other.key().best());
        }
    }

    @Test
    void bothOrdersAreDrawn() {
        assertEquals(2, some(LAB, 2, 16).stream().map(variant -> variant.drawn().one("a")).distinct().count());
    }

    @Test
    void eachBenchIsGivenTwoUnitsAndItsCautionsFirst() {
        for (int level = 1; level <= KindInfo.LEVELS; level++) {
            for (Variant variant : some(LAB, level, 4)) {
                assertEquals(2, variant.exercise().kit().stream().mapToInt(Need::units).sum());
                assertFalse(variant.exercise().handout().cautions().isEmpty());
            }
        }
    }

    @Test
    void aLockerWithOneOfEachComparesTypes() {
        Map<String, Integer> units = Map.of("small-condenser-cardioid", 1, "large-condenser-cardioid", 1, "compact-ribbon", 1, "handheld-moving-coil", 1);
        List<Variant> one = some(new Lab(STORE.current(), units), 1, 4);
        assertEquals(4, one.size());
        one.forEach(variant -> assertEquals(2, variant.exercise().kit().size()));
    }

    @Test
    void everyKindWithMicrophonesInHandBeginsWithItsCautions() {
        for (Kind kind : new Kinds().all()) {
            if (kind.info().handsOn()) {
                IntStream.rangeClosed(1, KindInfo.LEVELS).forEach(level -> new Variants(kind, Variants.Purpose.CLASS, "hands", level, LAB).some(3)
                        .forEach(variant -> assertTrue(variant.exercise().handout().cautions().get(0).contains("Local rules"), kind.info().id() + ": " + variant.exercise().handout().cautions())));
            }
        }
    }

    @Test
    void aLoudSourceIsSupervised() {
        List<Variant> some = some(LAB, 2, 40);
        Variant loud = some.stream().filter(variant -> OneMic.of(variant.drawn(), LAB).setting().allowedHours() <= 4).findFirst().orElseThrow();
        assertTrue(loud.exercise().handout().cautions().get(0).contains("supervisor"), loud.exercise().handout().cautions().toString());
    }
}
