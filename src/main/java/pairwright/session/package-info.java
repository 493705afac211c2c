/**
 * A session planned as a whole: who sits where, what each microphone hears of the others and when, and the best plan there is under what the
 * locker has. What is worth how much is asked of {@code advice} and the rules; the floor, the arithmetic between seats and the search for the
 * plan are here. {@link pairwright.session.LineUp} goes in, {@link pairwright.session.Plan} comes out.
 */
package pairwright.session;
