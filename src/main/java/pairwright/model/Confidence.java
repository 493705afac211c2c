package pairwright.model;

/** How sure an entry is: high for two or more independent sources or universal practice, low for an informed estimate. */
public enum Confidence implements Word {
    LOW("low"),
    MEDIUM("medium"),
    HIGH("high");

    private final String id;

    Confidence(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
