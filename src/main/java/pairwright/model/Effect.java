package pairwright.model;

/** What a finding does to an option. */
public enum Effect implements Word {
    /** Speaks for it, with points. */
    FOR("for"),
    /** Speaks against it, with points below zero. */
    AGAINST("against"),
    /** Rules it out. */
    RULES_OUT("rules-out"),
    /** Warns; moves no points. */
    CAUTION("caution");

    private final String id;

    Effect(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
