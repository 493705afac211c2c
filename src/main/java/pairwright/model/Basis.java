package pairwright.model;

/** What a figure, a habit or a rule rests on. */
public enum Basis implements Word {
    /** A law with stated validity. */
    PHYSICS("physics"),
    /** A published standard or regulation. */
    STANDARD("standard"),
    /** Measured by others and published. */
    PUBLISHED("published"),
    /** Measured for this project on openly licensed recordings. */
    MEASURED("measured"),
    /** What the trade does. */
    PRACTICE("practice"),
    /** An informed estimate. */
    ESTIMATE("estimate"),
    /** A house rule. */
    HOUSE("house");

    private final String id;

    Basis(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
