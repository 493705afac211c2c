package pairwright.listen;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioFormat.Encoding;
import javax.sound.sampled.AudioInputStream;

/** The head of a WAV file for more than 4 GB, which the JDK does not read: sizes of 64 bits stand in a part of their own. Source: EBU Tech 3306 (RF64), ITU-R BS.2088 (BW64). */
final class LongWave {
    private static final long ELSEWHERE = 0xFFFF_FFFFL;
    private static final int EXTENSIBLE = 0xFFFE;
    private static final int PCM = 1;
    private static final int FLOAT = 3;
    private static final int FORM_BYTES = 12;
    private static final int PART_BYTES = 8;
    /** A head is a few hundred bytes; what is larger before the sound is passed over. */
    private static final int MOST_PART_BYTES = 1 << 16;

    private final InputStream in;
    private long data;
    private AudioFormat format;

    private LongWave(InputStream in) {
        this.in = in;
    }

    static boolean is(String kind) {
        return kind.equals("RF64") || kind.equals("BW64");
    }

    /**
     * Its sound from the first sample on. To be closed.
     *
     * @return null where the head cannot be made sense of
     */
    static AudioInputStream sound(Path file) throws IOException {
        InputStream in = Files.newInputStream(file);
        try {
            AudioInputStream sound = new LongWave(in).read();
            if (sound == null) {
                in.close();
            }
            return sound;
        } catch (EOFException breaksOff) {
            in.close();
            return null;
        } catch (IOException | RuntimeException broken) {
            in.close();
            throw broken;
        }
    }

    private AudioInputStream read() throws IOException {
        in.skipNBytes(FORM_BYTES);
        while (true) {
            ByteBuffer part = bytes(PART_BYTES);
            byte[] id = new byte[4];
            part.get(id);
            long size = Integer.toUnsignedLong(part.getInt());
            switch (new String(id, StandardCharsets.ISO_8859_1)) {
                case "data" -> {
                    long bytes = size == ELSEWHERE ? data : size;
                    return format == null || bytes < 0 ? null : new AudioInputStream(in, format, bytes / format.getFrameSize());
                }
                case "ds64" -> {
                    ByteBuffer sizes = part(size);
                    data = sizes == null || sizes.remaining() < 16 ? 0 : sizes.getLong(8);
                }
                case "fmt " -> {
                    ByteBuffer head = part(size);
                    format = head == null ? null : format(head);
                    if (format == null) {
                        return null;
                    }
                }
                default -> in.skipNBytes(size + (size & 1));
            }
        }
    }

    private ByteBuffer part(long size) throws IOException {
        return size > MOST_PART_BYTES ? null : bytes((int) (size + (size & 1)));
    }

    private ByteBuffer bytes(int count) throws IOException {
        byte[] all = in.readNBytes(count);
        if (all.length < count) {
            throw new EOFException();
        }
        return ByteBuffer.wrap(all).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static AudioFormat format(ByteBuffer head) {
        if (head.remaining() < 16) {
            return null;
        }
        int coded = Short.toUnsignedInt(head.getShort(0));
        int kind = coded == EXTENSIBLE && head.remaining() >= 26 ? Short.toUnsignedInt(head.getShort(24)) : coded;
        int channels = Short.toUnsignedInt(head.getShort(2));
        float rateHz = Integer.toUnsignedLong(head.getInt(4));
        int frameBytes = Short.toUnsignedInt(head.getShort(12));
        int bits = Short.toUnsignedInt(head.getShort(14));
        boolean whole = channels > 0 && frameBytes > 0 && frameBytes == channels * ((bits + 7) / 8);
        return !whole || kind != PCM && kind != FLOAT ? null
                : new AudioFormat(kind == PCM ? Encoding.PCM_SIGNED : Encoding.PCM_FLOAT, rateHz, bits, channels, frameBytes, rateHz, false);
    }
}
