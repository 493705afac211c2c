package pairwright.lab;

/** Whoever asks may not see that, or not yet. */
public final class KeysShut extends RuntimeException {
    private static final long serialVersionUID = 1;

    KeysShut(String says) {
        super(says, null, false, false);
    }
}
