package pairwright.lab;

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
        double guessed = 0;
        for (int i = 0; i < GUESSES; i++) {
            guessed += exercise.mark(Guess.of(handout, draw)).share();
        }
        return new Variant(drawn, exercise, 1 - (guessed / GUESSES + exercise.mark(exercise.usual()).share()) / 2);
    }
}
