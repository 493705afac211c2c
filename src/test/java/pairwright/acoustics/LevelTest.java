package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.acoustics.Printed.thenPrints;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class LevelTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/level-at-distance.csv", numLinesToSkip = 1)
    void pointSourceFallsAsPrinted(double levelDbSpl, double referenceDistanceM, double distanceM, String expected) {
        thenPrints(expected, Level.atDistanceDbSpl(levelDbSpl, referenceDistanceM, distanceM));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/level-from-power.csv", numLinesToSkip = 1)
    void soundPowerGivesThePrintedLevel(double powerLevelDb, double distanceM, double directivityFactor, String expected) {
        thenPrints(expected, Level.fromPowerDbSpl(powerLevelDb, distanceM, directivityFactor));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/level-centre-offset.csv", numLinesToSkip = 1)
    void centreOffsetGivesThePrintedLevel(double levelDbSpl, double distanceM, double centreOffsetM, String expected) {
        thenPrints(expected, Level.withCentreOffsetDbSpl(levelDbSpl, distanceM, centreOffsetM));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/level-disc.csv", numLinesToSkip = 1)
    void discAndPistonCorrectAsPrinted(double distanceM, double radiusM, String disc, String piston) {
        thenPrints(disc, Level.discCorrectionDb(distanceM, radiusM));
        thenPrints(piston, Level.pistonCorrectionDb(distanceM, radiusM));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/level-line.csv", numLinesToSkip = 1)
    void lineCorrectsAsPrinted(double distanceM, double lengthM, String expected) {
        thenPrints(expected, Level.lineCorrectionDb(distanceM, lengthM));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/level-rayleigh.csv", numLinesToSkip = 1)
    void farFieldBeginsAsPrinted(double radiusM, double frequencyHz, String expected) {
        thenPrints(expected, Level.rayleighDistanceM(radiusM, frequencyHz));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/level-pressure.csv", numLinesToSkip = 1)
    void levelIsThePrintedPressure(double levelDbSpl, String expected) {
        thenPrints(expected, Level.pressurePa(levelDbSpl));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/level-sum.csv", numLinesToSkip = 1)
    void levelsAddAsPrinted(String levels, String incoherent, String inPhase) {
        double[] levelsDb = Arrays.stream(levels.split(" ")).mapToDouble(Double::parseDouble).toArray();
        thenPrints(incoherent, Level.sumIncoherentDb(levelsDb));
        thenPrints(inPhase, Level.sumInPhaseDb(levelsDb));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/level-sum-phase.csv", numLinesToSkip = 1)
    void twoTonesAddAsPrinted(double firstDb, double secondDb, double phaseDegrees, String expected) {
        thenPrints(expected, Level.sumWithPhaseDb(firstDb, secondDb, phaseDegrees));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/level-open-mics.csv", numLinesToSkip = 1)
    void openMicrophonesRaiseNoiseAsPrinted(int microphones, String expected) {
        thenPrints(expected, Level.openMicRiseDb(microphones));
    }

    @Test
    void aSumOfNothingIsRefused() {
        assertThrows(IllegalArgumentException.class, Level::sumIncoherentDb);
        assertThrows(IllegalArgumentException.class, Level::sumInPhaseDb);
    }

    @Property(tries = 200)
    void fartherIsQuieter(
            @ForAll @DoubleRange(min = 0.01, max = 400) double distanceM,
            @ForAll @DoubleRange(min = 1.01, max = 2) double factor,
            @ForAll @DoubleRange(min = 0, max = 1) double centreOffsetM) {
        double fartherM = distanceM * factor;
        assertTrue(Level.atDistanceDbSpl(94, 1, fartherM) < Level.atDistanceDbSpl(94, 1, distanceM));
        assertTrue(Level.fromPowerDbSpl(94, fartherM, 1) < Level.fromPowerDbSpl(94, distanceM, 1));
        assertTrue(Level.withCentreOffsetDbSpl(94, fartherM, centreOffsetM)
                < Level.withCentreOffsetDbSpl(94, distanceM, centreOffsetM));
    }

    @Property(tries = 200)
    void thereAndBackIsTheSameLevel(
            @ForAll @DoubleRange(min = 0.01, max = 100) double nearM,
            @ForAll @DoubleRange(min = 0.01, max = 100) double farM) {
        assertEquals(90, Level.atDistanceDbSpl(Level.atDistanceDbSpl(90, nearM, farM), farM, nearM), 1e-9);
    }

    @Property(tries = 200)
    void anExtendedSourceIsNeverLouderThanAPointAndBecomesOneFarAway(
            @ForAll @DoubleRange(min = 0.01, max = 10) double distanceM,
            @ForAll @DoubleRange(min = 0.01, max = 2) double sizeM) {
        thenQuietUpClose(Level.discCorrectionDb(distanceM, sizeM), Level.discCorrectionDb(100 * sizeM, sizeM));
        thenQuietUpClose(Level.pistonCorrectionDb(distanceM, sizeM), Level.pistonCorrectionDb(100 * sizeM, sizeM));
        thenQuietUpClose(Level.lineCorrectionDb(distanceM, sizeM), Level.lineCorrectionDb(100 * sizeM, sizeM));
    }

    private static void thenQuietUpClose(double correctionDb, double farDb) {
        assertTrue(correctionDb <= 0);
        assertEquals(0, farDb, 0.001);
    }

    @Property(tries = 50)
    void discAndLineAreTheSumsOfTheirParts(
            @ForAll @DoubleRange(min = 0.05, max = 3) double distanceM,
            @ForAll @DoubleRange(min = 0.05, max = 1) double sizeM) {
        int parts = 2000;
        double disc = 0;
        double line = 0;
        for (int part = 0; part < parts; part++) {
            double share = (part + 0.5) / parts;
            double ringM = sizeM * share;
            disc += 2 * share / parts / (distanceM * distanceM + ringM * ringM);
            double alongM = sizeM / 2 * share;
            line += 1.0 / parts / (distanceM * distanceM + alongM * alongM);
        }
        double square = distanceM * distanceM;
        assertEquals(10 * Math.log10(disc * square), Level.discCorrectionDb(distanceM, sizeM), 1e-3);
        assertEquals(10 * Math.log10(line * square), Level.lineCorrectionDb(distanceM, sizeM), 1e-3);
    }

    @Property(tries = 200)
    void sumsDoNotCareAboutOrder(
            @ForAll @DoubleRange(min = -20, max = 150) double firstDb,
            @ForAll @DoubleRange(min = -20, max = 150) double secondDb,
            @ForAll @DoubleRange(min = -360, max = 360) double phaseDegrees) {
        assertEquals(Level.sumIncoherentDb(firstDb, secondDb), Level.sumIncoherentDb(secondDb, firstDb));
        assertEquals(Level.sumInPhaseDb(firstDb, secondDb), Level.sumInPhaseDb(secondDb, firstDb));
        assertEquals(
                Level.sumWithPhaseDb(firstDb, secondDb, phaseDegrees),
                Level.sumWithPhaseDb(secondDb, firstDb, -phaseDegrees));
    }

    @Property(tries = 200)
    void phaseLeadsFromInPhaseOverIncoherentToCancelling(
            @ForAll @DoubleRange(min = 0, max = 130) double firstDb,
            @ForAll @DoubleRange(min = 0, max = 130) double secondDb) {
        assertEquals(Level.sumInPhaseDb(firstDb, secondDb), Level.sumWithPhaseDb(firstDb, secondDb, 0), 1e-9);
        assertEquals(Level.sumIncoherentDb(firstDb, secondDb), Level.sumWithPhaseDb(firstDb, secondDb, 90), 1e-9);
        assertEquals(Double.NEGATIVE_INFINITY, Level.sumWithPhaseDb(firstDb, firstDb, 180));
    }
}
