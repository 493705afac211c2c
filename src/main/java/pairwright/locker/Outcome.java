package pairwright.locker;

/**
 * What came of an act.
 *
 * @param text as it was said the first time
 * @param repeated whether it had been done before and was not done again
 */
public record Outcome(String text, boolean repeated) {
}
