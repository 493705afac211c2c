package pairwright.session;

import pairwright.model.Word;

/** What a stand is good for. Each can do what the ones before it can, but for the short one, which stays low. */
public enum StandKind implements Word {
    /** Low, for amplifiers, drums near the floor, and inside. */
    SHORT("short"),
    STRAIGHT("straight"),
    BOOM("boom"),
    /** Tall and heavy enough for a boom above heads. */
    OVERHEAD("overhead");

    private final String id;

    StandKind(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
