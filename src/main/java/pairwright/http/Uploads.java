package pairwright.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionException;
import java.util.stream.Stream;
import org.eclipse.jetty.http.MultiPart;
import org.eclipse.jetty.http.MultiPartFormData;
import org.eclipse.jetty.io.Content;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import pairwright.catalogue.Shown;

/** Takes in forms with files, which lie in a folder of their own until they have been read, and no longer. Safe to share between threads. */
final class Uploads implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Uploads.class);
    private static final int IN_MEMORY_BYTES = 4 * 1024;
    private static final int LONGEST_FIELD_BYTES = 1000;
    private static final int LONGEST_BOUNDARY = 70;
    private static final String MULTIPART = "multipart/form-data";

    private final Limits limits;
    private final Path folder;

    /**
     * What is taken.
     *
     * @param fileBytes of one file at most
     * @param allBytes of a whole request at most
     * @param parts at most
     * @param bytesPerS that have to come on average after the first seconds, lest one who drips hold a place all day
     */
    record Limits(long fileBytes, long allBytes, int parts, int bytesPerS) {
        static final Limits USUAL = new Limits(1L << 30, 2L << 30, 20, 100_000);
    }

    /**
     * A file that was sent.
     *
     * @param file where it lies
     * @param name what the sender calls it, made harmless
     */
    record Sent(Path file, String name) {
    }

    /** What one request sent. To be closed, which deletes its files. */
    static final class Taken implements AutoCloseable {
        private final Path folder;
        final Map<String, List<Sent>> files = new LinkedHashMap<>();
        final Map<String, List<String>> fields = new LinkedHashMap<>();

        private Taken(Path folder) {
            this.folder = folder;
        }

        @Override
        public void close() {
            delete(folder);
        }
    }

    /** Into a new folder among those for passing things. */
    Uploads(Limits limits) {
        this.limits = limits;
        try {
            folder = Files.createTempDirectory("pairwright-listen-");
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    /** Where files lie while they are read. */
    Path folder() {
        return folder;
    }

    /**
     * What a request sent.
     *
     * @param mostMs how long the first of it may take to arrive
     * @throws BadRequest 400, 408, 413, 415 or 503
     */
    Taken take(Context context, int mostMs) {
        String boundary = boundary(context);
        if (context.req().getContentLengthLong() > limits.allBytes()) {
            throw tooLarge(limits);
        }
        Taken taken = null;
        try {
            Files.createDirectories(folder); // a system may clear away what has passed things for long
            taken = new Taken(Files.createTempDirectory(folder, "sent-"));
            read(new Arriving(context.bodyInputStream(), mostMs, limits), boundary, taken);
            return taken;
        } catch (IOException | RuntimeException wrong) {
            if (taken != null) {
                taken.close();
            }
            if (wrong instanceof RuntimeException ours) {
                throw ours;
            }
            LOG.warn("recordings could not be put aside", wrong);
            throw noRoom();
        }
    }

    private void read(Arriving in, String boundary, Taken taken) throws IOException {
        MultiPartFormData.Parser parser = new MultiPartFormData.Parser(boundary);
        parser.setFilesDirectory(taken.folder);
        parser.setMaxMemoryFileSize(IN_MEMORY_BYTES);
        parser.setUseFilesForPartsWithoutFileName(true);
        parser.setMaxParts(limits.parts() + 1L);
        parser.setMaxFileSize(limits.fileBytes());
        parser.setMaxLength(-1);
        try (MultiPartFormData.Parts parts = parser.parse(Content.Source.from(in)).join()) {
            if (parts.size() > limits.parts()) {
                throw tooMany(limits);
            }
            for (MultiPart.Part part : parts) {
                sort(part, taken);
            }
        } catch (CompletionException | CancellationException broken) {
            throw in.why(broken);
        }
    }

    private static void sort(MultiPart.Part part, Taken taken) throws IOException {
        String name = Objects.requireNonNullElse(part.getName(), "");
        String fileName = part.getFileName();
        if (fileName == null && part.getLength() <= LONGEST_FIELD_BYTES && !ListenForm.FILES.contains(name)) {
            taken.fields.computeIfAbsent(name, any -> new ArrayList<>()).add(part.getContentAsString(StandardCharsets.UTF_8));
        } else if (fileName != null && fileName.isBlank() && part.getLength() == 0) {
            taken.fields.computeIfAbsent(name, any -> new ArrayList<>()).add(""); // a place for a file that was left empty
        } else {
            Path file = taken.folder.resolve("part-" + taken.files.values().stream().mapToInt(List::size).sum());
            part.writeTo(file);
            taken.files.computeIfAbsent(name, any -> new ArrayList<>()).add(new Sent(file, harmless(fileName, name)));
        }
    }

    /** Some browsers send a whole path; what cannot be printed is left out. */
    static String harmless(String fileName, String otherwise) {
        String last = fileName == null ? "" : fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1);
        String plain = last.replaceAll("[\\p{Cc}\\p{Cf}\\p{Cs}\\p{Co}\\p{Cn}\\p{Zl}\\p{Zp}]", "").strip();
        return Shown.of(plain.isEmpty() ? otherwise : plain);
    }

    private static String boundary(Context context) {
        String type = Objects.requireNonNullElse(context.header("Content-Type"), "").strip();
        String media = type.toLowerCase(Locale.ROOT).split(";", 2)[0].strip();
        if (!media.equals(MULTIPART)) {
            throw new BadRequest(Problem.of(415, "Content-Type is " + (media.isEmpty() ? "missing" : "\"" + Shown.of(media) + "\"") + ". Send the files as " + MULTIPART));
        }
        String encoding = context.header("Content-Encoding");
        if (encoding != null && !encoding.strip().equalsIgnoreCase("identity")) {
            throw new BadRequest(Problem.of(415, "Content-Encoding \"" + Shown.of(encoding) + "\" is not read here. Send the files as they are"));
        }
        String boundary = null;
        try {
            boundary = MultiPart.extractBoundary(type);
        } catch (RuntimeException nonsense) {
            // the same as none
        }
        if (boundary == null || boundary.isBlank() || boundary.length() > LONGEST_BOUNDARY) {
            throw new BadRequest(Problem.of(400, "Content-Type names no boundary between the parts. Send " + MULTIPART + "; boundary=... with at most " + LONGEST_BOUNDARY + " characters"));
        }
        return boundary;
    }

    static BadRequest tooLarge(Limits limits) {
        return new BadRequest(Problem.of(413, "The files are too large: at most " + megabytes(limits.fileBytes()) + " each and " + megabytes(limits.allBytes())
                + " together. Send a shorter part of them, as a minute tells as much as an hour; or measure them where they lie: pairwright listen FILE"));
    }

    private static String megabytes(long bytes) {
        return bytes >= 1 << 30 ? (bytes >> 30) + " GB" : bytes >= 1 << 20 ? (bytes >> 20) + " MB" : bytes + " bytes";
    }

    static BadRequest tooMany(Limits limits) {
        return new BadRequest(Problem.of(400, "The form has more than " + limits.parts() + " parts. Send only those that are listed in /openapi.yaml"));
    }

    static BadRequest noRoom() {
        return new BadRequest(Problem.of(503, "The files could not be put aside while they are measured: there may be no room. Try again later, with shorter ones, "
                + "or measure them where they lie: pairwright listen FILE"));
    }

    private static void delete(Path folder) {
        try (Stream<Path> inside = Files.exists(folder) ? Files.walk(folder) : Stream.empty()) {
            for (Path one : inside.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.deleteIfExists(one);
            }
        } catch (IOException stays) {
            throw new UncheckedIOException(stays);
        }
    }

    /** Nothing is left. */
    @Override
    public void close() {
        delete(folder);
    }
}
