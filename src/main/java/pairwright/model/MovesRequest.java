package pairwright.model;

/**
 * What to do about something that is heard.
 *
 * @param question the question the set-up answers
 * @param option how the microphones stand
 * @param heard what is heard, in a word
 */
public record MovesRequest(Request question, Setup option, String heard) {
}
