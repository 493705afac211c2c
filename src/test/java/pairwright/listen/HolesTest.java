package pairwright.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holes that are told are there, and none is told that is not. */
class HolesTest {
    private static final int FRAMES = 1 << 18;

    @TempDir
    Path folder;

    private List<PairHeard.Comb> combs(double[] first, double[] second) throws IOException {
        Recording both = Recording.of(Sounds.wav(folder.resolve("both.wav"), 24, Sounds.RATE_HZ, first, second), "both.wav");
        return PairMeter.measure(new Track(both, 0), new Track(both, 1), share -> { }).combs();
    }

    /** What a delayed copy, so much softer, takes away at a frequency, with noise of its own in each. */
    private static double depthDb(double hz, double laterS, double share, double noiseShare) {
        double copy = share * share;
        double noise = noiseShare * noiseShare;
        return -10 * Math.log10((1 + copy + 2 * share * Math.cos(2 * Math.PI * hz * laterS) + 2 * noise) / (1 + copy + 2 * noise));
    }

    @Test
    void ofADelayedCopyEveryHoleThatIsToldIsWhereReckoningPutsItAndAsDeep() throws IOException {
        Random random = new Random(11);
        for (int i = 0; i < 24; i++) {
            double laterFrames = 20 + 100 * random.nextDouble();
            double share = i % 2 == 0 ? 1 : 0.5;
            double noiseShare = i % 3 == 0 ? 0.1 : 0;
            double corner = 500 * Math.pow(2, 4 * random.nextDouble());
            double[] sound = Sounds.filtered(Sounds.noise(FRAMES, i), 0, hz -> darker(corner, hz));
            double[] copy = Sounds.filtered(sound, laterFrames, hz -> share);
            // as loud as the sound is at each frequency, so that the depth is the same everywhere
            double[] one = Sounds.plus(sound, Sounds.filtered(Sounds.noise(FRAMES, 100 + i), 0, hz -> noiseShare * darker(corner, hz)));
            double[] two = Sounds.plus(copy, Sounds.filtered(Sounds.noise(FRAMES, 200 + i), 0, hz -> noiseShare * darker(corner, hz)));
            List<PairHeard.Comb> combs = combs(one, two);
            double laterS = laterFrames / Sounds.RATE_HZ;
            assertTrue(combs.size() >= (share == 1 ? 8 : 4), "try " + i + ": " + combs); // of a copy half as high the holes are hardly deeper than what is told
            for (PairHeard.Comb comb : combs) {
                // one that is hardly 6 dB deep may be left out, so that they are not counted
                double hz = (Math.rint(comb.frequencyHz() * laterS - 0.5) + 0.5) / laterS;
                assertEquals(hz, comb.frequencyHz(), Math.max(0.04 / laterS, 15), "try " + i + ": " + combs);
                double deepest = depthDb(hz, laterS, share, noiseShare);
                assertTrue(comb.depthDb() <= deepest + 1, "try " + i + ": " + combs + " against " + deepest);
            }
        }
    }

    private static double darker(double corner, double hz) {
        return 1 / (1 + hz / corner);
    }

    @Test
    void aCopyTwelveDecibelsSofterTakesLessThanThreeAndNoHoleIsToldOfIt() throws IOException {
        assertTrue(depthDb(500, 0.001, 0.25, 0) < 3);
        for (int i = 0; i < 12; i++) {
            double[] sound = Sounds.noise(FRAMES, i);
            double later = 20 + 30 * i;
            assertEquals(List.of(), combs(sound, Sounds.filtered(sound, later, hz -> 0.25)), "try " + i);
        }
    }

    @Test
    void ofStrangersAndOfTheSameOnceMoreNoHoleIsTold() throws IOException {
        int told = 0;
        for (int i = 0; i < 40; i++) {
            int frames = 1 << (15 + i % 4);
            told += combs(Sounds.noise(frames, i), Sounds.noise(frames, 1000 + i)).size();
            double[] sound = Sounds.noise(frames, i);
            told += combs(sound, Sounds.filtered(sound, 0, hz -> hz < 3000 ? 0.7 : 0.3)).size();
        }
        assertEquals(0, told);
    }
}
