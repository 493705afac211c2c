package pairwright.acoustics;

/**
 * Diffuse sound in rooms. Everything here is a statistical average: it holds above the Schroeder frequency, away from walls, in
 * rooms without one dead or one very long side. Source, where not said otherwise: Kuttruff, Room Acoustics.
 */
public final class Room {
    /** {@code 24 ln 10 / c}, the 0.161 s/m of the reverberation formulas. */
    private static final double SABINE_S_PER_M = 24 * Math.log(10) / Delay.SPEED_OF_SOUND_M_PER_S;

    private Room() {
    }

    /** Equivalent absorption area from volume and reverberation time, {@code 0.161 V / T} square metres. */
    public static double absorptionM2(double volumeM3, double reverbTimeS) {
        return SABINE_S_PER_M * checkVolume(volumeM3) / checkTime(reverbTimeS);
    }

    /**
     * The absorption area to use in place of the plain one where the mean absorption coefficient passes about 0.2:
     * {@code A / (1 - coefficient)} square metres, the room constant. Coefficient from 0 to 0.99.
     */
    public static double roomConstantM2(double absorptionM2, double absorptionCoefficient) {
        return checkArea(absorptionM2) / (1 - Check.within("absorptionCoefficient", absorptionCoefficient, 0, 0.99));
    }

    /** Where direct and diffuse sound are equal for an omni on a source that radiates all round, {@code sqrt(A / (16 pi))} m. */
    public static double criticalDistanceM(double volumeM3, double reverbTimeS) {
        return Math.sqrt(absorptionM2(volumeM3, reverbTimeS) / (16 * Math.PI));
    }

    /**
     * The same for a directional source and microphone on their axes, {@code rc sqrt(Qs Qm)} metres; Qm is one over the random
     * energy efficiency.
     */
    public static double criticalDistanceM(
            double volumeM3, double reverbTimeS, double sourceDirectivityFactor, double microphoneDirectivityFactor) {
        Level.checkFactor("sourceDirectivityFactor", sourceDirectivityFactor);
        Level.checkFactor("microphoneDirectivityFactor", microphoneDirectivityFactor);
        return criticalDistanceM(volumeM3, reverbTimeS) * Math.sqrt(sourceDirectivityFactor * microphoneDirectivityFactor);
    }

    /** Below {@code 2000 sqrt(T / V)} Hz single room modes rule and nothing else in this class holds. */
    public static double schroederHz(double volumeM3, double reverbTimeS) {
        return 2000 * Math.sqrt(checkTime(reverbTimeS) / checkVolume(volumeM3));
    }

    /**
     * Direct against diffuse sound at a microphone, {@code 10 lg(Qs R^2 / REE) + 20 lg(rc / r)} dB; Qs is the source's
     * directivity factor toward the microphone, the angle is the source's from the microphone's front. Negative infinity at a
     * null.
     */
    public static double directToReverbDb(
            double volumeM3,
            double reverbTimeS,
            double distanceM,
            double sourceDirectivityFactor,
            double coefficient,
            double angleDegrees) {
        double criticalDistanceM = criticalDistanceM(volumeM3, reverbTimeS);
        return Decibels.ofPowerRatio(Level.checkFactor("sourceDirectivityFactor", sourceDirectivityFactor))
                + FirstOrder.responseDb(coefficient, angleDegrees)
                + FirstOrder.directivityIndexDb(coefficient)
                + Decibels.ofRatio(criticalDistanceM / Check.distanceM("distanceM", distanceM));
    }

    /** Direct and diffuse sound together, {@code Lw + 10 lg(Q / (4 pi r^2) + 4 / A)} dB SPL; Lw in dB re 1 pW. */
    public static double levelInRoomDbSpl(
            double powerLevelDb, double distanceM, double directivityFactor, double absorptionM2) {
        return Decibels.ofPowerRatio(
                Decibels.toPowerRatio(Level.fromPowerDbSpl(powerLevelDb, distanceM, directivityFactor))
                        + Decibels.toPowerRatio(reverberantDbSpl(powerLevelDb, absorptionM2)));
    }

    /** The diffuse part alone, the same everywhere in the room: {@code Lw + 10 lg(4 / A)} dB SPL. */
    public static double reverberantDbSpl(double powerLevelDb, double absorptionM2) {
        Check.levelDb("powerLevelDb", powerLevelDb);
        return powerLevelDb + Decibels.ofPowerRatio(4 / checkArea(absorptionM2));
    }

    /**
     * The diffuse sound of another source as a microphone hears it, given as the level on its axis that would read the same:
     * {@code Lw + 10 lg(4 / A) - DI} dB SPL. No null helps below this; in small rooms it, not the direct path, limits
     * separation.
     */
    public static double reverberantPickupDb(double powerLevelDb, double absorptionM2, double directivityIndexDb) {
        return reverberantDbSpl(powerLevelDb, absorptionM2)
                - Check.within("directivityIndexDb", directivityIndexDb, -30, 40);
    }

    /**
     * How far the wanted source stands above the direct sound of another one, dB:
     * {@code (L1 - 20 lg r1) - (L2 - 20 lg r2 + D2 + 20 lg |R|)}. Levels at 1 m; D2 is what the other source's own directivity
     * adds toward this microphone (negative off its axis); the angle is the other source's from the microphone's front. The
     * wanted source is on the axis. Positive infinity at an ideal null; then the room decides. Derived from the point source.
     */
    public static double directSeparationDb(
            double ownAtOneMetreDbSpl,
            double ownDistanceM,
            double otherAtOneMetreDbSpl,
            double otherDistanceM,
            double coefficient,
            double angleDegrees,
            double otherDirectivityDb) {
        Check.levelDb("ownAtOneMetreDbSpl", ownAtOneMetreDbSpl);
        Check.distanceM("ownDistanceM", ownDistanceM);
        Check.levelDb("otherAtOneMetreDbSpl", otherAtOneMetreDbSpl);
        Check.distanceM("otherDistanceM", otherDistanceM);
        Check.levelDb("otherDirectivityDb", otherDirectivityDb);
        return ownAtOneMetreDbSpl - Decibels.ofRatio(ownDistanceM)
                - (otherAtOneMetreDbSpl - Decibels.ofRatio(otherDistanceM) + otherDirectivityDb)
                - FirstOrder.responseDb(coefficient, angleDegrees);
    }

    /** The same with the pattern's null no deeper than a floor in dB (at most 0). */
    public static double directSeparationDb(
            double ownAtOneMetreDbSpl,
            double ownDistanceM,
            double otherAtOneMetreDbSpl,
            double otherDistanceM,
            double coefficient,
            double angleDegrees,
            double otherDirectivityDb,
            double nullFloorDb) {
        double frontDb = directSeparationDb(
                ownAtOneMetreDbSpl, ownDistanceM, otherAtOneMetreDbSpl, otherDistanceM, FirstOrder.OMNI, 0, otherDirectivityDb);
        return frontDb - FirstOrder.responseDb(coefficient, angleDegrees, nullFloorDb);
    }

    /**
     * Sabine's reverberation time, {@code 0.161 V / (S a + 4 m V)} seconds: surface S in square metres, mean absorption
     * coefficient above 0 and up to 1, air attenuation m per metre (0 to leave it out). Too long once the coefficient passes
     * 0.2 to 0.3.
     */
    public static double sabineS(
            double volumeM3, double surfaceM2, double absorptionCoefficient, double airAttenuationPerM) {
        Check.positive("absorptionCoefficient", absorptionCoefficient, 1);
        return decayS(volumeM3, surfaceM2, absorptionCoefficient, airAttenuationPerM);
    }

    /** Eyring's reverberation time, {@code 0.161 V / (-S ln(1 - a) + 4 m V)} seconds, for deader rooms; 0 at coefficient 1. */
    public static double eyringS(
            double volumeM3, double surfaceM2, double absorptionCoefficient, double airAttenuationPerM) {
        Check.positive("absorptionCoefficient", absorptionCoefficient, 1);
        return decayS(volumeM3, surfaceM2, -Math.log1p(-absorptionCoefficient), airAttenuationPerM);
    }

    private static double decayS(double volumeM3, double surfaceM2, double exponent, double airAttenuationPerM) {
        checkVolume(volumeM3);
        Check.positive("surfaceM2", surfaceM2, 1e6);
        Check.fraction("airAttenuationPerM", airAttenuationPerM);
        return SABINE_S_PER_M * volumeM3 / (surfaceM2 * exponent + 4 * airAttenuationPerM * volumeM3);
    }

    private static double checkVolume(double volumeM3) {
        return Check.positive("volumeM3", volumeM3, 1e6);
    }

    private static double checkTime(double reverbTimeS) {
        return Check.positive("reverbTimeS", reverbTimeS, 100);
    }

    private static double checkArea(double absorptionM2) {
        return Check.positive("absorptionM2", absorptionM2, 1e6);
    }
}
