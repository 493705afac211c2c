package pairwright.listen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A file that cannot be used is refused with what is wrong and what to do; one that can in part is used in part. */
class RecordingTest {
    private static final int FRAMES = 200_000;

    @TempDir
    Path folder;

    private Path file(byte... bytes) throws IOException {
        return Files.write(folder.resolve("take.wav"), bytes);
    }

    private Path wav(int bits, double rateHz, double[]... channels) throws IOException {
        return Sounds.wav(folder.resolve("take.wav"), bits, rateHz, channels);
    }

    private static Measured measured(Path file) {
        return SourceMeter.measure(Recording.of(file, "take.wav"), null, 0, share -> { });
    }

    private static void refused(String expected, Path file) {
        UnusableRecording refused = assertThrows(UnusableRecording.class, () -> measured(file));
        assertTrue(refused.getMessage().contains(expected), refused.getMessage());
        assertEquals("take.wav", refused.recording());
    }

    /** With some bytes of the head replaced. */
    private static Path patched(Path file, int at, int... bytes) throws IOException {
        byte[] all = Files.readAllBytes(file);
        for (int i = 0; i < bytes.length; i++) {
            all[at + i] = (byte) bytes[i];
        }
        return Files.write(file, all);
    }

    @Test
    void whatIsNoRecordingIsSaidToBeNone() throws IOException {
        refused("too few for any recording", file());
        refused("no WAV or AIFF file", file("this is a letter to my aunt".getBytes(java.nio.charset.StandardCharsets.US_ASCII)));
        refused("no WAV or AIFF file", file(new byte[5000]));
        refused("cannot be read", folder.resolve("missing.wav"));
        refused("It is a folder", folder);
        refused("head cannot be made sense of", file("RF64....WAVEds64".getBytes(java.nio.charset.StandardCharsets.US_ASCII)));
        refused("head cannot be made sense of", file("RF64....WAVEdata\u00ff\u00ff\u00ff\u00ff".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1)));
        refused("no WAV or AIFF file", file("RF64....AVI LIST".getBytes(java.nio.charset.StandardCharsets.US_ASCII)));
        refused("head cannot be made sense of", file("RIFF....WAVEfmt garbage garbage".getBytes(java.nio.charset.StandardCharsets.US_ASCII)));
    }

    @Test
    void whatIsAnotherKindOfRecordingIsRefusedByItsFigures() throws IOException {
        double[] noise = Sounds.noise(FRAMES, 1);
        refused("It has 8 channels", wav(16, 48_000, noise, noise, noise, noise, noise, noise, noise, noise));
        refused("It has 22050 samples a second", wav(16, 22_050, noise));
        refused("Its samples are 8 bits", wav(8, 48_000, noise));
    }

    @Test
    void tooShortOrSilentIsRefused() throws IOException {
        refused("It holds no sound", wav(16, 48_000, new double[0]));
        refused("It is 1 sample long", wav(16, 48_000, new double[1]));
        refused("It is 1.0 s long", wav(16, 48_000, Sounds.noise(48_000, 1)));
        refused("It is silent", wav(16, 48_000, new double[FRAMES]));
    }

    @Test
    void whatIsNoNumberIsFoundWithItsPlace() throws IOException {
        double[] noise = Sounds.noise(FRAMES, 1);
        noise[96_000] = Double.NaN;
        refused("At 0:02.0 in channel 2 it holds something that is no number", wav(0, 48_000, Sounds.noise(FRAMES, 2), noise));
    }

    @Test
    void whatIsCutOffIsMeasuredAsFarAsItGoes() throws IOException {
        Path file = wav(24, 48_000, Sounds.noise(FRAMES, 1));
        Files.write(file, Arrays.copyOf(Files.readAllBytes(file), 44 + 3 * 150_000 + 1));
        Measured measured = measured(file);
        assertEquals(150_000 / 48_000.0, measured.durationS(), 1e-9);
        assertTrue(measured.flaws().get(0).says().startsWith("It breaks off at 0:03.1, though its head promises 0:04.2"), measured.flaws()::toString);
    }

    @Test
    void aHeadThatWasNeverFinishedIsExplained() throws IOException {
        refused("the recorder was stopped before it could finish the file", patched(wav(16, 48_000, Sounds.noise(FRAMES, 1)), 40, 0, 0, 0, 0));
    }

    @Test
    void aHeadThatPromisesFourGigabytesIsReadAsFarAsItGoes() throws IOException {
        Measured measured = measured(patched(wav(16, 48_000, Sounds.noise(FRAMES, 1)), 40, 0xf0, 0xff, 0xff, 0xff));
        assertEquals(FRAMES / 48_000.0, measured.durationS(), 1e-9);
    }

    @Test
    void tenGigabytesOfNothingAreNotRead() throws IOException {
        Path file = folder.resolve("take.wav");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(10L << 30);
        }
        refused("no WAV or AIFF file", file);
        Files.delete(file);
    }

    @Test
    void eachWidthOfSampleIsReadAlike() throws IOException {
        double[] noise = Sounds.noise(FRAMES, 1);
        double expected = measured(wav(0, 48_000, noise)).runningDbfs();
        for (int bits : new int[] {16, 24, 32}) {
            assertEquals(expected, measured(wav(bits, 48_000, noise)).runningDbfs(), 0.001, bits + " bits");
        }
    }

    @Test
    void theOtherFormatIsReadAlike() throws IOException {
        double[] noise = Sounds.noise(FRAMES, 1);
        double expected = measured(wav(16, 48_000, noise)).runningDbfs();
        ByteBuffer aiff = ByteBuffer.allocate(54 + 2 * FRAMES);
        aiff.put("FORM".getBytes(java.nio.charset.StandardCharsets.US_ASCII)).putInt(46 + 2 * FRAMES).put("AIFFCOMM".getBytes(java.nio.charset.StandardCharsets.US_ASCII)).putInt(18)
                .putShort((short) 1).putInt(FRAMES).putShort((short) 16).putShort((short) (16383 + 15)).putLong(48_000L << 48)
                .put("SSND".getBytes(java.nio.charset.StandardCharsets.US_ASCII)).putInt(8 + 2 * FRAMES).putLong(0);
        for (double value : noise) {
            aiff.putShort((short) Math.max(-32768, Math.min(32767, Math.rint(value * 32768))));
        }
        Measured measured = measured(Files.write(folder.resolve("take.wav"), aiff.array()));
        assertEquals(expected, measured.runningDbfs(), 0.001);
        assertEquals(48_000, measured.rateHz());
    }

    /** Sizes of 64 bits in a part of their own, and those of 32 bits full. */
    private static byte[] longHead(String kind, int tag, int channels, int bits, int rateHz, long dataBytes) {
        int fmt = tag == 0xFFFE ? 40 : 16;
        ByteBuffer head = ByteBuffer.allocate(12 + 8 + 28 + 8 + fmt + 8).order(java.nio.ByteOrder.LITTLE_ENDIAN);
        java.nio.charset.Charset ascii = java.nio.charset.StandardCharsets.US_ASCII;
        head.put(kind.getBytes(ascii)).putInt(-1).put("WAVEds64".getBytes(ascii)).putInt(28).putLong(dataBytes + head.capacity() - 8).putLong(dataBytes).putLong(0).putInt(0);
        head.put("fmt ".getBytes(ascii)).putInt(fmt).putShort((short) tag).putShort((short) channels).putInt(rateHz).putInt(rateHz * channels * bits / 8).putShort((short) (channels * bits / 8))
                .putShort((short) bits);
        if (tag == 0xFFFE) {
            head.putShort((short) 22).putShort((short) bits).putInt(3).putShort((short) 1).put(new byte[14]);
        }
        return head.put("data".getBytes(ascii)).putInt(-1).array();
    }

    @Test
    void aWavForMoreThanFourGigabytesIsReadLikeAnyOther() throws IOException {
        double[] left = Sounds.noise(FRAMES, 1);
        double[] right = Sounds.noise(FRAMES, 2);
        Path plain = wav(24, 48_000, left, right);
        byte[] sound = Arrays.copyOfRange(Files.readAllBytes(plain), 44, 44 + FRAMES * 6);
        Measured expected = measured(plain);
        for (int tag : new int[] {1, 0xFFFE}) {
            byte[] head = longHead(tag == 1 ? "RF64" : "BW64", tag, 2, 24, 48_000, sound.length);
            Measured read = measured(file(ByteBuffer.allocate(head.length + sound.length).put(head).put(sound).array()));
            assertEquals(expected, read);
            Measured broken = measured(file(ByteBuffer.allocate(head.length + sound.length / 2).put(head).put(sound, 0, sound.length / 2).array()));
            assertTrue(broken.flaws().get(0).says().startsWith("It breaks off at"), broken.flaws()::toString);
        }
    }

    @Test
    void anHourAndMoreOfHighRatesIsCountedWholeThoughThirtyTwoBitsCannot() throws IOException {
        long frames = 800_000_000L;
        Path file = file(longHead("RF64", 1, 2, 24, 192_000, frames * 6));
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(sparse.length() + frames * 6);
        }
        Recording recording = Recording.of(file, "take.wav");
        assertEquals(frames, recording.promisedFrames());
        try (Frames read = recording.frames()) {
            read.skip(frames - 1000);
            assertEquals(1000, read.read(new double[2][4096]));
        }
    }
}
