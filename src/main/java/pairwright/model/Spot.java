package pairwright.model;

/**
 * A place on a source, from the middle of its sounding surface.
 *
 * @param forwardM where the player faces; below 0 backward
 * @param leftM to the left of the player; below 0 to the right
 * @param upM above it; below 0 under it
 */
public record Spot(double forwardM, double leftM, double upM) {
}
