package pairwright.locker;

import java.time.Instant;

/**
 * Who holds a token. The token itself is nowhere to be found: only a hash of it is kept.
 *
 * @param name whose it is
 * @param role what it lets them do
 * @param since when it was made
 */
public record Token(String name, Role role, Instant since) {
}
