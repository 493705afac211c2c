package pairwright.acoustics;

/** Sound pressure levels: how they fall with distance, and how they add. */
public final class Level {
    /** 0 dB SPL in pascal. */
    public static final double REFERENCE_PRESSURE_PA = 20e-6;

    /** One pascal as a level, 93.98 dB SPL; data sheets round it to 94. */
    public static final double ONE_PASCAL_DB_SPL = Decibels.ofRatio(1 / REFERENCE_PRESSURE_PA);

    private static final int MOST_MICROPHONES = 10_000;

    private Level() {
    }

    /**
     * A point source at another distance: {@code L - 20 lg(distance / reference)}, dB SPL and metres.
     * Holds in the free field, well away from the source compared with its size; see the corrections below for closer.
     * Source: Beranek, Acoustics.
     */
    public static double atDistanceDbSpl(double levelDbSpl, double referenceDistanceM, double distanceM) {
        Check.levelDb("levelDbSpl", levelDbSpl);
        Check.distanceM("referenceDistanceM", referenceDistanceM);
        Check.distanceM("distanceM", distanceM);
        return levelDbSpl - Decibels.ofRatio(distanceM / referenceDistanceM);
    }

    /**
     * Direct sound of a sound power: {@code Lw + 10 lg(Q / (4 pi r^2))}, Lw in dB re 1 pW, metres, answer in dB SPL.
     * Q is 1 for equal radiation all round, 2 into a half space. Free field. Source: Beranek; Kuttruff, Room Acoustics.
     */
    public static double fromPowerDbSpl(double powerLevelDb, double distanceM, double directivityFactor) {
        Check.levelDb("powerLevelDb", powerLevelDb);
        Check.distanceM("distanceM", distanceM);
        checkFactor("directivityFactor", directivityFactor);
        return powerLevelDb + Decibels.ofPowerRatio(directivityFactor / (4 * Math.PI)) - Decibels.ofRatio(distanceM);
    }

    /**
     * Level at a distance from a surface whose sound seems to start {@code d} behind it:
     * {@code L(1 m) - 20 lg((r + d) / (1 + d))}, dB SPL and metres. Without the offset, close levels come out too high.
     * Derived from the point source; holds as far as one centre describes the source.
     */
    public static double withCentreOffsetDbSpl(double levelAtOneMetreDbSpl, double distanceM, double centreOffsetM) {
        Check.levelDb("levelAtOneMetreDbSpl", levelAtOneMetreDbSpl);
        Check.distanceM("distanceM", distanceM);
        Check.distanceOrZeroM("centreOffsetM", centreOffsetM);
        return levelAtOneMetreDbSpl - Decibels.ofRatio((distanceM + centreOffsetM) / (1 + centreOffsetM));
    }

    /**
     * What to add to the point-source level in front of a disc whose parts move independently:
     * {@code 10 lg((r^2/a^2) ln(1 + a^2/r^2))} dB, never above 0, metres. On the axis. Nearer than the radius the microphone
     * hears a part of the disc, so tone depends on the spot as well. Derived by integrating over the disc.
     */
    public static double discCorrectionDb(double distanceM, double radiusM) {
        Check.distanceM("distanceM", distanceM);
        Check.distanceM("radiusM", radiusM);
        double square = Math.pow(radiusM / distanceM, 2);
        return Decibels.ofPowerRatio(Math.log1p(square) / square);
    }

    /**
     * What to add to the point-source level in front of a disc that moves as one, for wavelengths much longer than its radius:
     * {@code 20 lg(2 r (sqrt(r^2 + a^2) - r) / a^2)} dB, never above 0, metres. On the axis.
     * Source: Beranek, the low-frequency limit of the piston.
     */
    public static double pistonCorrectionDb(double distanceM, double radiusM) {
        Check.distanceM("distanceM", distanceM);
        Check.distanceM("radiusM", radiusM);
        // the same expression, without the difference that would lose digits far away
        return Decibels.ofRatio(2 * distanceM / (Math.hypot(distanceM, radiusM) + distanceM));
    }

    /**
     * What to add to the point-source level beside the middle of a line whose parts sound independently:
     * {@code 10 lg((2 r / L) atan(L / (2 r)))} dB, never above 0, metres. Derived by integrating along the line.
     */
    public static double lineCorrectionDb(double distanceM, double lengthM) {
        Check.distanceM("distanceM", distanceM);
        Check.distanceM("lengthM", lengthM);
        double halfAngle = lengthM / (2 * distanceM);
        return Decibels.ofPowerRatio(Math.atan(halfAngle) / halfAngle);
    }

    /**
     * Where the far field of a disc that moves as one begins: {@code pi a^2 f / c}, metres and hertz. A guide, not an edge; and
     * never nearer than about two radii, whatever this says. Source: Beranek.
     */
    public static double rayleighDistanceM(double radiusM, double frequencyHz) {
        Check.distanceM("radiusM", radiusM);
        Check.frequencyHz("frequencyHz", frequencyHz);
        return Math.PI * radiusM * radiusM * frequencyHz / Delay.SPEED_OF_SOUND_M_PER_S;
    }

    /** Sound pressure in pascal: {@code 20e-6 * 10^(L/20)}, RMS if the level is. The definition of dB SPL. */
    public static double pressurePa(double levelDbSpl) {
        return REFERENCE_PRESSURE_PA * Decibels.toRatio(Check.levelDb("levelDbSpl", levelDbSpl));
    }

    /** Sum of sounds that have nothing in common: {@code 10 lg sum 10^(L/10)}, dB. At least one. Source: Beranek. */
    public static double sumIncoherentDb(double... levelsDb) {
        double sum = 0;
        for (double levelDb : Check.levelsDb("levelsDb", levelsDb)) {
            sum += Decibels.toPowerRatio(levelDb);
        }
        return Decibels.ofPowerRatio(sum);
    }

    /** Sum of one sound arriving in step: {@code 20 lg sum 10^(L/20)}, dB. At least one. Source: Beranek. */
    public static double sumInPhaseDb(double... levelsDb) {
        double sum = 0;
        for (double levelDb : Check.levelsDb("levelsDb", levelsDb)) {
            sum += Decibels.toRatio(levelDb);
        }
        return Decibels.ofRatio(sum);
    }

    /**
     * Sum of two tones of one frequency: {@code 10 lg(p1^2 + p2^2 + 2 p1 p2 cos phase)} with {@code p = 10^(L/20)}, dB and
     * degrees. Negative infinity if they cancel exactly (equal and half a turn apart). Source: Beranek.
     */
    public static double sumWithPhaseDb(double firstDb, double secondDb, double phaseDegrees) {
        double first = Decibels.toRatio(Check.levelDb("firstDb", firstDb));
        double second = Decibels.toRatio(Check.levelDb("secondDb", secondDb));
        double cosine = Degrees.cos(Check.angleDegrees("phaseDegrees", phaseDegrees));
        double difference = first - second;
        // the same sum, written so that it cannot fall below zero
        return Decibels.ofPowerRatio(difference * difference + 2 * first * second * (1 + cosine));
    }

    /**
     * How much noise and room rise when that many equally set microphones are open instead of one: {@code 10 lg N} dB.
     * Holds for noise that is independent at each. Source: the incoherent sum.
     */
    public static double openMicRiseDb(int microphones) {
        return Decibels.ofPowerRatio(Check.within("microphones", microphones, 1, MOST_MICROPHONES));
    }

    static double checkFactor(String name, double directivityFactor) {
        return Check.positive(name, directivityFactor, 1000);
    }
}
