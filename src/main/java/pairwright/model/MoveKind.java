package pairwright.model;

/** What is moved, changed or asked for when something is heard that is not wanted. */
public enum MoveKind implements Word {
    /** Something is asked of the player. */
    PLAYER("player"),
    /** Something is done to the instrument or the amplifier. */
    INSTRUMENT("instrument"),
    /** Something is done about the room, or put up in it. */
    ROOM("room"),
    /** A screen between the microphone and a neighbour. */
    SCREEN("screen"),
    /** A pop screen, foam, a low cut: something at the microphone that moves it nowhere. */
    FITTING("fitting"),
    /** The gain of the preamplifier. */
    GAIN("gain"),
    DISTANCE("distance"),
    ANGLE("angle"),
    POSITION("position"),
    PATTERN("pattern"),
    /** The paths to two microphones are made equal. */
    PATHS("paths"),
    /** The farther of two microphones goes farther still. */
    SPACING("spacing"),
    /** The polarity of the second of two channels is turned over. */
    POLARITY("polarity"),
    /** Another type. */
    MIC("mic");

    private final String id;

    MoveKind(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
