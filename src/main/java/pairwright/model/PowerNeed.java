package pairwright.model;

/** Where a microphone takes its power from. */
public enum PowerNeed implements Word {
    /** Passive: nothing needed. */
    NONE("none"),
    /** Phantom power, P48. */
    PHANTOM("phantom"),
    /** A supply of its own, such as a valve microphone. */
    OWN_SUPPLY("own-supply"),
    /** Phantom power or a cell inside. */
    PHANTOM_OR_BATTERY("phantom-or-battery");

    private final String id;

    PowerNeed(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
