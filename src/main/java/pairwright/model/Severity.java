package pairwright.model;

/** How grave a caution is. */
public enum Severity implements Word {
    /** Good to know. */
    NOTE("note"),
    /** Can harm gear or a take. */
    CARE("care"),
    /** Can harm a person. */
    DANGER("danger");

    private final String id;

    Severity(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
