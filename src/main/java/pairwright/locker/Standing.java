package pairwright.locker;

import java.time.Instant;

/**
 * How a unit stands for a time that somebody asked about.
 *
 * @param unit the unit
 * @param booking what takes it for some of that time, the earliest, or what it is overdue from; null for nothing
 * @param overdue whether somebody has it and should have brought it back by now
 * @param freeFrom the first moment from which it is free for a time as long; null where none is known, as for a unit in repair or lost
 */
public record Standing(Unit unit, Booking booking, boolean overdue, Instant freeFrom) {
    /** Whether it can be had for all of that time. */
    public boolean free() {
        return unit.condition().usable() && booking == null && !overdue;
    }
}
