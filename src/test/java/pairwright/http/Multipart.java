package pairwright.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pairwright.listen.Sounds;

/** A form with files, byte by byte. */
final class Multipart {
    static final String BOUNDARY = "a-line-between";
    private static final int FRAMES = 1 << 17;

    private final ByteArrayOutputStream body = new ByteArrayOutputStream();

    static Multipart form() {
        return new Multipart();
    }

    Multipart field(String name, String value) {
        return part("form-data; name=\"" + name + "\"", value.getBytes(StandardCharsets.UTF_8));
    }

    Multipart file(String name, String fileName, byte[] content) {
        return part("form-data; name=\"" + name + "\"; filename=\"" + fileName + "\"", content);
    }

    Multipart part(String disposition, byte[] content) {
        say("--" + BOUNDARY + "\r\nContent-Disposition: " + disposition + "\r\n\r\n");
        body.writeBytes(content);
        say("\r\n");
        return this;
    }

    private void say(String text) {
        body.writeBytes(text.getBytes(StandardCharsets.UTF_8));
    }

    byte[] unfinished() {
        return body.toByteArray();
    }

    byte[] bytes() {
        say("--" + BOUNDARY + "--\r\n");
        return body.toByteArray();
    }

    Reply to(int port, String target, String... headers) {
        return send(port, target, "multipart/form-data; boundary=" + BOUNDARY, bytes(), headers);
    }

    static Reply send(int port, String target, String type, byte[] bytes, String... headers) {
        return Serving.send(port, Serving.joined("POST " + target + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n" + (type == null ? "" : "Content-Type: " + type + "\r\n")
                + Stream.of(headers).map(header -> header + "\r\n").collect(Collectors.joining()) + "Content-Length: " + bytes.length + "\r\n\r\n", bytes));
    }

    /** Two seconds and a half of sound, 24 bits. */
    static byte[] wav(double[]... channels) {
        try {
            Path file = Files.createTempFile("sound", ".wav");
            try {
                return Files.readAllBytes(Sounds.wav(file, 24, Sounds.RATE_HZ, channels));
            } finally {
                Files.delete(file);
            }
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    static double[] noise(long seed) {
        return Sounds.noise(FRAMES, seed);
    }

    /** Notes that start fast, ring away and leave quiet between them: all there is to measure of a source. */
    static double[] notes(int seconds) {
        int frames = seconds * (int) Sounds.RATE_HZ;
        double[] notes = new double[frames];
        double[] hiss = Sounds.noise(frames, 7);
        for (int i = 0; i < frames; i++) {
            int note = i / 24_000;
            double sinceS = i % 24_000 / Sounds.RATE_HZ;
            double hz = 196 * Math.pow(2, note % 13 / 12.0);
            double loud = note / 12 % 2 == 0 ? 0.5 : 0.1;
            double sum = 0;
            for (int partial = 1; partial <= 8; partial++) {
                double at = hz * partial;
                double rings = 1 + 6 / (1 + Math.pow((at - 1500) / 60, 2));
                sum += rings * Math.sin(2 * Math.PI * at * sinceS) / partial / partial;
            }
            notes[i] = sinceS > 0.35 ? 0.0001 * hiss[i] : loud * 0.4 * sum * Math.min(1, sinceS / 0.008) * Math.exp(-sinceS * 9) + 0.0001 * hiss[i];
        }
        return notes;
    }
}
