package pairwright.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pairwright.acoustics.Delay;
import pairwright.acoustics.Octaves;

/** What is made with a known delay, polarity and filter is heard as that. */
class PairMeterTest {
    private static final int FRAMES = 1 << 18;

    @TempDir
    Path folder;

    private PairHeard heard(double[] first, double[] second) throws IOException {
        Recording both = Recording.of(Sounds.wav(folder.resolve("both.wav"), 24, Sounds.RATE_HZ, first, second), "both.wav");
        return PairMeter.measure(new Track(both, 0), new Track(both, 1), share -> { });
    }

    /** A tenth of the noise in amplitude is 20 dB below. */
    private static double[] noisy(double[] sound, long seed) {
        return Sounds.plus(sound, Sounds.times(Sounds.noise(sound.length, seed), Sounds.rms(sound)));
    }

    @ParameterizedTest
    @CsvSource({"0, false", "0.5, false", "1, true", "17.3, false", "-17.3, true", "140.05, false", "-881.77, false", "2000.25, true"})
    void theDelayIsFoundToATwentiethOfASampleThoughEachTrackHasItsOwnNoise(double laterFrames, boolean inverted) throws IOException {
        double[] sound = Sounds.filtered(Sounds.noise(FRAMES, 1), 0, hz -> 1 / (1 + hz / 2000));
        double[] later = Sounds.filtered(sound, laterFrames, hz -> (inverted ? -0.5 : 0.5) * (hz < 4000 ? 1 : 0.6));
        PairHeard heard = heard(noisy(sound, 2), noisy(later, 3));
        assertEquals(laterFrames, heard.laterFrames(), 0.05);
        assertEquals(laterFrames / 48, heard.laterMs(), 0.05 / 48);
        assertEquals(laterFrames / 48_000 * Delay.SPEED_OF_SOUND_M_PER_S, heard.wayM(), 0.05 / 48_000 * Delay.SPEED_OF_SOUND_M_PER_S);
        assertEquals(inverted, heard.inverted());
        assertEquals(20 * Math.log10(Sounds.rms(later) / Sounds.rms(sound)), heard.differenceDb(), 0.3);
    }

    @Test
    void strangersAreNotLaidOverOneAnother() throws IOException {
        PairHeard heard = heard(Sounds.noise(FRAMES, 1), Sounds.noise(FRAMES, 2));
        assertNull(heard.inverted());
        assertEquals(false, heard.related());
        assertEquals(0, heard.correlationShare(), 0.02);
        for (int band = 2; band < Octaves.COUNT; band++) {
            assertEquals(0, heard.sumDb().at(band), 0.5, "band " + band);
        }
    }

    @Test
    void ofASingleToneThePolarityIsNotTold() throws IOException {
        double[] tone = Sounds.sine(FRAMES, 440, 0.3);
        assertNull(heard(tone, Sounds.times(tone, -1)).inverted());
    }

    @Test
    void wherePolarityIsToldItIsRight() throws IOException {
        polarities(60);
    }

    @Test
    @Tag("long")
    void inAThousandOfAThousand() throws IOException {
        polarities(1000);
    }

    private void polarities(int tries) throws IOException {
        Random random = new Random(7);
        int told = 0;
        for (int i = 0; i < tries; i++) {
            boolean inverted = random.nextBoolean();
            double corner = 200 * Math.pow(2, 6 * random.nextDouble());
            double[] sound = Sounds.filtered(Sounds.noise(1 << 15, i), 0, hz -> 1 / (1 + Math.pow(hz / corner, 2)));
            double[] later = Sounds.filtered(sound, random.nextDouble() * 400 - 200, hz -> inverted ? -1 : 1);
            double strangeness = Math.pow(10, -1 + 2 * random.nextDouble());
            double rms = Sounds.rms(sound);
            PairHeard heard = heard(Sounds.plus(Sounds.times(sound, 0.02 / rms), Sounds.times(Sounds.noise(sound.length, 1000 + i), 0.2 * strangeness / 10)),
                    Sounds.plus(Sounds.times(later, 0.02 / rms), Sounds.times(Sounds.noise(sound.length, 2000 + i), 0.2 * strangeness / 10)));
            assertTrue(heard.inverted() == null || heard.inverted() == inverted, "try " + i + ": " + heard.marginDb() + " dB");
            told += heard.inverted() == null ? 0 : 1;
        }
        assertTrue(told > tries / 4, told + " told");
    }

    @Test
    void equalTracksAMillisecondApartHaveTheirHolesWhereReckoningPutsThem() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 4);
        PairHeard heard = heard(sound, Sounds.filtered(sound, 48, hz -> 1));
        for (int hole = 0; hole < 8; hole++) {
            assertEquals(500 + 1000 * hole, heard.combs().get(hole).frequencyHz(), 25);
            assertTrue(heard.combs().get(hole).depthDb() > 10, heard.combs()::toString);
        }
        assertEquals(3, heard.alignedDb().at(4), 0.1, "in step twice the pressure");
        assertEquals(3, heard.sumDb().at(0), 0.2, "far below the first hole they are as good as in step");
        assertTrue(heard.flippedDb().at(0) < -5);
    }

    @Test
    void aFlipIsSeenToHelpWhereOneIsTheOtherWayUp() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 4);
        PairHeard heard = heard(sound, Sounds.times(sound, -1));
        assertNotNull(heard.inverted());
        assertEquals(-1, heard.correlationShare(), 0.001);
        for (int band = 0; band < Octaves.COUNT; band++) {
            assertTrue(heard.sumDb().at(band) < -40, "band " + band);
            assertEquals(3, heard.flippedDb().at(band), 0.05, "band " + band);
        }
    }
}
