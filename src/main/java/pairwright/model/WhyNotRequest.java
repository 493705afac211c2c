package pairwright.model;

/**
 * Why a type was not chosen.
 *
 * @param question the question it was not chosen for
 * @param micType id of the type
 * @param pattern only in this pattern; null for any
 * @param position only there; null for anywhere
 */
public record WhyNotRequest(Request question, String micType, Pattern pattern, String position) {
}
