package pairwright.model;

/**
 * Something wrong with what came in.
 *
 * @param at where, as a pointer such as /limits/mics
 * @param says what is wrong, with the value, and then what to do
 */
public record Fault(String at, String says) {
}
