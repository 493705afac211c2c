package pairwright.lab;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One exercise of a kind, with how hard it is.
 *
 * @param drawn the case
 * @param exercise made of it
 * @param hardnessShare what is lost, on average, by those who guess and by the one who takes the usual, each of the two counting half; 0 to 1
 */
public record Variant(Case drawn, Exercise exercise, double hardnessShare) {
    /** So many guesses tell their mean to within a few hundredths. */
    private static final int GUESSES = 24;

    static Variant of(Case drawn, Exercise exercise) {
        Draw draw = Draw.named("hardness");
        Handout handout = exercise.handout();
        List<Answer> guesses = IntStream.range(0, GUESSES).mapToObj(i -> Guess.of(handout, draw)).toList();
        Answer usual = exercise.usual();
        exercise.ready(Stream.concat(guesses.stream(), Stream.of(usual)).toList());
        double guessed = 0;
        for (Answer guess : guesses) {
            guessed += exercise.mark(guess).share();
        }
        return new Variant(drawn, exercise, 1 - (guessed / GUESSES + exercise.mark(usual).share()) / 2);
    }
}
