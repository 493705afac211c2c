package pairwright.listen;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioFormat.Encoding;

/** The samples of a recording, block after block, full scale 1. */
final class Frames implements AutoCloseable {
    private static final int BLOCK_FRAMES = 1 << 14;

    private final Recording recording;
    private final InputStream in;
    private final int channels;
    private final int bytesEach;
    private final boolean floating;
    private final ByteBuffer bytes;
    private long done;

    Frames(Recording recording, InputStream in, AudioFormat format) {
        this.recording = recording;
        this.in = in;
        this.channels = format.getChannels();
        this.bytesEach = format.getSampleSizeInBits() / 8;
        this.floating = format.getEncoding().equals(Encoding.PCM_FLOAT);
        this.bytes = ByteBuffer.allocate(BLOCK_FRAMES * channels * bytesEach).order(format.isBigEndian() ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN);
    }

    /**
     * Reads on.
     *
     * @param into for each channel as many samples as are wanted
     * @return how many of them there were; fewer than wanted only at the end
     * @throws UnusableRecording where the file breaks off in a way that cannot be read, or a sample is no number
     */
    int read(double[][] into) {
        int wanted = into[0].length;
        int got = 0;
        while (got < wanted) {
            int frames = Math.min(BLOCK_FRAMES, wanted - got);
            int read = bytes(frames * channels * bytesEach) / (channels * bytesEach);
            for (int frame = 0; frame < read; frame++) {
                for (int channel = 0; channel < channels; channel++) {
                    into[channel][got + frame] = sample((frame * channels + channel) * bytesEach, channel, done + frame);
                }
            }
            got += read;
            done += read;
            if (read < frames) {
                break;
            }
        }
        return got;
    }

    /** Passes over some, or over what is left of them. */
    void skip(long frames) {
        try {
            long left = frames * channels * bytesEach;
            for (long passed = in.skip(left); passed > 0; passed = in.skip(left)) {
                left -= passed;
            }
            done += frames - left / (channels * bytesEach);
        } catch (IOException broken) {
            throw brokenOff();
        }
    }

    private int bytes(int wanted) {
        try {
            return in.readNBytes(bytes.array(), 0, wanted);
        } catch (IOException broken) {
            throw brokenOff();
        }
    }

    private UnusableRecording brokenOff() {
        return new UnusableRecording(recording.name(), "It cannot be read on after " + Clock.of(done, recording.rateHz()) + ". Copy it again from where it was recorded");
    }

    private double sample(int at, int channel, long frame) {
        if (floating) {
            double value = bytesEach == 4 ? bytes.getFloat(at) : bytes.getDouble(at);
            if (!Double.isFinite(value)) {
                throw new UnusableRecording(recording.name(), "At " + Clock.of(frame, recording.rateHz()) + (channels > 1 ? " in channel " + (channel + 1) : "")
                        + " it holds something that is no number. Export the track again, with 24 bits");
            }
            return value;
        }
        return switch (bytesEach) {
            case 2 -> bytes.getShort(at) / 32768.0;
            case 3 -> threeBytes(at) / 8388608.0;
            default -> bytes.getInt(at) / 2147483648.0;
        };
    }

    private int threeBytes(int at) {
        byte[] all = bytes.array();
        boolean big = bytes.order() == ByteOrder.BIG_ENDIAN;
        return all[big ? at : at + 2] << 16 | (all[at + 1] & 0xff) << 8 | all[big ? at + 2 : at] & 0xff;
    }

    @Override
    public void close() {
        try {
            in.close();
        } catch (IOException ignored) {
            // nothing was written
        }
    }
}
