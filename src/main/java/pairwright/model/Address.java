package pairwright.model;

/** Which part of the body looks at the source. */
public enum Address implements Word {
    END("end"),
    SIDE("side"),
    PLATE("plate"),
    CLIP("clip"),
    CONTACT("contact"),
    BOX("box");

    private final String id;

    Address(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
