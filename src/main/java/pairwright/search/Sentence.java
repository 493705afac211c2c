package pairwright.search;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A sentence cut into words, with the phrases found in it.
 *
 * @param text as it was given
 * @param tokens its words
 * @param tags the phrases, in the order they stand
 */
record Sentence(String text, List<Token> tokens, List<Tag> tags) {

    /** Small words that may stand between a modifier and what it changes: "not a very". */
    private static final int SMALL_WORDS_BETWEEN = 2;

    Stream<Tag> tags(Kind kind) {
        return tags.stream().filter(tag -> tag.kind() == kind);
    }

    /** The words as they stand. */
    String words(int first, int end) {
        return text.substring(tokens.get(first).start(), tokens.get(end - 1).end());
    }

    String words(Tag tag) {
        return words(tag.first(), tag.end());
    }

    /** Whether a stop stands before one of the tokens after {@code first}, up to and with {@code last}. */
    boolean isBroken(int first, int last) {
        return IntStream.rangeClosed(first + 1, Math.min(last, tokens.size() - 1)).anyMatch(at -> tokens.get(at).opens());
    }

    boolean isCovered(int token, Kind... kinds) {
        return tags.stream().anyMatch(tag -> tag.covers(token) && List.of(kinds).contains(tag.kind()));
    }

    /** Whether all tokens from {@code first} to before {@code end} are small words. */
    boolean isSmall(int first, int end) {
        return IntStream.range(first, end).allMatch(at -> isCovered(at, Kind.IGNORED, Kind.MODIFIER));
    }

    /** The modifier that changes a phrase: the nearest one before it, no stop and only small words or a number between. */
    Optional<Tag> modifierBefore(Tag tag) {
        for (int at = tag.first() - 1; at >= Math.max(0, tag.first() - 1 - SMALL_WORDS_BETWEEN); at--) {
            if (tokens.get(at + 1).opens()) {
                return Optional.empty();
            }
            int last = at;
            var modifier = tags(Kind.MODIFIER).filter(found -> found.end() - 1 == last && !found.id().equals("and")).findFirst();
            if (modifier.isPresent() || !isCovered(at, Kind.IGNORED, Kind.NUMBER)) {
                return modifier;
            }
        }
        return Optional.empty();
    }

    /** "only" right behind a phrase. */
    Optional<Tag> onlyAfter(Tag tag) {
        return tags(Kind.MODIFIER).filter(found -> found.first() == tag.end() && found.id().equals("only")
                && !tokens.get(found.first()).opens()).findFirst();
    }

    /** Whether one phrase follows another by "and" alone, but for small words. */
    boolean isJoined(Tag one, Tag next) {
        return one.end() < next.first() && next.first() - one.end() <= 1 + SMALL_WORDS_BETWEEN && isSmall(one.end(), next.first())
                && tags(Kind.MODIFIER).anyMatch(tag -> tag.id().equals("and") && one.end() <= tag.first() && tag.end() <= next.first());
    }
}
