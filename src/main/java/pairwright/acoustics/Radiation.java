package pairwright.acoustics;

/**
 * How much of a source goes where, as far as one number says it: as a power, {@code Q^-2 + (1 - Q^-2) ((1 + cos angle) / 2)^Q} with the
 * directivity factor Q of its directivity index. Averaged over the sphere it is 1 / Q, so it has the index it is given; straight behind it is
 * twice the index down. That lies between what is known: the open end of a pipe (Levine and Schwinger, 1948) sends 1 to 1.7 times its index
 * less to the back than to the front, a first-order source such as a small box 2 to 4 times. Derived here. Round about the axis it is the
 * average of a source that is not round; single tones of strings and woodwinds go their own ways, 5 dB and more off it.
 */
public final class Radiation {
    private Radiation() {
    }

    /**
     * Level toward an angle off the main axis against that on it, dB, 0 or less.
     *
     * @param directivityIndexDb toward the main axis, 0 to 30
     * @param angleDegrees off it
     */
    public static double towardDb(double directivityIndexDb, double angleDegrees) {
        double factor = Decibels.toPowerRatio(Check.within("directivityIndexDb", directivityIndexDb, 0, 30));
        Check.angleDegrees("angleDegrees", angleDegrees);
        double behind = 1 / (factor * factor);
        return Decibels.ofPowerRatio(behind + (1 - behind) * Math.pow((1 + Degrees.cos(angleDegrees)) / 2, factor));
    }
}
