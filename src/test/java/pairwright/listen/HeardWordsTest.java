package pairwright.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pairwright.acoustics.OctaveCurve;
import pairwright.acoustics.Octaves;
import pairwright.catalogue.CatalogueStore;
import pairwright.model.Source;

/** What is said of recordings is what was done to them. */
class HeardWordsTest {
    private static final int FRAMES = 1 << 20;
    private static final Source VIOLIN = new CatalogueStore().builtIn().sources().get("violin");

    @TempDir
    Path folder;

    private Recording recording(String name, double[]... channels) throws IOException {
        return Recording.of(Sounds.wav(folder.resolve(name), 24, Sounds.RATE_HZ, channels), name);
    }

    private Measured measured(String name, MeterReading reading, double[] sound) throws IOException {
        return SourceMeter.measure(recording(name, sound), reading, 0, share -> { });
    }

    private List<String> pair(double[] one, double[] other) throws IOException {
        Recording both = recording("pair.wav", one, other);
        return PairWords.of(PairMeter.measure(new Track(both, 0), new Track(both, 1), share -> { }));
    }

    /** As the catalogue has it, and some octaves more. */
    private static double[] likeAViolin(OctaveCurve moreDb) {
        return Sounds.filtered(Sounds.noise(FRAMES, 1), 0, hz -> {
            int band = (int) Math.round(Math.log10(Math.max(hz, 50) / 1000) / 0.3) + 4;
            band = Math.max(0, Math.min(Octaves.COUNT - 1, band));
            // of noise each octave has twice the power of the one below
            return Math.pow(10, (VIOLIN.spectrumDb().at(band) + moreDb.at(band) - 3.01 * band) / 20) * 2;
        });
    }

    @Test
    void aPlayerWhoIsBrighterThanTheKindIsToldByOctaves() throws IOException {
        Traits plain = Traits.of(measured("plain.wav", null, likeAViolin(OctaveCurve.ZERO)), VIOLIN);
        Traits bright = Traits.of(measured("bright.wav", null, likeAViolin(OctaveCurve.of(0, 0, 0, 0, 0, 0, 6, 0, 0))), VIOLIN);
        assertEquals(6, bright.toneDb().at(6) - plain.toneDb().at(6) - (bright.toneDb().at(4) - plain.toneDb().at(4)), 0.6);
        assertTrue(bright.says().get(0).contains("more at 4 kHz"), bright.says()::toString);
        assertNull(bright.typicalDbSpl());
        assertTrue(bright.restsOn().stream().anyMatch(says -> says.contains("sound level meter")));
    }

    @Test
    void aMeterReadingTellsHowMuchLouderThePlayerIsThanTheKind() throws IOException {
        double knownDb = VIOLIN.level().typicalDbSpl();
        Traits loud = Traits.of(measured("loud.wav", new MeterReading(knownDb + 10, 1, MeterReading.Weighting.Z), likeAViolin(OctaveCurve.ZERO)), VIOLIN);
        assertEquals(knownDb + 10, loud.typicalDbSpl(), 0.1);
        assertTrue(loud.says().stream().anyMatch(says -> says.startsWith("Louder by 10 dB")), loud.says()::toString);
        assertTrue(loud.restsOn().stream().noneMatch(says -> says.contains("sound level meter")));
    }

    @Test
    void aPairThatIsTheOtherWayUpAndLateIsToldWithTheWayToMend() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        List<String> says = pair(sound, Sounds.filtered(sound, 48, hz -> -0.5));
        assertEquals("pair.wav, right is the other way up: invert it (the polarity button, \u00f8, of the channel), or look for a wrongly wired lead.", says.get(0));
        assertTrue(says.get(1).startsWith("Inverting it would fill the sum at"), says.get(1));
        assertTrue(says.get(2).startsWith("pair.wav, right hears it 1 ms later than pair.wav, left: 48 samples, 34 cm of air."), says.get(2));
        assertTrue(says.stream().anyMatch(one -> one.equals("pair.wav, right is 6 dB softer than pair.wav, left.")), says::toString);
    }

    @Test
    void strangersAreToldThatTheirDelayMeansNothing() throws IOException {
        List<String> says = pair(Sounds.noise(FRAMES, 1), Sounds.noise(FRAMES, 2));
        assertEquals(1, says.size(), says::toString);
        assertTrue(says.get(0).startsWith("These two have next to nothing in common"), says.get(0));
    }

    @Test
    void aChangeIsComparedAtEqualLevel() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        TakesCompared compared = TakesCompared.of(measured("before.wav", null, sound), measured("after.wav", null, Sounds.filtered(sound, 0, hz -> hz > 60 && hz < 90 ? 4 : 2)));
        assertEquals(6.02, compared.louderDb(), 0.05);
        assertEquals(5, compared.octavesDb().at(0), 1.2);
        assertEquals("At equal level after.wav has more at 63 Hz.", compared.says().get(0));
        assertEquals("after.wav was 6 dB louder. Match that before you listen, lest the louder one win.", compared.says().get(1));
    }

    @Test
    void bleedIsHeldAgainstWhatWasReckoned() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        Measured own = measured("own.wav", null, sound);
        Measured neighbour = measured("neighbour.wav", null, Sounds.filtered(sound, 0, hz -> hz > 1400 && hz < 2800 ? 0.5 : 0.1));
        BleedHeard bleed = BleedHeard.of(own, neighbour, OctaveCurve.flat(20));
        assertEquals(20, bleed.octavesDb().at(8), 0.3);
        assertEquals(6, bleed.octavesDb().at(5), 0.3);
        assertEquals(5, bleed.worstBand());
        assertTrue(bleed.says().get(1).startsWith("The neighbour is louder than reckoned at 2 kHz, by up to 14 dB. Look whether the microphone and the neighbour stand where the plan has them"), bleed.says()::toString);
        assertEquals("The neighbour is softer than reckoned at 63 Hz to 16 kHz. Nothing needs doing.", BleedHeard.of(own, neighbour, bleed.octavesDb().plus(-10)).says().get(1));
        Measured low = measured("low.wav", null, Sounds.filtered(sound, 0, hz -> hz < 1400 ? 1 : 0.001));
        String ofLow = BleedHeard.of(low, measured("quiet.wav", null, Sounds.times(sound, 0.1)), OctaveCurve.flat(20)).says().get(1);
        assertEquals("That is as reckoned, to 4 dB in every octave.", ofLow, "where the source has nothing there is nothing to hold against the plan");
        assertEquals("That is as reckoned, to 4 dB in every octave.", BleedHeard.of(own, neighbour, bleed.octavesDb()).says().get(1));
    }

    @Test
    void whatLiesBelowTheLowestNoteIsNoTraitOfThePlayerAndStrongRumbleIsToldAsThat() throws IOException {
        Traits plain = Traits.of(measured("plain.wav", null, likeAViolin(OctaveCurve.ZERO)), VIOLIN);
        double[] rumble = Sounds.filtered(Sounds.noise(FRAMES, 5), 0, hz -> hz > 50 && hz < 70 ? 1 : 0);
        Traits low = Traits.of(measured("low.wav", null, Sounds.plus(likeAViolin(OctaveCurve.ZERO), rumble)), VIOLIN);
        assertEquals(0, low.toneDb().at(0));
        assertTrue(low.says().stream().noneMatch(says -> says.contains("63 Hz")), low.says()::toString);
        assertTrue(low.restsOn().stream().anyMatch(says -> says.startsWith("At 63 Hz, below its lowest note, there is more than it gives")), low.restsOn()::toString);
        assertTrue(plain.restsOn().stream().noneMatch(says -> says.contains("lowest note")), plain.restsOn()::toString);
        for (int band = 2; band < Octaves.COUNT; band++) {
            assertEquals(plain.toneDb().at(band), low.toneDb().at(band), 0.5, "band " + band);
        }
    }

    @Test
    void aReadingFromNearIsReckonedToAMetreInWordsAndOneThatCannotBeIsDoubted() throws IOException {
        double[] sound = likeAViolin(OctaveCurve.ZERO);
        Traits near = Traits.of(measured("near.wav", new MeterReading(96, 0.2, MeterReading.Weighting.A), sound), VIOLIN);
        assertTrue(near.restsOn().stream().anyMatch(says -> says.startsWith("The meter showed 96 dB(A) at 20 cm. Reckoned to one metre that is ")), near.restsOn()::toString);
        assertTrue(near.restsOn().stream().anyMatch(says -> says.contains("so near")), near.restsOn()::toString);
        Traits far = Traits.of(measured("far.wav", new MeterReading(75, 3, MeterReading.Weighting.A), sound), VIOLIN);
        assertTrue(far.restsOn().stream().anyMatch(says -> says.contains("a room adds to what is read from far")) && far.restsOn().stream().noneMatch(says -> says.contains("so near")), far.restsOn()::toString);
        Traits usual = Traits.of(measured("usual.wav", new MeterReading(VIOLIN.level().typicalDbSpl(), 1, MeterReading.Weighting.Z), sound), VIOLIN);
        assertTrue(usual.restsOn().stream().noneMatch(says -> says.contains("The meter showed") || says.contains("rely on it")), usual.restsOn()::toString);
        Traits wrong = Traits.of(measured("wrong.wav", new MeterReading(VIOLIN.level().typicalDbSpl() + 30, 1, MeterReading.Weighting.Z), sound), VIOLIN);
        assertTrue(wrong.restsOn().stream().anyMatch(says -> says.startsWith("A level 30 dB from what is usual is more than loud or soft playing makes")), wrong.restsOn()::toString);
    }

    @Test
    void aTakeWithTopsCutOffIsNotComparedAsIfItWereSound() throws IOException {
        double[] sound = Sounds.noise(FRAMES, 1);
        double[] cut = Sounds.times(sound, 8);
        for (int i = 0; i < cut.length; i++) {
            cut[i] = Math.max(-0.9, Math.min(0.9, cut[i]));
        }
        Measured whole = measured("before.wav", null, sound);
        Measured clipped = measured("after.wav", null, cut);
        assertEquals("after.wav should not be used: rest nothing on what follows, and record it again.", TakesCompared.of(whole, clipped).says().get(0));
        assertTrue(BleedHeard.of(whole, clipped, null).says().get(0).startsWith("after.wav should not be used"));
        assertTrue(TakesCompared.of(whole, whole).says().get(0).startsWith("At equal level no octave differs"));
    }
}
