package pairwright.model;

/** What of the locker a question may use. */
public enum FromLocker implements Word {
    /** Only what is free for the time. */
    FREE("free"),
    /** Whatever the locker holds; what is taken says when it is free again. */
    OWNED("owned"),
    /** The whole catalogue, as if there were no locker. */
    ANY("any");

    private final String id;

    FromLocker(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
