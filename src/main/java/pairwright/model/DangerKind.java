package pairwright.model;

/** What can harm a microphone at a position. */
public enum DangerKind implements Word {
    /** A jet or puff of air. */
    AIR_BLAST("air-blast"),
    /** Sticks, beaters or bows on their way. */
    STICKS("sticks"),
    /** Breath moisture and spit. */
    SPIT("spit"),
    /** Bellows, slides, pedals, keys, limbs. */
    MOVING_PARTS("moving-parts"),
    /** Heat. */
    HEAT("heat"),
    /** Strong vibration through the mount. */
    VIBRATION("vibration");

    private final String id;

    DangerKind(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
