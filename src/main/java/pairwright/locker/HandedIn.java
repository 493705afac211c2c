package pairwright.locker;

import java.time.Instant;

/**
 * What a bench handed in.
 *
 * @param set id
 * @param bench number
 * @param number which of the bench's, from 1
 * @param answer as text; the locker does not read it
 * @param points what it earned when it was marked; null for not marked yet
 * @param ofPoints out of so many; null for not marked yet
 * @param late whether everybody could see the key by then, and whoever handed it in was one who could not before
 * @param at when
 * @param by who did
 */
public record HandedIn(String set, int bench, int number, String answer, Double points, Double ofPoints, boolean late, Instant at, String by) {
}
