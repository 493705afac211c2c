package pairwright.model;

/** On which side of the source a position lies. */
public enum Side implements Word {
    FRONT("front"),
    BEHIND("behind"),
    ABOVE("above"),
    BELOW("below"),
    LEFT("left"),
    RIGHT("right"),
    BESIDE("beside"),
    INSIDE("inside"),
    AROUND("around"),
    ON("on");

    private final String id;

    Side(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
