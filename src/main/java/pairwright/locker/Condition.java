package pairwright.locker;

import pairwright.model.Word;

/** How a unit is. */
public enum Condition implements Word {
    GOOD("good"),
    /** Works, but for what its note says. */
    LIMITED("limited"),
    IN_REPAIR("in-repair"),
    LOST("lost");

    private final String id;

    Condition(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }

    /** Whether it can be used at all. */
    public boolean usable() {
        return this == GOOD || this == LIMITED;
    }
}
