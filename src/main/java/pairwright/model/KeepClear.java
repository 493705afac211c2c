package pairwright.model;

/**
 * What a player or an instrument needs kept free at a position.
 *
 * @param of what moves or must be reached
 * @param distanceM how much room it needs
 */
public record KeepClear(String of, double distanceM) {
}
