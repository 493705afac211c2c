package pairwright.model;

import java.time.OffsetDateTime;

/**
 * A unit of the locker to take for a placement.
 *
 * @param id of the unit
 * @param label what is written on it
 * @param tag what a scanner reads; null for none
 * @param storedAt where it lies; null for unknown
 * @param note what to know of it; null for nothing
 * @param mate id of the unit it was matched with, where the option takes both; else null
 * @param freeFrom when it is free for as long as asked; null where it is free, and where nobody knows
 * @param out why it cannot be had for the time, as in {@link Stock.Out}; null where it is free
 */
public record Given(String id, String label, String tag, String storedAt, String note, String mate, OffsetDateTime freeFrom, String out) {
}
