package pairwright.sheet;

import java.util.List;

/**
 * What of a locker an answer goes by.
 *
 * @param says for when, and what was ranked; empty where that is the usual and told as taken for granted
 * @param away what to know where the locker does not answer; empty where it does
 * @param fields when it is needed and what may be used
 * @param zone in which the times are
 * @param missed better types that are out
 */
public record StockView(String says, String away, List<FormField> fields, String zone, List<Missed> missed) {
    /**
     * A type that is out and would be better.
     *
     * @param says how much better
     * @param units who has which and when it is back, the first that comes back first
     * @param more how many more are out; empty for none
     */
    public record Missed(String says, List<Taken> units, String more) {
    }

    /** A unit that is out, its page, and what stands behind its label to say so. */
    public record Taken(String label, String href, String rest) {
    }
}
