package pairwright.lab;

/**
 * Something that can be had instead.
 *
 * @param kind id
 * @param level 1 to 5
 * @param benches so many
 * @param says what it is, in a sentence
 */
public record Fits(String kind, int level, int benches, String says) {
}
