package pairwright.locker;

/**
 * A unit somebody has at this moment.
 *
 * @param unit the unit
 * @param booking under which it left
 * @param line of that booking
 * @param overdue whether it should be back by now
 */
public record Out(Unit unit, Booking booking, Booking.Line line, boolean overdue) {
}
