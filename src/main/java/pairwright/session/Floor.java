package pairwright.session;

/**
 * The room of a session. Places in it are metres from its lower left corner as it is drawn: x to the right, y up the plan.
 *
 * @param room id of the catalogue, for what kind of room it is and how quiet; null for the usual one
 * @param widthM along x
 * @param depthM along y
 * @param heightM to the ceiling
 * @param reverbTimeS mid-band reverberation time
 * @param patch where the leads end; null where nobody said
 */
public record Floor(String room, double widthM, double depthM, double heightM, double reverbTimeS, Patch patch) {
    public static final double LEAST_M = 1;
    public static final double MOST_M = 100;
    public static final double LEAST_REVERB_S = 0.05;
    public static final double MOST_REVERB_S = 15;

    /** The box or the desk in which the channels come out, in metres from the lower left corner. */
    public record Patch(double xM, double yM) {
    }

    /** One of which nobody said where the leads end. */
    public Floor(String room, double widthM, double depthM, double heightM, double reverbTimeS) {
        this(room, widthM, depthM, heightM, reverbTimeS, null);
    }

    /** Volume in cubic metres. */
    public double volumeM3() {
        return widthM * depthM * heightM;
    }

    /** Whether a place is within the walls. */
    public boolean holds(double xM, double yM) {
        return xM >= 0 && xM <= widthM && yM >= 0 && yM <= depthM;
    }
}
