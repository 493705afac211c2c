package pairwright.listen;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/** Sounds made of numbers, and files of them. */
public final class Sounds {
    public static final double RATE_HZ = 48_000;

    private Sounds() {
    }

    /** All frequencies alike, of RMS 0.1. */
    public static double[] noise(int frames, long seed) {
        Random random = new Random(seed);
        double[] noise = new double[frames];
        Arrays.setAll(noise, i -> 0.1 * random.nextGaussian());
        return noise;
    }

    public static double[] sine(int frames, double hz, double height) {
        double[] sine = new double[frames];
        Arrays.setAll(sine, i -> height * Math.sin(2 * Math.PI * hz * i / RATE_HZ));
        return sine;
    }

    public static double[] plus(double[] one, double[] other) {
        double[] sum = new double[one.length];
        Arrays.setAll(sum, i -> one[i] + other[i]);
        return sum;
    }

    public static double[] times(double[] sound, double factor) {
        return Arrays.stream(sound).map(value -> value * factor).toArray();
    }

    /** What a frequency is multiplied with. */
    public interface Response {
        double at(double hz);
    }

    /** The whole sound, as if it went round, later by any part of a sample and through a response without phase; as long as a power of 2. */
    public static double[] filtered(double[] sound, double laterFrames, Response response) {
        double[][] all = {sound.clone(), new double[sound.length]};
        FastFourierTransformer.transformInPlace(all, DftNormalization.STANDARD, TransformType.FORWARD);
        for (int bin = 0; bin < sound.length; bin++) {
            int signed = bin <= sound.length / 2 ? bin : bin - sound.length;
            double turn = -2 * Math.PI * signed * laterFrames / sound.length;
            double factor = response.at(Math.abs(signed) * RATE_HZ / sound.length) * (bin == sound.length / 2 ? Math.cos(turn) : 1);
            double re = all[0][bin];
            double im = all[1][bin];
            double cosine = bin == sound.length / 2 ? 1 : Math.cos(turn);
            double sine = bin == sound.length / 2 ? 0 : Math.sin(turn);
            all[0][bin] = factor * (re * cosine - im * sine);
            all[1][bin] = factor * (re * sine + im * cosine);
        }
        FastFourierTransformer.transformInPlace(all, DftNormalization.STANDARD, TransformType.INVERSE);
        return all[0];
    }

    public static double rms(double[] sound) {
        return Math.sqrt(Arrays.stream(sound).map(value -> value * value).average().orElseThrow());
    }

    /** A WAV file of 16, 24 or 32 bits, or 32 bits floating point for 0. */
    public static Path wav(Path file, int bits, double rateHz, double[]... channels) throws IOException {
        int bytesEach = bits == 0 ? 4 : bits / 8;
        int data = channels[0].length * channels.length * bytesEach;
        try (DataOutputStream out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(file), 1 << 16))) {
            out.writeBytes("RIFF");
            little(out, 36 + data, 4);
            out.writeBytes("WAVEfmt ");
            little(out, 16, 4);
            little(out, bits == 0 ? 3 : 1, 2);
            little(out, channels.length, 2);
            little(out, (long) rateHz, 4);
            little(out, (long) rateHz * channels.length * bytesEach, 4);
            little(out, (long) channels.length * bytesEach, 2);
            little(out, bytesEach * 8L, 2);
            out.writeBytes("data");
            little(out, data, 4);
            for (int i = 0; i < channels[0].length; i++) {
                for (double[] channel : channels) {
                    little(out, bits == 0 ? Float.floatToRawIntBits((float) channel[i]) : whole(channel[i], bits), bytesEach);
                }
            }
        }
        return file;
    }

    private static long whole(double value, int bits) {
        double full = Math.pow(2, bits - 1);
        return (long) Math.max(-full, Math.min(full - 1, Math.rint(value * full)));
    }

    private static void little(OutputStream out, long value, int bytes) throws IOException {
        for (int i = 0; i < bytes; i++) {
            out.write((int) (value >> 8 * i) & 0xff);
        }
    }
}
