package pairwright.locker;

import java.time.Instant;
import java.util.List;

/**
 * Exercises as they are to be kept; what it means is said at {@link ExerciseSet}.
 *
 * @param from null for not known
 * @param until null for not known
 * @param opensAt null for never
 */
public record ExerciseSetDraft(String kind, int level, String seed, String purpose, Instant from, Instant until, Instant opensAt, List<ExerciseSet.Bench> benches) {
    public ExerciseSetDraft {
        benches = List.copyOf(benches);
    }
}
