package pairwright.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Random tunes and chords, as they are and through something that rings. */
class RingsTest {
    private static final int FRAMES = 1 << 20;
    private static final int[] SCALE = {0, 2, 4, 5, 7, 9, 11};
    private static final int TAKES = 20;

    /** Notes of a scale over two octaves, of a colour of their own, louder and softer; one or three at a time. */
    private static double[] music(Random random, int voices) {
        double[] sound = new double[FRAMES];
        double lowHz = 110 * Math.pow(2, random.nextInt(24) / 12.0);
        double slope = 0.7 + random.nextDouble();
        double even = random.nextBoolean() ? 1 : 0.3;
        int each = (int) (0.35 * Sounds.RATE_HZ);
        for (int from = 0; from < FRAMES; from += each) {
            for (int voice = 0; voice < voices; voice++) {
                double hz = lowHz * Math.pow(2, (SCALE[random.nextInt(7)] + 12 * random.nextInt(2)) / 12.0) * (1 + 0.003 * random.nextGaussian());
                double height = 0.03 * Math.pow(10, random.nextDouble() / 2);
                for (int harmonic = 1; harmonic <= 12 && harmonic * hz < 10_000; harmonic++) {
                    double strength = height * Math.pow(harmonic, -slope) * (harmonic % 2 == 0 ? even : 1);
                    double phase = random.nextDouble() * 2 * Math.PI;
                    for (int i = 0; i < Math.min(each, FRAMES - from); i++) {
                        double swell = Math.min(1, Math.min(i, each - i) / 500.0);
                        sound[from + i] += strength * swell * Math.sin(2 * Math.PI * harmonic * hz * i / Sounds.RATE_HZ + phase);
                    }
                }
            }
        }
        return Sounds.plus(sound, Sounds.times(Sounds.noise(FRAMES, random.nextInt()), 1e-4));
    }

    private static LongSpectrum spectrum(double[] sound) {
        LongSpectrum spectrum = new LongSpectrum(Sounds.RATE_HZ, FRAMES / Sounds.RATE_HZ);
        spectrum.add(new double[][] {sound}, FRAMES);
        return spectrum;
    }

    private static List<Measured.Resonance> rings(double[] sound) {
        return spectrum(sound).resonances();
    }

    /** What sounds on under a tune stands out whatever is played. */
    @Test
    void aDroneIsNoticedAndNoTuneIsTakenForOne() {
        int noticed = 0;
        int taken = 0;
        for (int take = 0; take < TAKES; take++) {
            Random random = new Random(9000 + take);
            double[] music = music(random, take % 2 == 0 ? 1 : 3);
            taken += spectrum(music).overADrone() ? 1 : 0;
            double hz = 90 * Math.pow(2, random.nextDouble());
            double[] drone = new double[FRAMES];
            for (int harmonic = 1; harmonic <= 10; harmonic++) {
                drone = Sounds.plus(drone, Sounds.sine(FRAMES, harmonic * hz, 0.04 / harmonic));
            }
            noticed += spectrum(Sounds.plus(music, drone)).overADrone() ? 1 : 0;
        }
        assertTrue(noticed >= 19, noticed + " of " + TAKES);
        assertEquals(0, taken);
    }

    @Test
    void ofTunesAndChordsNoNoteIsToldAsARing() {
        int told = 0;
        for (int take = 0; take < TAKES; take++) {
            List<Measured.Resonance> found = rings(music(new Random(5000 + take), take % 2 == 0 ? 1 : 3));
            told += found.isEmpty() ? 0 : 1;
            }
        assertTrue(told == 0, told + " of " + TAKES);
    }

    @Test
    void whatRingsIsFoundWhateverIsPlayed() {
        int found = 0;
        int besides = 0;
        for (int take = 0; take < TAKES; take++) {
            Random random = new Random(7000 + take);
            double[] music = music(random, take % 2 == 0 ? 1 : 3);
            double ringHz = 500 * Math.pow(4, random.nextDouble());
            double halfHz = ringHz / 24;
            LongSpectrum ringing = spectrum(Sounds.filtered(music, 0, hz -> 1 + 5 / (1 + Math.pow((hz - ringHz) / halfHz, 2))));
            assertFalse(ringing.overADrone(), "take " + take);
            List<Measured.Resonance> rings = ringing.resonances();
            boolean there = rings.stream().anyMatch(ring -> Math.abs(ring.frequencyHz() / ringHz - 1) <= 0.03);
            found += there ? 1 : 0;
            besides += rings.stream().anyMatch(ring -> Math.abs(ring.frequencyHz() / ringHz - 1) > 0.06) ? 1 : 0;
        }
        assertTrue(found >= 17, found + " of " + TAKES);
        assertTrue(besides == 0, besides + " of " + TAKES);
    }

    /** What several notes share as a harmonic is there whatever is played, as if it rang. */
    @Test
    void ofTunesOfFewNotesItIsSaidThatTheyAreTooFew() {
        for (int[] steps : new int[][] {{0, 4, 7}, {0, 7, 12}, {0, 3, 7, 10, 12}, {0, 2, 4, 7, 9}, {0, 2, 4, 5, 7, 9, 11, 12, 14, 16}}) {
            Random random = new Random(steps.length);
            Pitch pitch = new Pitch(Sounds.RATE_HZ, 1);
            int each = (int) (0.35 * Sounds.RATE_HZ);
            double[] note = new double[each];
            for (int i = 0; i < 120; i++) {
                double hz = 220 * Math.pow(2, steps[random.nextInt(steps.length)] / 12.0);
                for (int at = 0; at < each; at++) {
                    note[at] = 0.1 * Math.sin(2 * Math.PI * hz * at / Sounds.RATE_HZ) + 0.05 * Math.sin(4 * Math.PI * hz * at / Sounds.RATE_HZ);
                }
                pitch.add(new double[][] {note}, each);
            }
            assertEquals(steps.length, pitch.differentNotes(), 2, "a look may fall between two notes");
            assertEquals(steps.length > 7, pitch.differentNotes() >= SourceMeter.LEAST_NOTES, steps.length + " notes");
        }
    }
}
