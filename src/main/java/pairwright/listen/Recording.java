package pairwright.listen;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioFormat.Encoding;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;

/**
 * A file of sound: WAV, for more than 4 GB as well (RF64, BW64), or AIFF, 44.1 to 192 kHz, 16, 24 or 32 bits or floating point, one channel or two. Only its head is read until somebody asks for
 * {@link #frames}.
 */
public final class Recording {
    static final double LEAST_RATE_HZ = 44_100;
    static final double MOST_RATE_HZ = 192_000;
    static final int MOST_CHANNELS = 2;
    private static final int HEAD_BYTES = 12;

    private final Path file;
    private final String name;
    private final boolean large;
    private final AudioFormat format;
    private final long promisedFrames;

    private Recording(Path file, String name, boolean large, AudioFormat format, long promisedFrames) {
        this.file = file;
        this.name = name;
        this.large = large;
        this.format = format;
        this.promisedFrames = promisedFrames;
    }

    /**
     * Of a file.
     *
     * @param file where it is
     * @param name what people call it; messages say it
     * @throws UnusableRecording where it is no such file, cannot be read, or holds nothing
     */
    public static Recording of(Path file, String name) {
        try {
            boolean large = checkHead(file, name);
            try (AudioInputStream sound = sound(file, name, large)) {
                Recording recording = new Recording(file, name, large, sound.getFormat(), sound.getFrameLength());
                recording.check(Files.size(file));
                return recording;
            }
        } catch (IOException unreadable) {
            throw new UnusableRecording(name, "It cannot be read. Look whether it is there, is whole, and may be read by this program");
        }
    }

    /**
     * Only then is the library asked: it takes more kinds of files than are recordings.
     *
     * @return whether it is for more than 4 GB
     */
    private static boolean checkHead(Path file, String name) throws IOException {
        if (Files.isDirectory(file)) {
            throw new UnusableRecording(name, "It is a folder. Name a WAV or AIFF file in it");
        }
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(HEAD_BYTES);
        }
        if (head.length < HEAD_BYTES) {
            throw new UnusableRecording(name, "It has " + head.length + " bytes, too few for any recording. Copy it again from where it was recorded");
        }
        String kind = new String(head, 0, 4, StandardCharsets.ISO_8859_1);
        String form = new String(head, 8, 4, StandardCharsets.ISO_8859_1);
        if (!((kind.equals("RIFF") || LongWave.is(kind)) && form.equals("WAVE") || kind.equals("FORM") && (form.equals("AIFF") || form.equals("AIFC")))) {
            throw new UnusableRecording(name, "It is no WAV or AIFF file, whatever its name says. Export the track as WAV");
        }
        return LongWave.is(kind);
    }

    private static AudioInputStream sound(Path file, String name, boolean large) throws IOException {
        try {
            if (large) {
                AudioInputStream sound = LongWave.sound(file);
                if (sound == null) {
                    throw new UnsupportedAudioFileException();
                }
                return sound;
            }
            return AudioSystem.getAudioInputStream(file.toFile());
        } catch (UnsupportedAudioFileException | IllegalArgumentException wrong) {
            throw new UnusableRecording(name, "Its head cannot be made sense of, or it is packed in a way that is not read here. Export the track as plain WAV, 24 bits");
        }
    }

    private void check(long bytes) {
        if (format.getChannels() < 1 || format.getChannels() > MOST_CHANNELS) {
            throw new UnusableRecording(name, "It has " + format.getChannels() + " channels. Give one or two: export the tracks of this source alone");
        }
        boolean plain = format.getEncoding().equals(Encoding.PCM_SIGNED) && bits() >= 16 && bits() <= 32 && bits() % 8 == 0;
        boolean floating = format.getEncoding().equals(Encoding.PCM_FLOAT) && (bits() == 32 || bits() == 64);
        if (!plain && !floating) {
            throw new UnusableRecording(name, "Its samples are " + bits() + " bits of the kind " + format.getEncoding().toString().toLowerCase(Locale.ROOT).replace('_', ' ')
                    + ". Export it with 16, 24 or 32 bits, or as floating point");
        }
        if (!(rateHz() >= LEAST_RATE_HZ && rateHz() <= MOST_RATE_HZ)) {
            throw new UnusableRecording(name, "It has " + Math.round(rateHz()) + " samples a second. Give 44,100 to 192,000, as it was recorded");
        }
        if (promisedFrames == 0) {
            throw new UnusableRecording(name, bytes > 1000 ? "Its head says that it holds no sound, yet it has " + bytes
                    + " bytes: the recorder was stopped before it could finish the file. Open it in an editor of sound that mends heads, and save it again"
                    : "It holds no sound. Export the track again");
        }
    }

    /** What people call it. */
    public String name() {
        return name;
    }

    /** Samples a second. */
    public double rateHz() {
        return format.getFrameRate();
    }

    /** One or two. */
    public int channels() {
        return format.getChannels();
    }

    /** Of a sample. */
    public int bits() {
        return format.getSampleSizeInBits();
    }

    /** How many samples of each channel its head says there are; below 0 where it does not. */
    public long promisedFrames() {
        return promisedFrames;
    }

    /** Its samples from the first on. To be closed. */
    Frames frames() {
        try {
            AudioInputStream sound = sound(file, name, large);
            return new Frames(this, new BufferedInputStream(sound, 1 << 16), format);
        } catch (IOException gone) {
            throw new UnusableRecording(name, "It cannot be read any more. Look whether it is still there");
        }
    }
}
