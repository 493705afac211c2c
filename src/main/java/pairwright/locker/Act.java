package pairwright.locker;

/**
 * Who does something, and by what it is known again should it be sent twice.
 *
 * @param who name for the history
 * @param key chosen by the sender, one for each thing done; null for none
 * @param print what was asked, so that a key used for something else is noticed; null with no key
 */
public record Act(String who, String key, String print) {
    /** Something that will not be sent twice. */
    public static Act by(String who) {
        return new Act(who, null, null);
    }
}
