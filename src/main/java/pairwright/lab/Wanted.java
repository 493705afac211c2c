package pairwright.lab;

import java.time.Instant;

/**
 * Exercises as somebody wants them for a class, before it is checked.
 *
 * @param kind id
 * @param seed the same gives the same; null for one drawn by chance, which nobody guesses
 * @param level 1 to 5
 * @param benches how many work at one time, each with an exercise of its own
 * @param from when the class begins, so that the kit is booked; null with until for no booking
 * @param until when it ends
 * @param opensAt from when on everybody may see the keys; null for never
 */
public record Wanted(String kind, String seed, Integer level, Integer benches, Instant from, Instant until, Instant opensAt) {
    public static final int MOST_BENCHES = 60;
    public static final int LONGEST_SEED = 80;
}
