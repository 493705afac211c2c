package pairwright.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.stream.Collectors;

/** Ordinary words of English that are a letter or two from a word of the catalogue, and mean something else. */
final class Ordinary {

    private static final String FILE = "/pairwright/search/ordinary-words.txt";

    private Ordinary() {
    }

    static Set<String> words() {
        try (var in = Ordinary.class.getResourceAsStream(FILE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + FILE + ", which belongs to this program", e);
        }
    }
}
