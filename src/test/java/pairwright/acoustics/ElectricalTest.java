package pairwright.acoustics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pairwright.acoustics.Printed.thenPrints;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Gain, noise, headroom, loading and phantom power. */
class ElectricalTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/gain-output.csv", numLinesToSkip = 1)
    void outputIsAsPrinted(
            double sensitivityMvPerPa, String sensitivityDbv, String onePascalDbu, String at74Dbu, String at120Dbu,
            String at120Mv) {
        thenPrints(sensitivityDbv, Gain.sensitivityDbv(sensitivityMvPerPa));
        thenPrints(onePascalDbu, Gain.outputDbu(sensitivityMvPerPa, Level.ONE_PASCAL_DB_SPL));
        thenPrints(at74Dbu, Gain.outputDbu(sensitivityMvPerPa, 74));
        thenPrints(at120Dbu, Gain.outputDbu(sensitivityMvPerPa, 120));
        thenPrints(at120Mv, Gain.outputMv(sensitivityMvPerPa, 120));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/gain.csv", numLinesToSkip = 1)
    void gainIsAsPrinted(
            double sensitivityMvPerPa, double levelDbSpl, double targetDbfs, double fullScaleDbu, String output,
            String gain) {
        thenPrints(output, Gain.outputDbu(sensitivityMvPerPa, levelDbSpl));
        thenPrints(gain, Gain.gainDb(sensitivityMvPerPa, levelDbSpl, targetDbfs, fullScaleDbu));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/gain-peak.csv", numLinesToSkip = 1)
    void peaksLandAsPrinted(
            double sensitivityMvPerPa, double truePeakDbSpl, double gainDb, double fullScaleDbu, String expected) {
        thenPrints(expected, Gain.peakDbfs(sensitivityMvPerPa, truePeakDbSpl, gainDb, fullScaleDbu));
    }

    @Property(tries = 200)
    void theGainForATargetLandsASineOnIt(
            @ForAll @DoubleRange(min = 0.1, max = 100) double sensitivityMvPerPa,
            @ForAll @DoubleRange(min = 30, max = 140) double levelDbSpl,
            @ForAll @DoubleRange(min = -30, max = 0) double targetDbfs) {
        double gainDb = Gain.gainDb(sensitivityMvPerPa, levelDbSpl, targetDbfs, 22);
        double sinePeakDbSpl = levelDbSpl + 10 * Math.log10(2);
        assertEquals(targetDbfs, Gain.peakDbfs(sensitivityMvPerPa, sinePeakDbSpl, gainDb, 22), 1e-9);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/noise-johnson.csv", numLinesToSkip = 1)
    void resistorsHissAsPrinted(
            double resistanceOhm, double bandwidthHz, double temperatureC, String expected, String weighted) {
        double noiseDbu = Noise.johnsonDbu(resistanceOhm, bandwidthHz, temperatureC);
        thenPrints(expected, noiseDbu);
        thenPrints(weighted, noiseDbu + Noise.WHITE_NOISE_A_WEIGHTED_DB);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/noise-input.csv", numLinesToSkip = 1)
    void inputNoiseIsThePrintedSound(double inputNoiseDbu, double sensitivityMvPerPa, String expected) {
        thenPrints(expected, Noise.inputNoiseDbSpl(inputNoiseDbu, sensitivityMvPerPa));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/noise-active.csv", numLinesToSkip = 1)
    void poweredMicrophonesHissAsPrinted(
            double selfNoiseDba, double inputNoiseDbu, double sensitivityMvPerPa, double levelDba, String noise,
            String signalToNoise) {
        double noiseDba = Noise.activeNoiseDba(selfNoiseDba, inputNoiseDbu, sensitivityMvPerPa);
        thenPrints(noise, noiseDba);
        thenPrints(signalToNoise, levelDba - noiseDba);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/noise-passive.csv", numLinesToSkip = 1)
    void coilsAndRibbonsHissAsPrinted(
            double inputNoiseDbu, double resistanceOhm, double sensitivityMvPerPa, double levelDba, String noise,
            String signalToNoise) {
        double noiseDba = Noise.passiveNoiseDba(inputNoiseDbu, resistanceOhm, sensitivityMvPerPa);
        thenPrints(noise, noiseDba);
        thenPrints(signalToNoise, levelDba - noiseDba);
    }

    @Test
    void inputNoiseBelowItsOwnTestResistorIsRefused() {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> Noise.passiveNoiseDba(-133, 300, 1.5));
        assertTrue(refusal.getMessage().startsWith("inputNoiseDbu must be between -130.9"), refusal.getMessage());
    }

    @Test
    void weightingTakesTwoDecibelsOffWhiteNoise() {
        double weighted = 0;
        for (int frequencyHz = 20; frequencyHz < 20_000; frequencyHz++) {
            weighted += Math.pow(10, Weighting.aWeightingDb(frequencyHz + 0.5) / 10);
        }
        assertEquals(Noise.WHITE_NOISE_A_WEIGHTED_DB, 10 * Math.log10(weighted / 19_980), 0.005);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/headroom.csv", numLinesToSkip = 1)
    void headroomIsAsPrinted(double maxDbSpl, double padDb, double peakSineEquivalentDbSpl, String expected) {
        thenPrints(expected, Headroom.headroomDb(maxDbSpl, padDb, peakSineEquivalentDbSpl));
    }

    @Test
    void aTruePeakIsThreeDecibelsMoreThanItsSine() {
        assertEquals(136.99, Headroom.sineEquivalentDbSpl(140), 0.005);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/loading.csv", numLinesToSkip = 1)
    void loadingLosesAsPrinted(double sourceOhm, double loadOhm, String loss, String ratio) {
        thenPrints(loss, Loading.lossDb(sourceOhm, loadOhm));
        thenPrints(ratio, loadOhm / sourceOhm);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/loading-ribbon.csv", numLinesToSkip = 1)
    void ribbonsLoseBassAsPrinted(double midOhm, double resonanceOhm, double loadOhm, String expected) {
        thenPrints(expected, Loading.ribbonBassLossDb(midOhm, resonanceOhm, loadOhm));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/loading-corner.csv", numLinesToSkip = 1)
    void cornersAreWherePrinted(double resistanceOhm, double capacitanceF, String expected) {
        thenPrints(expected, Loading.lowPassHz(resistanceOhm, capacitanceF));
        thenPrints(expected, Loading.highPassHz(resistanceOhm, capacitanceF));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/loading-transformer.csv", numLinesToSkip = 1)
    void transformersStepDownAsPrinted(double turnsRatio, double loadOhm, String gain, String reflected) {
        thenPrints(gain, Loading.transformerGainDb(turnsRatio));
        thenPrints(reflected, Loading.reflectedOhm(turnsRatio, loadOhm));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/phantom-systems.csv", numLinesToSkip = 1)
    void phantomSystemsAreAsInTheStandard(
            Phantom.System system, String supply, String tolerance, String feed, String rated, String shortCircuit) {
        thenPrints(supply, system.supplyV());
        thenPrints(tolerance, system.toleranceV());
        thenPrints(feed, system.feedOhm());
        thenPrints(rated, system.ratedMa());
        thenPrints(shortCircuit, system.shortCircuitMa());
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/phantom.csv", numLinesToSkip = 1)
    void phantomPowerArrivesAsPrinted(Phantom.System system, double currentMa, String volts, String milliwatts) {
        thenPrints(volts, Phantom.voltsAtMic(system, currentMa));
        thenPrints(milliwatts, Phantom.milliwattsAtMic(system, currentMa));
    }

    /** Resistors are made as 6.81 kilohm, not 6.8, and tables are often worked out with those. */
    @ParameterizedTest
    @CsvFileSource(resources = "/acoustics/phantom-feed-6810.csv", numLinesToSkip = 1)
    void aResistorOffTheNominalGivesThePrintedVolts(
            double supplyV, double feedOhm, double currentMa, String volts, String milliwatts) {
        double voltsAtMic = Phantom.voltsAtMic(supplyV, feedOhm, currentMa);
        thenPrints(volts, voltsAtMic);
        thenPrints(milliwatts, currentMa * voltsAtMic);
    }

    @Test
    void phantomPowerIsGreatestAtHalfTheVoltageAndNothingFlowsBeyondAShort() {
        double bestMa = Phantom.System.P48.shortCircuitMa() / 2;
        assertEquals(24, Phantom.voltsAtMic(Phantom.System.P48, bestMa), 1e-9);
        assertEquals(169.4, Phantom.milliwattsAtMic(Phantom.System.P48, bestMa), 0.05);
        assertEquals(0, Phantom.voltsAtMic(Phantom.System.P48, Phantom.System.P48.shortCircuitMa()), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> Phantom.voltsAtMic(Phantom.System.P48, 14.2));
    }

    @Test
    void aSupplyRunsOut() {
        assertEquals(3, Phantom.headroomMa(10, 3, 4), 1e-12);
        assertEquals(-2, Phantom.headroomMa(5, 3, 4), 1e-12);
        assertEquals(5, Phantom.headroomMa(5));
    }
}
