package pairwright.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pairwright.acoustics.Octaves;
import pairwright.model.Attack;

/** What is made with known bands, notes and faults is measured as that. */
class SourceMeterTest {
    private static final int FRAMES = 1 << 20;

    @TempDir
    Path folder;

    private Measured measured(int bits, double[]... channels) throws IOException {
        return measured(null, bits, channels);
    }

    private Measured measured(MeterReading reading, int bits, double[]... channels) throws IOException {
        return SourceMeter.measure(Recording.of(Sounds.wav(folder.resolve("take.wav"), bits, Sounds.RATE_HZ, channels), "take.wav"), reading, 0, share -> { });
    }

    /** Notes of a few harmonics, each rising for so long and then falling, with a rest between. */
    private static double[] notes(double riseS, double lengthS, double... hz) {
        double[] sound = new double[FRAMES];
        int each = (int) (lengthS * Sounds.RATE_HZ);
        for (int i = 0; i < sound.length; i++) {
            double at = i % each / Sounds.RATE_HZ;
            double height = at < 0.1 ? 0 : at < 0.1 + riseS ? (at - 0.1) / riseS : Math.exp(-(at - 0.1 - riseS) * 12 / lengthS);
            double phase = 2 * Math.PI * hz[i / each % hz.length] * i / Sounds.RATE_HZ;
            sound[i] = 0.3 * height * (Math.sin(phase) + 0.5 * Math.sin(2 * phase) + 0.25 * Math.sin(3 * phase));
        }
        return sound;
    }

    /** Each octave made by itself, of many tones of random phase, all of them within it; so the reference needs no filter. */
    private static double[] octaves(double... levelsDb) {
        java.util.Random random = new java.util.Random(3);
        double[] sound = new double[FRAMES];
        for (int band = 0; band < Octaves.COUNT; band++) {
            int tones = 24;
            double height = Math.pow(10, levelsDb[band] / 20) * 0.02 / Math.sqrt(tones);
            for (int tone = 0; tone < tones; tone++) {
                double hz = 1000 * Math.pow(10, 0.3 * (band - 4 + (tone + 0.5) / tones * 0.9 - 0.45));
                double phase = random.nextDouble() * 2 * Math.PI;
                for (int i = 0; i < sound.length; i++) {
                    sound[i] += height * Math.sin(2 * Math.PI * hz * i / Sounds.RATE_HZ + phase);
                }
            }
        }
        return sound;
    }

    @ParameterizedTest
    @ValueSource(ints = {16, 24, 32, 0})
    void octavesAreMeasuredToThreeTenthsOfADecibel(int bits) throws IOException {
        double[] levelsDb = {-12, -6, 0, -3, -8, -10, -15, -20, -25};
        Measured measured = measured(bits, octaves(levelsDb));
        for (int band = 0; band < Octaves.COUNT; band++) {
            assertEquals(levelsDb[band], measured.octavesDb().at(band), 0.3, "band " + band);
        }
        assertEquals(bits == 0 ? 32 : bits, measured.bits());
    }

    @Test
    void aSineOfFullScaleReadsNoughtAndSoDoesItsPeak() throws IOException {
        Measured measured = measured(24, Sounds.sine(FRAMES, 997, 0.999));
        assertEquals(0, measured.runningDbfs(), 0.02);
        assertEquals(0, measured.peakDbfs(), 0.02);
        assertEquals(3.01, measured.crestDb(), 0.05);
        assertEquals(3.01, measured.takeCrestDb(), 0.05);
        assertEquals(0, measured.clips());
        assertEquals(997, measured.fundamentals().typicalHz(), 15);
        assertNull(measured.noiseDbfs(), "nobody can tell while it plays all the time");
    }

    @ParameterizedTest
    @CsvSource({"0.001, IMPULSIVE", "0.008, FAST", "0.05, MEDIUM", "0.2, SLOW"})
    void theRiseOfNotesIsFoundInMilliseconds(double riseS, Attack attack) throws IOException {
        Measured measured = measured(24, notes(riseS, 1, 440));
        assertEquals(0.8 * riseS * 1000, measured.riseMs(), 0.12 * riseS * 1000 + 1.5);
        assertEquals(attack, measured.attack());
        assertEquals(21, measured.notes(), 1);
    }

    @Test
    void theRangeOfFundamentalsIsThatOfTheNotes() throws IOException {
        Measured.Fundamentals found = measured(24, notes(0.02, 0.7, 110, 220, 330)).fundamentals();
        assertEquals(110, found.lowHz(), 3);
        assertEquals(220, found.typicalHz(), 6);
        assertEquals(330, found.highHz(), 9);
    }

    @Test
    void ofAStereoRecordingTheNotesAreThoseOfTheLouderChannel() throws IOException {
        double[] notes = notes(0.02, 0.7, 110, 220, 330);
        assertEquals(220, measured(24, Sounds.times(Sounds.noise(FRAMES, 1), 0.001), notes).fundamentals().typicalHz(), 6);
        assertEquals(220, measured(24, notes, Sounds.times(notes, -1)).fundamentals().typicalHz(), 6);
    }

    @Test
    void noiseHasNoFundamental() throws IOException {
        assertNull(measured(24, Sounds.noise(FRAMES, 1)).fundamentals());
    }

    @Test
    void whatRingsWhateverIsPlayedStandsOut() throws IOException {
        double[] ringing = Sounds.filtered(Sounds.noise(FRAMES, 1), 0, hz -> 1 + 5 / (1 + Math.pow((hz - 620) / 15, 2)));
        Measured measured = measured(24, ringing);
        assertEquals(1, measured.resonances().size(), measured.resonances()::toString);
        assertEquals(620, measured.resonances().get(0).frequencyHz(), 20);
        assertTrue(measured.resonances().get(0).overDb() > 8);
        assertEquals(0, measured(24, Sounds.noise(FRAMES, 1)).resonances().size());
    }

    @Test
    void tensOfTopsCutOffAreCountedAndTheRecordingIsNotToBeTrusted() throws IOException {
        double[] cut = Arrays.stream(notes(0.01, 1, 300)).map(value -> Math.max(-0.2, Math.min(0.2, value))).toArray();
        Measured measured = measured(24, cut);
        assertTrue(measured.clips() > 100, measured.clips() + " clips");
        assertFalse(measured.usable());
        assertTrue(measured.flaws().get(0).says().startsWith("Tops are cut off"), measured.flaws()::toString);
    }

    @Test
    void aDeepToneWhoseTopsAreRoundIsNotTakenForCutOff() throws IOException {
        assertEquals(0, measured(16, Sounds.sine(FRAMES, 31, 0.9)).clips());
    }

    @Test
    void noiseBetweenTheNotesIsMeasuredAndTold() throws IOException {
        double[] noise = Sounds.times(Sounds.noise(FRAMES, 1), 0.001);
        Measured quiet = measured(24, Sounds.plus(notes(0.01, 2, 300), noise));
        assertEquals(20 * Math.log10(Sounds.rms(noise) * Math.sqrt(2)), quiet.noiseDbfs(), 1);
        assertTrue(quiet.usable());
        assertTrue(quiet.loud().runningDbfs() >= quiet.soft().runningDbfs());
    }

    @Test
    void aMeterReadingMakesSoundPressureOfIt() throws IOException {
        double[] sound = Sounds.sine(FRAMES, 1000, 0.25);
        Measured.Calibrated flat = measured(new MeterReading(80, 2, MeterReading.Weighting.Z), 24, sound).calibrated();
        assertNotNull(flat);
        assertEquals(86.02, flat.typicalDbSpl(), 0.1, "6 dB more at half the distance");
        assertEquals(89.03, flat.peakDbSpl(), 0.1);
        Measured.Calibrated weighted = measured(new MeterReading(80, 1, MeterReading.Weighting.A), 24, Sounds.sine(FRAMES, 125, 0.25)).calibrated();
        assertEquals(96.2, weighted.typicalDbSpl(), 0.2, "a meter with A-weighting shows 16 dB less at 125 Hz");
    }

    @Test
    void theLoudestAndTheSoftestPassageAreFoundWhereTheyAre() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        for (int i = 0; i < sound.length; i++) {
            double atS = i / Sounds.RATE_HZ;
            sound[i] *= atS >= 8 && atS < 12 ? 2 : atS >= 16 && atS < 20 ? 0.5 : 1;
        }
        Measured measured = measured(24, sound);
        assertEquals(8, measured.loud().fromS());
        assertEquals(16, measured.soft().fromS());
        assertEquals(12.04, measured.loud().runningDbfs() - measured.soft().runningDbfs(), 0.1);
    }

    @Test
    void aStereoRecordingIsMeasuredAsOneSource() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        assertEquals(measured(24, sound).runningDbfs(), measured(24, sound, sound).runningDbfs(), 0.01);
        assertEquals(-3, measured(24, sound, new double[FRAMES]).runningDbfs() - measured(24, sound).runningDbfs(), 0.02);
    }
}
