package pairwright.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.acoustics.Octaves;

/** Two channels of one recording are told as a stereo pair, and several tracks by what mends most. */
class StereoPairTest {
    private static final int FRAMES = 1 << 18;

    @TempDir
    Path folder;

    private PairHeard stereo(double[] left, double[] right) throws IOException {
        Recording both = Recording.of(Sounds.wav(folder.resolve("take.wav"), 24, Sounds.RATE_HZ, left, right), "take.wav");
        return PairMeter.measure(new Track(both, 0), new Track(both, 1), share -> { });
    }

    private TracksHeard tracks(double[]... sounds) throws IOException {
        List<Track> tracks = new ArrayList<>();
        for (int i = 0; i < sounds.length; i++) {
            String name = (char) ('a' + i) + ".wav";
            tracks.add(new Track(Recording.of(Sounds.wav(folder.resolve(name), 24, Sounds.RATE_HZ, sounds[i]), name), 0));
        }
        List<PairHeard> pairs = new ArrayList<>();
        for (int first = 0; first < tracks.size(); first++) {
            for (int second = first + 1; second < tracks.size(); second++) {
                pairs.add(PairMeter.measure(tracks.get(first), tracks.get(second), share -> { }));
            }
        }
        return TracksHeard.of(pairs);
    }

    private static boolean said(List<String> says, String words) {
        return says.stream().anyMatch(one -> one.contains(words));
    }

    /** Players spread over the width, each with a level for left and right of its own. */
    private static double[][] coincident() {
        double[] left = new double[FRAMES];
        double[] right = new double[FRAMES];
        for (int i = 0; i < 8; i++) {
            double[] player = Sounds.noise(FRAMES, i);
            double place = (i + 0.5) / 8 * Math.PI / 2;
            left = Sounds.plus(left, Sounds.times(player, 0.2 + Math.cos(place)));
            right = Sounds.plus(right, Sounds.times(player, 0.2 + Math.sin(place)));
        }
        return new double[][] {left, right};
    }

    @Test
    void correlationByOctaveAndTheSideAreWhatWasMixed() throws IOException {
        double[] middle = Sounds.noise(FRAMES, 1);
        double[] side = Sounds.filtered(Sounds.noise(FRAMES, 2), 0, hz -> hz > 1414 ? 1 : 0);
        PairHeard heard = stereo(Sounds.plus(middle, side), Sounds.plus(middle, Sounds.times(side, -1)));
        assertTrue(heard.stereo());
        for (int band = 1; band < Octaves.COUNT; band++) {
            assertEquals(band < 4 ? 1 : band == 4 ? heard.correlationOctavesShare().at(4) : 0, heard.correlationOctavesShare().at(band), 0.05, "band " + band);
        }
        PairHeard quarter = stereo(Sounds.plus(middle, Sounds.times(Sounds.noise(FRAMES, 3), 0.25)), Sounds.plus(middle, Sounds.times(Sounds.noise(FRAMES, 3), -0.25)));
        assertEquals(-12.04, quarter.sideDb(), 0.15);
        assertTrue(said(PairWords.of(quarter), "12 dB under what they share: narrow"), PairWords.of(quarter)::toString);
    }

    @Test
    void aCoincidentPairAndASpacedOneAreToldApart() throws IOException {
        double[][] both = coincident();
        List<String> says = PairWords.of(stereo(both[0], both[1]));
        assertTrue(said(says, "as usual for a coincident pair"), says::toString);
        double[] left = new double[FRAMES];
        double[] right = new double[FRAMES];
        for (int i = 0; i < 8; i++) {
            double[] player = Sounds.noise(FRAMES, i);
            left = Sounds.plus(left, player);
            right = Sounds.plus(right, Sounds.filtered(player, 96 * (i - 3.5) / 3.5, hz -> 1));
        }
        List<String> spaced = PairWords.of(stereo(left, right));
        assertTrue(said(spaced, "as usual for a spaced pair"), spaced::toString);
    }

    @Test
    void ofAStereoPairTheFirstWordIsNotToShiftAndOfTwoTracksToBringThemTogetherWithWhatItCosts() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        double[] later = Sounds.filtered(sound, 48, hz -> 0.5);
        List<String> pair = PairWords.of(stereo(sound, later));
        int not = index(pair, "do not shift one against the other");
        int bring = index(pair, "Bring them together: move");
        assertTrue(not >= 0 && bring > not, pair::toString);
        List<String> two = PairWords.of(tracks(sound, later).pairs().get(0));
        assertTrue(index(two, "Bring them together: move b.wav 34 cm nearer or a.wav 34 cm back, or shift b.wav earlier by 48 samples; what else b.wav hears") < index(two, "do not shift one"), two::toString);
        assertTrue(said(two, "Or leave it for the depth, which costs what the sum loses"), two::toString);
    }

    private static int index(List<String> says, String words) {
        for (int i = 0; i < says.size(); i++) {
            if (says.get(i).contains(words)) {
                return i;
            }
        }
        return -1;
    }

    @Test
    void balanceIsToldWithWhereItComesFrom() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        List<String> low = PairWords.of(stereo(Sounds.filtered(sound, 0, hz -> 1 / (1 + hz / 300)), Sounds.filtered(sound, 0, hz -> (hz < 354 ? 2 : 1) / (1 + hz / 300))));
        assertTrue(said(low, "dB louder than take.wav, left, mostly at 63 to 250 Hz."), low::toString);
        List<String> all = PairWords.of(stereo(sound, Sounds.times(sound, 0.7943)));
        assertTrue(said(all, "take.wav, right is 2 dB softer than take.wav, left."), all::toString);
        List<String> even = PairWords.of(stereo(sound, Sounds.plus(sound, Sounds.times(Sounds.noise(FRAMES, 2), 0.05))));
        assertTrue(said(even, "On the whole they are equally loud, to 1 dB."), even::toString);
        assertTrue(said(even, "close to mono"), even::toString);
    }

    @Test
    void whereThePhaseTurnsOnTheWayUpAFlipHelpsAboveAndHarmsBelow() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        PairHeard heard = stereo(sound, turned(sound, 1000));
        for (int band = 0; band < Octaves.COUNT; band++) {
            if (band != 4) {
                assertEquals(band < 4, heard.sumDb().at(band) > heard.flippedDb().at(band), "band " + band);
            }
        }
        String flip = PairWords.of(heard).stream().filter(says -> says.contains("nverting ")).findFirst().orElseThrow();
        assertTrue(flip.contains("would fill the sum at 2 to 16 kHz by up to ") && flip.contains("and thin it at 63 to 500 Hz by up to"), flip);
    }

    /** Through an all-pass of first order, which turns by a quarter at a frequency and by a half far above. */
    private static double[] turned(double[] sound, double quarterHz) {
        double tangent = Math.tan(Math.PI * quarterHz / Sounds.RATE_HZ);
        double a = (tangent - 1) / (tangent + 1);
        double[] out = new double[sound.length];
        for (int i = 1; i < sound.length; i++) {
            out[i] = a * sound[i] + sound[i - 1] - a * out[i - 1];
        }
        return out;
    }

    @Test
    void ofSeveralTheOneTrackThatMendsMostIsToldAndThePairsThatGainMostComeFirst() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        TracksHeard heard = tracks(sound, Sounds.filtered(sound, 0, hz -> 0.8), Sounds.filtered(sound, 60, hz -> 1), Sounds.noise(FRAMES, 9));
        assertEquals(6, heard.pairs().size());
        assertTrue(said(heard.says(), "shift c.wav earlier by 60 samples (1.25 ms, 43 cm of air), and it is in step with a.wav and b.wav"), heard.says()::toString);
        for (int i = 0; i < 6; i++) {
            assertEquals(i < 3, heard.pairs().get(i).related(), heard.pairs().get(i).first() + heard.pairs().get(i).second());
            assertTrue(i == 0 || i >= 3 || heard.pairs().get(i).alignedGainDb() <= heard.pairs().get(i - 1).alignedGainDb());
        }
        assertTrue(tracks(sound, sound).says().isEmpty());
        assertTrue(said(tracks(sound, sound, Sounds.times(sound, 0.9)).says(), "No two of them lose 1 dB or more"));
    }

    @Test
    void theOneThatIsTheOtherWayUpAgainstAllIsToldFirst() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        List<String> says = tracks(sound, Sounds.times(sound, -0.9), Sounds.times(sound, 0.8)).says();
        assertEquals("b.wav is the other way up against 2 others: invert it first (the polarity button, \u00f8, of the channel), or look for a wrongly wired lead.", says.get(0));
        assertFalse(said(says, "a.wav is the other way up"));
    }
}
