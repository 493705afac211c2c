package pairwright.advice;

/** What is taken for granted when a question does not say; every use of one is told in the answer. */
public final class Usual {
    /** The room of a question that names none. */
    public static final String ROOM = "medium-live-room";
    /** Options shown. */
    static final int OPTIONS = 3;
    /** The most often anything is drawn anew. */
    static final int MOST_DRAWS = 1000;
    /** Channels an option may take. */
    static final int CHANNELS = 2;
    /** Gain of a decent microphone preamplifier. */
    static final double PREAMP_GAIN_DB = 65;
    /** Its lowest gain: some 5 to 15 dB are usual. */
    public static final double LEAST_GAIN_DB = 8;
    /** Its equivalent input noise, unweighted, at 150 ohm. */
    static final double PREAMP_NOISE_DBU = -128;
    /** Its input impedance, the common ten times 150 ohm. */
    static final double PREAMP_OHM = 1500;
    /** Level of a full-scale sine at the converter. */
    public static final double FULL_SCALE_DBU = 22;
    /** Where the running level is put. */
    public static final double TARGET_DBFS = -18;
    /** Where the loudest peak may reach. */
    public static final double PEAK_DBFS = -6;
    /** Input of the active line box a bare contact is plugged into. */
    static final double ACTIVE_LINE_BOX_OHM = 10_000_000;

    private Usual() {
    }
}
