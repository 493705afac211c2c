package pairwright.drawing;

/**
 * A picture and the words that say the same.
 *
 * @param svg one {@code svg} element, ready to stand in a page or a file; every label in it is escaped
 * @param says what it shows, in sentences, for whoever cannot see it
 */
public record Drawing(String svg, String says) {
}
