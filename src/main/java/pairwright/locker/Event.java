package pairwright.locker;

import java.time.Instant;

/**
 * Something that was done.
 *
 * @param number in the order things were done
 * @param at when
 * @param who did it
 * @param what in a few words, such as "booked", "took out", "altered"
 * @param about id of the unit or booking
 * @param says a sentence with what changed
 */
public record Event(long number, Instant at, String who, String what, String about, String says) {
}
