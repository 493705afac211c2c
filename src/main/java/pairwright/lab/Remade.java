package pairwright.lab;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import pairwright.rules.HouseRuleStopped;

/** An exercise made anew of what is kept of it. Whatever the catalogue lost since, it says so. */
final class Remade implements Exercise {
    private final Exercise exercise;

    private Remade(Exercise exercise) {
        this.exercise = exercise;
    }

    /** @throws OutOfDate where it cannot be made any more */
    static Exercise of(Kind kind, String drawn, int level, Lab lab) {
        return new Remade(sound(() -> kind.of(Written.drawn(drawn), level, lab)));
    }

    /** What is missing shows in as many ways as there are uses of it: no lookup, no best of none, no entry at that place. */
    private static <T> T sound(Supplier<T> work) {
        try {
            return work.get();
        } catch (HouseRuleStopped anew) {
            throw anew;
        } catch (RuntimeException lost) {
            throw new OutOfDate("This exercise cannot be made any more: the catalogue, the rules or the program changed since. "
                    + (lost instanceof IllegalArgumentException && lost.getMessage() != null ? lost.getMessage() + ". " : "") + "Make new exercises; what was handed in is kept", lost);
        }
    }

    private <T> T asked(Function<Exercise, T> what) {
        return sound(() -> what.apply(exercise));
    }

    @Override
    public Handout handout() {
        return asked(Exercise::handout);
    }

    @Override
    public Key key() {
        return asked(Exercise::key);
    }

    @Override
    public Mark mark(Answer answer) {
        return asked(made -> made.mark(answer));
    }

    @Override
    public Answer usual() {
        return asked(Exercise::usual);
    }

    @Override
    public List<Need> kit() {
        return asked(Exercise::kit);
    }

    @Override
    public Map<String, String> claims(String item) {
        return asked(made -> made.claims(item));
    }

    @Override
    public Set<String> restsOn() {
        return asked(Exercise::restsOn);
    }
}
