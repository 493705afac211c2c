package pairwright.model;

/** What holds a microphone at a position. */
public enum Mount implements Word {
    /** A straight stand or a short boom. */
    STAND("stand"),
    /** A boom reaching over something. */
    BOOM("boom"),
    /** A tall stand or boom above heads. */
    OVERHEAD("overhead"),
    /** A clip on the instrument. */
    CLIP("clip"),
    /** On the floor or a plate. */
    FLOOR("floor"),
    /** On a pillow, short stand or holder inside. */
    INSIDE("inside"),
    /** Stuck or clamped on. */
    CONTACT("contact"),
    /** A lead, no microphone. */
    LEAD("lead"),
    /** Held in the hand. */
    HAND("hand");

    private final String id;

    Mount(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
