package pairwright.model;

/** How a room sounds to itself. */
public enum RoomKind implements Word {
    /** Adds something wanted. */
    FLATTERING("flattering"),
    /** Neither adds nor harms. */
    NEUTRAL("neutral"),
    /** Adds something unwanted. */
    UNFLATTERING("unflattering");

    private final String id;

    RoomKind(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
