package pairwright.model;

/** Where the trade ranks a type at a source. */
public enum HabitRank implements Word {
    /** Usually reached for first. */
    FIRST("first"),
    /** The usual alternative. */
    SECOND("second"),
    /** Usually avoided. */
    AVOID("avoid");

    private final String id;

    HabitRank(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
