package pairwright.model;

/** How much of something a microphone stands. */
public enum Tolerance implements Word {
    LOW("low"),
    MEDIUM("medium"),
    HIGH("high");

    private final String id;

    Tolerance(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
