package pairwright.model;

/** How the two placements of a technique relate. */
public enum Arrangement implements Word {
    /** Two capsules in one place. */
    SAME_SPOT("same-spot"),
    /** Opposite sides of one membrane, plate or box. */
    TWO_SIDES("two-sides"),
    /** One inside, one outside. */
    INSIDE_AND_OUTSIDE("inside-and-outside"),
    /** One close, one well back. */
    NEAR_AND_FAR("near-and-far"),
    /** Two places on one source. */
    TWO_SPOTS("two-spots"),
    /** The two ends of one source. */
    TWO_ENDS("two-ends"),
    /** Two capsules in one point, angled. */
    COINCIDENT("coincident"),
    /** Two capsules a hand apart, angled. */
    NEAR_COINCIDENT("near-coincident"),
    /** Two capsules well apart, parallel. */
    SPACED("spaced"),
    /** A mid microphone and a sideways figure-8. */
    MID_SIDE("mid-side"),
    /** A microphone and a pickup or line box. */
    MIC_AND_LINE("mic-and-line"),
    /** Two microphones for two sources of one player, each with its null on the other. */
    NULLS_APART("nulls-apart");

    private final String id;

    Arrangement(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
