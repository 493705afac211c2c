package pairwright.model;

/** The families of microphones and boxes; what they share is how they turn sound into a signal. */
public enum MicFamily implements Word {
    MOVING_COIL("moving-coil"),
    RIBBON("ribbon"),
    SMALL_DIAPHRAGM_CONDENSER("small-diaphragm-condenser"),
    LARGE_DIAPHRAGM_CONDENSER("large-diaphragm-condenser"),
    BOUNDARY("boundary"),
    MINIATURE("miniature"),
    SHOTGUN("shotgun"),
    STEREO("stereo"),
    CHARACTER("character"),
    PICKUP("pickup"),
    LINE("line");

    private final String id;

    MicFamily(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
