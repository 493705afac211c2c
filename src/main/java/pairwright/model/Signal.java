package pairwright.model;

/** What leaves the source: sound, or a signal on a lead. */
public enum Signal implements Word {
    /** Sound in air. */
    ACOUSTIC("acoustic"),
    /** An unbalanced instrument output. */
    INSTRUMENT("instrument"),
    /** A line output. */
    LINE("line"),
    /** The lead of a pickup. */
    PICKUP("pickup");

    private final String id;

    Signal(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
