package pairwright.session.allocation;

/**
 * What it is worth to leave a seat with what is set up there already: the price of moving it.
 *
 * @param seat index of the seat
 * @param choice index of the choice that is, or is almost, set up
 * @param centipoints hundredths of a point, 0 or more
 */
public record Kept(int seat, int choice, long centipoints) {
}
