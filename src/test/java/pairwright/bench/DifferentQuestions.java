package pairwright.bench;

import java.util.List;
import java.util.Locale;

/** Questions of which no two are alike: every source, room, character and limit by turns, with a distance that is never the same twice. Any number gives the same question again. */
public final class DifferentQuestions {
    private static final List<String> SOURCES = List.of("snare drum", "nylon guitar", "double bass", "trumpet", "tenor saxophone", "singing voice", "cello", "flute", "accordion",
            "banjo", "kick drum", "guitar amp", "violin", "grand piano", "drum kit", "harp", "clarinet", "cajon", "spoken voice");
    private static final List<String> ROOMS = List.of("small room", "church", "barn", "bedroom", "large room", "medium live room", "dry booth");
    private static final List<String> SOUNDS = List.of("natural", "dark", "airy", "warm", "gritty");
    private static final List<String> LIMITS = List.of("", ", no phantom", ", one mic", ", no condensers");
    private static final List<String> BESIDE = List.of("a singer", "the drums", "a trumpet");

    private DifferentQuestions() {
    }

    /** Question number {@code i}; the distance to the neighbour makes it another one from its like 7,980 questions before. */
    public static String of(int i) {
        return String.format(Locale.ROOT, "%s in a %s, %s, next to %s at %.3f m%s", at(SOURCES, i), at(ROOMS, i), at(SOUNDS, i), at(BESIDE, i),
                1.5 + i % 4001 * 0.001, LIMITS.get(i / 19 % LIMITS.size()));
    }

    /** The same as the body of {@code POST /api/ask}. */
    public static String body(int i) {
        return "{\"words\": \"" + of(i) + "\"}";
    }

    private static String at(List<String> words, int i) {
        return words.get(Math.floorMod(i, words.size()));
    }
}
