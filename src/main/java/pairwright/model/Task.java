package pairwright.model;

import java.util.List;

/**
 * A piece of work at a session.
 *
 * @param id power-down, strike, swap, move, repatch or set-up
 * @param name as a list of steps says it
 * @param says what belongs to it
 * @param timeS how long one assistant takes for one microphone
 * @param confidence how sure
 * @param basis what the figures rest on
 */
public record Task(String id, String name, String says, Range timeS, Confidence confidence, List<Rests> basis) {
}
