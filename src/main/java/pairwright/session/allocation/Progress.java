package pairwright.session.allocation;

/** Told how far a long computation is; asked whether to go on. */
public interface Progress {
    /** Nobody looks. */
    Progress NONE = new Progress() {
    };

    /** One more is known. */
    default void known(Gain gain, int done, int of) {
    }

    /** Whether to stop after what is being searched now. */
    default boolean isStopped() {
        return false;
    }
}
