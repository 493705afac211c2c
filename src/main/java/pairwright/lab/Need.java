package pairwright.lab;

/**
 * What a bench needs.
 *
 * @param micType id
 * @param units how many of it
 */
public record Need(String micType, int units) {
}
