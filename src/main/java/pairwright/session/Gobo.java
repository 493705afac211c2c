package pairwright.session;

/**
 * A screen that stands on the floor, seen from above as a line.
 *
 * @param id what it is called
 * @param x1M one end
 * @param y1M one end
 * @param x2M other end
 * @param y2M other end
 * @param heightM of its upper edge
 */
public record Gobo(String id, double x1M, double y1M, double x2M, double y2M, double heightM) {
}
