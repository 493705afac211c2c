package pairwright.session.allocation;

/** The search ended at its limit before it had found a plan or shown that there is none. */
public final class NotDecided extends RuntimeException {
    NotDecided() {
        super("No plan was found in the time there is for it, and it is not proven that there is none. Ask for fewer sources, or allow fewer options for each");
    }
}
