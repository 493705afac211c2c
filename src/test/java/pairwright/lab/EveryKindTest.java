package pairwright.lab;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairwright.advice.KnowledgeStore;

/** What holds for every kind of exercise, at every level. */
class EveryKindTest {
    private static final Lab LAB = new Lab(KnowledgeStore.builtIn().current(), null);
    /** Where a guess earns more, a mark says little. */
    private static final double MOST_GUESSED_SHARE = 0.3;

    static Stream<Kind> kinds() {
        return new Kinds().all().stream();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void theKeyEarnsEverythingAGuessLittleAndTheUsualSomethingBetween(Kind kind) {
        hold(kind, 6);
    }

    @Tag("long")
    @ParameterizedTest
    @MethodSource("kinds")
    void theSameOverThousands(Kind kind) {
        hold(kind, 10_000 / KindInfo.LEVELS / new Kinds().all().size() + 1);
    }

    private static void hold(Kind kind, int eachLevel) {
        double guessed = 0;
        double usual = 0;
        int made = 0;
        for (int level = 1; level <= KindInfo.LEVELS; level++) {
            List<Variant> some = new Variants(kind, Variants.Purpose.CLASS, "every kind", level, LAB).some(eachLevel);
            assertEquals(eachLevel, some.size(), kind.info().id() + " at level " + level);
            for (Variant variant : some) {
                Exercise exercise = variant.exercise();
                sound(exercise);
                Draw draw = Draw.named("guess " + made++);
                guessed += exercise.mark(Guess.of(exercise.handout(), draw)).share();
                usual += exercise.mark(exercise.usual()).share();
            }
        }
        guessed /= made;
        usual /= made;
        String found = kind.info().id() + ": guessed " + guessed + ", usual " + usual;
        System.out.println(found + " of " + made);
        assertTrue(guessed < MOST_GUESSED_SHARE, found);
        assertTrue(guessed < usual && usual < 1, found);
    }

    /** What was worked out while it was drawn, and what was worked out for several answers at once, saves time and changes nothing. */
    @ParameterizedTest
    @MethodSource("kinds")
    void madeAnewOfItsCaseAndMarkedOneByOneItIsTheSame(Kind kind) {
        for (int level : List.of(1, 4)) {
            Variant variant = new Variants(kind, Variants.Purpose.CLASS, "anew", level, LAB).some(1).get(0);
            Exercise anew = kind.of(variant.drawn(), level, new Lab(KnowledgeStore.builtIn().current(), null));
            assertEquals(variant.exercise().handout(), anew.handout());
            assertEquals(variant.exercise().key(), anew.key());
            assertEquals(variant.exercise().restsOn(), anew.restsOn());
            Draw draw = Draw.named("hardness");
            for (int i = 0; i < 6; i++) {
                Answer guess = Guess.of(anew.handout(), draw);
                assertEquals(variant.exercise().mark(guess), anew.mark(guess), guess.toString());
            }
        }
    }

    private static void sound(Exercise exercise) {
        Handout handout = exercise.handout();
        Key key = exercise.key();
        Mark best = exercise.mark(key.best());
        String about = handout + "\n" + key + "\n" + best;
        assertEquals(best.of(), best.mark(), about);
        assertTrue(best.of() > 0, about);
        assertEquals(0, exercise.mark(Answer.NOTHING).mark(), about);
        assertEquals(handout.items().stream().map(Item::id).toList(), key.items().stream().map(Key.Entry::item).toList(), about);
        assertFalse(exercise.restsOn().isEmpty(), about);
        Set<String> ids = new HashSet<>();
        for (Item item : handout.items()) {
            assertTrue(ids.add(item.id()), about);
            List<Item.Opt> options = options(item);
            assertEquals(options.size(), options.stream().map(Item.Opt::id).distinct().count(), about);
            assertEquals(options.size(), options.stream().map(Item.Opt::says).distinct().count(), about);
            if (item instanceof Item.OneOf one) {
                onlyTheAcceptedAreRight(exercise, one, key, best);
            }
        }
    }

    /** What is not among the accepted loses something, all else being as the key has it. */
    private static void onlyTheAcceptedAreRight(Exercise exercise, Item.OneOf one, Key key, Mark best) {
        List<String> accepted = key.items().stream().filter(entry -> entry.item().equals(one.id())).findFirst().orElseThrow().accepted();
        assertTrue(accepted.contains(key.best().one(one.id())), one + " of " + key);
        for (Item.Opt option : one.options()) {
            if (!accepted.contains(option.id())) {
                Mark other = exercise.mark(key.best().with(one.id(), option.id()));
                assertTrue(other.mark() < best.mark(), option + " is not accepted and earns as much: " + other);
            }
        }
    }

    private static List<Item.Opt> options(Item item) {
        List<Item.Opt> options = new ArrayList<>();
        if (item instanceof Item.OneOf one) {
            options.addAll(one.options());
        } else if (item instanceof Item.SomeOf some) {
            options.addAll(some.options());
        } else if (item instanceof Item.InOrder order) {
            options.addAll(order.options());
        }
        return options;
    }
}
