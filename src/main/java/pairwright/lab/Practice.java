package pairwright.lab;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import pairwright.advice.Knowledge;
import pairwright.locker.LockerFault;
import pairwright.model.Fault;

/**
 * Exercises for whoever wants to try, marked at once. Nothing is kept: kind, level and seed make the same exercise again, of any type in the catalogue,
 * as long as catalogue and rules stay the same. Safe to share between threads.
 */
public final class Practice {
    private final Supplier<Knowledge> knowledge;
    private final Kinds kinds;

    public Practice(Supplier<Knowledge> knowledge) {
        this(knowledge, new Kinds());
    }

    Practice(Supplier<Knowledge> knowledge, Kinds kinds) {
        this.knowledge = knowledge;
        this.kinds = kinds;
    }

    /** One to try; the seed makes it again. */
    public record Tried(String kind, int level, String seed, Handout handout) {
    }

    /** What an answer earns, and what was right. */
    public record Told(Mark mark, Key key) {
    }

    /** What can be made. */
    public List<KindInfo> kinds() {
        return kinds.all().stream().map(Kind::info).toList();
    }

    /**
     * One exercise.
     *
     * @param seed null for one drawn by chance
     * @throws LockerFault.Unusable with every fault
     */
    public Tried draw(String kind, Integer level, String seed) {
        Kind known = new WantedCheck(kinds).sound(kind, level, seed);
        String row = seed == null || seed.isBlank() ? WantedCheck.random() : seed.strip();
        return new Tried(kind, level, row, exercise(known, level, row).handout());
    }

    /** Marks one that was made so. */
    public Told mark(String kind, Integer level, String seed, Answer answer) {
        Kind known = new WantedCheck(kinds).sound(kind, level, seed);
        if (seed == null || seed.isBlank()) {
            throw new LockerFault.Unusable(List.of(new Fault("/seed", "it is not said which exercise. Give the seed that came with it")));
        }
        Exercise exercise = exercise(known, level, seed.strip());
        List<Fault> faults = new AnswerCheck(exercise.handout()).faults(answer);
        if (!faults.isEmpty()) {
            throw new LockerFault.Unusable(faults.stream().map(fault -> new Fault("/answer/" + fault.at(), fault.says())).toList());
        }
        return new Told(exercise.mark(answer), exercise.key());
    }

    private Exercise exercise(Kind kind, int level, String seed) {
        return Knowledge.answered(knowledge, now -> {
            return exercise(kind, level, seed, now).orElseThrow(() ->
                    new LockerFault.Unusable(List.of(new Fault("/seed", "this seed makes no exercise of that kind and level. Try another"))));
        });
    }

    /** The exercise that a seed makes by what is known; empty where nothing that can be asked clearly comes of it. */
    public static Optional<Exercise> exercise(Kind kind, int level, String seed, Knowledge now) {
        return new Variants(kind, Variants.Purpose.PRACTICE, seed, level, new Lab(now, null)).some(1).stream().map(Variant::exercise).findFirst();
    }
}
