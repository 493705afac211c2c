package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.acoustics.Printed.thenPrints;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class RoomTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/room.csv", numLinesToSkip = 1)
    void roomsAreAsPrinted(
            double volumeM3, double reverbTimeS, String absorption, String critical, String cardioidCritical,
            String directionalCritical, String schroeder) {
        thenPrints(absorption, Room.absorptionM2(volumeM3, reverbTimeS));
        thenPrints(critical, Room.criticalDistanceM(volumeM3, reverbTimeS));
        thenPrints(cardioidCritical, Room.criticalDistanceM(volumeM3, reverbTimeS, 1, 3));
        thenPrints(directionalCritical, Room.criticalDistanceM(volumeM3, reverbTimeS, 2.5, 3));
        thenPrints(schroeder, Room.schroederHz(volumeM3, reverbTimeS));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/room-direct-to-reverb.csv", numLinesToSkip = 1)
    void directAgainstDiffuseIsAsPrinted(
            double volumeM3, double reverbTimeS, double distanceM, double sourceDirectivityFactor, double coefficient,
            double angleDegrees, String expected) {
        thenPrints(expected, Room.directToReverbDb(
                volumeM3, reverbTimeS, distanceM, sourceDirectivityFactor, coefficient, angleDegrees));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/room-level.csv", numLinesToSkip = 1)
    void levelInARoomIsAsPrinted(
            double powerLevelDb, double distanceM, double directivityFactor, double absorptionM2, String direct,
            String reverberant, String total) {
        thenPrints(direct, Level.fromPowerDbSpl(powerLevelDb, distanceM, directivityFactor));
        thenPrints(reverberant, Room.reverberantDbSpl(powerLevelDb, absorptionM2));
        thenPrints(total, Room.levelInRoomDbSpl(powerLevelDb, distanceM, directivityFactor, absorptionM2));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/room-pickup.csv", numLinesToSkip = 1)
    void diffusePickupIsAsPrinted(double powerLevelDb, double absorptionM2, double coefficient, String expected) {
        thenPrints(expected, Room.reverberantPickupDb(
                powerLevelDb, absorptionM2, FirstOrder.directivityIndexDb(coefficient)));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/room-separation.csv", numLinesToSkip = 1)
    void separationIsAsPrinted(
            double ownDbSpl, double ownDistanceM, double otherDbSpl, double otherDistanceM, double coefficient,
            double angleDegrees, double otherDirectivityDb, String expected, String capped) {
        thenPrints(expected, Room.directSeparationDb(
                ownDbSpl, ownDistanceM, otherDbSpl, otherDistanceM, coefficient, angleDegrees, otherDirectivityDb));
        thenPrints(capped, Room.directSeparationDb(
                ownDbSpl, ownDistanceM, otherDbSpl, otherDistanceM, coefficient, angleDegrees, otherDirectivityDb, -25));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/room-reverberation.csv", numLinesToSkip = 1)
    void reverberationIsAsPrinted(
            double volumeM3, double surfaceM2, double absorptionCoefficient, double airAttenuationPerM, String sabine,
            String eyring) {
        thenPrints(sabine, Room.sabineS(volumeM3, surfaceM2, absorptionCoefficient, airAttenuationPerM));
        thenPrints(eyring, Room.eyringS(volumeM3, surfaceM2, absorptionCoefficient, airAttenuationPerM));
    }

    @Property(tries = 200)
    void fartherIsMoreRoomAndQuieter(
            @ForAll @DoubleRange(min = 10, max = 20_000) double volumeM3,
            @ForAll @DoubleRange(min = 0.1, max = 6) double reverbTimeS,
            @ForAll @DoubleRange(min = 0.05, max = 20) double distanceM) {
        double fartherM = 1.2 * distanceM;
        assertTrue(Room.directToReverbDb(volumeM3, reverbTimeS, fartherM, 2, 0.5, 30)
                < Room.directToReverbDb(volumeM3, reverbTimeS, distanceM, 2, 0.5, 30));
        double absorptionM2 = Room.absorptionM2(volumeM3, reverbTimeS);
        assertTrue(Room.levelInRoomDbSpl(100, fartherM, 1, absorptionM2)
                < Room.levelInRoomDbSpl(100, distanceM, 1, absorptionM2));
    }

    @Property(tries = 200)
    void atTheCriticalDistanceDirectAndDiffuseAreEqual(
            @ForAll @DoubleRange(min = 10, max = 20_000) double volumeM3,
            @ForAll @DoubleRange(min = 0.1, max = 6) double reverbTimeS,
            @ForAll @DoubleRange(min = 0, max = 1) double coefficient) {
        double criticalM = Room.criticalDistanceM(volumeM3, reverbTimeS);
        double directionalM = Room.criticalDistanceM(
                volumeM3, reverbTimeS, 2, 1 / FirstOrder.randomEfficiency(coefficient));
        assertEquals(0, Room.directToReverbDb(volumeM3, reverbTimeS, directionalM, 2, coefficient, 0), 1e-9);
        assertEquals(
                Level.fromPowerDbSpl(100, criticalM, 1),
                Room.reverberantDbSpl(100, Room.absorptionM2(volumeM3, reverbTimeS)),
                1e-9);
    }

    @Property(tries = 200)
    void reverberationGivesItsAbsorptionBackAndEyringIsShorter(
            @ForAll @DoubleRange(min = 10, max = 5000) double volumeM3,
            @ForAll @DoubleRange(min = 20, max = 2000) double surfaceM2,
            @ForAll @DoubleRange(min = 0.05, max = 0.9) double absorptionCoefficient) {
        double sabineS = Room.sabineS(volumeM3, surfaceM2, absorptionCoefficient, 0);
        assertEquals(surfaceM2 * absorptionCoefficient, Room.absorptionM2(volumeM3, Math.min(sabineS, 100)),
                sabineS > 100 ? 1e9 : 1e-6);
        assertTrue(Room.eyringS(volumeM3, surfaceM2, absorptionCoefficient, 0) < sabineS);
    }

    @Test
    void aDeadRoomHasALargerRoomConstantThanAbsorption() {
        assertEquals(40, Room.roomConstantM2(20, 0.5), 1e-12);
        assertEquals(0, Room.eyringS(60, 94, 1, 0));
    }
}
