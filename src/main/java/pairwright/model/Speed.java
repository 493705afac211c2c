package pairwright.model;

/** How fast the moving part follows a transient. */
public enum Speed implements Word {
    SLOW("slow"),
    MEDIUM("medium"),
    FAST("fast"),
    FASTEST("fastest");

    private final String id;

    Speed(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
