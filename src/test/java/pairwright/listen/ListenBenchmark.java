package pairwright.listen;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * How long listening to an hour of stereo takes, and with how much memory. Not a test: machines differ. Run it with
 * {@code mvn -q test-compile exec:java@listen-benchmark}; the argument is how many minutes are made up, 60 unless given.
 */
public final class ListenBenchmark {
    private static final int RATE_HZ = 48_000;

    private ListenBenchmark() {
    }

    /** Prints the figures. */
    public static void main(String[] arguments) throws IOException {
        int minutes = arguments.length == 0 ? 60 : Integer.parseInt(arguments[0]);
        Path file = Files.createTempFile("listen", ".wav");
        try {
            write(file, minutes * 60 * RATE_HZ);
            System.out.printf(Locale.ROOT, "%d min of stereo, 24 bits, %.0f MB%n", minutes, Files.size(file) / 1e6);
            Recording recording = Recording.of(file, "benchmark");
            time("a source measured", () -> SourceMeter.measure(recording, null, 0, share -> { }));
            time("a pair measured", () -> PairMeter.measure(new Track(recording, 0), new Track(recording, 1), share -> { }));
        } finally {
            Files.delete(file);
        }
    }

    private static void time(String name, Runnable work) {
        Runtime runtime = Runtime.getRuntime();
        System.gc();
        long start = System.nanoTime();
        work.run();
        double seconds = (System.nanoTime() - start) / 1e9;
        long after = (runtime.totalMemory() - runtime.freeMemory()) / 1_000_000;
        System.out.printf(Locale.ROOT, "  %-20s %6.1f s, %d MB in use after, %d MB taken from the machine%n", name, seconds, after, runtime.totalMemory() / 1_000_000);
    }

    /** Notes with noise, another delay in each channel. */
    private static void write(Path file, int frames) throws IOException {
        Random random = new Random(1);
        int data = frames * 6;
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16)) {
            ByteBuffer head = ByteBuffer.allocate(44).order(ByteOrder.LITTLE_ENDIAN);
            head.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(36 + data).put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16).putShort((short) 1).putShort((short) 2)
                    .putInt(RATE_HZ).putInt(RATE_HZ * 6).putShort((short) 6).putShort((short) 24).put("data".getBytes(StandardCharsets.US_ASCII)).putInt(data);
            out.write(head.array());
            double before = 0;
            for (int i = 0; i < frames; i++) {
                double at = i % RATE_HZ / (double) RATE_HZ;
                double value = 0.3 * Math.exp(-6 * at) * Math.sin(2 * Math.PI * (110 + 55 * (i / RATE_HZ % 5)) * at) + 0.01 * random.nextGaussian();
                for (double one : new double[] {value, before}) {
                    int whole = (int) (one * 8388607);
                    out.write(whole);
                    out.write(whole >> 8);
                    out.write(whole >> 16);
                }
                before = value;
            }
        }
    }
}
