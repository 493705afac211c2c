package pairwright.advice;

import java.util.Objects;

/**
 * How often a microphone of a type was left at a place of a source, of all the sessions in which it stood there.
 *
 * @param micType id
 * @param position id at the source
 * @param kept sessions after which it was marked as kept
 * @param tried sessions after which it was marked at all
 * @param room the room all of these were in; null for any
 * @param player who played in all of these; null for anybody
 */
public record Kept(String micType, String position, int kept, int tried, String room, String player) {
    /** @throws IllegalArgumentException for fewer than none, and for more that were kept than tried */
    public Kept {
        Objects.requireNonNull(micType, "micType");
        Objects.requireNonNull(position, "position");
        if (kept < 0 || tried < kept) {
            throw new IllegalArgumentException(micType + " at " + position + " was kept " + kept + " times of " + tried + ". Give 0 or more of at least as many");
        }
    }

    /**
     * What that is worth, -1 to 1: {@code (kept - changed) / (tried + 2)}. By the rule of succession (Laplace) the chance that it is kept next time is
     * {@code (kept + 1) / (tried + 2)}, where before the first time every chance was as likely as every other; twice that less 1 is this. So once is
     * worth a third, ten times of ten five sixths, and as often kept as changed nothing.
     */
    double share() {
        return (2.0 * kept - tried) / (tried + 2);
    }
}
