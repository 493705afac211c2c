package pairwright.model;

/** How fast a source starts: slow over 100 ms, medium 20 to 100 ms, fast 3 to 20 ms, impulsive under 3 ms. */
public enum Attack implements Word {
    SLOW("slow"),
    MEDIUM("medium"),
    FAST("fast"),
    IMPULSIVE("impulsive");

    private final String id;

    Attack(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
