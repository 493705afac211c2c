package pairwright.locker;

import java.time.Instant;
import java.util.List;

/**
 * Exercises of one kind for the benches of a class.
 *
 * @param id drawn by chance; tells nothing
 * @param kind id of the kind
 * @param level 1 to 5
 * @param seed what they were drawn from: whoever knows it can make their keys
 * @param purpose what they were drawn for
 * @param from when the class begins; null for not known
 * @param until when it ends; null for not known
 * @param opensAt from when on everybody may see the keys; null for never
 * @param booking number of the booking of their kit, which may have been cancelled since; null for none
 * @param benches one exercise each, in the order of their numbers
 * @param version rises when something of the set is altered, from 1; what is handed in alters nothing
 * @param at when they were made
 * @param by who made them
 */
public record ExerciseSet(String id, String kind, int level, String seed, String purpose, Instant from, Instant until, Instant opensAt, String booking,
        List<Bench> benches, long version, Instant at, String by) {
    public ExerciseSet {
        benches = List.copyOf(benches);
    }

    /**
     * One exercise.
     *
     * @param number from 1
     * @param drawn what was drawn, as text; the locker does not read it
     * @param hardnessShare how hard it is, 0 to 1
     * @param kit what the bench works with; none on paper
     */
    public record Bench(int number, String drawn, double hardnessShare, List<Kit> kit) {
        public Bench {
            kit = List.copyOf(kit);
        }
    }

    /**
     * One microphone of a bench.
     *
     * @param micType id
     * @param unit id of the unit that was booked; null where none was
     * @param label what is written on it, or was; null where none was booked
     */
    public record Kit(String micType, String unit, String label) {
    }

    /** Whether everybody may see the keys at a moment. */
    public boolean open(Instant now) {
        return opensAt != null && !now.isBefore(opensAt);
    }
}
