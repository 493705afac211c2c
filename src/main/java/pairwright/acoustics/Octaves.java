package pairwright.acoustics;

/** The nine octave bands everything is predicted in. */
public final class Octaves {
    /** How many bands there are. */
    public static final int COUNT = 9;

    private static final double[] CENTRE_HZ = {63, 125, 250, 500, 1000, 2000, 4000, 8000, 16000};

    private Octaves() {
    }

    /**
     * The nominal centre of a band in hertz: 63, 125, 250, 500, 1000, 2000, 4000, 8000, 16000 for bands 0 to 8.
     * Source: IEC 61260-1, nominal mid-band frequencies.
     */
    public static double centreHz(int band) {
        return CENTRE_HZ[checked("band", band)];
    }

    static int checked(String name, int band) {
        return Check.within(name, band, 0, COUNT - 1);
    }
}
