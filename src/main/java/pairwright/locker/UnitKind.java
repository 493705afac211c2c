package pairwright.locker;

import pairwright.model.Word;

/** What a unit is. */
public enum UnitKind implements Word {
    /** A microphone or a line box: whatever the catalogue has a mic type for. */
    MIC("mic"),
    /** One channel of a preamplifier. */
    CHANNEL("channel"),
    /** A pad that goes into a line. */
    PAD("pad"),
    /** An inline booster. */
    BOOSTER("booster"),
    /** A stand. */
    STAND("stand");

    private final String id;

    UnitKind(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
