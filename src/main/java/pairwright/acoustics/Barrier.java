package pairwright.acoustics;

/**
 * What a screen between a source and a microphone takes from the sound that comes straight. What comes by way of the room goes round it
 * and is not touched. A thin, heavy, straight-edged screen is meant; one that leaks or lets sound through does less. Source: Kurze and
 * Anderson, Sound Attenuation by Barriers (1971), a curve through the measurements of Maekawa (1968).
 */
public final class Barrier {
    /** No screen that stands free in a room takes more, whatever its size: sound leaks through it and past it. */
    public static final double MOST_DB = 20;

    private static final double AT_THE_EDGE_DB = 5;
    /** Beyond this Fresnel number on the lit side the curve has met zero, and its tangent must not come round again. */
    private static final double LIT_LIMIT = 0.2;

    private Barrier() {
    }

    /**
     * What one edge leaves less, dB, 0 to {@link #MOST_DB}: {@code 5 + 20 lg(sqrt(2 pi N) / tanh sqrt(2 pi N))} with
     * {@code N = 2 d f / c}; on the lit side, where N is negative, tan in place of tanh, until nothing is left.
     *
     * @param detourM how much longer the way over the edge is than the straight one, metres; negative where the straight one passes clear of the edge
     * @param frequencyHz in hertz
     */
    public static double edgeDb(double detourM, double frequencyHz) {
        return edgeDb("detourM", detourM, frequencyHz);
    }

    private static double edgeDb(String name, double detourM, double frequencyHz) {
        Check.within(name, detourM, -1000, 1000);
        Check.frequencyHz("frequencyHz", frequencyHz);
        double number = 2 * detourM * frequencyHz / Delay.SPEED_OF_SOUND_M_PER_S;
        if (number < -LIT_LIMIT) {
            return 0;
        }
        double root = Math.sqrt(2 * Math.PI * Math.abs(number));
        double bent = root < 1e-6 ? 1 : root / (number > 0 ? Math.tanh(root) : Math.tan(root));
        return Math.max(0, Math.min(MOST_DB, AT_THE_EDGE_DB + Decibels.ofRatio(bent)));
    }

    /**
     * What a screen leaves less when sound comes round several edges, dB: their shares add as powers. At the lit side of an edge the straight
     * sound passes, so nothing is taken more than by the edge that takes least.
     *
     * @param detoursM of each edge it can come round, metres; at least one
     * @param frequencyHz in hertz
     */
    public static double screenDb(double[] detoursM, double frequencyHz) {
        if (detoursM.length == 0) {
            throw new IllegalArgumentException("no edge was given");
        }
        double power = 0;
        for (double detourM : detoursM) {
            power += Decibels.toPowerRatio(-edgeDb("detoursM", detourM, frequencyHz));
        }
        return Math.max(0, -Decibels.ofPowerRatio(power));
    }
}
