package pairwright.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What is said of tracks holds together: one view of polarity, no move that nobody would make, and no fact where there are two readings. */
class PairAdviceTest {
    private static final int FRAMES = 1 << 17;

    private static PairHeard stereo(double[] left, double[] right) throws IOException {
        Path file = Files.createTempFile("advice", ".wav");
        try {
            Recording both = Recording.of(Sounds.wav(file, 24, Sounds.RATE_HZ, left, right), "take.wav");
            return PairMeter.measure(new Track(both, 0), new Track(both, 1), share -> { });
        } finally {
            Files.delete(file);
        }
    }

    private static TracksHeard tracks(double[]... sounds) throws IOException {
        List<Track> tracks = new ArrayList<>();
        List<Path> files = new ArrayList<>();
        try {
            for (int i = 0; i < sounds.length; i++) {
                files.add(Files.createTempFile("advice", ".wav"));
                tracks.add(new Track(Recording.of(Sounds.wav(files.get(i), 24, Sounds.RATE_HZ, sounds[i]), (char) ('a' + i) + ".wav"), 0));
            }
            List<PairHeard> pairs = new ArrayList<>();
            for (int first = 0; first < tracks.size(); first++) {
                for (int second = first + 1; second < tracks.size(); second++) {
                    pairs.add(PairMeter.measure(tracks.get(first), tracks.get(second), share -> { }));
                }
            }
            return TracksHeard.of(pairs);
        } finally {
            for (Path file : files) {
                Files.delete(file);
            }
        }
    }

    private static boolean said(List<String> says, String words) {
        return says.stream().anyMatch(one -> one.contains(words));
    }

    @Test
    void whereOneIsTheOtherWayUpNoLineSaysToLeaveItSo() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        for (double later : new double[] {0, 5, 48, 400}) {
            List<String> says = PairWords.of(stereo(sound, Sounds.filtered(sound, later, hz -> -0.7)));
            assertTrue(says.get(0).startsWith("take.wav, right is the other way up: invert it"), says::toString);
            assertTrue(says.get(0).contains("\u00f8"), "what to press is said: " + says.get(0));
            assertFalse(said(says, "leave it."), later + " later: " + says);
            assertFalse(said(says, "Leave them so"), later + " later: " + says);
        }
    }

    @Test
    void whereBothAreTheSameWayUpNoLineAsksToInvertThoughTimeMakesItFillSomeOctaves() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        List<String> says = PairWords.of(stereo(sound, Sounds.filtered(sound, 48, hz -> 0.9)));
        assertEquals("Both are the same way up.", says.get(0));
        assertTrue(said(says, "Leave them so: inverting one would"), says::toString);
        assertFalse(said(says, "invert it"), says::toString);
    }

    @Test
    void ofThreeTracksWithOneTheOtherWayUpOnlyThatOneIsEverToBeInverted() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        TracksHeard heard = tracks(Sounds.times(sound, -1), Sounds.times(sound, 0.9), Sounds.times(sound, 0.8));
        assertEquals("a.wav is the other way up against 2 others: invert it first (the polarity button, \u00f8, of the channel), or look for a wrongly wired lead.", heard.says().get(0));
        for (PairHeard pair : heard.pairs()) {
            List<String> says = heard.says(pair);
            assertFalse(said(says, "b.wav is the other way up") || said(says, "c.wav is the other way up"), says::toString);
            assertEquals(pair.first().equals("a.wav") || pair.second().equals("a.wav") ? "a.wav is the other way up, as said above." : "Both are the same way up.", says.get(0));
        }
    }

    @Test
    void ofFourTracksTwoAgainstTwoAreToldAsThat() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        TracksHeard heard = tracks(sound, Sounds.times(sound, -0.9), Sounds.times(sound, 0.8), Sounds.times(sound, -0.7));
        assertTrue(heard.says().get(0).startsWith("b.wav and d.wav are the other way up against a.wav and c.wav: invert b.wav and d.wav first"), heard.says()::toString);
    }

    @Test
    void twoBandsOfTracksThatHaveNothingInCommonAreEachToldApart() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        double[] other = Sounds.noise(FRAMES, 2);
        TracksHeard heard = tracks(sound, Sounds.times(sound, 0.9), other, Sounds.times(other, 0.8), Sounds.times(other, -0.7));
        assertTrue(heard.says().get(0).startsWith("e.wav is the other way up against 2 others: invert it first"), heard.says()::toString);
    }

    @Test
    void aLowSourceThatOneHearsHalfAPeriodLaterIsNoFaultToMend() throws IOException {
        double[] low = Sounds.filtered(Sounds.noise(FRAMES, 1), 0, hz -> 0.03 + Math.exp(-Math.pow((hz - 500) / 220, 2)));
        PairHeard heard = stereo(low, Sounds.filtered(low, 44, hz -> 1));
        assertTrue(heard.correlationShare() < -0.5, "" + heard.correlationShare());
        List<String> says = PairWords.of(heard);
        assertEquals(false, heard.inverted(), says::toString);
        assertFalse(said(says, "Mend that first"), says::toString);
    }

    @Test
    void ofSeveralTracksAPairSaysWhenAndTheHeadWhatToDo() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        TracksHeard heard = tracks(Sounds.filtered(sound, 60, hz -> 1), sound, Sounds.filtered(sound, 0, hz -> 0.8));
        assertTrue(said(heard.says(), "shift a.wav earlier by 60 samples"), heard.says()::toString);
        assertTrue(said(heard.says(), "stereo pair"), heard.says()::toString);
        for (PairHeard pair : heard.pairs()) {
            assertFalse(said(heard.says(pair), "there are two ways"), "once is enough: " + heard.says(pair));
        }
        assertTrue(said(heard.says(heard.pairs().get(0)), "1.25 ms later"), heard.says(heard.pairs().get(0))::toString);
    }

    @Test
    void twoDelaysThatFitAlikeAreToldAsTwoAndNothingIsToBeMovedByThem() throws IOException {
        double[] one = Sounds.noise(FRAMES, 1);
        double[] other = Sounds.noise(FRAMES, 2);
        PairHeard heard = stereo(Sounds.plus(one, Sounds.filtered(other, 40, hz -> 1)), Sounds.plus(Sounds.filtered(one, 40, hz -> 1), other));
        assertNotNull(heard.rivalFrames());
        assertEquals(0, heard.laterFrames() + heard.rivalFrames(), 1.1);
        List<String> says = PairWords.of(heard);
        assertTrue(said(says, "Two delays fit about as well"), says::toString);
        assertFalse(said(says, "Bring them together"), says::toString);
        assertFalse(said(says, "move take"), says::toString);
        assertNull(stereo(one, Sounds.plus(Sounds.filtered(one, 40, hz -> 1), Sounds.times(other, 0.3))).rivalFrames());
        double[] tone = Sounds.sine(FRAMES, 440, 0.3);
        assertNotNull(stereo(tone, Sounds.filtered(tone, 30, hz -> 1)).rivalFrames(), "of a tone every period fits");
    }

    @Test
    void channelsThatCancelInMonoAreAFaultFirstAndNoUsualPair() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        PairHeard heard = stereo(Sounds.plus(sound, Sounds.times(Sounds.noise(FRAMES, 2), 0.2)), Sounds.plus(Sounds.times(sound, -1), Sounds.times(Sounds.noise(FRAMES, 3), 0.2)));
        assertTrue(heard.correlationShare() < -0.9);
        List<String> says = PairWords.of(heard);
        assertTrue(says.get(0).startsWith("take.wav, right is the other way up"), says::toString);
        assertTrue(said(says, "in mono they cancel"), says::toString);
        assertFalse(said(says, "as usual for"), says::toString);
        assertFalse(said(says, "How wide"), says::toString);
    }

    @Test
    void whatStrangersShareInOneOctaveIsToldWithTheRest() throws IOException {
        double[] hum = Sounds.sine(FRAMES, 60, 0.03);
        PairHeard heard = stereo(Sounds.plus(Sounds.noise(FRAMES, 1), hum), Sounds.plus(Sounds.noise(FRAMES, 2), hum));
        assertFalse(heard.related());
        assertTrue(heard.coherence().at(0) > 0.8, heard.coherence()::toString);
        assertTrue(PairWords.of(heard).get(0).contains("Only at 63 Hz do they share something, such as a hum or what comes through the floor."), PairWords.of(heard)::toString);
    }

    @Test
    void ofAnOctaveWithoutSoundNothingIsCommon() throws IOException {
        double[] low = Sounds.filtered(Sounds.noise(FRAMES, 1), 0, hz -> hz < 900 ? 1 : 0);
        PairHeard heard = stereo(low, Sounds.times(low, 0.5));
        assertTrue(heard.heard(2));
        assertFalse(heard.heard(7));
    }

    @Test
    void theSameTwiceIsToldAsThatAndNothingElse() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        assertEquals(List.of("Left and right are the same: a mono recording in a stereo file. Of two microphones it tells nothing; look how it was exported."), PairWords.of(stereo(sound, sound)));
        assertTrue(PairWords.of(tracks(sound, sound).pairs().get(0)).get(0).startsWith("Both hold the very same sound"));
    }

    @Test
    void wherePolarityIsNotSureTheSameLineSaysWhetherToTryIt() throws IOException {
        double[] tone = Sounds.sine(FRAMES, 440, 0.3);
        List<String> apart = PairWords.of(stereo(tone, Sounds.filtered(tone, 10, hz -> 0.8)));
        assertTrue(apart.get(0).startsWith("Whether one is the other way up cannot be told surely") && apart.get(0).endsWith("leave it."), apart::toString);
        List<String> against = PairWords.of(stereo(tone, Sounds.times(tone, -0.8)));
        assertTrue(against.get(0).endsWith("press the polarity button (\u00f8) of one, listen in mono at equal level, and keep the fuller."), against::toString);
        assertFalse(said(apart, "press") || said(against, "leave it"));
    }

    @Test
    void anInvertedCopyHasNoHolesOfItsOwnButCancelsAllOver() throws IOException {
        for (double share : new double[] {1, 0.7, 0.5}) {
            for (double noise : new double[] {0, 0.1}) {
                for (int i = 0; i < 4; i++) {
                    double[] sound = Sounds.noise(FRAMES, i);
                    PairHeard heard = stereo(Sounds.plus(sound, Sounds.times(Sounds.noise(FRAMES, 100 + i), noise)), Sounds.plus(Sounds.times(sound, -share), Sounds.times(Sounds.noise(FRAMES, 200 + i), noise)));
                    assertEquals(List.of(), heard.combs(), share + " with noise of " + noise);
                }
            }
        }
    }

    @Test
    void nobodyIsAskedToMoveAStandByMillimetresOrAcrossTheRoomOrTheCloseOneBack() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        String little = time(sound, 1);
        assertTrue(little.contains("shift take.wav, right earlier by 1 sample") && little.contains("no stand can be set"), little);
        assertFalse(little.contains("move take"), little);
        String some = time(sound, 48);
        assertTrue(some.contains("move take.wav, right 34 cm nearer, or shift take.wav, right earlier by 48 samples"), some);
        assertFalse(some.contains("back"), some);
        String far = time(sound, 1500);
        assertTrue(far.contains("shift take.wav, right earlier by 1500 samples") && far.contains("10.72 m"), far);
        assertFalse(far.contains("move take"), far);
    }

    private static String time(double[] sound, double later) throws IOException {
        return PairWords.of(stereo(sound, Sounds.filtered(sound, later, hz -> 1))).stream().filter(says -> says.startsWith("If one is close")).findFirst().orElseThrow();
    }

    @Property(tries = 40)
    void swappedTracksHaveTheContraryDelayAndFlippedOnesTheContraryPolarity(@ForAll @IntRange(min = 0, max = 1000) int seed, @ForAll @DoubleRange(min = -300, max = 300) double later,
            @ForAll @DoubleRange(min = 0.2, max = 3) double factor) throws IOException {
        double[] sound = Sounds.filtered(Sounds.noise(1 << 15, seed), 0, hz -> 1 / (1 + hz / 1500));
        double[] one = Sounds.plus(sound, Sounds.times(Sounds.noise(1 << 15, seed + 5000), 0.005));
        double[] other = Sounds.plus(Sounds.filtered(sound, later, hz -> 0.5), Sounds.times(Sounds.noise(1 << 15, seed + 9000), 0.005));
        PairHeard heard = stereo(one, other);
        PairHeard swapped = stereo(other, one);
        assertEquals(heard.laterFrames(), -swapped.laterFrames(), 0.02);
        assertEquals(heard.differenceDb(), -swapped.differenceDb(), 0.02);
        PairHeard flipped = stereo(one, Sounds.times(other, -1));
        assertTrue(heard.inverted() == null ? flipped.inverted() == null : flipped.inverted() == !heard.inverted(), heard.inverted() + " and " + flipped.inverted());
        assertEquals(heard.laterFrames(), flipped.laterFrames(), 0.02);
        PairHeard louder = stereo(one, Sounds.times(other, factor));
        assertEquals(heard.differenceDb() + 20 * Math.log10(factor), louder.differenceDb(), 0.02);
        assertEquals(heard.laterFrames(), louder.laterFrames(), 0.02);
        assertEquals(heard.commonShare(), louder.commonShare(), 0.05);
    }
}
