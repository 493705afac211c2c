package pairwright.locker;

import pairwright.model.Word;

/** What a document of a session is. A line-up stands alone, and everything else belongs to one. */
public enum DocumentKind implements Word {
    LINE_UP("line-up"),
    /** A plan as it was chosen. */
    PICKS("picks"),
    /** What is done of a line check. */
    TICKS("ticks"),
    /** How it was in the end. */
    RECALL("recall");

    private final String id;

    DocumentKind(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
