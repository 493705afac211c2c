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

    /** What to switch on the channel of such a type, in words; {@code phantom} says whether phantom power is on. */
    public String switched(boolean phantom) {
        String channel = phantom ? "phantom on" : "phantom off";
        return this != PHANTOM_OR_BATTERY ? channel : channel + (phantom ? ", or a fresh cell in it" : ", a fresh cell in it");
    }

    @Override
    public String id() {
        return id;
    }
}
