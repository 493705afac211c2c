package pairwright.locker;

import pairwright.model.Word;

/** What somebody may do; each may do what those before it may. */
public enum Role implements Word {
    /** Asks and reads. */
    READER("reader"),
    /** Books and plans. */
    ENGINEER("engineer"),
    /** Sees the keys of exercises. */
    INSTRUCTOR("instructor");

    private final String id;

    Role(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }

    /** Whether it may do what needs the other. */
    public boolean covers(Role needed) {
        return compareTo(needed) >= 0;
    }
}
