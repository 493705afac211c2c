package pairwright.catalogue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A copy of the small catalogue of the tests, to be spoilt at will. */
final class SmallCatalogue {
    private static final Path ORIGINAL = Path.of("src/test/resources/catalogue/small");

    final Path folder;

    private SmallCatalogue(Path folder) {
        this.folder = folder;
    }

    static SmallCatalogue in(Path folder) {
        try (Stream<Path> files = Files.walk(ORIGINAL)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path copy = folder.resolve(ORIGINAL.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
            return new SmallCatalogue(folder);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** What is in a folder already, or will be. */
    static SmallCatalogue at(Path folder) {
        return new SmallCatalogue(folder);
    }

    /** Puts one piece of text in place of another, which must be there. */
    SmallCatalogue change(String file, String from, String to) {
        String before = text(file);
        if (!before.contains(from)) {
            throw new IllegalArgumentException(file + " does not hold \"" + from + "\"");
        }
        return write(file, before.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to)));
    }

    SmallCatalogue write(String file, String text) {
        try {
            Files.createDirectories(folder.resolve(file).getParent());
            Files.writeString(folder.resolve(file), text);
            return this;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    SmallCatalogue copy(String file, String to) {
        return write(to, text(file));
    }

    SmallCatalogue bytes(String file, int... bytes) {
        byte[] raw = new byte[bytes.length];
        for (int i = 0; i < raw.length; i++) {
            raw[i] = (byte) bytes[i];
        }
        try {
            Files.write(folder.resolve(file), raw);
            return this;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    SmallCatalogue remove(String file) {
        try {
            Files.delete(folder.resolve(file));
            return this;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    String text(String file) {
        try {
            return Files.readString(folder.resolve(file));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    CatalogueReader.Result read() {
        return CatalogueReader.read(folder);
    }

    /** Faults as they are printed, with the files as seen from the folder. */
    List<String> faults() {
        return printed(read().faults());
    }

    List<String> printed(List<FileFault> faults) {
        return faults.stream().map(fault -> fault.toString().replace(folder + "/", "")).toList();
    }
}
