package pairwright.lab;

/** What is right at one bench. */
public record BenchKey(int bench, Key key) {
}
