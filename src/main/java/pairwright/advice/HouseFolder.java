package pairwright.advice;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * The files of a house folder before anything is made of them: whether it is safe to read them, and whether they changed. Only plain text
 * that lies in the folder itself is read, and not more of it than a house can need.
 */
final class HouseFolder {
    private static final long GONE = -1;
    private static final int MOST_FILES = 2_000;
    private static final int DEEPEST = 8;
    private static final long LARGEST_BYTES = 1_000_000;
    private static final List<String> PARTS = List.of("catalogue", "rules");
    private static final List<String> TEXTS = List.of(".yaml", ".csv", ".drl");
    private static final List<String> PASSED_OVER = List.of(".md", "~", ".bak", ".tmp", ".swp");

    private final Path folder;

    HouseFolder(Path folder) {
        this.folder = folder;
    }

    boolean isThere() {
        return Files.isDirectory(folder);
    }

    Path catalogue() {
        return folder.resolve("catalogue");
    }

    Path rules() {
        return folder.resolve("rules");
    }

    /** Changes when any file is added, removed or written; the same for a folder that is not there. */
    long stamp() {
        try {
            Path root = folder.toRealPath();
            try (Stream<Path> files = Files.walk(root, DEEPEST)) {
                long stamp = 17;
                for (Path file : files.limit(MOST_FILES + 1).filter(Files::isRegularFile).sorted().toList()) {
                    stamp = stamp * 31 + file.hashCode();
                    stamp = stamp * 31 + Files.getLastModifiedTime(file).hashCode();
                    stamp = stamp * 31 + Files.size(file);
                }
                return stamp;
            }
        } catch (IOException | UncheckedIOException gone) {
            return GONE;
        }
    }

    /** A fault as it stands in the folder, without the way there. */
    String inside(String fault) {
        String separator = folder.getFileSystem().getSeparator();
        String said = fault.replace(folder.toAbsolutePath() + separator, "").replace(folder.toAbsolutePath().toString(), "the house folder");
        return said.startsWith(folder + separator) ? said.substring((folder + separator).length())
                : said.startsWith(folder + ":") ? "the house folder" + said.substring(folder.toString().length()) : said;
    }

    /** Everything that must not be read, or would silently be left unread, each with its place. */
    List<String> faults() {
        List<String> found = new ArrayList<>();
        try {
            Path root = folder.toRealPath();
            try (Stream<Path> all = Files.walk(root, DEEPEST)) {
                List<Path> files = all.filter(path -> !path.equals(root)).limit(MOST_FILES + 1).sorted().toList();
                if (files.size() > MOST_FILES) {
                    return List.of(folder + ": holds more than " + MOST_FILES + " files. Is it the right folder? Take out what is not for Pairwright");
                }
                files.forEach(file -> look(root, root.relativize(file), found));
            }
        } catch (IOException | UncheckedIOException unreadable) {
            found.add(folder + ": cannot be read. Check that it is there and may be read");
        }
        return found;
    }

    private void look(Path root, Path part, List<String> found) {
        Path file = root.resolve(part);
        String name = part.getFileName().toString();
        String shown = folder.resolve(part).toString();
        if (Stream.iterate(part, path -> path != null, Path::getParent).anyMatch(path -> isPassedOver(path.getFileName().toString()))) {
            return;
        }
        try {
            if (Files.isSymbolicLink(file)) {
                link(root, file, shown, found);
            } else if (part.getNameCount() == 1) {
                top(file, name, shown, found);
            } else if (!PARTS.contains(part.getName(0).toString())) {
                return; // its folder is a fault already
            }
            if (part.getNameCount() > 1 && part.getName(0).toString().equals("rules") && Files.isRegularFile(file)
                    && !name.endsWith(".drl") && !name.endsWith(".cases.yaml")) {
                found.add(shown + ": is not read. Rename it to end in .drl or move it away");
            }
            if (Files.isDirectory(file) || part.getNameCount() == 1) {
                return;
            }
            if (!Files.isRegularFile(file)) {
                if (Files.exists(file)) {
                    found.add(shown + ": is no file that can be read to its end. Take it out");
                }
            } else if (Files.size(file) > LARGEST_BYTES) {
                found.add(shown + ":1:1: the file has " + Files.size(file) + " bytes, and more than " + LARGEST_BYTES + " are not read. Make it smaller");
            } else if (TEXTS.stream().anyMatch(name::endsWith)) {
                text(Files.readAllBytes(file), shown, found);
            }
        } catch (IOException unreadable) {
            found.add(shown + ": cannot be read. Check that it may be read by the one who runs the program");
        }
    }

    private static boolean isPassedOver(String name) {
        return name.startsWith(".") || name.startsWith("#") || PASSED_OVER.stream().anyMatch(name::endsWith);
    }

    private static void top(Path file, String name, String shown, List<String> found) {
        if (Files.isDirectory(file) && !PARTS.contains(name)) {
            found.add(shown + ": is not read. A house folder holds catalogue/ and rules/: rename it, or move it away");
        } else if (!Files.isDirectory(file) && TEXTS.stream().anyMatch(name.toLowerCase(Locale.ROOT)::endsWith)) {
            found.add(shown + ": is not read here. Move it into " + (name.endsWith(".drl") ? "rules/" : "a folder of catalogue/, such as catalogue/mics/"));
        }
    }

    private static void link(Path root, Path file, String shown, List<String> found) {
        try {
            Path real = file.toRealPath();
            if (!real.startsWith(root)) {
                found.add(shown + ": is a link that leads out of the house folder, and is not followed. Copy what it points to");
            } else if (Files.isDirectory(real)) {
                found.add(shown + ": is a link to a folder, and is not followed. Copy what it points to");
            }
        } catch (IOException dangling) {
            found.add(shown + ": is a link that leads nowhere. Take it out");
        }
    }

    /** The first byte that is no text in UTF-8, told with its line and column. */
    private static void text(byte[] bytes, String shown, List<String> found) {
        if (bytes.length > 1 && (bytes[0] == (byte) 0xff && bytes[1] == (byte) 0xfe || bytes[0] == (byte) 0xfe && bytes[1] == (byte) 0xff)) {
            found.add(shown + ":1:1: the file is in UTF-16. Save it as UTF-8");
            return;
        }
        int bad = bytes.length;
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CoderResult read = StandardCharsets.UTF_8.newDecoder().decode(in, CharBuffer.allocate(bytes.length + 1), true);
        if (read.isError()) {
            bad = in.position();
        }
        int nul = 0;
        while (nul < bytes.length && bytes[nul] != 0) {
            nul++;
        }
        int at = Math.min(bad, nul);
        if (at == bytes.length) {
            return;
        }
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < at; i++) {
            if (bytes[i] == '\n') {
                line++;
                lineStart = i + 1;
            }
        }
        int column = new String(bytes, lineStart, at - lineStart, StandardCharsets.UTF_8).length() + 1;
        found.add(shown + ":" + line + ":" + column + (nul < bad
                ? ": the file is not text: it holds a zero byte. Take it out, or save it as plain text"
                : ": the file is not UTF-8. Save it as plain text in UTF-8"));
    }
}
