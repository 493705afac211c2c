package pairwright.numbers;

/** One calculation. Stateless; a new one is added to the list in {@link Numbers}. */
interface Calculation {
    CalculationInfo info();

    /** Refuses inputs that are each possible and do not go together. */
    default void check(Inputs in) {
    }

    /** Works it out. Every number comes from a function of {@code acoustics}. */
    void work(Inputs in, Working out);
}
