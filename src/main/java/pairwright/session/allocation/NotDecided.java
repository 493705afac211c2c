package pairwright.session.allocation;

/** The search ended at its limit before it had found a plan or shown that there is none. */
public final class NotDecided extends RuntimeException {
    public NotDecided() {
        super("No plan was found in the time there is for it, and it is not proven that there is none. What is scarce makes it hard: name more stands, channels or "
                + "units, give each seat fewer microphones (maxMics), or plan fewer seats at once");
    }
}
