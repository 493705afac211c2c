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

    /** How far the boom has to reach from the column; 0 where nothing leans. */
    public double boomReachM() {
        return switch (this) {
            case BOOM -> 0.5;
            case OVERHEAD -> 0.8;
            default -> 0;
        };
    }

    /** Whether a stand of its own holds it. */
    public boolean onStand() {
        return this == STAND || this == BOOM || this == OVERHEAD;
    }

    @Override
    public String id() {
        return id;
    }
}
