package pairwright.model;

/** The predicted number that shows whether a complaint gets better. */
public enum Gauge implements Word {
    /** Colour over some octaves. */
    TONE("tone"),
    /** Direct sound over the room's. */
    ROOM("room"),
    /** The source over its neighbours. */
    NEIGHBOURS("neighbours"),
    /** The source over the noise. */
    NOISE("noise"),
    /** What is left to the limit. */
    HEADROOM("headroom"),
    /** Ripple of the sum of two microphones; of one alone, direct sound over the room's. */
    COMB("comb"),
    /** No number shows it. */
    NONE("none");

    private final String id;

    Gauge(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
