package pairwright.locker;

import pairwright.model.Word;

/** What one switch for phantom power reaches. */
public enum PhantomSwitch implements Word {
    CHANNEL("channel"),
    /** All channels of the bank, whether they want it or not. */
    BANK("bank"),
    /** There is no phantom power. */
    NONE("none");

    private final String id;

    PhantomSwitch(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
