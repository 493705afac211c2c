package pairwright.model;

/**
 * How a source stands, for the drawings of a set-up. What counts is the middle of the surface that distances are measured from.
 *
 * @param shape what it looks like
 * @param axisUpDegrees how far its main axis points up: 0 level, 90 straight up, below 0 toward the floor
 * @param axisTurnDegrees how far that axis is turned to the left of where the player faces: 180 backward, -90 to the right; null for not at all
 * @param heightM of that surface above the floor, as it is usually played
 */
public record Body(BodyShape shape, double axisUpDegrees, Double axisTurnDegrees, double heightM) {
}
