package pairwright.lab;

/**
 * What goes back to a bench.
 *
 * @param marked what it answered and earned
 * @param handout what it was asked
 * @param key what was right, and why
 */
public record Feedback(BenchMark marked, Handout handout, Key key) {
}
